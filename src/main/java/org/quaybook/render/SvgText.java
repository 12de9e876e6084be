package org.quaybook.render;

import com.github.weisj.jsvg.attributes.font.AWTSVGFont;
import com.github.weisj.jsvg.renderer.RenderContext;
import com.github.weisj.jsvg.renderer.impl.context.RenderContextAccessor;
import com.github.weisj.jsvg.renderer.output.TextOutput;
import java.awt.Font;
import java.awt.geom.AffineTransform;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Gathers the letters that JSVG lays out. JSVG names all letters of a text first and then fills the outline of one
 * segment (letters with one style) after the other: segments are handed out in that order.
 */
final class SvgText implements TextOutput {

    /** A blank that JSVG is not to drop; printed as a plain one. */
    static final String KEPT_BLANK = "\u00a0";

    /** Something without width between two tags; never printed. */
    static final String JOINT = "\u200c";

    /** Letters that follow each other, and where the first of them stands. */
    record Run(AffineTransform transform, String text) {}

    /** The letters of one style. */
    record Segment(Font font, List<Run> runs) {}

    private final Deque<Segment> waiting = new ArrayDeque<>();
    private boolean open;
    private @Nullable RenderContext context;
    private @Nullable AffineTransform transform;
    private final StringBuilder letters = new StringBuilder();
    private List<Run> runs = new ArrayList<>();

    boolean isOpen() {
        return open;
    }

    /** The segment whose outline is about to be filled. */
    Optional<Segment> next() {
        endSegment();
        return Optional.ofNullable(waiting.poll());
    }

    @Override
    public void beginText() {
        open = true;
        waiting.clear();
        endSegment();
        waiting.clear();
    }

    @Override
    public void codepoint(String codepoint, AffineTransform glyphTransform, RenderContext glyphContext) {
        if (codepoint.equals(JOINT)) {
            return;
        }
        if (context != glyphContext) {
            endSegment();
            context = glyphContext;
        }
        if (transform == null) {
            // JSVG changes this object in place for the next letter.
            transform = new AffineTransform(glyphTransform);
        }
        letters.append(codepoint.equals(KEPT_BLANK) ? " " : codepoint);
    }

    @Override
    public void glyphRunBreak() {
        if (transform != null) {
            runs.add(new Run(transform, letters.toString()));
        }
        transform = null;
        letters.setLength(0);
    }

    private void endSegment() {
        glyphRunBreak();
        RenderContext ended = context;
        if (ended != null && isFilled(ended) && hasInk()) {
            AWTSVGFont font = (AWTSVGFont) RenderContextAccessor.instance().font(ended);
            waiting.add(new Segment(font.font(), runs));
        }
        runs = new ArrayList<>();
        context = null;
    }

    /** JSVG fills no outline for what is not to be seen. */
    private static boolean isFilled(RenderContext context) {
        return context.fillPaint().isVisible(context) && context.fillOpacity() > 0;
    }

    private boolean hasInk() {
        return runs.stream()
                .flatMapToInt(run -> run.text().codePoints())
                .anyMatch(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c));
    }

    @Override
    public void endText() {
        endSegment();
        waiting.clear();
        open = false;
    }
}
