package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.DefaultLineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.ListBreakPointsProvider;

/**
 * Where a line may end: as the layout engine has it, but never behind an apostrophe inside a word, as in the French
 * l’onduleur. Unicode Standard Annex 14 (from memory): U+2019 is a quotation mark that does not break before a letter
 * that follows it directly.
 */
final class LayoutBreaks implements LineBreakingStrategy {

    private static final char APOSTROPHE = '\u2019';

    private final LineBreakingStrategy engine = new DefaultLineBreakingStrategy();

    @Override
    public BreakPointsProvider getBreakPointsProvider(String text, String language, CalculatedStyle style) {
        BreakPointsProvider all = engine.getBreakPointsProvider(text, language, style);
        List<BreakPoint> kept = new ArrayList<>();
        for (BreakPoint point = all.next(); point.getPosition() >= 0; point = all.next()) {
            if (!isInsideWord(text, point.getPosition())) {
                kept.add(point);
            }
        }
        return new ListBreakPointsProvider(kept);
    }

    private static boolean isInsideWord(String text, int position) {
        return position > 0
                && position < text.length()
                && text.charAt(position - 1) == APOSTROPHE
                && Character.isLetter(text.charAt(position));
    }
}
