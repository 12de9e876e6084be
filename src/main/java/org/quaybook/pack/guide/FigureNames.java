package org.quaybook.pack.guide;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.quaybook.figures.Figures;
import org.quaybook.text.Words;

/**
 * The names of figures in words. A figure of one of several things is named by its family and last part with the thing
 * filled in: {@code cable.B1.drop} by {@code figure.cable.drop}.
 */
final class FigureNames {

    private static final Set<String> FAMILIES = Set.of("cable", "fuse", "selectivity", "appliance", "charging", "test");
    private static final String REST_AT = "bank.rest-at-";

    private final Words words;
    private final Map<String, String> things = new HashMap<>();

    FigureNames(Figures figures, PartNames names, Words words) {
        this.words = words;
        figures.appliances().forEach(it -> things.put(it.key(), it.appliance().name()));
        figures.charging().forEach(it -> things.put(it.key(), names.nameOf(it.charging())));
        figures.baseline().items().forEach(it -> things.put(it.key(), words.say(it.subject())));
    }

    /** @throws IllegalArgumentException if a language has no name for the figure */
    String of(String key) {
        int family = key.indexOf('.');
        int last = key.lastIndexOf('.');
        if (FAMILIES.contains(key.substring(0, family))) {
            String thing = key.substring(family + 1, last);
            String name = things.getOrDefault(key.substring(0, last), thing);
            return words.say("figure." + key.substring(0, family) + key.substring(last), name);
        }
        String percent = key.startsWith(REST_AT) ? key.substring(REST_AT.length()) : "";
        return !percent.isEmpty() && percent.chars().allMatch(Character::isDigit)
                ? words.say("figure.bank.rest-at", percent)
                : words.say("figure." + key);
    }
}
