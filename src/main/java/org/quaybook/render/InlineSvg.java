package org.quaybook.render;

import org.w3c.dom.Element;

/**
 * A drawing that a template may put into a page as it is: {@code <@drawing/>}. Well-formed, with nothing that acts or
 * refers outside itself, and every character in one of our fonts.
 */
public final class InlineSvg {

    /** The guide handed over and the published one show the same drawings, and so do the pages of the record. */
    private static final Recent<InlineSvg> CHECKED = new Recent<>(128);

    private final String text;

    private InlineSvg(String text) {
        this.text = text;
    }

    /**
     * Checks a drawing.
     *
     * @param svg one {@code svg} element in its namespace
     * @param name what a message calls it
     * @throws RenderException if it is anything else, or breaks a rule for drawings
     */
    public static InlineSvg of(String svg, String name) {
        return CHECKED.of(svg, text -> check(text, name));
    }

    private static InlineSvg check(String svg, String name) {
        Element element = Xml.parse(svg, name).getDocumentElement();
        Faults faults = new Faults(name);
        if (!SvgRules.NAMESPACE.equals(element.getNamespaceURI()) || !"svg".equals(element.getLocalName())) {
            faults.add(RenderMessage.SVG_FAULT, "<" + element.getNodeName() + "> outside " + SvgRules.NAMESPACE);
        } else {
            SvgRules.apply(element, faults);
        }
        faults.throwIfAny();
        return new InlineSvg(svg);
    }

    /** The drawing as it was handed in. */
    public String text() {
        return text;
    }
}
