package org.quaybook.render;

import java.time.LocalDate;
import java.util.List;

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

    /** Something of all that guides are made of. */
    private static final String FIRST_PAGE = """
            <html xmlns="http://www.w3.org/1999/xhtml"><head><title>a</title><style>
            @page { size: A5; margin: 10mm; @bottom-center { content: counter(page) } }
            .a th { border-bottom: 0.2mm solid #b5b5b5; font-weight: 600; page-break-inside: avoid }
            </style></head><body>
            <h1 id="a">a</h1><p><b>a</b> <i>a</i> <a href="#a">230 V</a></p><ol><li>a</li></ol><ul><li>a</li></ul>
            <table class="a"><thead><tr><th>a</th></tr></thead><tbody><tr><td>a</td></tr></tbody></table>
            <svg xmlns="http://www.w3.org/2000/svg" width="9" height="9" aria-label="a"><path d="M0 0L9 9"
            stroke="#000000"/><circle r="4"/><text y="9">a</text></svg></body></html>
            """;

    /**
     * Lays out a document and writes it.
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
     * Lays out a document, writes it and puts files into it.
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
        return layOut(xhtml, info, resources, scale).pdf(attachments);
    }

    /**
     * Lays out a document, without writing it.
     *
     * @param xhtml the whole document
     * @param info what its PDF says about itself
     * @param resources the style sheets and pictures that it may name
     * @param scale of everything, as above
     * @throws RenderException as above
     */
    public LaidOut layOut(String xhtml, DocumentInfo info, Resources resources, double scale) {
        return new LaidOut(xhtml, info, resources, scale);
    }

    /**
     * Reads fonts and loads the engine by laying out a page that nobody sees: for a thread that has nothing else to do while
     * another one finds out what is to be printed. Changes nothing but the time that the first document takes.
     */
    public static void makeReady() {
        DocumentInfo nobody = new DocumentInfo("a", "a", "a", "en", LocalDate.EPOCH);
        new Handbook().toPdf(FIRST_PAGE, nobody, Resources.none());
    }
}
