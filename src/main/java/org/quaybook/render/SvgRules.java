package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.render.Typeface.Run;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Makes sure, before it is drawn, that a drawing refers to nothing outside itself and prints every character. */
final class SvgRules {

    static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private static final Set<String> REFUSED = Set.of("script", "foreignObject", "image", "animate", "set", "a");

    /** Turn vectors into pixels, as many as the drawing asks for. */
    private static final Set<String> IN_PIXELS = Set.of("filter", "mask", "pattern");

    private static final Pattern URL = Pattern.compile("url\\(\\s*['\"]?([^'\")]*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FAMILY = Pattern.compile("font-family\\s*:\\s*([^;}]*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern SHORTHAND = Pattern.compile("(^|[;{\\s])font\\s*:", Pattern.CASE_INSENSITIVE);
    private static final Pattern FAMILY_IN_STYLE = Pattern.compile("(?:^|;)\\s*font-family\\s*:\\s*([^;]*)");
    private static final Pattern WEIGHT_IN_STYLE = Pattern.compile("(?:^|;)\\s*font-weight\\s*:\\s*([^;]*)");
    private static final String DEFAULT_FAMILY = Typeface.SANS.family();

    private static final int NORMAL = 400;
    private static final int BOLD = 700;

    private final Faults faults;

    private SvgRules(Faults faults) {
        this.faults = faults;
    }

    /** Checks a drawing and puts characters that its font lacks into the symbol font. */
    static void apply(Element svg, Faults faults) {
        SvgRules rules = new SvgRules(faults);
        if (!svg.hasAttribute("font-family")) {
            svg.setAttribute("font-family", DEFAULT_FAMILY);
        }
        for (Element element : Xml.elements(svg)) {
            rules.check(element);
        }
        rules.printAll(svg);
    }

    private void check(Element element) {
        String name = Xml.localName(element);
        if (REFUSED.contains(name)) {
            faults.add(RenderMessage.ACTIVE_CONTENT, name);
        }
        if (IN_PIXELS.contains(name)) {
            faults.add(RenderMessage.SVG_FAULT, "<" + name + ">, which is drawn in pixels");
        }
        for (Node attribute : Xml.attributes(element)) {
            checkAttribute(Xml.localName(attribute), attribute.getNodeValue());
        }
        if (name.equals("style")) {
            checkCss(element.getTextContent());
        }
    }

    private void checkAttribute(String name, String value) {
        if (name.toLowerCase(Locale.ROOT).startsWith("on")) {
            faults.add(RenderMessage.ACTIVE_CONTENT, name);
        } else if (name.equals("href") && !value.startsWith("#")) {
            faults.add(RenderMessage.SVG_FAULT, "href " + value);
        } else if (name.equals("font-family")) {
            checkFamily(value);
        } else if (!name.startsWith("xmlns")) {
            checkCss(value);
        }
    }

    private void checkCss(String css) {
        if (css.contains("@import")) {
            faults.add(RenderMessage.SVG_FAULT, "@import");
        }
        if (SHORTHAND.matcher(css).find()) {
            faults.add(RenderMessage.SVG_FAULT, "font: (only font-family, font-size, font-weight)");
        }
        URL.matcher(css)
                .results()
                .map(url -> url.group(1).strip())
                .filter(url -> !url.startsWith("#"))
                .forEach(url -> faults.add(RenderMessage.SVG_FAULT, "url " + url));
        FAMILY.matcher(css).results().forEach(family -> checkFamily(family.group(1)));
    }

    /** The machine's fonts are not asked: a drawing must look the same everywhere. */
    private void checkFamily(String families) {
        String first = firstFamily(families);
        if (!Typeface.isFamily(first)) {
            faults.add(RenderMessage.FONT_UNKNOWN, first);
        }
    }

    private static String firstFamily(String families) {
        return families.split(",", 2)[0].replaceAll("['\"]", "").strip();
    }

    private void printAll(Element svg) {
        for (Element element : Xml.elements(svg)) {
            if (Xml.localName(element).equals("text")) {
                List<Text> texts = new ArrayList<>();
                collect(element, texts);
                for (int i = 0; i < texts.size(); i++) {
                    keepBlanks(texts.get(i), i == 0, i == texts.size() - 1);
                }
                texts.forEach(this::print);
                joinTags(element, true);
            }
        }
    }

    private static void collect(Node node, List<Text> texts) {
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Text text) {
                texts.add(text);
            } else {
                collect(child, texts);
            }
        }
    }

    /** JSVG would drop a blank at the edge of an element inside a text; line feeds of the layout may go. */
    private static void keepBlanks(Text text, boolean first, boolean last) {
        String content = text.getData();
        if (content.isBlank() && content.contains("\n")) {
            return;
        }
        String plain = content.replaceAll("\\s+", " ");
        if (!first && plain.startsWith(" ")) {
            plain = SvgText.KEPT_BLANK + plain.substring(1);
        }
        if (!last && plain.endsWith(" ")) {
            plain = plain.substring(0, plain.length() - 1) + SvgText.KEPT_BLANK;
        }
        text.setData(plain);
    }

    /** JSVG would put a blank between two tags that nothing stands between. */
    private static void joinTags(Node parent, boolean outermost) {
        for (Element child : Xml.children(parent)) {
            Node before = child.getPreviousSibling();
            if (before == null ? !outermost : before instanceof Element) {
                parent.insertBefore(joint(parent), child);
            }
            joinTags(child, false);
            if (child.getNextSibling() == null && !outermost) {
                parent.appendChild(joint(parent));
            }
        }
    }

    private static Text joint(Node parent) {
        return parent.getOwnerDocument().createTextNode(SvgText.JOINT);
    }

    private void print(Text text) {
        String content = text.getData().replaceAll("\\s", " ");
        Typeface typeface = typefaceOf((Element) text.getParentNode());
        typeface.firstMissing(content)
                .ifPresent(
                        missing -> faults.add(RenderMessage.GLYPH_MISSING, Typeface.describeMissing(missing, content)));
        if (!typeface.hasAll(content)) {
            replace(text, typeface, typeface.runs(content).orElse(List.of()));
        }
    }

    private static void replace(Text text, Typeface typeface, List<Run> runs) {
        Document document = text.getOwnerDocument();
        Node parent = text.getParentNode();
        for (Run run : runs) {
            Node node = document.createTextNode(run.text());
            if (run.typeface() != typeface) {
                Element span = document.createElementNS(NAMESPACE, "tspan");
                span.setAttribute("font-family", run.typeface().family());
                span.appendChild(node);
                node = span;
            }
            parent.insertBefore(node, text);
        }
        parent.removeChild(text);
    }

    /** By the attributes of the element and those around it; a style sheet inside the drawing is not asked. */
    private static Typeface typefaceOf(Element element) {
        String family =
                firstFamily(inherited(element, "font-family", FAMILY_IN_STYLE).orElse(DEFAULT_FAMILY));
        String weight = inherited(element, "font-weight", WEIGHT_IN_STYLE).orElse("normal");
        return Typeface.find(family, weight.matches("bold|[6-9]00") ? BOLD : NORMAL, false);
    }

    private static Optional<String> inherited(Element element, String property, Pattern inStyle) {
        for (Node node = element; node instanceof Element at; node = node.getParentNode()) {
            Matcher style = inStyle.matcher(at.getAttribute("style"));
            if (style.find()) {
                return Optional.of(style.group(1).strip());
            }
            if (at.hasAttribute(property)) {
                return Optional.of(at.getAttribute(property).strip());
            }
        }
        return Optional.empty();
    }
}
