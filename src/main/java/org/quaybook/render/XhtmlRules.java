package org.quaybook.render;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Makes sure, before it is laid out, that a document does nothing but show text and pictures and lead to pages. */
final class XhtmlRules {

    private static final Set<String> ACTIVE = Set.of(
            "script", "iframe", "frame", "object", "embed", "applet", "base", "form", "input", "select", "textarea");

    private static final Set<String> PICTURES = Set.of("img", "svg");
    private static final Pattern WEB = Pattern.compile("https?://[^\\s]+", Pattern.CASE_INSENSITIVE);

    private final Faults faults;
    private final Set<String> ids = new HashSet<>();

    private XhtmlRules(Faults faults) {
        this.faults = faults;
    }

    /** Checks a document. */
    static void apply(Document document, Faults faults) {
        XhtmlRules rules = new XhtmlRules(faults);
        List<Element> elements = Xml.elements(document.getDocumentElement());
        elements.forEach(element -> rules.ids.add(element.getAttribute("id")));
        elements.stream()
                .filter(element -> PICTURES.contains(Xml.localName(element)))
                .filter(Alternative::isMissing)
                .forEach(picture -> faults.add(
                        RenderMessage.ALTERNATIVE_MISSING, Xml.localName(picture), picture.getAttribute("src")));
        // What else drawings hold is checked when they are read.
        elements.stream()
                .filter(element -> !SvgRules.NAMESPACE.equals(element.getNamespaceURI()))
                .forEach(rules::check);
    }

    private void check(Element element) {
        String name = Xml.localName(element);
        if (ACTIVE.contains(name)) {
            faults.add(RenderMessage.ACTIVE_CONTENT, name);
        }
        for (Node attribute : Xml.attributes(element)) {
            if (attribute.getNodeName().toLowerCase(Locale.ROOT).startsWith("on")) {
                faults.add(RenderMessage.ACTIVE_CONTENT, attribute.getNodeName());
            }
        }
        if (name.equals("a") && element.hasAttribute("href")) {
            checkLink(element.getAttribute("href"));
        }
        if (name.equals("style")) {
            element.setTextContent(withoutImport(element.getTextContent(), "", faults));
        }
    }

    private void checkLink(String link) {
        if (link.startsWith("#")) {
            if (!ids.contains(link.substring(1)) || link.length() == 1) {
                faults.add(RenderMessage.LINK_TARGET_MISSING, link);
            }
        } else if (!WEB.matcher(link).matches()) {
            faults.add(RenderMessage.LINK_REFUSED, link);
        }
    }

    /**
     * A style sheet, or nothing in place of one that imports another: the layout engine cannot resolve that without an
     * address, and says so on the standard output.
     *
     * @param file its name; empty if it stands in the page
     */
    static String withoutImport(String css, String file, Faults faults) {
        int at = css.indexOf("@import");
        if (at >= 0) {
            int line =
                    (int) css.substring(0, at).chars().filter(it -> it == '\n').count();
            if (file.isEmpty()) {
                faults.add(RenderMessage.CSS_FAULT_INSIDE, "@import", line + 1);
            } else {
                faults.addIn(file, line, RenderMessage.CSS_FAULT, "@import");
            }
            return "";
        }
        return css;
    }
}
