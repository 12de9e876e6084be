package org.quaybook.pack.guide;

import java.util.List;
import org.quaybook.render.Attachment;
import org.quaybook.render.LaidOut;
import org.quaybook.render.PageFormat;

/** The guide on its pages; for one thread. */
public final class GuidePages {

    private final PageFormat format;
    private final LaidOut laidOut;

    GuidePages(PageFormat format, LaidOut laidOut) {
        this.format = format;
        this.laidOut = laidOut;
    }

    PageFormat format() {
        return format;
    }

    /** How many there are. */
    public int pages() {
        return laidOut.pages();
    }

    /**
     * Makes the PDF.
     *
     * @param attachments files that travel inside it
     */
    public byte[] pdf(List<Attachment> attachments) {
        return laidOut.pdf(attachments);
    }
}
