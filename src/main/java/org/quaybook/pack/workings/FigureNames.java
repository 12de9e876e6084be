package org.quaybook.pack.workings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.figures.Figures;
import org.quaybook.text.Words;

/**
 * The names of figures in words. A figure of one of several things is named by its family and last part with the thing
 * filled in: {@code cable.B1.drop} by {@code figure.cable.drop}. One at a state of charge is named without it, the per cent
 * filled in last: {@code bank.rest-at-50} by {@code figure.bank.rest-at}.
 */
final class FigureNames {

    private static final Set<String> FAMILIES = Set.of(
            "cable",
            "fuse",
            "selectivity",
            "circuit",
            "rcd",
            "earth",
            "isolator",
            "appliance",
            "together",
            "pair",
            "branch",
            "charging",
            "test");

    /** A figure at a state of charge in per cent, or at an hour, ends with it. */
    private static final Pattern AT_NUMBER = Pattern.compile("(.+)-(\\d+)");

    /** Time back to full: of a charger, after one use of an appliance. */
    private static final String BACK = "back.";

    private final Words words;
    private final Map<String, String> things = new HashMap<>();

    FigureNames(Figures figures, Words words) {
        this.words = words;
        figures.appliances().forEach(it -> things.put(it.key(), it.appliance().name()));
        figures.groups().forEach(it -> things.put(it.key(), words.list(it.names())));
        figures.withLeftOn().forEach(it -> things.put(it.key(), words.list(it.names())));
        figures.pairs()
                .forEach(it -> things.put(
                        it.key(),
                        words.list(List.of(
                                it.first().appliance().name(),
                                it.second().appliance().name()))));
        figures.largestDraws().forEach(it -> things.put(it.key(), it.fuse().feedsOrId()));
        figures.charging().forEach(it -> {
            String name = it.charging().name();
            things.put(it.key(), name == null ? words.term(it.charging().kind()) : name);
        });
        figures.baseline().items().forEach(it -> things.put(it.key(), words.say(it.subject())));
        figures.chargingTogether().forEach(it -> things.put(it.key(), words.term(it.way())));
    }

    /** @throws IllegalArgumentException if a language has no name for the figure */
    String of(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no name for the figure " + key));
    }

    /** The name of a figure, also of one that the job does not have; empty if there is none in words. */
    Optional<String> find(String key) {
        int family = key.indexOf('.');
        int last = key.lastIndexOf('.');
        if (key.startsWith(BACK)) {
            return Optional.of(words.say(
                    "figure.back",
                    things.getOrDefault("charging" + key.substring(family, last), key.substring(family + 1, last)),
                    things.getOrDefault("appliance" + key.substring(last), key.substring(last + 1))));
        }
        if (FAMILIES.contains(key.substring(0, family))) {
            String thing = key.substring(family + 1, last);
            String name = things.getOrDefault(key.substring(0, last), thing);
            return named("figure." + key.substring(0, family) + key.substring(last), name);
        }
        return named("figure." + key);
    }

    private Optional<String> named(String key, Object... thing) {
        if (words.has(key)) {
            return Optional.of(words.say(key, thing));
        }
        Matcher number = AT_NUMBER.matcher(key);
        if (!number.matches() || !words.has(number.group(1))) {
            return Optional.empty();
        }
        List<Object> arguments = new ArrayList<>(List.of(thing));
        arguments.add(number.group(2));
        return Optional.of(words.say(number.group(1), arguments.toArray()));
    }
}
