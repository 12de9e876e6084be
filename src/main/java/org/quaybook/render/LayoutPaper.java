package org.quaybook.render;

import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfBorderArray;
import com.lowagie.text.pdf.PdfBorderDictionary;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.css.style.CalculatedStyle.Edge;
import org.xhtmlrenderer.extend.FSImage;
import org.xhtmlrenderer.layout.Layer;
import org.xhtmlrenderer.newtable.TableSectionBox;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.FSFont;
import org.xhtmlrenderer.render.InlineText;
import org.xhtmlrenderer.render.JustificationInfo;
import org.xhtmlrenderer.render.PageBox;
import org.xhtmlrenderer.render.RenderingContext;

/**
 * What the layout engine prints on. Takes what a font lacks from the symbol font, where the engine would leave it out, and
 * marks everything as the part of the document's structure that it belongs to, or as decoration.
 */
final class LayoutPaper extends ITextOutputDevice {

    /** Parts of the font size that letters reach above and below the line, at least. */
    private static final float CAPITAL = 0.66f;

    private static final float DESCENT = 0.1f;

    private static final char SOFT_HYPHEN = '\u00ad';
    private static final PdfName ARTIFACT = new PdfName("Artifact");
    private static final PdfName ACTUAL_TEXT = new PdfName("ActualText");

    private @Nullable Tags tags;
    private @Nullable ITextFSFont font;
    private @Nullable Box root;

    /** Where the text goes that is about to be drawn. */
    private @Nullable TagSlot slot;

    private PdfDictionary properties = new PdfDictionary();
    private boolean spaceFollows;
    private Runnable whenSeen = () -> {};

    /** Where headings were first seen. */
    private final Map<Element, PdfDestination> headings = new HashMap<>();

    /** Where links inside the document lead to, by name. */
    private final Map<String, Element> places = new HashMap<>();

    private boolean open;

    LayoutPaper(float dotsPerPoint) {
        super(dotsPerPoint);
    }

    /** A document is about to be printed, perhaps once more. */
    void begin(Tags fresh) {
        tags = fresh;
        headings.clear();
        places.clear();
    }

    private Tags tags() {
        return Objects.requireNonNull(tags, "printing begins with begin");
    }

    @Override
    public void setFont(FSFont font) {
        super.setFont(font);
        this.font = (ITextFSFont) font;
    }

    @Override
    public void setRoot(Box root) {
        super.setRoot(root);
        this.root = root;
    }

    @Override
    public void drawText(RenderingContext context, InlineText text) {
        boolean decoration = isDecoration(text);
        slot = decoration ? null : tags().of(text).orElse(null);
        whenSeen = decoration ? () -> {} : () -> noteHeading(context, text);
        properties = new PdfDictionary();
        String drawn = text.getSubstring();
        if (drawn.length() > 1 && drawn.charAt(drawn.length() - 1) == SOFT_HYPHEN) {
            String whole = drawn.replace(String.valueOf(SOFT_HYPHEN), "");
            properties.put(ACTUAL_TEXT, new PdfString(whole, PdfObject.TEXT_UNICODE));
        }
        spaceFollows = slot != null && isBrokenAtSpace(text, drawn);
        super.drawText(context, text);
        slot = null;
        spaceFollows = false;
        whenSeen = () -> {};
    }

    /** The engine takes a heading to stand where the space above it begins, which may be on the page before. */
    private void noteHeading(RenderingContext context, InlineText text) {
        for (Box box = text.getParent(); box != null; box = box.getParent()) {
            Element element = box.getElement();
            if (element != null && tags().isHeading(element) && !headings.containsKey(element)) {
                Rectangle edge = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
                headings.put(element, place(area(context, edge).getTop(), writer().getPageNumber()));
            }
        }
    }

    /** Writes the bookmarks: every heading below the last one of a higher rank. */
    @Override
    public void finish(RenderingContext context, Box all) {
        Deque<PdfOutline> outlines = new ArrayDeque<>();
        Deque<Integer> ranks = new ArrayDeque<>();
        outlines.push(writer().getRootOutline());
        ranks.push(0);
        for (Element heading : tags().headings()) {
            PdfDestination place = headings.get(heading);
            if (place != null) {
                int rank = Xml.localName(heading).charAt(1) - '0';
                while (ranks.element() >= rank) {
                    outlines.pop();
                    ranks.pop();
                }
                outlines.push(new PdfOutline(outlines.element(), place, plain(heading.getTextContent())));
                ranks.push(rank);
            }
        }
    }

    private PdfDestination place(float top, int page) {
        PdfDestination place = new PdfDestination(PdfDestination.XYZ, 0, top, 0);
        place.addPage(writer().getPageReference(page));
        return place;
    }

    private static String plain(String text) {
        return text.replace(String.valueOf(SOFT_HYPHEN), "").strip().replaceAll("\\s+", " ");
    }

    /** Heads and feet of pages are no part of the text, nor is the head of a table when it is repeated. */
    private boolean isDecoration(InlineText text) {
        Box box = text.getParent();
        if (box == null || box.isContainedInMarginBox()) {
            return true;
        }
        for (Box part = box; part != null; part = part.getParent()) {
            if (part instanceof TableSectionBox section && (section.isHeader() || section.isFooter())) {
                return tags().of(text)
                        .map(there -> there.isOnOtherPage(writer().getCurrentPage()))
                        .orElse(true);
            }
        }
        return false;
    }

    /** ISO 32000-1, 14.8.2.5: words are told apart by spaces, at the end of a line too. The engine drops those. */
    private static boolean isBrokenAtSpace(InlineText text, String drawn) {
        if (drawn.isEmpty() || Character.isWhitespace(drawn.charAt(drawn.length() - 1))) {
            return false;
        }
        Node node = text.getTextNode();
        return text.getTextExportText().endsWith(" ")
                || (node != null
                        && node.getNextSibling() instanceof Element next
                        && Xml.localName(next).equals("br"));
    }

    @Override
    public void drawString(String text, float x, float y, @Nullable JustificationInfo spread) {
        ITextFSFont asked = font;
        if (asked == null) {
            throw new IllegalStateException("text without a font: " + text);
        }
        if (isClippedAway(x, y, asked)) {
            return;
        }
        whenSeen.run();
        marked(slot, properties, () -> {
            List<Typeface.Run> runs = LayoutText.runs(LayoutFonts.typeface(asked), spaceFollows ? text + " " : text);
            float pen = x;
            for (Typeface.Run run : runs) {
                super.setFont(LayoutFonts.font(run.typeface(), asked.getSize2D()));
                super.drawString(run.text(), pen, y, spread);
                pen += (float) run.width(asked.getSize2D()) + added(run.text(), spread);
            }
            super.setFont(asked);
        });
    }

    /**
     * The engine also writes the first line of a page below the page before it and clips it there. Nobody would see that,
     * but whoever searches or listens to the text would meet it twice.
     */
    private boolean isClippedAway(float x, float y, ITextFSFont asked) {
        Shape clip = getClip();
        float size = asked.getSize2D();
        return clip != null && !clip.intersects(x - size, y - CAPITAL * size, 3 * size, (CAPITAL + DESCENT) * size);
    }

    /** What justification adds behind the characters of a text, in dots; the engine counts these as spaces. */
    private static float added(String text, @Nullable JustificationInfo spread) {
        if (spread == null) {
            return 0;
        }
        long spaces = text.chars()
                .filter(c -> c == ' ' || c == '\u00a0' || c == '\u3000')
                .count();
        return spaces * spread.spaceAdjust() + (text.length() - spaces) * spread.nonSpaceAdjust();
    }

    @Override
    public void fill(Shape shape) {
        marked(null, new PdfDictionary(), () -> super.fill(shape));
    }

    @Override
    public void draw(Shape shape) {
        marked(null, new PdfDictionary(), () -> super.draw(shape));
    }

    @Override
    public void drawImage(FSImage image, int x, int y) {
        marked(null, new PdfDictionary(), () -> super.drawImage(image, x, y));
    }

    @Override
    public void paintReplacedElement(RenderingContext context, BlockBox box) {
        Optional<TagSlot> place = Optional.ofNullable(box.getElement())
                .filter(any -> !box.isContainedInMarginBox())
                .flatMap(tags()::of);
        place.filter(TagSlot::isEmpty).ifPresent(first -> tags().place(elementOf(box), corners(context, box)));
        marked(place.orElse(null), new PdfDictionary(), () -> super.paintReplacedElement(context, box));
    }

    private static Element elementOf(Box box) {
        Element element = box.getElement();
        if (element == null) {
            throw new IllegalStateException("a picture without an element");
        }
        return element;
    }

    /** Left, bottom, right and top of a box on its page, in points. */
    private PdfArray corners(RenderingContext context, Box box) {
        com.lowagie.text.Rectangle area = area(context, box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context));
        return new PdfArray(new float[] {area.getLeft(), area.getBottom(), area.getRight(), area.getTop()});
    }

    private com.lowagie.text.Rectangle area(RenderingContext context, Rectangle box) {
        float page = getDeviceLength(sheet(context).getHeight(context));
        Point2D first = getTransform().transform(new Point2D.Double(box.getMinX(), box.getMinY()), null);
        Point2D last = getTransform().transform(new Point2D.Double(box.getMaxX(), box.getMaxY()), null);
        return new com.lowagie.text.Rectangle(
                (float) first.getX(), page - (float) last.getY(), (float) last.getX(), page - (float) first.getY());
    }

    private static PageBox sheet(RenderingContext context) {
        PageBox sheet = context.getPage();
        if (sheet == null) {
            throw new IllegalStateException("painting outside a page");
        }
        return sheet;
    }

    /** Paints something as part of the structure or, without a place there, as decoration. */
    private void marked(@Nullable TagSlot place, PdfDictionary entries, Runnable painting) {
        PdfContentByte page = getCurrentPage();
        if (open || page == null) {
            painting.run();
            return;
        }
        open = true;
        if (place == null) {
            page.beginMarkedContentSequence(ARTIFACT);
        } else {
            place.begin(writer(), page, entries);
        }
        painting.run();
        page.endMarkedContentSequence();
        open = false;
    }

    /** The engine's own links have no text for whoever cannot see them: it is told of none, and they are made here. */
    @Override
    public void paintBackground(RenderingContext context, Box box) {
        super.paintBackground(context, box);
        Element element = box.getElement();
        if (element != null && Xml.localName(element).equals("a") && !isInsideItself(box, element)) {
            tags().of(element)
                    .filter(place -> !box.isContainedInMarginBox())
                    .ifPresent(place -> link(context, box, element, place));
        }
    }

    private static boolean isInsideItself(Box box, Element element) {
        for (Box outer = box.getParent(); outer != null; outer = outer.getParent()) {
            if (element.equals(outer.getElement())) {
                return true;
            }
        }
        return false;
    }

    private void link(RenderingContext context, Box box, Element element, TagSlot place) {
        Rectangle edge = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
        Shape clip = getClip();
        Rectangle middle = new Rectangle(edge.x, edge.y + edge.height / 3, edge.width, edge.height / 3);
        if (edge.width <= 0 || (clip != null && !clip.intersects(middle))) {
            return;
        }
        String target = element.getAttribute("href");
        com.lowagie.text.Rectangle area = area(context, edge);
        PdfAnnotation annotation = new PdfAnnotation(
                writer(),
                area.getLeft(),
                area.getBottom(),
                area.getRight(),
                area.getTop(),
                target.startsWith("#") ? inside(context, target.substring(1)) : new PdfAction(target));
        annotation.put(PdfName.SUBTYPE, PdfName.LINK);
        annotation.put(PdfName.F, new PdfNumber(PdfAnnotation.FLAGS_PRINT));
        annotation.put(PdfName.CONTENTS, new PdfString(words(element, target), PdfObject.TEXT_UNICODE));
        annotation.setBorderStyle(new PdfBorderDictionary(0, 0));
        annotation.setBorder(new PdfBorderArray(0, 0, 0));
        annotation.put(
                PdfName.STRUCTPARENT, new PdfNumber(place.annotate(writer(), annotation.getIndirectReference())));
        writer().addAnnotation(annotation);
    }

    private PdfAction inside(RenderingContext context, String id) {
        Box target = getSharedContext().getBoxById(id);
        Layer layer = root == null ? null : root.getLayer();
        if (target == null || layer == null) {
            throw new IllegalStateException("checked before, but leads nowhere: " + id);
        }
        int top = target.getAbsY() + (int) target.getMargin(context).top();
        PageBox page = Objects.requireNonNull(layer.getPage(context, top));
        float down = top - page.getTop() + page.getMarginBorderPadding(context, Edge.TOP);
        PdfDestination place =
                place(getDeviceLength(page.getHeight(context) - down), getStartPageNo() + page.getPageNo() + 1);
        PdfAction action = new PdfAction();
        action.put(PdfName.S, PdfName.GOTO);
        action.put(PdfName.D, place);
        return action;
    }

    /** What a link says: its title, its own words, those of the place that it leads to, or the address. */
    private String words(Element link, String target) {
        String own = link.getAttribute("title") + link.getAttribute("aria-label");
        String text = own.isBlank() ? link.getTextContent() : own;
        if (text.isBlank() && target.startsWith("#")) {
            Element place = places(link.getOwnerDocument()).get(target.substring(1));
            text = place == null ? "" : place.getTextContent();
        }
        String plain = plain(text);
        return plain.isEmpty() ? target : plain;
    }

    private Map<String, Element> places(Document document) {
        if (places.isEmpty()) {
            Xml.elements(document.getDocumentElement())
                    .forEach(element -> places.putIfAbsent(element.getAttribute("id"), element));
        }
        return places;
    }

    private PdfWriter writer() {
        PdfWriter writer = getWriter();
        if (writer == null) {
            throw new IllegalStateException("the engine has not begun to write");
        }
        return writer;
    }
}
