package org.quaybook.render;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.PageBox;

/** A document on its pages, to be asked where things stand and to be written, as often as is wanted; for one thread. */
public final class LaidOut {

    private static final float DOTS_PER_POINT = ITextRenderer.DEFAULT_DOTS_PER_POINT;
    private static final float POINTS_PER_INCH = 72;
    private static final int DOTS_PER_PIXEL = ITextRenderer.DEFAULT_DOTS_PER_PIXEL;

    private final String xhtml;
    private final Document document;
    private final DocumentInfo info;
    private final Faults faults;
    private final LayoutPaper paper;
    private final LayoutAgent agent;
    private final LayoutElements elements;
    private final float dotsPerPoint;
    private LayoutStyles styles;
    private ITextRenderer renderer;

    /** Lays out a document, as {@link Handbook#layOut} says. */
    LaidOut(String xhtml, DocumentInfo info, Resources resources, double scale) {
        this.xhtml = xhtml;
        this.info = info;
        this.faults = new Faults(info.title());
        this.document = Xml.parse(xhtml, info.title());
        XhtmlRules.apply(document, faults);
        LongTables.part(document);
        float dotsPerPoint = (float) (DOTS_PER_POINT / scale);
        this.paper = new LayoutPaper(dotsPerPoint);
        this.agent = new LayoutAgent(paper, DOTS_PER_PIXEL, resources, faults);
        this.dotsPerPoint = dotsPerPoint;
        this.elements = new LayoutElements(paper, agent, DOTS_PER_PIXEL, faults);
        this.styles = new LayoutStyles(agent);
        this.renderer = renderer();
        LayoutLog.hear(faults, this::layOut);
    }

    /** One that remembers no layout: that of a long document takes hundreds of megabytes. */
    private ITextRenderer renderer() {
        ITextRenderer fresh = new ITextRenderer(
                dotsPerPoint, DOTS_PER_PIXEL, paper, agent, new LayoutFonts(faults), elements, new LayoutText(faults));
        fresh.getSharedContext().setLineBreakingStrategy(new LayoutBreaks());
        fresh.getSharedContext().setCss(styles);
        // Lengths of the style sheets are those of an unscaled page.
        fresh.getSharedContext().setDPI(POINTS_PER_INCH * DOTS_PER_POINT);
        return fresh;
    }

    /** As often as tables begin anew on a later page; each time some do, and none goes back. */
    private void layOut() {
        for (Set<Element> onNewPage = laidOut(); !onNewPage.isEmpty(); onNewPage = laidOut()) {
            onNewPage.forEach(element ->
                    element.setAttribute("style", element.getAttribute("style") + "; page-break-before: always"));
            styles = new LayoutStyles(agent);
            renderer = renderer();
        }
    }

    /** The elements that have to begin on a new page. */
    private Set<Element> laidOut() {
        renderer.setDocument(document, null, new LayoutLanguage());
        renderer.layout();
        faults.throwIfAny();
        styles.keep();
        return TableBreaks.wanted(root(), pageBoxes());
    }

    /** How many pages it fills. */
    public int pages() {
        return pageBoxes().size();
    }

    /**
     * Where the parts of the document end.
     *
     * @param part name of the class of the parts: children of the body, one after another
     * @return an end for each part, in their order
     */
    public List<PartEnd> ends(String part) {
        List<PartEnd> ends = new ArrayList<>();
        collect(root(), part, pageBoxes(), ends);
        return List.copyOf(ends);
    }

    private static void collect(Box box, String part, List<PageBox> pages, List<PartEnd> ends) {
        Element element = box.getElement();
        if (element != null && List.of(element.getAttribute("class").split(" ")).contains(part)) {
            int first = TableBreaks.pageAt(box.getAbsY(), pages);
            int bottom = box.getAbsY() + box.getHeight();
            int last = TableBreaks.pageAt(bottom - 1, pages);
            PageBox page = pages.get(last);
            double filled = (bottom - page.getTop()) / (double) (page.getBottom() - page.getTop());
            ends.add(new PartEnd(first, last, filled));
        } else {
            box.getChildren().forEach(child -> collect(child, part, pages, ends));
        }
    }

    private Box root() {
        return Objects.requireNonNull(renderer.getRootBox());
    }

    private List<PageBox> pageBoxes() {
        return Objects.requireNonNull(root().getLayer()).getPages();
    }

    /**
     * Writes the document.
     *
     * @param attachments files that travel inside the PDF
     * @throws RenderException if only now something turns out to be faulty
     */
    public byte[] pdf(List<Attachment> attachments) {
        return pdf(attachments, 1);
    }

    /**
     * The same with another number on the first page.
     *
     * @param first at least 1; which pages are left ones follows from their place, not from their number
     */
    public byte[] pdf(List<Attachment> attachments, int first) {
        Tags tags = new Tags(document, info.language());
        paper.begin(tags);
        renderer.setListener(new Writing(tags, attachments));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LayoutLog.hear(faults, () -> write(out, first));
        faults.throwIfAny();
        return out.toByteArray();
    }

    private void write(ByteArrayOutputStream out, int first) {
        try {
            renderer.createPDF(out, true, first);
        } catch (DocumentException e) {
            throw RenderException.of(faults.place(), e, RenderMessage.LAYOUT_FAILED, String.valueOf(e.getMessage()));
        }
    }

    /** What is said and added while a document is written. */
    private final class Writing extends DefaultPDFCreationListener {

        private final Tags tags;
        private final List<Attachment> attachments;

        Writing(Tags tags, List<Attachment> attachments) {
            this.tags = tags;
            this.attachments = attachments;
        }

        @Override
        public void preOpen(ITextRenderer engine) {
            writer().setPdfVersion(PdfWriter.VERSION_1_7);
            writer().setFullCompression();
            writer().setTagged();
            writer().setTabs(PdfName.S);
            PdfIdentity.describe(writer(), info);
            PdfIdentity.claim(writer(), info);
        }

        @Override
        public void preWrite(ITextRenderer engine, int pages) {
            // The engine would put the title element of the document over the title given.
            engine.getOutputDevice().setMetadata("title", info.title());
            try {
                Archive.nameColours(writer());
                Archive.attach(writer(), attachments, info);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void onClose(ITextRenderer engine) {
            try {
                tags.root().writeAsRoot(writer());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            List<byte[]> digests = new ArrayList<>();
            digests.add(PdfIdentity.digest(xhtml.getBytes(StandardCharsets.UTF_8)));
            agent.used().forEach(resource -> digests.add(PdfIdentity.digest(resource)));
            attachments.forEach(attachment -> digests.add(attachment.content().digest()));
            digests.add(PdfIdentity.digest(info.toString().getBytes(StandardCharsets.UTF_8)));
            PdfIdentity.identify(writer(), digests);
        }

        private PdfWriter writer() {
            PdfWriter writer = renderer.getWriter();
            if (writer == null) {
                throw new IllegalStateException("the engine has not begun to write");
            }
            return writer;
        }
    }
}
