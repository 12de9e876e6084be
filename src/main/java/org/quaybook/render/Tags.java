package org.quaybook.render;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineText;

/**
 * The logical structure of a document as its XHTML states it, for those who listen to a PDF instead of looking at it.
 *
 * <p>Headings, paragraphs, lists, links and tables keep their meaning. A table without any {@code th}, or with the role
 * {@code presentation}, only arranges its cells and is read cell by cell. The role {@code doc-toc} makes a table or list
 * the table of contents. A {@code th} heads its column, or its row when its scope says so or a {@code td} stands beside it.
 * A picture is a figure with its {@code alt}, {@code aria-label}, or SVG {@code title} and {@code desc} as text; without
 * any it is decoration, like whatever has {@code aria-hidden}.
 */
final class Tags {

    private static final Set<String> SILENT = Set.of("head", "style", "br", "hr");
    private static final Set<String> RUNNING_TEXT = Set.of(
            "abbr", "b", "big", "cite", "code", "dfn", "em", "i", "kbd", "mark", "q", "s", "samp", "small", "span",
            "strong", "sub", "sup", "u", "var");
    private static final Set<String> LAYOUT_ROLES = Set.of("presentation", "none");
    private static final Pattern HEADING = Pattern.compile("h[1-6]");
    private static final Map<String, String> ROWS =
            Map.of("thead", "THead", "tbody", "TBody", "tfoot", "TFoot", "tr", "TR");
    private static final String CONTENTS_ROLE = "doc-toc";

    private final String language;
    private final Map<Node, TagSlot> slots = new HashMap<>();
    private final Map<Element, TagSlot> before = new HashMap<>();
    private final Map<Element, TagSlot> after = new HashMap<>();
    private final Map<Element, List<TagPart>> content = new HashMap<>();
    private final Set<Element> headings = new LinkedHashSet<>();
    private final Map<Element, Tag> figures = new HashMap<>();
    /** Whether a table holds data; asked for each of its cells. */
    private final Map<Element, Boolean> data = new HashMap<>();

    private final Tag root;

    /** @param language of the document, for parts in another one */
    Tags(Document document, String language) {
        this.language = language;
        this.root = new Tag("Document", wrapped(bodies(document)));
    }

    /** All headings in the order of the text. */
    List<Element> headings() {
        return List.copyOf(headings);
    }

    boolean isHeading(Element element) {
        return headings.contains(element);
    }

    private List<TagPart> bodies(Document document) {
        return Xml.children(document.getDocumentElement()).stream()
                .filter(part -> Xml.localName(part).equals("body"))
                .flatMap(body -> inside(body).stream())
                .toList();
    }

    Tag root() {
        return root;
    }

    /** Where a text belongs; nowhere if it is decoration. */
    Optional<TagSlot> of(InlineText text) {
        if (isLeader(text)) {
            return Optional.empty();
        }
        Text node = text.getTextNode();
        return node == null ? generated(text) : Optional.ofNullable(slots.get(node));
    }

    /** The dots that lead the eye to a page number. */
    private static boolean isLeader(InlineText text) {
        return text.isDynamicFunction()
                && text.getFunctionData().getFunction().getName().equals("leader");
    }

    /** Text that a style sheet puts before or after an element. */
    private Optional<TagSlot> generated(InlineText text) {
        for (Box box = text.getParent(); box != null; box = box.getParent()) {
            Element element = box.getElement();
            if (element != null) {
                String place = box.getPseudoElementOrClass();
                // Of text within a line the engine does not say which it is: what comes before is painted before.
                boolean first = place == null ? isEmpty(element) : place.equals("before");
                return Optional.ofNullable((first ? before : after).get(element));
            }
        }
        return Optional.empty();
    }

    private boolean isEmpty(Element element) {
        return content.getOrDefault(element, List.of()).stream().allMatch(TagPart::isEmpty);
    }

    /** Where a picture or link belongs; nowhere if it is decoration. */
    Optional<TagSlot> of(Element element) {
        return Optional.ofNullable(slots.get(element));
    }

    /** Says where on its page a picture stands: left, bottom, right, top in points. */
    void place(Element figure, PdfObject corners) {
        Tag tag = figures.get(figure);
        if (tag != null) {
            tag.with("A", attributes("Layout", "BBox", corners));
        }
    }

    private List<TagPart> inside(Element element) {
        List<TagPart> parts = new ArrayList<>();
        parts.add(slot(before, element));
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Text) {
                parts.add(slot(slots, node));
            } else if (node instanceof Element child) {
                parts.addAll(read(child));
            }
        }
        content.put(element, List.copyOf(parts.subList(1, parts.size())));
        parts.add(slot(after, element));
        return parts;
    }

    private static <K> TagSlot slot(Map<? super K, TagSlot> all, K key) {
        TagSlot slot = new TagSlot();
        all.put(key, slot);
        return slot;
    }

    private List<? extends TagPart> read(Element element) {
        if ("true".equals(element.getAttribute("aria-hidden")) || SILENT.contains(Xml.localName(element))) {
            return List.of();
        }
        List<? extends TagPart> parts = meaning(element);
        String spoken = language(element);
        if (spoken.isEmpty() || spoken.equals(language)) {
            return parts;
        }
        PdfString tongue = new PdfString(spoken, PdfObject.TEXT_UNICODE);
        if (parts.size() == 1 && parts.get(0) instanceof Tag tag) {
            return List.of(tag.with("Lang", tongue));
        }
        return List.of(new Tag("Span", parts).with("Lang", tongue));
    }

    private static String language(Element element) {
        String xml = element.getAttributeNS("http://www.w3.org/XML/1998/namespace", "lang");
        return xml.isEmpty() ? element.getAttribute("lang") : xml;
    }

    private List<? extends TagPart> meaning(Element element) {
        String name = Xml.localName(element).toLowerCase(Locale.ROOT);
        if (RUNNING_TEXT.contains(name)) {
            return inside(element);
        }
        if (HEADING.matcher(name).matches()) {
            headings.add(element);
            return one(name.toUpperCase(Locale.ROOT), inside(element));
        }
        return switch (name) {
            case "a" -> link(element);
            case "img", "svg" -> figure(element);
            case "p" -> one("P", inside(element));
            case "blockquote" -> one("BlockQuote", wrapped(inside(element)));
            case "ol", "ul", "dl" -> list(element, name);
            case "li" -> isContents(parent(element)) ? one("TOCI", wrapped(inside(element))) : item(element);
            case "table" -> table(element);
            case "caption" -> one("Caption", inside(element));
            case "thead", "tbody", "tfoot", "tr" -> rows(element, name);
            case "th", "td" -> cell(element, name);
            default -> block(element);
        };
    }

    private static List<Tag> one(String type, List<? extends TagPart> parts) {
        return List.of(new Tag(type, parts));
    }

    private List<? extends TagPart> link(Element element) {
        if (!element.hasAttribute("href")) {
            return inside(element);
        }
        List<TagPart> parts = inside(element);
        parts.add(slot(slots, element));
        return one("Link", parts);
    }

    private List<? extends TagPart> figure(Element element) {
        Optional<String> alternative = Alternative.of(element);
        if (alternative.isEmpty()) {
            return List.of();
        }
        PdfString text = new PdfString(alternative.get(), PdfObject.TEXT_UNICODE);
        Tag figure = new Tag("Figure", List.of(slot(slots, element))).with("Alt", text);
        figures.put(element, figure);
        return List.of(figure);
    }

    private List<? extends TagPart> block(Element element) {
        List<TagPart> parts = inside(element);
        return isContents(element) ? one("TOC", parts) : block(parts);
    }

    /** A block of nothing but text is a paragraph. */
    private static List<? extends TagPart> block(List<TagPart> parts) {
        boolean plain = parts.stream().noneMatch(Tags::isBlock);
        return one(plain ? "P" : "Div", plain ? parts : wrapped(parts));
    }

    /** Text beside blocks becomes paragraphs. */
    private static List<TagPart> wrapped(List<TagPart> parts) {
        if (parts.stream().noneMatch(Tags::isBlock)) {
            return parts;
        }
        List<TagPart> blocks = new ArrayList<>();
        List<TagPart> text = new ArrayList<>();
        for (TagPart part : parts) {
            if (!isBlock(part)) {
                text.add(part);
            } else {
                flush(text, blocks);
                blocks.add(part);
            }
        }
        flush(text, blocks);
        return blocks;
    }

    private static void flush(List<TagPart> text, List<TagPart> blocks) {
        if (!text.isEmpty()) {
            blocks.add(new Tag("P", text));
            text.clear();
        }
    }

    private static boolean isBlock(TagPart part) {
        return part instanceof Tag tag && !tag.isInline();
    }

    private List<Tag> list(Element element, String name) {
        if (isContents(element)) {
            return one("TOC", inside(element));
        }
        String numbering = name.equals("ol") ? "Decimal" : name.equals("ul") ? "Disc" : "None";
        return List.of(
                new Tag("L", inside(element)).with("A", attributes("List", "ListNumbering", new PdfName(numbering))));
    }

    private List<Tag> item(Element element) {
        List<TagPart> parts = inside(element);
        Tag mark = new Tag("Lbl", parts.subList(0, 1));
        Tag body = new Tag("LBody", wrapped(new ArrayList<>(parts.subList(1, parts.size()))));
        return one("LI", List.of(mark, body));
    }

    private List<? extends TagPart> table(Element element) {
        if (isContents(element)) {
            return one("TOC", inside(element));
        }
        return isData(element) ? one("Table", inside(element)) : one("Div", wrapped(inside(element)));
    }

    private List<? extends TagPart> rows(Element element, String name) {
        Element table = tableOf(element);
        if (name.equals("tr") && isContents(table)) {
            return one("TOCI", wrapped(inside(element)));
        }
        return isData(table) ? one(ROWS.getOrDefault(name, "TR"), inside(element)) : inside(element);
    }

    private List<? extends TagPart> cell(Element element, String name) {
        Element table = tableOf(element);
        if (!isData(table)) {
            return block(inside(element));
        }
        PdfDictionary attributes = new PdfDictionary();
        attributes.put(new PdfName("O"), new PdfName("Table"));
        span(element, "colspan", "ColSpan", attributes);
        span(element, "rowspan", "RowSpan", attributes);
        if (name.equals("th")) {
            attributes.put(new PdfName("Scope"), new PdfName(scope(element)));
        }
        Tag cell = new Tag(name.toUpperCase(Locale.ROOT), wrapped(inside(element)));
        return List.of(attributes.size() > 1 ? cell.with("A", attributes) : cell);
    }

    private static void span(Element cell, String name, String entry, PdfDictionary attributes) {
        if (cell.hasAttribute(name)) {
            attributes.put(new PdfName(entry), new PdfNumber(cell.getAttribute(name)));
        }
    }

    private static String scope(Element head) {
        String said = head.getAttribute("scope");
        boolean row = said.isEmpty() ? isBesideData(head) : said.equals("row");
        return row ? "Row" : "Column";
    }

    private static boolean isBesideData(Element head) {
        Element row = parent(head);
        return row != null
                && Xml.children(row).stream()
                        .anyMatch(cell -> Xml.localName(cell).equals("td"));
    }

    /** The table that a part of one belongs to. */
    private static @Nullable Element tableOf(@Nullable Element part) {
        return part == null || Xml.localName(part).equals("table") ? part : tableOf(parent(part));
    }

    private static @Nullable Element parent(@Nullable Element element) {
        return element != null && element.getParentNode() instanceof Element parent ? parent : null;
    }

    private boolean isData(@Nullable Element table) {
        return table != null && data.computeIfAbsent(table, Tags::hasHeads);
    }

    private static boolean hasHeads(Element table) {
        return !LAYOUT_ROLES.contains(table.getAttribute("role"))
                && Xml.elements(table).stream()
                        .anyMatch(part -> Xml.localName(part).equals("th") && tableOf(part) == table);
    }

    private static boolean isContents(@Nullable Element element) {
        return element != null && element.getAttribute("role").equals(CONTENTS_ROLE);
    }

    private static PdfDictionary attributes(String owner, String name, PdfObject value) {
        PdfDictionary attributes = new PdfDictionary();
        attributes.put(new PdfName("O"), new PdfName(owner));
        attributes.put(new PdfName(name), value);
        return attributes;
    }
}
