package org.quaybook.pack.pictures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

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
    private final StringBuilder body = new StringBuilder();
    private final Set<String> symbols = new TreeSet<>();

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
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < corners.length; i += 2) {
            path.append(i == 0 ? "M" : "L").append(point(corners[i], corners[i + 1]));
        }
        body.append("<path d=\"").append(path).append("\" fill=\"none\"").append(stroke(pen, colour));
        body.append(" stroke-linejoin=\"round\"/>\n");
    }

    /** A conductor from corner to corner. */
    void wire(double... corners) {
        line(Pen.WIRE, corners);
    }

    /** A closed shape. */
    void shape(Pen pen, String fill, double... corners) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < corners.length; i += 2) {
            path.append(i == 0 ? "M" : "L").append(point(corners[i], corners[i + 1]));
        }
        body.append("<path d=\"")
                .append(path)
                .append("Z\" fill=\"")
                .append(fill)
                .append('"');
        body.append(stroke(pen, Look.INK)).append(" stroke-linejoin=\"round\"/>\n");
    }

    /** A curve of Bézier segments, as the attribute {@code d} of a path writes it. */
    void curve(Pen pen, String path) {
        body.append("<path d=\"").append(path).append("\" fill=\"none\"").append(stroke(pen, Look.INK));
        body.append("/>\n");
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
        body.append("<rect x=\"").append(n(x)).append("\" y=\"").append(n(y));
        body.append("\" width=\"").append(n(width)).append("\" height=\"").append(n(height + HEADROOM));
        if (radius > 0) {
            body.append("\" rx=\"").append(n(radius));
        }
        body.append("\" fill=\"")
                .append(fill)
                .append('"')
                .append(stroke(pen, colour))
                .append("/>\n");
    }

    /** A filled rectangle without an outline. */
    void fill(String colour, double x, double y, double width, double height) {
        body.append("<rect x=\"").append(n(x)).append("\" y=\"").append(n(y));
        body.append("\" width=\"").append(n(width)).append("\" height=\"").append(n(height + HEADROOM));
        body.append("\" fill=\"").append(colour).append("\"/>\n");
    }

    void circle(Pen pen, String fill, double x, double y, double radius) {
        body.append("<circle cx=\"").append(n(x)).append("\" cy=\"").append(n(y));
        body.append("\" r=\"")
                .append(n(radius))
                .append("\" fill=\"")
                .append(fill)
                .append('"');
        body.append(stroke(pen, Look.INK)).append("/>\n");
    }

    /** Where conductors are joined. */
    void joint(double x, double y) {
        body.append("<circle cx=\"").append(n(x)).append("\" cy=\"").append(n(y));
        body.append("\" r=\"1.9\" fill=\"").append(Look.INK).append("\"/>\n");
    }

    /** A line of text; y is its baseline. */
    void text(Lettering lettering, Anchor anchor, double x, double y, String text) {
        if (text.isBlank()) {
            return;
        }
        body.append("<text x=\"").append(n(x)).append("\" y=\"").append(n(y));
        body.append("\" font-size=\"").append(n(lettering.size())).append('"');
        if (lettering.bold()) {
            body.append(" font-weight=\"bold\"");
        }
        if (anchor != Anchor.START) {
            body.append(" text-anchor=\"").append(anchor.name).append('"');
        }
        body.append(" fill=\"")
                .append(Look.INK)
                .append("\">")
                .append(escaped(text))
                .append("</text>\n");
    }

    /** Begins a part of the picture that stands for something. */
    void open(String kind, String what) {
        body.append("<g data-").append(kind).append("=\"").append(escaped(what)).append("\">\n");
    }

    /** Begins the symbol of a part of the installation. */
    void symbol(String symbol, String of) {
        symbols.add(symbol);
        body.append("<g data-symbol=\"")
                .append(symbol)
                .append("\" data-of=\"")
                .append(escaped(of))
                .append("\">\n");
    }

    /** The names of all symbols so far. */
    Set<String> symbols() {
        return Set.copyOf(symbols);
    }

    /** Ends what {@link #open} or {@link #symbol} began. */
    void close() {
        body.append("</g>\n");
    }

    /**
     * The finished picture.
     *
     * @param title what it shows, a few words
     * @param description what is to be seen in it, for those who cannot see it
     */
    /** Above the uppermost capitals, for their accents. */
    private static final double HEADROOM = 3;

    String svg(double height, String title, List<String> description) {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawn\" role=\"img\" aria-labelledby=\"");
        svg.append(id).append("-title ").append(id).append("-desc\" viewBox=\"0 ");
        svg.append(n(-HEADROOM)).append(' ').append(n(WIDTH)).append(' ').append(n(height + HEADROOM));
        svg.append("\" width=\"").append(n(WIDTH)).append("pt\" height=\"").append(n(height + HEADROOM));
        svg.append("pt\" font-family=\"Source Sans Pro, Arial Narrow, sans-serif\">\n");
        svg.append("<title id=\"")
                .append(id)
                .append("-title\">")
                .append(escaped(title))
                .append("</title>\n");
        svg.append("<desc id=\"").append(id).append("-desc\">");
        svg.append(escaped(String.join(" ", description))).append("</desc>\n");
        return svg.append(body).append("</svg>").toString();
    }

    private static String stroke(Pen pen, String colour) {
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
