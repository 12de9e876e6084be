package org.quaybook.render;

import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.FontMapper;
import java.awt.Font;
import java.util.Locale;

/** Embeds the font file that AWT measured with. */
final class SvgFonts implements FontMapper {

    @Override
    public BaseFont awtToPdf(Font font) {
        int weight = font.isBold() ? Typeface.SANS_BOLD.weight() : Typeface.SANS.weight();
        return Typeface.find(font.getFamily(Locale.ENGLISH), weight, font.isItalic())
                .font();
    }

    @Override
    public Font pdfToAwt(BaseFont font, int size) {
        throw new UnsupportedOperationException("text goes from a drawing to a PDF, not back");
    }
}
