package org.quaybook.job;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Puts other texts into a job: names and what refers to them alike, and nothing but texts. */
final class Rewriting {

    private final UnaryOperator<String> texts;
    private final Function<String, Optional<String>> role;
    private final @Nullable String blank;

    /** Rewrites texts and leaves people where they are. */
    Rewriting(UnaryOperator<String> texts) {
        this(texts, Optional::of, null);
    }

    /**
     * Rewrites texts and takes people out.
     *
     * @param role what may stand for a person
     * @param blank what stands for one where the format asks for a text
     */
    Rewriting(UnaryOperator<String> texts, Function<String, Optional<String>> role, @Nullable String blank) {
        this.texts = texts;
        this.role = role;
        this.blank = blank;
    }

    Job of(Job job) {
        return record(job);
    }

    private boolean takesPeopleOut() {
        return blank != null;
    }

    private <R extends Record> R record(R record) {
        Class<? extends Record> type = record.getClass();
        // What a program reads: neither who made the job by which rules nor the translations themselves are translated.
        if (!takesPeopleOut() && (record instanceof Header || record instanceof Translation)) {
            return record;
        }
        List<Field> fields = Field.of(type);
        @Nullable Object[] values = fields.stream()
                .map(field -> value(field, read(field, record), record instanceof Header))
                .toArray();
        try {
            Class<?>[] components = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            @SuppressWarnings("unchecked")
            R rewritten = (R) type.getDeclaredConstructor(components).newInstance(values);
            return rewritten;
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

    private @Nullable Object value(Field field, @Nullable Object value, boolean keepsTexts) {
        if (takesPeopleOut() && field.annotation(Personal.class).isPresent()) {
            return inPlaceOf(field, value);
        }
        if (value instanceof List<?> list) {
            return field.type() == Translation.class && takesPeopleOut()
                    ? List.of()
                    : list.stream().map(item -> value(field, item, keepsTexts)).toList();
        }
        if (value instanceof Given<?> given) {
            Object rewritten = given.value() == null ? null : value(field, given.value(), keepsTexts);
            String by = given.by() == null ? null : role.apply(given.by()).orElse(null);
            return new Given<>(rewritten, given.provenance(), by, given.on(), given.place());
        }
        if (value instanceof Record record && field.isNested()) {
            return record(record);
        }
        return value instanceof String text && !keepsTexts ? text(field, text) : value;
    }

    private @Nullable Object inPlaceOf(Field field, @Nullable Object person) {
        if (person instanceof List<?>) {
            return List.of();
        }
        String role = person instanceof String name ? this.role.apply(name).orElse(null) : null;
        return role == null && field.required() ? blank : role;
    }

    private String text(Field field, String text) {
        boolean word = field.annotation(RefersTo.class)
                .map(it -> List.of(it.words()).contains(text))
                .orElse(false);
        return word ? text : texts.apply(text);
    }
}
