package org.quaybook.job;

import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Gathers what is {@link Personal} in a job. */
final class People {

    private People() {}

    /** Every personal text of a record and of the records in it; a section that is personal as a whole, with all its texts. */
    static List<String> of(Record record) {
        return of(record, false).toList();
    }

    private static Stream<String> of(Record record, boolean whole) {
        return Field.of(record.getClass()).stream()
                .flatMap(field -> texts(
                        value(field, record),
                        whole || field.annotation(Personal.class).isPresent()));
    }

    private static Stream<String> texts(@Nullable Object value, boolean personal) {
        if (value instanceof List<?> list) {
            return list.stream().flatMap(item -> texts(item, personal));
        }
        if (value instanceof Given<?> given) {
            return Stream.concat(Stream.ofNullable(given.by()), texts(given.value(), personal));
        }
        if (value instanceof Record record && Field.isOfFormat(record.getClass())) {
            return of(record, personal);
        }
        return personal && value instanceof String text ? Stream.of(text) : Stream.empty();
    }

    private static @Nullable Object value(Field field, Record record) {
        try {
            return field.component().getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException impossible) {
            throw new IllegalStateException(field.key() + " cannot be read", impossible);
        }
    }
}
