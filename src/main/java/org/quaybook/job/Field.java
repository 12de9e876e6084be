package org.quaybook.job;

import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/**
 * One key of the format, as a record component and its annotations describe it.
 *
 * @param component the component
 * @param key how a job file writes it
 * @param form how its values stand
 * @param type the class of the value, of each value of a list, or of the value inside a {@link Given}
 * @param isNested whether its values are records of the format
 * @param required whether it must be written
 */
record Field(RecordComponent component, String key, Form form, Class<?> type, boolean isNested, boolean required) {

    /** How values stand under a key. */
    enum Form {
        /** One value. */
        PLAIN,
        /** One value with how it is known. */
        GIVEN,
        /** Any number of values. */
        LIST,
        /** Not a key: where the record stands, filled in by the reader. */
        PLACE,
        /** Not a key: stands in a file of its own. */
        BESIDE
    }

    private static final ClassValue<List<Field>> FIELDS = new ClassValue<>() {
        @Override
        protected List<Field> computeValue(Class<?> record) {
            return Arrays.stream(record.getRecordComponents()).map(Field::of).toList();
        }
    };

    /** The fields of a record of the format, in the order of its constructor. */
    static List<Field> of(Class<?> record) {
        return FIELDS.get(record);
    }

    /** The fields that a job file writes. */
    static List<Field> written(Class<?> record) {
        return of(record).stream()
                .filter(field -> field.form != Form.PLACE && field.form != Form.BESIDE)
                .toList();
    }

    private static Field of(RecordComponent component) {
        AnnotatedType type = component.getAnnotatedType();
        Class<?> raw = component.getType();
        Form form = raw == Place.class
                ? Form.PLACE
                : component.isAnnotationPresent(Beside.class)
                        ? Form.BESIDE
                        : raw == Given.class ? Form.GIVEN : raw == List.class ? Form.LIST : Form.PLAIN;
        Class<?> value = type instanceof AnnotatedParameterizedType several
                ? (Class<?>) several.getAnnotatedActualTypeArguments()[0].getType()
                : raw;
        boolean required = form != Form.LIST && !type.isAnnotationPresent(Nullable.class);
        return new Field(component, Names.key(component.getName()), form, value, isOfFormat(value), required);
    }

    /** Whether a class is a record of the format, whose components are keys. */
    static boolean isOfFormat(Class<?> type) {
        return type.isRecord()
                && Arrays.stream(type.getRecordComponents()).anyMatch(it -> it.isAnnotationPresent(Means.class));
    }

    String meaning() {
        return component.getAnnotation(Means.class).value();
    }

    Optional<String> example() {
        return Optional.of(component.getAnnotation(Means.class).example()).filter(text -> !text.isEmpty());
    }

    /** An example that may be copied into a job; a record code or key may not, for each must be the only one of its kind. */
    Optional<String> sample() {
        return example().filter(text -> type != RecordCode.class && type != SealKey.class);
    }

    <A extends Annotation> Optional<A> annotation(Class<A> type) {
        return Optional.ofNullable(component.getAnnotation(type));
    }
}
