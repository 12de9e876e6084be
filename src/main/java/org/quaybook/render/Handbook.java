package org.quaybook.render;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Makes a paged PDF from XHTML and CSS.
 *
 * <p>The text is well-formed XML without a document type. Page size and margins come from {@code @page} in its CSS.
 * Fonts are Source Sans Pro (also for generic families) and Roboto Condensed; what they lack is taken from DejaVu Sans;
 * all are embedded. Scripts that are written from right to left or join their letters are not supported. {@code svg} and
 * {@code img} with a name in {@code .svg} are drawn as vectors with their text as text. Headings become bookmarks. Links
 * lead to a place in the document or to http and https. Safe for use by several threads.
 */
public final class Handbook {

    private static final float DOTS_PER_POINT = ITextRenderer.DEFAULT_DOTS_PER_POINT;
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
        Faults faults = new Faults(info.title());
        Document document = Xml.parse(xhtml, info.title());
        XhtmlRules.apply(document, faults);
        return LayoutLog.hear(faults, () -> new Layout(xhtml, info, resources, faults).print(document));
    }

    /** One run of the layout engine. */
    private static final class Layout extends DefaultPDFCreationListener {

        private final String xhtml;
        private final DocumentInfo info;
        private final Faults faults;
        private final LayoutAgent agent;
        private final ITextRenderer renderer;

        Layout(String xhtml, DocumentInfo info, Resources resources, Faults faults) {
            this.xhtml = xhtml;
            this.info = info;
            this.faults = faults;
            LayoutPaper paper = new LayoutPaper(DOTS_PER_POINT);
            this.agent = new LayoutAgent(paper, DOTS_PER_PIXEL, resources, faults);
            this.renderer = new ITextRenderer(
                    DOTS_PER_POINT,
                    DOTS_PER_PIXEL,
                    paper,
                    agent,
                    new LayoutFonts(faults),
                    new LayoutElements(paper, agent, DOTS_PER_PIXEL, faults),
                    new LayoutText(faults));
        }

        byte[] print(Document document) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try {
                renderer.setListener(this);
                renderer.setDocument(document, null, new LayoutLanguage());
                renderer.layout();
                faults.throwIfAny();
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
            writer().setFullCompression();
            PdfIdentity.describe(writer(), info);
        }

        @Override
        public void preWrite(ITextRenderer engine, int pages) {
            // The engine would put the title element of the document over the title given.
            engine.getOutputDevice().setMetadata("title", info.title());
        }

        @Override
        public void onClose(ITextRenderer engine) {
            List<byte[]> input = new ArrayList<>(agent.used());
            input.add(xhtml.getBytes(StandardCharsets.UTF_8));
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
