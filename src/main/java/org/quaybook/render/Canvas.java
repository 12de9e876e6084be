package org.quaybook.render;

import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;
import java.util.List;

/** A page or part of one, drawn on in millimetres from its top left corner, y downwards. */
final class Canvas {

    private final PdfContentByte content;
    private final double left;
    private final double top;

    private Canvas(PdfContentByte content, double left, double top) {
        this.content = content;
        this.left = left;
        this.top = top;
    }

    /** @param height of the page, millimetres */
    static Canvas ofPage(PdfContentByte content, double height) {
        return new Canvas(content, 0, height);
    }

    /** The same page, measured from a point on it. */
    Canvas at(double x, double y) {
        return new Canvas(content, left + x, top - y);
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

    void fill(Box box, double cornerRadius, Colour colour) {
        content.setColorFill(ink(colour));
        outline(box, cornerRadius);
        content.fill();
    }

    void stroke(Box box, double cornerRadius, Colour colour, double width) {
        content.setColorStroke(ink(colour));
        content.setLineWidth(length(width));
        outline(box, cornerRadius);
        content.stroke();
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

    void line(double x1, double y1, double x2, double y2, Colour colour, double width) {
        content.setColorStroke(ink(colour));
        content.setLineWidth(length(width));
        content.moveTo(x(x1), y(y1));
        content.lineTo(x(x2), y(y2));
        content.stroke();
    }

    /** Fills all bars at once: separate fills would leave hairlines between them. */
    void code(QrCode code, double x, double y, double module) {
        double side = code.sizeWithQuietZone() * module;
        fill(new Box(x, y, side, side), 0, Colour.WHITE);
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

    /**
     * A line of text.
     *
     * @param line what and where
     * @param turn how its letters are turned around the point where it begins
     */
    void text(Fitting.Line line, Turn turn, Typeface typeface, double size, Colour colour) {
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

    void drawing(SvgDrawing drawing, Box box) {
        content.addTemplate(
                drawing.template(content, length(box.width()), length(box.height())),
                x(box.x()),
                y(box.y() + box.height()));
    }
}
