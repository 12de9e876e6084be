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

/**
 * Makes a paged PDF from XHTML and CSS.
 *
 * <p>The text is well-formed XML without a document type. Page size and margins come from {@code @page} in its CSS.
 * Fonts are Source Sans Pro (also for generic families) and Roboto Condensed; what they lack is taken from DejaVu Sans;
 * all are embedded. Scripts that are written from right to left or join their letters are not supported. {@code svg} and
 * {@code img} with a name in {@code .svg} are drawn as vectors with their text as text. Headings become bookmarks. Links
 * lead to a place in the document or to http and https.
 *
 * <p>The PDF can be read aloud and archived: it is tagged as {@link Tags} says and claims PDF/UA-1 (ISO 14289-1) and
 * PDF/A-3a (ISO 19005-3). Safe for use by several threads.
 */
public final class Handbook {

    private static final float DOTS_PER_POINT = ITextRenderer.DEFAULT_DOTS_PER_POINT;
    private static final float POINTS_PER_INCH = 72;
    private static final int DOTS_PER_PIXEL = ITextRenderer.DEFAULT_DOTS_PER_PIXEL;

    /**
     * Lays out a document.
     *
     * @param xhtml the whole document
     * @param info what the PDF says about itself
     * @param resources the style sheets and pictures that it may name
     * @throws RenderException if the XML or CSS is faulty, a resource or character is missing, or the document holds
     *     something that it must not: all faults at once as far as they can be found
     */
    public byte[] toPdf(String xhtml, DocumentInfo info, Resources resources) {
        return toPdf(xhtml, info, resources, 1, List.of());
    }

    /**
     * Lays out a document and puts files into it.
     *
     * @param xhtml the whole document
     * @param info what the PDF says about itself
     * @param resources the style sheets and pictures that it may name
     * @param scale of everything: pages, letters and pictures are printed larger or smaller than the style sheets say
     * @param attachments files that travel inside the PDF
     * @throws RenderException as above
     */
    public byte[] toPdf(
            String xhtml, DocumentInfo info, Resources resources, double scale, List<Attachment> attachments) {
        Faults faults = new Faults(info.title());
        Document document = Xml.parse(xhtml, info.title());
        XhtmlRules.apply(document, faults);
        Layout layout = new Layout(document, info, resources, scale, attachments, faults);
        return LayoutLog.hear(faults, () -> layout.print(xhtml));
    }

    /**
     * Where the parts of a document end, without writing it.
     *
     * @param part name of the class of the parts: children of the body, one after another
     * @return an end for each part, in their order
     * @throws RenderException as above
     */
    public List<PartEnd> ends(String xhtml, String part, DocumentInfo info, Resources resources, double scale) {
        Faults faults = new Faults(info.title());
        Document document = Xml.parse(xhtml, info.title());
        XhtmlRules.apply(document, faults);
        Layout layout = new Layout(document, info, resources, scale, List.of(), faults);
        return LayoutLog.hear(faults, () -> layout.ends(part));
    }

    /** One run of the layout engine. */
    private static final class Layout extends DefaultPDFCreationListener {

        private final Document document;
        private final DocumentInfo info;
        private final List<Attachment> attachments;
        private final Faults faults;
        private final Tags tags;
        private final LayoutAgent agent;
        private final ITextRenderer renderer;
        private final List<byte[]> input = new ArrayList<>();

        Layout(
                Document document,
                DocumentInfo info,
                Resources resources,
                double scale,
                List<Attachment> attachments,
                Faults faults) {
            this.document = document;
            this.info = info;
            this.attachments = attachments;
            this.faults = faults;
            this.tags = new Tags(document, info.language());
            float dotsPerPoint = (float) (DOTS_PER_POINT / scale);
            LayoutPaper paper = new LayoutPaper(dotsPerPoint, tags);
            this.agent = new LayoutAgent(paper, DOTS_PER_PIXEL, resources, faults);
            this.renderer = new ITextRenderer(
                    dotsPerPoint,
                    DOTS_PER_PIXEL,
                    paper,
                    agent,
                    new LayoutFonts(faults),
                    new LayoutElements(paper, agent, DOTS_PER_PIXEL, faults),
                    new LayoutText(faults));
            renderer.getSharedContext().setLineBreakingStrategy(new LayoutBreaks());
            // Lengths of the style sheets are those of an unscaled page.
            renderer.getSharedContext().setDPI(POINTS_PER_INCH * DOTS_PER_POINT);
        }

        List<PartEnd> ends(String part) {
            layOut();
            List<PartEnd> ends = new ArrayList<>();
            collect(root(), part, pages(), ends);
            return List.copyOf(ends);
        }

        private static void collect(Box box, String part, List<PageBox> pages, List<PartEnd> ends) {
            Element element = box.getElement();
            if (element != null
                    && List.of(element.getAttribute("class").split(" ")).contains(part)) {
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

        /** As often as tables begin anew on a later page; each time some do, and none goes back. */
        private void layOut() {
            renderer.setListener(this);
            Set<Element> onNewPage;
            do {
                renderer.setDocument(document, null, new LayoutLanguage());
                renderer.layout();
                faults.throwIfAny();
                onNewPage = TableBreaks.wanted(root(), pages());
                onNewPage.forEach(element ->
                        element.setAttribute("style", element.getAttribute("style") + "; page-break-before: always"));
            } while (!onNewPage.isEmpty());
        }

        private Box root() {
            return Objects.requireNonNull(renderer.getRootBox());
        }

        private List<PageBox> pages() {
            return Objects.requireNonNull(root().getLayer()).getPages();
        }

        byte[] print(String xhtml) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try {
                layOut();
                input.add(xhtml.getBytes(StandardCharsets.UTF_8));
                renderer.createPDF(out);
            } catch (DocumentException e) {
                throw RenderException.of(
                        faults.place(), e, RenderMessage.LAYOUT_FAILED, String.valueOf(e.getMessage()));
            }
            faults.throwIfAny();
            return out.toByteArray();
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
            input.addAll(agent.used());
            attachments.forEach(attachment -> input.add(attachment.content()));
            input.add(info.toString().getBytes(StandardCharsets.UTF_8));
            PdfIdentity.identify(writer(), input);
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
