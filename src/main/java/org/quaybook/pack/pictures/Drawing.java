package org.quaybook.pack.pictures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.quaybook.pack.pictures.Piece.Corner;
import org.quaybook.pack.pictures.Piece.Group;
import org.quaybook.pack.pictures.Piece.Held;
import org.quaybook.pack.pictures.Piece.Line;
import org.quaybook.pack.pictures.Piece.Part;
import org.quaybook.pack.pictures.Piece.Seam;
import org.quaybook.pack.pictures.Piece.Span;
import org.quaybook.pack.pictures.Piece.Whole;

/**
 * A picture being drawn. One unit is a point where the picture is as wide as the text of an A5 page; y grows downwards.
 *
 * <p>Elements carry {@code data-} attributes that say what they stand for: a picture can be checked part by part.
 */
final class Drawing {

    /** 118 mm: the text of an A5 page. */
    static final double WIDTH = 334;

    /** Where a text is held. */
    enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String name;

        Anchor(String name) {
            this.name = name;
        }
    }

    private final String id;
    private final Look look;
    private final Deque<Opened> open = new ArrayDeque<>(List.of(new Opened("", /* whole= */ false)));
    private final Set<String> symbols = new TreeSet<>();

    /** What is not closed yet. */
    private record Opened(String opening, boolean whole, List<Piece> pieces) {
        Opened(String opening, boolean whole) {
            this(opening, whole, new ArrayList<>());
        }
    }

    /** @param id what its title and description are known by in a page */
    Drawing(String id, Look look) {
        this.id = id;
        this.look = look;
    }

    Look look() {
        return look;
    }

    /** A line from corner to corner: x and y of each. */
    void line(Pen pen, double... corners) {
        line(pen, pen == Pen.HAIR ? Look.FAINT : Look.INK, corners);
    }

    /** A line in a colour. */
    void line(Pen pen, String colour, double... corners) {
        List<Corner> all = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 2) {
            all.add(new Corner(corners[i], corners[i + 1]));
        }
        Line line = new Line(pen, colour, all);
        add(pen == Pen.CHAIN ? line.whole() : line);
    }

    /** A conductor from corner to corner. */
    void wire(double... corners) {
        line(Pen.WIRE, corners);
    }

    /** A closed shape. */
    void shape(Pen pen, String fill, double... corners) {
        StringBuilder path = new StringBuilder();
        Span span = new Span(corners[1], corners[1]);
        for (int i = 0; i < corners.length; i += 2) {
            path.append(i == 0 ? "M" : "L").append(point(corners[i], corners[i + 1]));
            span = span.with(new Span(corners[i + 1], corners[i + 1]));
        }
        add(
                span,
                "<path d=\"" + path + "Z\" fill=\"" + fill + "\"" + stroke(pen, Look.INK)
                        + " stroke-linejoin=\"round\"/>\n");
    }

    /**
     * A curve of Bézier segments.
     *
     * @param path as the attribute {@code d} of a path writes it
     * @param span that it keeps to
     */
    void curve(Pen pen, Span span, String path) {
        add(span, "<path d=\"" + path + "\" fill=\"none\"" + stroke(pen, Look.INK) + "/>\n");
    }

    void box(Pen pen, String fill, double x, double y, double width, double height) {
        box(pen, fill, Look.INK, 0, x, y, width, height);
    }

    /** A box with round corners. */
    void roundBox(Pen pen, String fill, double x, double y, double width, double height) {
        box(pen, fill, look.main(), 4, x, y, width, height);
    }

    private void box(
            Pen pen, String fill, String colour, double radius, double x, double y, double width, double height) {
        add(
                new Span(y, y + height),
                rectangle(x, y, width, height)
                        + (radius > 0 ? " rx=\"" + n(radius) + "\"" : "")
                        + " fill=\"" + fill + "\"" + stroke(pen, colour) + "/>\n");
    }

    private static String rectangle(double x, double y, double width, double height) {
        return "<rect x=\"" + n(x) + "\" y=\"" + n(y) + "\" width=\"" + n(width) + "\" height=\"" + n(height) + "\"";
    }

    /** A filled rectangle without an outline. */
    void fill(String colour, double x, double y, double width, double height) {
        add(new Span(y, y + height), rectangle(x, y, width, height) + " fill=\"" + colour + "\"/>\n");
    }

    void circle(Pen pen, String fill, double x, double y, double radius) {
        add(
                Span.around(y, radius),
                "<circle cx=\"" + n(x) + "\" cy=\"" + n(y) + "\" r=\"" + n(radius) + "\" fill=\"" + fill + "\""
                        + stroke(pen, Look.INK) + "/>\n");
    }

    /** Where conductors are joined. */
    void joint(double x, double y) {
        add(
                Span.around(y, JOINT),
                "<circle cx=\"" + n(x) + "\" cy=\"" + n(y) + "\" r=\"" + n(JOINT) + "\" fill=\"" + Look.INK + "\"/>\n");
    }

    private static final double JOINT = 1.9;

    /** A line of text; y is its baseline. */
    void text(Lettering lettering, Anchor anchor, double x, double y, String text) {
        if (text.isBlank()) {
            return;
        }
        StringBuilder svg = new StringBuilder();
        svg.append("<text x=\"").append(n(x)).append("\" y=\"").append(n(y));
        svg.append("\" font-size=\"").append(n(lettering.size())).append('"');
        if (lettering.bold()) {
            svg.append(" font-weight=\"bold\"");
        }
        if (anchor != Anchor.START) {
            svg.append(" text-anchor=\"").append(anchor.name).append('"');
        }
        svg.append(" fill=\"")
                .append(Look.INK)
                .append("\">")
                .append(escaped(text))
                .append("</text>\n");
        add(new Span(y - lettering.capitals() - HEADROOM, y + Lettering.DESCENT), svg.toString());
    }

    /** Keeps all that lies between two heights together where the drawing is cut. */
    void hold(double top, double bottom) {
        add(new Held(new Span(top, bottom)));
    }

    /** Marks a height at which the drawing is best cut. */
    void seam(double y) {
        add(new Seam(y));
    }

    private void add(Span span, String svg) {
        add(new Whole(span, svg));
    }

    private void add(Piece piece) {
        open.getLast().pieces().add(piece);
    }

    /** Begins a part of the picture that stands for something. */
    void open(String kind, String what) {
        open.addLast(new Opened("<g data-" + kind + "=\"" + escaped(what) + "\">\n", /* whole= */ false));
    }

    /** Begins the symbol of a part of the installation. */
    void symbol(String symbol, String of) {
        symbols.add(symbol);
        String opening = "<g data-symbol=\"" + symbol + "\" data-of=\"" + escaped(of) + "\">\n";
        open.addLast(new Opened(opening, /* whole= */ true));
    }

    /** The names of all symbols so far. */
    Set<String> symbols() {
        return Set.copyOf(symbols);
    }

    /** Ends what {@link #open} or {@link #symbol} began. */
    void close() {
        Opened done = open.removeLast();
        Group group = new Group(done.opening(), done.pieces());
        add(done.whole() ? group.whole() : group);
    }

    /** All that was drawn. */
    List<Piece> pieces() {
        return List.copyOf(open.getFirst().pieces());
    }

    /** Above the uppermost capitals, for their accents. */
    private static final double HEADROOM = 3;

    /**
     * The finished picture.
     *
     * @param title what it shows, a few words
     * @param description what is to be seen in it, for those who cannot see it
     */
    String svg(double height, String title, List<String> description) {
        return svg(id, 0, height, title, description, body());
    }

    private String body() {
        StringBuilder body = new StringBuilder();
        pieces().forEach(piece -> body.append(piece.svg()));
        return body.toString();
    }

    /**
     * A picture of a part.
     *
     * @param marks drawn besides
     * @param top of the picture
     * @param bottom of the picture
     * @param place among the parts, from 1
     */
    String svg(Part part, Drawing marks, double top, double bottom, int place, String title, List<String> description) {
        StringBuilder body = new StringBuilder();
        pieces().forEach(piece -> body.append(piece.svg(part)));
        String own = place == 1 ? id : id + "-" + place;
        return svg(
                own, top, bottom, title, description, body.append(marks.body()).toString());
    }

    private static String svg(
            String id, double top, double bottom, String title, List<String> description, String body) {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawn\" role=\"img\" aria-labelledby=\"");
        svg.append(id).append("-title ").append(id).append("-desc\" viewBox=\"0 ");
        String height = n(bottom - top + HEADROOM);
        svg.append(n(top - HEADROOM)).append(' ').append(n(WIDTH)).append(' ').append(height);
        svg.append("\" width=\"").append(n(WIDTH)).append("pt\" height=\"").append(height);
        svg.append("pt\" font-family=\"Source Sans Pro, Arial Narrow, sans-serif\">\n");
        svg.append("<title id=\"").append(id).append("-title\">").append(escaped(title));
        svg.append("</title>\n<desc id=\"").append(id).append("-desc\">");
        svg.append(escaped(String.join(" ", description))).append("</desc>\n");
        return svg.append(body).append("</svg>").toString();
    }

    static String stroke(Pen pen, String colour) {
        String stroke = " stroke=\"" + colour + "\" stroke-width=\"" + n(pen.width()) + "\"";
        return pen.dashes().isEmpty() ? stroke : stroke + " stroke-dasharray=\"" + pen.dashes() + "\"";
    }

    static String point(double x, double y) {
        return n(x) + " " + n(y);
    }

    /** A coordinate to a hundredth of a point. */
    static String n(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
