package org.quaybook.job;

import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Finds the keys that a job leaves out everywhere. */
final class Unused {

    private Unused() {}

    static List<String> in(Class<?> record, Object... values) {
        Set<String> unused = new TreeSet<>();
        collect(record, List.of(values), "", unused);
        return List.copyOf(unused);
    }

    private static void collect(Class<?> record, List<?> values, String path, Set<String> unused) {
        for (Field field : Field.written(record)) {
            List<?> used =
                    values.stream().flatMap(value -> of(field, value).stream()).toList();
            if (used.isEmpty()) {
                unused.add(path + field.key());
            } else if (field.isNested()) {
                collect(field.type(), used, path + field.key() + ".", unused);
            }
        }
    }

    private static List<?> of(Field field, Object record) {
        try {
            @Nullable Object value = field.component().getAccessor().invoke(record);
            if (value == null) {
                return List.of();
            }
            return value instanceof List<?> list ? list : List.of(value);
        } catch (IllegalAccessException | InvocationTargetException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
