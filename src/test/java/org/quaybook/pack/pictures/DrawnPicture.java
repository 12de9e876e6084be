package org.quaybook.pack.pictures;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.quaybook.render.Face;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A picture as its SVG says it: texts with the space they take, straight lines, and what its parts stand for. */
final class DrawnPicture {

    private static final Pattern CORNER = Pattern.compile("[ML](-?[\\d.]+) (-?[\\d.]+)");

    /** A line of text and the rectangle from its capitals' tops to its baseline. */
    record Text(String text, double size, boolean bold, double left, double top, double right, double bottom) {

        boolean overlaps(Text other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    record Line(double x1, double y1, double x2, double y2) {

        /** Whether it runs through the inside of a text. */
        boolean crosses(Text text) {
            int steps = 200;
            for (int i = 0; i <= steps; i++) {
                double x = x1 + (x2 - x1) * i / steps;
                double y = y1 + (y2 - y1) * i / steps;
                if (x > text.left && x < text.right && y > text.top && y < text.bottom) {
                    return true;
                }
            }
            return false;
        }
    }

    private final String name;
    private final String svg;
    private final Element root;

    DrawnPicture(String name, String svg) {
        this.name = name;
        this.svg = svg;
        try {
            this.root = DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement();
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new IllegalArgumentException(name, e);
        }
    }

    String name() {
        return name;
    }

    String svg() {
        return svg;
    }

    Element root() {
        return root;
    }

    double width() {
        return viewBox(2);
    }

    double height() {
        return viewBox(3);
    }

    /** Upper edge; headroom for accents lies above it. */
    double top() {
        return viewBox(1) + HEADROOM;
    }

    double bottom() {
        return viewBox(1) + height();
    }

    private static final double HEADROOM = 3;

    private double viewBox(int part) {
        return Double.parseDouble(root.getAttribute("viewBox").split(" ", -1)[part]);
    }

    String title() {
        return root.getElementsByTagName("title").item(0).getTextContent();
    }

    /** What those hear who do not see it. */
    String description() {
        return root.getElementsByTagName("desc").item(0).getTextContent();
    }

    List<Element> elements(String tag) {
        List<Element> elements = new ArrayList<>();
        NodeList found = root.getElementsByTagName(tag);
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    List<Text> texts() {
        return elements("text").stream().map(DrawnPicture::text).toList();
    }

    private static Text text(Element element) {
        double size = Double.parseDouble(element.getAttribute("font-size"));
        Face face = element.getAttribute("font-weight").equals("bold") ? Face.BOLD : Face.REGULAR;
        double width = face.widthOf(element.getTextContent(), face.capHeight(size));
        double x = Double.parseDouble(element.getAttribute("x"));
        double y = Double.parseDouble(element.getAttribute("y"));
        double left = switch (element.getAttribute("text-anchor")) {
            case "end" -> x - width;
            case "middle" -> x - width / 2;
            default -> x;
        };
        return new Text(
                element.getTextContent(), size, face == Face.BOLD, left, y - face.capHeight(size), left + width, y);
    }

    /** All texts with line ends as spaces. */
    String flowing() {
        return String.join(" ", texts().stream().map(Text::text).toList());
    }

    /** Every straight line, also those that make a symbol; not the outlines of filled shapes. */
    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (Element path : elements("path")) {
            if (path.getAttribute("fill").equals("none")) {
                List<double[]> corners = corners(path);
                for (int i = 1; i < corners.size(); i++) {
                    lines.add(new Line(
                            corners.get(i - 1)[0], corners.get(i - 1)[1], corners.get(i)[0], corners.get(i)[1]));
                }
            }
        }
        return lines;
    }

    static List<double[]> corners(Element path) {
        List<double[]> corners = new ArrayList<>();
        Matcher corner = CORNER.matcher(path.getAttribute("d"));
        while (corner.find()) {
            corners.add(new double[] {Double.parseDouble(corner.group(1)), Double.parseDouble(corner.group(2))});
        }
        return corners;
    }

    /** What all symbols of a kind stand for. */
    Set<String> of(String symbol) {
        Set<String> of = new TreeSet<>();
        for (Element group : elements("g")) {
            if (group.getAttribute("data-symbol").equals(symbol)) {
                of.add(group.getAttribute("data-of"));
            }
        }
        return of;
    }

    /** How many symbols of a kind there are. */
    long count(String symbol) {
        return elements("g").stream()
                .filter(group -> group.getAttribute("data-symbol").equals(symbol))
                .count();
    }

    /** The groups with a {@code data-} attribute of a kind. */
    List<Element> parts(String kind) {
        return elements("g").stream()
                .filter(group -> group.hasAttribute("data-" + kind))
                .toList();
    }
}
