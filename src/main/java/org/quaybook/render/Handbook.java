package org.quaybook.render;

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
}
