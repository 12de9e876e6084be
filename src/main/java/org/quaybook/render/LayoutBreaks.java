package org.quaybook.render;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.ListBreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.UrlAwareLineBreakIterator;

/**
 * Where a line may end: as the layout engine has it, but never inside what is read as one.
 *
 * <ul>
 *   <li>Behind an apostrophe inside a word, as in the French l’onduleur. Unicode Standard Annex 14 (from memory): U+2019
 *       is a quotation mark that does not break before a letter that follows it directly.
 *   <li>Between a number and its unit. The SI Brochure, 5.4.3 (from memory), has a space there; that it does not break is
 *       common practice, no source.
 *   <li>Before the sign of a pole, as in “battery +”: common practice, no source.
 *   <li>Inside a telephone number, a code of groups joined by hyphens, a range, a grouped number or a date: common
 *       practice, no source.
 * </ul>
 */
final class LayoutBreaks implements LineBreakingStrategy {

    /** Symbols of units as they follow a number; the longest first where one begins another. */
    private static final String UNIT = "(?:%|°[CF]?|[kKmMµ]?(?:Wh|VA|Ah|[VAWΩ])|[kM]?Hz|AWG|kcmil|Nm|kg|g"
            + "|m³/h|[mck]?m[²³]?|l/h|l|L|min|ms|s|h|V/C)(?![\\p{L}\\p{N}])";

    private static final String YEAR = "(?:19|20)\\d{2}(?!\\p{N})";

    private static final String DIGITS = "0123456789";

    private static final List<Together> TOGETHER = List.of(
            new Together("’", "(?<=\\p{L})’(?=\\p{L})."),
            new Together(DIGITS, "\\d ?" + UNIT),
            new Together(DIGITS, "\\d ?[×x] ?(?=\\d)."),
            new Together(DIGITS, "[+(]?\\d[\\d()]*(?:[ –-][\\d()]+)+"),
            new Together("+−", "\\p{L} [+−](?![\\p{L}\\p{N}])"),
            new Together("-", "(?<![\\p{L}\\p{N}-])(?:[0-9A-Z]+-){2,}[0-9A-Z]+(?![\\p{L}\\p{N}-])"),
            new Together("12", "(?:\\d{1,2}\\.? (?:de )?)?\\p{L}{3,}\\.? (?:de |\\d{1,2}, )?" + YEAR));

    /**
     * What is read as one.
     *
     * @param signs one of these characters is in all that the pattern finds: few texts have any, and to look is quick
     */
    private record Together(String signs, Pattern pattern) {

        Together(String signs, String pattern) {
            this(signs, Pattern.compile(pattern));
        }

        boolean mayBeIn(String text) {
            for (int i = 0; i < text.length(); i++) {
                if (signs.indexOf(text.charAt(i)) >= 0) {
                    return true;
                }
            }
            return false;
        }
    }

    /** The same texts stand in each form of a guide. */
    private static final Recent<List<BreakPoint>> LATELY = new Recent<>(10_000);

    /** The engine asks for the same text again and again, for its least width, its greatest and its lines. */
    private final Map<String, List<BreakPoint>> known = new HashMap<>();

    /** The engine's own places hang on the text alone, not on language or style. */
    @Override
    public BreakPointsProvider getBreakPointsProvider(String text, String language, CalculatedStyle style) {
        return new ListBreakPointsProvider(
                known.computeIfAbsent(text, asked -> LATELY.of(asked, LayoutBreaks::breaks)));
    }

    private static List<BreakPoint> breaks(String text) {
        BreakIterator places = places(text);
        boolean[] together = together(text);
        List<BreakPoint> kept = new ArrayList<>();
        for (int place = places.next(); place != BreakIterator.DONE; place = places.next()) {
            if (!together[place]) {
                kept.add(new BreakPoint(place));
            }
        }
        return List.copyOf(kept);
    }

    /** Those of the engine. It looks for a slash in all that follows, from each place anew: too slow for a long list. */
    static BreakIterator places(String text) {
        if (text.indexOf('/') >= 0) {
            return new UrlAwareLineBreakIterator(text);
        }
        BreakIterator places = BreakIterator.getLineInstance();
        places.setText(text);
        return places;
    }

    /** For each place of a text, and for its end, whether what stands before it and behind it belongs together. */
    static boolean[] together(String text) {
        boolean[] together = new boolean[text.length() + 1];
        TOGETHER.stream().filter(what -> what.mayBeIn(text)).forEach(what -> {
            Matcher found = what.pattern().matcher(text);
            while (found.find()) {
                Arrays.fill(together, found.start() + 1, found.end(), true);
            }
        });
        return together;
    }
}
