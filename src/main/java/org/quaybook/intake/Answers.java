package org.quaybook.intake;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Answers by the path of the value in the job file: {@code inverter.continuous}, {@code appliances[0].name}.
 *
 * @param byPath what was answered; an empty text stands for "left out"
 */
public record Answers(Map<String, String> byPath) {

    public Answers {
        byPath = Map.copyOf(byPath);
    }

    public static Answers none() {
        return new Answers(Map.of());
    }

    /** The answer, if there was one and it is not "left out". */
    public Optional<String> of(String path) {
        return Optional.ofNullable(byPath.get(path)).filter(text -> !text.isEmpty());
    }

    /** Whether the question was answered, be it with "left out". */
    public boolean answered(String path) {
        return byPath.containsKey(path);
    }

    public boolean is(String path, String answer) {
        return of(path).filter(answer::equals).isPresent();
    }

    public Answers with(String path, String answer) {
        Map<String, String> more = new LinkedHashMap<>(byPath);
        more.put(path, answer);
        return new Answers(more);
    }

    public Answers without(String path) {
        Map<String, String> fewer = new LinkedHashMap<>(byPath);
        fewer.remove(path);
        return new Answers(fewer);
    }

    /** How many entries of a list have a first answer: {@code count("appliances", "name")}. */
    public int count(String list, String first) {
        int count = 0;
        while (of(list + "[" + count + "]." + first).isPresent()) {
            count++;
        }
        return count;
    }

    /** In an order that does not hang on how they were entered. */
    public Map<String, String> sorted() {
        return new TreeMap<>(byPath);
    }
}
