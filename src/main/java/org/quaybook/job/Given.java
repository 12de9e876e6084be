package org.quaybook.job;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/**
 * A value of the job file with how it is known and where it stands. Written short, {@code 280 Ah (plate)} or
 * {@code 21 ms (measured, J. Fen, 2026-05-13)}, or long, {@code { value: 280 Ah, known: plate, by: J. Fen, on: 2026-05-13 }}; {@code not seen}
 * is a legal answer and gives no value.
 *
 * @param value the value; null exactly if nobody has seen it
 * @param provenance how it is known
 * @param by who found it out
 * @param on when
 * @param place where it stands in the file
 */
public record Given<T>(
        @Nullable T value,
        Provenance provenance,
        @Nullable String by,
        @Nullable LocalDate on,
        Place place) {

    public Given {
        if ((value == null) != (provenance == Provenance.NOT_SEEN)) {
            throw new IllegalArgumentException(provenance + " does not go with value " + value);
        }
    }

    /** A stated value that stands in no file. */
    public static <T> Given<T> of(T value) {
        return new Given<>(value, Provenance.STATED, null, null, Place.NOWHERE);
    }

    /** The value, empty if nobody has seen it. */
    public Optional<T> known() {
        return Optional.ofNullable(value);
    }

    /** The known value of a field that may be left out. */
    public static <T> Optional<T> maybe(@Nullable Given<T> field) {
        return field == null ? Optional.empty() : field.known();
    }

    /** Whether a yes-or-no field is written and says yes. */
    public static boolean isYes(@Nullable Given<Boolean> field) {
        return maybe(field).orElse(false);
    }

    /** Whether a yes-or-no field is written and says no. */
    public static boolean isNo(@Nullable Given<Boolean> field) {
        return maybe(field).map(yes -> !yes).orElse(false);
    }
}
