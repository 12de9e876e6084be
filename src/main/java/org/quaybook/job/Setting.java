package org.quaybook.job;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** A setting as left. */
@Means("A setting as left.")
public record Setting(
        @Means("which device") String device,
        @Means("which setting") String name,
        @Means("what it is set to") String value,
        @Means("what it was before") @Nullable String was,
        @Means("when it was last changed") @Done @Nullable LocalDate on,

        @Means("who changed it; \"owner\" for the owner") @Personal @Nullable String by,

        @Means("season it is for") @Nullable String season,
        Place place) {

    /**
     * Whether this setting of a visit changes another: the same of the same device, for the same season or, if the visit
     * names none, for whichever the other is for.
     */
    boolean changes(Setting other) {
        return device.equals(other.device)
                && name.equals(other.name)
                && (season == null || season.equals(other.season));
    }

    /** The same as set on a day. */
    Setting on(LocalDate day) {
        return new Setting(device, name, value, was, day, by, season, place);
    }

    /** The same with what it was and what it is for taken from the setting that it changes, where it does not say so itself. */
    Setting after(Setting before) {
        return new Setting(
                device,
                name,
                value,
                was == null ? before.value : was,
                on,
                by,
                season == null ? before.season : season,
                place);
    }
}
