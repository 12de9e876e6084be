package org.quaybook.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Set phrases of English texts in another language. What is no set phrase, such as the title of a standard, stays. A
 * place of a phrase such as <code>{0}</code> stands for one word.
 */
final class Phrases {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
    private static final String WORD = "([\\p{L}\\p{N}./()-]+)";
    private static final String BEGINS = "(?<![\\p{L}\\p{N}_-])";
    private static final String ENDS = "(?![\\p{L}\\p{N}_-])";

    /** One phrase in the common pattern: its group there, those of its places, and the translation. */
    private record Phrase(int group, Map<String, Integer> places, String translation) {}

    private final List<Phrase> phrases = new ArrayList<>();
    private final Pattern pattern;

    /** @param translations the phrases by their English; of two that fit at one spot the longer English counts */
    Phrases(Map<String, String> translations) {
        List<String> alternatives = new ArrayList<>();
        int group = 1;
        for (String english : translations.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .toList()) {
            Map<String, Integer> places = new TreeMap<>();
            StringBuilder alternative = new StringBuilder();
            int from = 0;
            for (MatchResult place : PLACE.matcher(english).results().toList()) {
                alternative.append(Pattern.quote(english.substring(from, place.start())));
                alternative.append(WORD);
                from = place.end();
                places.put(place.group(1), group + places.size() + 1);
            }
            alternative.append(Pattern.quote(english.substring(from)));
            alternatives.add("(" + alternative + ")");
            phrases.add(new Phrase(group, places, translations.getOrDefault(english, english)));
            group += places.size() + 1;
        }
        pattern = Pattern.compile(BEGINS + "(?:" + String.join("|", alternatives) + ")" + ENDS);
    }

    /** A text with its set phrases translated. */
    String in(String text) {
        return phrases.isEmpty()
                ? text
                : pattern.matcher(text).replaceAll(found -> Matcher.quoteReplacement(translated(found)));
    }

    private String translated(MatchResult found) {
        Phrase phrase = phrases.stream()
                .filter(one -> found.group(one.group()) != null)
                .findFirst()
                .orElseThrow();
        return PLACE.matcher(phrase.translation())
                .replaceAll(place ->
                        Matcher.quoteReplacement(found.group(phrase.places().getOrDefault(place.group(1), 0))));
    }
}
