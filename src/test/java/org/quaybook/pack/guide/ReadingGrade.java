package org.quaybook.pack.guide;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The Flesch-Kincaid grade of an English text: Kincaid, Fishburne, Rogers and Chissom, Derivation of New Readability
 * Formulas for Navy Enlisted Personnel, 1975 (from memory): 0.39 words a sentence + 11.8 syllables a word - 15.59.
 *
 * @param words at least one
 * @param sentences at least one
 * @param syllables at least one a word
 */
record ReadingGrade(int words, int sentences, int syllables) {

    private static final Pattern WORD = Pattern.compile("[A-Za-z]+(?:[’'][A-Za-z]+)*");
    private static final Pattern SENTENCE =
            Pattern.compile("[^.!?]+(?:[.!?](?![\\s”\")]|$)[^.!?]*)*[.!?](?=[\\s”\")]|$)");
    private static final Pattern QUANTITY = Pattern.compile(
            "[0-9][0-9.,]*(?:[ \u00a0](?:mV|V|mA|kA|A|Ah|W|kW|kWh|Wh|Hz|mΩ|Ω|MΩ|°C|%|ms|s|min|h|mm²|mm|m|Nm|AWG)\\b)?");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    /** Vowels side by side that are heard apart. */
    private static final Pattern APART = Pattern.compile(
            "(?<![tcsgx]|sh|ll)i(?=[aou])|(?<=[t])ia(?=te)|(?<=[^q])u(?=ou|a[lbt])|io(?=d)"
                    + "|(?<=[eaouy])ing$|(?<=[^q])uie(?=t)|(?<=l)ie(?=nt)|rie(?=nc)|bie(?=nt)|(?<=[^qg])ue(?=l)|oe(?=r)|ie(?=rs?$)");

    /** Words that the rules below count wrongly. */
    private static final Map<String, Integer> EXCEPTIONS = Map.ofEntries(
            Map.entry("area", 3),
            Map.entry("areas", 3),
            Map.entry("being", 2),
            Map.entry("create", 2),
            Map.entry("creates", 2),
            Map.entry("doing", 2),
            Map.entry("going", 2),
            Map.entry("goes", 1),
            Map.entry("idea", 3),
            Map.entry("people", 2),
            Map.entry("beyond", 2),
            Map.entry("elsewhere", 2),
            Map.entry("household", 2),
            Map.entry("layout", 2),
            Map.entry("ruin", 2),
            Map.entry("ruins", 2),
            Map.entry("surveyor", 3),
            Map.entry("torque", 1),
            Map.entry("motorhome", 3),
            Map.entry("firmware", 2),
            Map.entry("quiet", 2),
            Map.entry("quieter", 3),
            Map.entry("recipe", 3),
            Map.entry("science", 2),
            Map.entry("seeing", 2),
            Map.entry("something", 2),
            Map.entry("sometimes", 2),
            Map.entry("somebody", 3),
            Map.entry("somewhere", 2),
            Map.entry("everything", 3),
            Map.entry("everybody", 4),
            Map.entry("every", 2),
            Map.entry("somebody’s", 3),
            Map.entry("lifetime", 2),
            Map.entry("maybe", 2),
            Map.entry("therefore", 2),
            Map.entry("drying", 2),
            Map.entry("trying", 2),
            Map.entry("dying", 2));

    /** Counts a text. Numbers, units, marks and whatever else has no letters of a word are left out. */
    static ReadingGrade of(List<String> sentences) {
        int words = 0;
        int counted = 0;
        int syllables = 0;
        for (String sentence : sentences) {
            Matcher word = WORD.matcher(sentence);
            boolean any = false;
            while (word.find()) {
                words++;
                syllables += syllables(word.group());
                any = true;
            }
            counted += any ? 1 : 0;
        }
        return new ReadingGrade(words, counted, syllables);
    }

    /** The whole sentences of a text; what no mark ends, a heading or a cell, is none. Numbers and their units go. */
    static List<String> sentences(String text) {
        return SENTENCE.matcher(QUANTITY.matcher(text.replaceAll("\\s+", " ")).replaceAll(""))
                .results()
                .map(MatchResult::group)
                .filter(sentence -> WORD.matcher(sentence).find())
                .toList();
    }

    /** Grade of a school in the United States: 8 is read by a child of some 13 years. */
    double grade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /** Flesch's reading ease (1948, from memory): 206.835 - 1.015 words a sentence - 84.6 syllables a word. */
    double ease() {
        return 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }

    /**
     * How many syllables a word has, by the groups of its vowels: a silent e at the end is none, nor is the e of -ed
     * unless t or d stands before it; some pairs of vowels are two.
     */
    static int syllables(String word) {
        String letters = word.toLowerCase(Locale.ROOT);
        Integer known = EXCEPTIONS.get(letters);
        if (known != null) {
            return known;
        }
        if (isSpelled(word)) {
            return letters.length() + letters.replaceAll("[^w]", "").length() * 2;
        }
        letters = letters.replaceAll("[’']", "");
        String heard = letters.replaceAll("(?<=[^aeiouyl]l)ed$", "id")
                .replaceAll("(?<![tdi])(?<=[^e])ed$", "d")
                .replaceAll("(?<=[csxzg]|[cs]h)es$", "is")
                .replaceAll("(?<=[^aeiou]l)es?$", "i")
                .replaceAll("(?<=[^aeiouy])es?$", "")
                .replaceAll("(?<=[aeiouy][^aeiouy]{1,2})e(?=(ful|ly|less|ment|ness|ty)s?$)", "");
        int count = 0;
        Matcher group = VOWELS.matcher(heard);
        while (group.find()) {
            count++;
        }
        return Math.max(1, count + countOf(heard, APART));
    }

    /** Letters without a vowel, or short and all in capitals, are read one by one. */
    private static boolean isSpelled(String word) {
        boolean capitals = word.length() > 1 && word.length() <= 4 && word.equals(word.toUpperCase(Locale.ROOT));
        return capitals || !VOWELS.matcher(word.toLowerCase(Locale.ROOT)).find();
    }

    private static int countOf(String text, Pattern pattern) {
        return (int) pattern.matcher(text).results().count();
    }
}
