package org.quaybook.job;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds names where another text repeats them. It knows them as they are written in the job's own fields, in capitals or
 * not, and not every way to write them.
 */
public final class Mentions {

    /** A shorter text is no name: blanking berth "7" would blank every 7. */
    private static final int SHORTEST = 4;

    private final List<Pattern> patterns;
    private final String blank;

    private Mentions(List<Pattern> patterns, String blank) {
        this.patterns = patterns;
        this.blank = blank;
    }

    /**
     * Of these names.
     *
     * @param blank what stands in the place of a name
     */
    public static Mentions of(Stream<? extends @Nullable String> names, String blank) {
        return new Mentions(
                names.filter(Objects::nonNull)
                        .map(String::strip)
                        .filter(name -> name.codePointCount(0, name.length()) >= SHORTEST)
                        .distinct()
                        .sorted(Comparator.comparing(String::length).reversed())
                        .map(Mentions::mention)
                        .toList(),
                Matcher.quoteReplacement(blank));
    }

    private static Pattern mention(String name) {
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** The text with every mention blanked. */
    public String blank(String text) {
        String left = text;
        for (Pattern pattern : patterns) {
            left = pattern.matcher(left).replaceAll(blank);
        }
        return left;
    }
}
