package org.quaybook.job;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How the format spells what Java names. */
final class Names {

    private Names() {}

    /** The key of a record component: {@code cutOut} is written {@code cut-out}. */
    static String key(String component) {
        return component.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    /**
     * The spelling of a constant: {@code CLASS_T} is written {@code class-t}; one or two letters are a designation
     * that the trade writes in capitals ({@code AC}, {@code B}) and stay as they are.
     */
    static String of(Enum<?> constant) {
        String name = constant.name();
        return name.length() <= 2 ? name : name.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The spellings of all constants of an enum. */
    static List<String> all(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> of((Enum<?>) constant))
                .toList();
    }
}
