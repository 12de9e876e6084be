package org.quaybook.job;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Kinds;
import org.quaybook.quantity.Quantity;

/** Says in English what a field may hold, for the schema and the reference page. */
final class FormatWords {

    private FormatWords() {}

    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + (words.endsWith(".") ? "" : ".");
    }

    /** What may stand there; empty for keys with keys of their own. */
    static String allowed(Field field, String separator) {
        List<String> parts = new ArrayList<>();
        parts.add(value(field, separator));
        field.annotation(Within.class).ifPresent(it -> parts.add("from " + it.least() + " to " + it.most()));
        field.annotation(Done.class).ifPresent(it -> parts.add("not after the date of the job"));
        String text = parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
        return field.form() == Field.Form.LIST && !field.isNested() ? "list; each " + text : text;
    }

    private static String value(Field field, String separator) {
        if (field.isNested()) {
            return field.form() == Field.Form.LIST ? "list" : "";
        }
        if (field.annotation(RefersTo.class).isPresent()) {
            return names(field.annotation(RefersTo.class).get());
        }
        if (field.annotation(Matches.class).isPresent()) {
            return field.annotation(Matches.class).get().form();
        }
        if (field.annotation(Longest.class).isPresent()) {
            return "text of at most " + field.annotation(Longest.class).get().value() + " characters";
        }
        return field.type().isEnum() ? constants(field.type(), separator) : type(field.type());
    }

    private static String names(RefersTo to) {
        return "one of the names in "
                + Stream.concat(
                                Arrays.stream(to.value()).map(Thing::list),
                                Arrays.stream(to.words()).map(word -> "the word `" + word + "`"))
                        .collect(Collectors.joining(", "));
    }

    private static String constants(Class<?> type, String separator) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> (Enum<?>) constant)
                .map(constant -> "`" + Names.of(constant) + "`: " + meaning(constant))
                .collect(Collectors.joining(separator));
    }

    private static String meaning(Enum<?> constant) {
        try {
            return constant.getDeclaringClass()
                    .getField(constant.name())
                    .getAnnotation(Means.class)
                    .value();
        } catch (NoSuchFieldException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String type(Class<?> type) {
        if (Quantity.class.isAssignableFrom(type)) {
            return type == Quantity.class
                    ? "number with unit"
                    : Kinds.of(type).name() + " in " + Quantities.units(Kinds.of(type));
        }
        if (type == String.class) {
            return "text";
        }
        if (type == Boolean.class) {
            return "yes or no";
        }
        if (type == Integer.class) {
            return "whole number";
        }
        if (type == Double.class) {
            return "number";
        }
        if (type == LocalDate.class) {
            return "date";
        }
        if (type == LocalTime.class) {
            return "time of day";
        }
        if (type == YearMonth.class) {
            return "month";
        }
        if (type == RecordCode.class) {
            return "record code";
        }
        if (type == SealKey.class) {
            return "seal key";
        }
        if (type == Conductor.class) {
            return "size in mm2 or AWG, with the number of equal conductors before it if there are several";
        }
        if (type == ConductorSize.class) {
            return "size in mm2 or AWG";
        }
        throw new IllegalStateException(type + " has no words yet");
    }
}
