package org.quaybook.render;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.util.List;
import java.util.function.Consumer;

/** A page of a PDF or part of one. */
final class PdfCanvas implements Canvas {

    private static final PdfName ARTIFACT = new PdfName("Artifact");

    private final PdfWriter writer;
    private final PdfContentByte content;
    private final double left;
    private final double top;

    /** Whether a place in the structure is open already: marked content is not nested. */
    private final boolean marked;

    private PdfCanvas(PdfWriter writer, double left, double top, boolean marked) {
        this.writer = writer;
        this.content = writer.getDirectContent();
        this.left = left;
        this.top = top;
        this.marked = marked;
    }

    /**
     * The current page of a tagged PDF.
     *
     * @param height of the page, millimetres
     */
    static PdfCanvas ofPage(PdfWriter writer, double height) {
        return new PdfCanvas(writer, 0, height, false);
    }

    @Override
    public void told(TagSlot slot, Consumer<Canvas> drawing) {
        slot.begin(writer, content, new PdfDictionary());
        drawing.accept(new PdfCanvas(writer, left, top, true));
        content.endMarkedContentSequence();
    }

    private void paint(Runnable painting) {
        if (!marked) {
            content.beginMarkedContentSequence(ARTIFACT);
        }
        painting.run();
        if (!marked) {
            content.endMarkedContentSequence();
        }
    }

    @Override
    public Canvas at(double x, double y) {
        return new PdfCanvas(writer, left + x, top - y, marked);
    }

    @Override
    public void turned(double x, double y, double width, Consumer<Canvas> drawing) {
        content.saveState();
        content.concatCTM(0, 1, -1, 0, x(x), y(y + width));
        drawing.accept(new PdfCanvas(writer, 0, 0, marked));
        content.restoreState();
    }

    private float x(double millimetres) {
        return (float) Millimetres.toPoints(left + millimetres);
    }

    private float y(double millimetres) {
        return (float) Millimetres.toPoints(top - millimetres);
    }

    private static float length(double millimetres) {
        return (float) Millimetres.toPoints(millimetres);
    }

    private static Color ink(Colour colour) {
        return new Color(colour.red(), colour.green(), colour.blue());
    }

    @Override
    public void fill(Box box, double cornerRadius, Colour colour) {
        paint(() -> {
            content.setColorFill(ink(colour));
            outline(box, cornerRadius);
            content.fill();
        });
    }

    @Override
    public void stroke(Box box, double cornerRadius, Colour colour, double width) {
        paint(() -> {
            content.setColorStroke(ink(colour));
            content.setLineWidth(length(width));
            outline(box, cornerRadius);
            content.stroke();
        });
    }

    private void outline(Box box, double cornerRadius) {
        float x = x(box.x());
        float y = y(box.y() + box.height());
        if (cornerRadius > 0) {
            content.roundRectangle(x, y, length(box.width()), length(box.height()), length(cornerRadius));
        } else {
            content.rectangle(x, y, length(box.width()), length(box.height()));
        }
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Colour colour, double width) {
        paint(() -> {
            content.setColorStroke(ink(colour));
            content.setLineWidth(length(width));
            content.moveTo(x(x1), y(y1));
            content.lineTo(x(x2), y(y2));
            content.stroke();
        });
    }

    /** Fills all bars at once: separate fills would leave hairlines between them. */
    @Override
    public void code(QrCode code, double x, double y, double module) {
        double side = code.sizeWithQuietZone() * module;
        fill(new Box(x, y, side, side), 0, Colour.WHITE);
        paint(() -> bars(code, x, y, module));
    }

    private void bars(QrCode code, double x, double y, double module) {
        content.setColorFill(ink(Colour.BLACK));
        double quiet = QrCode.QUIET_ZONE * module;
        for (QrCode.Bar bar : code.bars()) {
            content.rectangle(
                    x(x + quiet + bar.x() * module),
                    y(y + quiet + (bar.y() + 1) * module),
                    length(bar.length() * module),
                    length(module));
        }
        content.fill();
    }

    @Override
    public void text(Fitting.Line line, Turn turn, Typeface typeface, double size, Colour colour) {
        paint(() -> letters(line, turn, typeface, size, colour));
    }

    private void letters(Fitting.Line line, Turn turn, Typeface typeface, double size, Colour colour) {
        double pen = 0;
        int cos = turn.acrossX();
        int sin = -turn.acrossY();
        for (Typeface.Run run : typeface.runs(line.text()).orElse(List.of())) {
            content.beginText();
            content.setColorFill(ink(colour));
            content.setFontAndSize(run.typeface().font(), length(size));
            content.setTextMatrix(
                    cos, sin, -sin, cos, x(line.x() + pen * turn.acrossX()), y(line.baseline() + pen * turn.acrossY()));
            content.showText(run.text());
            content.endText();
            pen += run.width(size);
        }
    }

    @Override
    public void drawing(SvgDrawing drawing, Box box) {
        paint(() -> content.addTemplate(
                drawing.template(content, length(box.width()), length(box.height())),
                x(box.x()),
                y(box.y() + box.height())));
    }
}
