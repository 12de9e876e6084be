package org.quaybook.render;

import java.util.List;
import org.xhtmlrenderer.extend.FontContext;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.render.FSFont;

/** Measures text for the layout engine as {@link LayoutPaper} prints it. */
final class LayoutText extends ITextTextRenderer {

    private static final char SOFT_HYPHEN = '\u00ad';

    /** The engine counts in whole dots; so little more than a whole one is rounding. */
    private static final double SLACK = 0.01;

    private final Faults faults;

    LayoutText(Faults faults) {
        this.faults = faults;
    }

    /** A soft hyphen shows only where a line ends with it; a control character is a space. */
    static String shown(String text) {
        if (isShownAsItIs(text)) {
            return text;
        }
        boolean divided = text.length() > 1 && text.charAt(text.length() - 1) == SOFT_HYPHEN;
        String plain = text.replace(String.valueOf(SOFT_HYPHEN), "").replaceAll("\\p{Cntrl}", " ");
        return divided ? plain + "-" : plain;
    }

    private static boolean isShownAsItIs(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == SOFT_HYPHEN || c < ' ') {
                return false;
            }
        }
        return true;
    }

    @Override
    public int getWidth(FontContext context, FSFont font, String text) {
        Typeface typeface = LayoutFonts.typeface(font);
        String shown = shown(text);
        typeface.firstMissing(shown)
                .ifPresent(missing ->
                        faults.add(RenderMessage.GLYPH_MISSING, Typeface.describeMissing(missing, text.strip())));
        return (int) Math.ceil(typeface.width(shown, font.getSize2D()) - SLACK);
    }

    /** The stretches of a text, each with the font that has it; none when a character is missing altogether. */
    static List<Typeface.Run> runs(Typeface typeface, String text) {
        return typeface.runs(shown(text)).orElse(List.of());
    }
}
