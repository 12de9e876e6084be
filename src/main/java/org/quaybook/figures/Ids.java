package org.quaybook.figures;

import java.util.Locale;

/** Names of things as parts of a figure's name and of table keys. */
final class Ids {

    private Ids() {}

    /** A constant as the tables and the job file write it: {@code CLASS_T} is {@code class-t}. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A name as part of a key: letters and digits in lower case, the rest as single hyphens. */
    static String of(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    }
}
