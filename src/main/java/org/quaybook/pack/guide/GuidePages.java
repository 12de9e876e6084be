package org.quaybook.pack.guide;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.quaybook.render.Attachment;
import org.quaybook.render.LaidOut;

/**
 * A guide on its pages; for one thread.
 *
 * @param pages with all its chapters
 * @param card how the quick card is set
 * @param close the places of the chapters, from 0, that are set closer than the others
 */
public record GuidePages(LaidOut pages, CardSetting card, Set<Integer> close) {

    public GuidePages {
        close = new TreeSet<>(close);
    }

    /**
     * Its PDF.
     *
     * @param attachments files that travel inside it
     */
    public byte[] pdf(List<Attachment> attachments) {
        return pages.pdf(attachments);
    }
}
