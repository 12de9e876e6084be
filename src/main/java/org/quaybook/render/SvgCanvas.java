package org.quaybook.render;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.Locale;
import java.util.function.Consumer;

/** An SVG drawing in millimetres, its letters as outlines: a machine that engraves has no fonts. */
final class SvgCanvas implements Canvas {

    private final StringBuilder out;
    private final double left;
    private final double top;

    SvgCanvas(StringBuilder out) {
        this(out, 0, 0);
    }

    private SvgCanvas(StringBuilder out, double left, double top) {
        this.out = out;
        this.left = left;
        this.top = top;
    }

    @Override
    public Canvas at(double x, double y) {
        return new SvgCanvas(out, left + x, top + y);
    }

    @Override
    public void turned(double x, double y, double width, Consumer<Canvas> drawing) {
        out.append(String.format(
                Locale.ROOT,
                "<g transform=\"translate(%s %s) rotate(-90)\">\n",
                Millimetres.plain(left + x),
                Millimetres.plain(top + y + width)));
        drawing.accept(new SvgCanvas(out));
        out.append("</g>\n");
    }

    private void rectangle(Box box, double cornerRadius, String look) {
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"%s %s/>\n",
                Millimetres.plain(left + box.x()),
                Millimetres.plain(top + box.y()),
                Millimetres.plain(box.width()),
                Millimetres.plain(box.height()),
                cornerRadius > 0 ? " rx=\"" + Millimetres.plain(cornerRadius) + "\"" : "",
                look));
    }

    @Override
    public void fill(Box box, double cornerRadius, Colour colour) {
        rectangle(box, cornerRadius, "fill=\"" + colour.hex() + "\"");
    }

    @Override
    public void stroke(Box box, double cornerRadius, Colour colour, double width) {
        rectangle(box, cornerRadius, outlined(colour, width));
    }

    private static String outlined(Colour colour, double width) {
        return "fill=\"none\" stroke=\"" + colour.hex() + "\" stroke-width=\"" + Millimetres.plain(width) + "\"";
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Colour colour, double width) {
        out.append(String.format(
                Locale.ROOT,
                "<path d=\"M%s %sL%s %s\" %s/>\n",
                Millimetres.plain(left + x1),
                Millimetres.plain(top + y1),
                Millimetres.plain(left + x2),
                Millimetres.plain(top + y2),
                outlined(colour, width)));
    }

    @Override
    public void code(QrCode code, double x, double y, double module) {
        double side = code.sizeWithQuietZone() * module;
        fill(new Box(x, y, side, side), 0, Colour.WHITE);
        double quiet = QrCode.QUIET_ZONE * module;
        out.append("<path fill=\"").append(Colour.BLACK.hex()).append("\" d=\"");
        for (QrCode.Bar bar : code.bars()) {
            String across = Millimetres.plain(bar.length() * module);
            out.append('M').append(Millimetres.plain(left + x + quiet + bar.x() * module));
            out.append(' ').append(Millimetres.plain(top + y + quiet + bar.y() * module));
            out.append('h')
                    .append(across)
                    .append('v')
                    .append(Millimetres.plain(module))
                    .append("h-")
                    .append(across)
                    .append('z');
        }
        out.append("\"/>\n");
    }

    @Override
    public void text(Fitting.Line line, Turn turn, Typeface typeface, double size, Colour colour) {
        AffineTransform place = AffineTransform.getTranslateInstance(left + line.x(), top + line.baseline());
        place.concatenate(turn.rotation());
        Shape letters = place.createTransformedShape(Outlines.of(line.text(), typeface, size));
        out.append("<path fill=\"").append(colour.hex()).append("\" d=\"");
        path(letters);
        out.append("\"/>\n");
    }

    private void path(Shape shape) {
        double[] at = new double[6];
        for (PathIterator steps = shape.getPathIterator(null); !steps.isDone(); steps.next()) {
            int kind = steps.currentSegment(at);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> step('M', at, 2);
                case PathIterator.SEG_LINETO -> step('L', at, 2);
                case PathIterator.SEG_QUADTO -> step('Q', at, 4);
                case PathIterator.SEG_CUBICTO -> step('C', at, 6);
                case PathIterator.SEG_CLOSE -> out.append('Z');
                default -> throw new IllegalStateException("no step of a path: " + kind);
            }
        }
    }

    private void step(char kind, double[] at, int count) {
        out.append(kind);
        for (int i = 0; i < count; i++) {
            out.append(i == 0 ? "" : " ").append(Millimetres.plain(at[i]));
        }
    }

    @Override
    public void drawing(SvgDrawing drawing, Box box) {
        out.append(drawing.inside(new Box(left + box.x(), top + box.y(), box.width(), box.height())))
                .append('\n');
    }
}
