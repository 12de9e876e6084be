package org.quaybook.render;

import java.awt.Shape;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.FSFont;
import org.xhtmlrenderer.render.JustificationInfo;

/** What the layout engine prints on. Takes what a font lacks from the symbol font; the engine would leave it out. */
final class LayoutPaper extends ITextOutputDevice {

    /** Parts of the font size that letters reach above and below the line, at least. */
    private static final float CAPITAL = 0.66f;

    private static final float DESCENT = 0.1f;

    private @Nullable ITextFSFont font;

    LayoutPaper(float dotsPerPoint) {
        super(dotsPerPoint);
    }

    @Override
    public void setFont(FSFont font) {
        super.setFont(font);
        this.font = (ITextFSFont) font;
    }

    @Override
    public void drawString(String text, float x, float y, @Nullable JustificationInfo spread) {
        ITextFSFont asked = font;
        if (asked == null) {
            throw new IllegalStateException("text without a font: " + text);
        }
        if (isClippedAway(x, y, asked)) {
            return;
        }
        List<Typeface.Run> runs = LayoutText.runs(LayoutFonts.typeface(asked), text);
        float pen = x;
        for (Typeface.Run run : runs) {
            super.setFont(LayoutFonts.font(run.typeface(), asked.getSize2D()));
            super.drawString(run.text(), pen, y, spread);
            pen += (float) run.width(asked.getSize2D()) + added(run.text(), spread);
        }
        super.setFont(asked);
    }

    /**
     * The engine also writes the first line of a page below the page before it and clips it there. Nobody would see that,
     * but whoever searches or listens to the text would meet it twice.
     */
    private boolean isClippedAway(float x, float y, ITextFSFont asked) {
        Shape clip = getClip();
        float size = asked.getSize2D();
        return clip != null && !clip.intersects(x - size, y - CAPITAL * size, 3 * size, (CAPITAL + DESCENT) * size);
    }

    /** What justification adds behind the characters of a text, in dots; the engine counts these as spaces. */
    private static float added(String text, @Nullable JustificationInfo spread) {
        if (spread == null) {
            return 0;
        }
        long spaces = text.chars()
                .filter(c -> c == ' ' || c == '\u00a0' || c == '\u3000')
                .count();
        return spaces * spread.spaceAdjust() + (text.length() - spaces) * spread.nonSpaceAdjust();
    }
}
