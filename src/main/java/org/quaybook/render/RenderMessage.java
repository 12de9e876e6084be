package org.quaybook.render;

import org.quaybook.diag.MessageKey;

/** What can be wrong with something to be rendered. The arguments of each message stand in brackets, in order. */
public enum RenderMessage implements MessageKey {
    /** No such template (name). */
    TEMPLATE_MISSING("render.template-missing"),
    /** A template that cannot be understood (what the template engine says). */
    TEMPLATE_SYNTAX("render.template-syntax"),
    /** A template asks for a value that the model lacks (the expression). */
    TEMPLATE_VALUE_MISSING("render.template-value-missing"),
    /** A template fails for any other reason (what the template engine says). */
    TEMPLATE_FAILED("render.template-failed"),
    /** Text that is not well-formed XML (what the parser says). */
    XML_SYNTAX("render.xml-syntax"),
    /** A character that no font has (the character, its code point as U+XXXX, the text it stands in). */
    GLYPH_MISSING("render.glyph-missing"),
    /** A style sheet or picture that nobody handed in (its name). */
    RESOURCE_MISSING("render.resource-missing"),
    /** A picture that cannot be read, or is no PNG or JPEG (its name). */
    PICTURE_UNREADABLE("render.picture-unreadable"),
    /** A picture of more pixels than anybody needs on paper (its name, width, height, most pixels in all). */
    PICTURE_TOO_LARGE("render.picture-too-large"),
    /** A mistake in a style sheet (what the layout engine says). */
    CSS_FAULT("render.css-fault"),
    /** The same in a style element or attribute of the page itself (what the layout engine says, line in there). */
    CSS_FAULT_INSIDE("render.css-fault-inside"),
    /** A font family that is not one of ours (its name). */
    FONT_UNKNOWN("render.font-unknown"),
    /** A link that is neither inside the document nor http or https (the link). */
    LINK_REFUSED("render.link-refused"),
    /** A link to a place that the document lacks (the link). */
    LINK_TARGET_MISSING("render.link-target-missing"),
    /** A script, form or embedded object (the element or attribute). */
    ACTIVE_CONTENT("render.active-content"),
    /** A mistake in a drawing (what it is). */
    SVG_FAULT("render.svg-fault"),
    /** A picture that says something to those who see it only (element, its source or nothing). */
    ALTERNATIVE_MISSING("render.alternative-missing"),
    /** The layout engine gave up (what it says). */
    LAYOUT_FAILED("render.layout-failed"),
    /** A text too long for any QR code (its length in characters, the least error correction level). */
    QR_TOO_LONG("render.qr-too-long"),
    /**
     * A text that does not fit its box at the least cap height (label, text, width and height of the box, width and
     * height of a box that would do, all in millimetres).
     */
    LABEL_TEXT_DOES_NOT_FIT("render.label-text-does-not-fit"),
    /** A label larger than the room on a sheet (label, its width and height, width and height of the room, mm). */
    LABEL_LARGER_THAN_SHEET("render.label-larger-than-sheet"),
    /** A start beyond the labels of a sheet (label asked for, labels of the sheet). */
    START_BEYOND_SHEET("render.start-beyond-sheet"),
    /** A print moved further than a printer can be off (to the right, down, the most, all in millimetres). */
    PRINT_OFFSET_TOO_LARGE("render.print-offset-too-large"),
    /** More bleed than a stock bears (bleed asked for, the most, both in millimetres). */
    BLEED_OUT_OF_RANGE("render.bleed-out-of-range"),
    /** Labels to be turned on a sheet where that saves nothing. */
    TURNED_ON_PLAIN_SHEET("render.turned-on-plain-sheet"),
    /**
     * A label that cannot be read on the stock (label, width and height of the least that can, name of the stock, greatest
     * width and height there, mm).
     */
    LABEL_NEEDS_MORE_ROOM("render.label-needs-more-room"),
    /** A text that is hard to tell from its ground (label, text, its colour, that of the ground, contrast, least contrast). */
    LABEL_CONTRAST_LOW("render.label-contrast-low"),
    /** A document that even in its least type fills more pages than it may (title, type in points, pages, most pages). */
    TOO_MANY_PAGES("render.too-many-pages");

    private final String key;

    RenderMessage(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }
}
