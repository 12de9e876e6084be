package org.quaybook.job;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Puts the texts of a job into another language: names and what refers to them alike, and nothing but texts. */
final class Translator {

    private final Map<String, String> texts;

    private Translator(Map<String, String> texts) {
        this.texts = texts;
    }

    static Job translated(Job job, Map<String, String> texts) {
        return new Translator(texts).record(job);
    }

    private <R extends Record> R record(R record) {
        Class<? extends Record> type = record.getClass();
        // What a program reads: neither who made the job by which rules nor the translations themselves are translated.
        if (record instanceof Header || record instanceof Translation) {
            return record;
        }
        List<Field> fields = Field.of(type);
        @Nullable Object[] values =
                fields.stream().map(field -> value(field, read(field, record))).toArray();
        try {
            Class<?>[] components = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            @SuppressWarnings("unchecked")
            R translated = (R) type.getDeclaredConstructor(components).newInstance(values);
            return translated;
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(type + " cannot be constructed", impossible);
        }
    }

    private static @Nullable Object read(Field field, Record record) {
        try {
            return field.component().getAccessor().invoke(record);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(field.key() + " cannot be read", impossible);
        }
    }

    private @Nullable Object value(Field field, @Nullable Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(item -> value(field, item)).toList();
        }
        if (value instanceof Given<?> given && given.value() != null) {
            return new Given<>(value(field, given.value()), given.provenance(), given.by(), given.on(), given.place());
        }
        if (value instanceof Record record && field.isNested()) {
            return record(record);
        }
        return value instanceof String text ? text(field, text) : value;
    }

    private String text(Field field, String text) {
        boolean word = field.annotation(RefersTo.class)
                .map(it -> List.of(it.words()).contains(text))
                .orElse(false);
        return word ? text : texts.getOrDefault(text, text);
    }
}
