package org.quaybook.render;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.function.Consumer;

/** A picture made of dots, or part of one. */
final class GraphicsCanvas implements Canvas {

    private final Graphics2D graphics;
    private final Dots dots;
    private final double left;
    private final double top;

    /** @param graphics measured in dots from the top left corner of the picture */
    GraphicsCanvas(Graphics2D graphics, Dots dots) {
        this(graphics, dots, 0, 0);
    }

    /** Dots that a straight piece may keep from its curve. */
    static final double FLATNESS = 0.02;

    private GraphicsCanvas(Graphics2D graphics, Dots dots, double left, double top) {
        this.graphics = graphics;
        this.dots = dots;
        this.left = left;
        this.top = top;
    }

    @Override
    public Canvas at(double x, double y) {
        return new GraphicsCanvas(graphics, dots, left + x, top + y);
    }

    @Override
    public void turned(double x, double y, double width, Consumer<Canvas> drawing) {
        Graphics2D turned = (Graphics2D) graphics.create();
        turned.translate(x(x), y(y + width));
        turned.rotate(-Math.PI / 2);
        drawing.accept(new GraphicsCanvas(turned, dots));
        turned.dispose();
    }

    private double x(double millimetres) {
        return length(left + millimetres);
    }

    private double y(double millimetres) {
        return length(top + millimetres);
    }

    private double length(double millimetres) {
        return millimetres * dots.perMillimetre();
    }

    private static Color ink(Colour colour) {
        return new Color(colour.red(), colour.green(), colour.blue());
    }

    @Override
    public void fill(Box box, double cornerRadius, Colour colour) {
        graphics.setColor(ink(colour));
        graphics.fill(outline(box, cornerRadius));
    }

    @Override
    public void stroke(Box box, double cornerRadius, Colour colour, double width) {
        graphics.setColor(ink(colour));
        graphics.fill(Pen.along(outline(box, cornerRadius), stroke(width), FLATNESS));
    }

    /** A line thinner than a dot would vanish here and there. */
    private BasicStroke stroke(double width) {
        return new BasicStroke((float) Math.max(1, length(width)), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    private Shape outline(Box box, double cornerRadius) {
        double x = x(box.x());
        double y = y(box.y());
        double across = length(box.width());
        double down = length(box.height());
        double corner = 2 * length(cornerRadius);
        return cornerRadius > 0
                ? new RoundRectangle2D.Double(x, y, across, down, corner, corner)
                : new Rectangle2D.Double(x, y, across, down);
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Colour colour, double width) {
        graphics.setColor(ink(colour));
        graphics.fill(Pen.along(new Line2D.Double(x(x1), y(y1), x(x2), y(y2)), stroke(width), FLATNESS));
    }

    /** Begins at the nearest whole dot: a module that is cut in two by the edge of a dot is printed too wide or too thin. */
    @Override
    public void code(QrCode code, double x, double y, double module) {
        double side = length(module);
        int across = (int) Math.round(side);
        if (Math.abs(side - across) > 1e-6) {
            throw new IllegalArgumentException("a module of " + side + " dots");
        }
        int startX = (int) Math.round(x(x));
        int startY = (int) Math.round(y(y));
        int whole = code.sizeWithQuietZone() * across;
        graphics.setColor(Color.WHITE);
        graphics.fillRect(startX, startY, whole, whole);
        graphics.setColor(Color.BLACK);
        int quiet = QrCode.QUIET_ZONE * across;
        for (QrCode.Bar bar : code.bars()) {
            graphics.fillRect(
                    startX + quiet + bar.x() * across,
                    startY + quiet + bar.y() * across,
                    bar.length() * across,
                    across);
        }
    }

    @Override
    public void text(Fitting.Line line, Turn turn, Typeface typeface, double size, Colour colour) {
        graphics.setColor(ink(colour));
        AffineTransform place = AffineTransform.getTranslateInstance(x(line.x()), y(line.baseline()));
        place.concatenate(turn.rotation());
        place.scale(dots.perMillimetre(), dots.perMillimetre());
        graphics.fill(place.createTransformedShape(Outlines.of(line.text(), typeface, size)));
    }

    @Override
    public void drawing(SvgDrawing drawing, Box box) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.translate(x(box.x()), y(box.y()));
        drawing.draw(own, (float) length(box.width()), (float) length(box.height()));
        own.dispose();
    }
}
