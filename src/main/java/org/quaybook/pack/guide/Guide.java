package org.quaybook.pack.guide;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.Paper;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.render.Attachment;
import org.quaybook.render.Booklet;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Handbook;
import org.quaybook.render.PageFit;
import org.quaybook.render.PageFormat;
import org.quaybook.render.PartEnd;
import org.quaybook.render.Resources;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The owner's guide: a small book for whoever lives with the installation and is no electrician. */
public final class Guide {

    /** From the size of the text around it down to where its small print is still above 7 pt. */
    /** Share of a page that setting it closer frees, and the most that is tried. */
    private static final double GAIN_PER_PAGE = 0.2;

    private static final double MOST_GAINED = 0.3;

    private static final PageFit CARD_SIZES = new PageFit(List.of("10.5", "10", "9.5", "9", "8.6"));

    private final Assessment assessment;
    private final Words words;
    private final Branding branding;
    private final Templates templates;
    private final GuideModel model;

    /**
     * The guide of a job.
     *
     * @param edition the job with figures and findings, and the reader's language; if a finding forbids handing over, the
     *     cover says so
     * @param branding the installer's look
     * @param templates where {@code guide/guide.ftlx} and the files that it names are found
     */
    public Guide(Edition edition, Branding branding, Templates templates) {
        this.assessment = edition.assessment();
        this.words = edition.words();
        this.branding = branding;
        this.templates = templates;
        this.model = new GuideModel(assessment, words, branding);
    }

    /**
     * Makes the guide as a PDF. Its pages hold nothing personal of the owner.
     *
     * @param format the page; templates are written for A5
     * @param attachments files that travel inside the PDF
     * @throws org.quaybook.render.RenderException if a template or picture is faulty, or a text has a character that no
     *     font can print
     */
    public byte[] pdf(PageFormat format, List<Attachment> attachments) {
        return pdf(format, 0, attachments);
    }

    /**
     * The small guide on sheets to be printed on both sides and folded, its last sheet filled up with pages for notes.
     *
     * @param paper whose whole sheets are printed on
     * @param pages of the small guide
     */
    public byte[] booklet(Paper paper, int pages) {
        PageFormat small = paper.small();
        int missing = Booklet.missing(pages);
        return Booklet.toPdf(
                pdf(small, missing, List.of()),
                small,
                /* width= */ paper.full().height(),
                /* height= */ paper.full().width(),
                words.say("guide.booklet"),
                info());
    }

    private byte[] pdf(PageFormat format, int notes, List<Attachment> attachments) {
        String cardSize = cardSize(format);
        String loose = templates.fill("guide/guide.ftlx", model.printed(format, notes, cardSize, Set.of(), false));
        Set<Integer> close = closer(new Handbook().ends(loose, "chapter", info(), resources(), format.scale()));
        String xhtml = close.isEmpty()
                ? loose
                : templates.fill("guide/guide.ftlx", model.printed(format, notes, cardSize, close, false));
        return new Handbook().toPdf(xhtml, info(), resources(), format.scale(), attachments);
    }

    /** The chapters to set closer, by their place, because a few lines of them would stand alone on a page. */
    private static Set<Integer> closer(List<PartEnd> chapters) {
        Set<Integer> close = new TreeSet<>();
        int opening = 0;
        for (int i = 0; i < chapters.size() - 1; i++) {
            PartEnd chapter = chapters.get(i);
            if (i > 0 && chapter.firstPage() > chapters.get(i - 1).lastPage()) {
                opening = i;
            }
            boolean nextOnNewPage = chapters.get(i + 1).firstPage() > chapter.lastPage();
            int fullPages = chapter.lastPage() - chapters.get(opening).firstPage();
            if (nextOnNewPage && chapter.filled() < Math.min(fullPages * GAIN_PER_PAGE, MOST_GAINED)) {
                IntStream.rangeClosed(opening, i).forEach(close::add);
            }
        }
        return close;
    }

    /** The quick card is one page in every language. */
    private String cardSize(PageFormat format) {
        return CARD_SIZES.size(
                1,
                size -> templates.fill("guide/guide.ftlx", model.printed(format, 0, size, Set.of(), true)),
                info(),
                resources(),
                format.scale());
    }

    private DocumentInfo info() {
        return new DocumentInfo(
                model.title(),
                assessment.installer().firm(),
                words.say("guide.subject"),
                words.language(),
                assessment.job().job().date());
    }

    private Resources resources() {
        Resources resources = Resources.of(templates);
        return GuideModel.logoName(branding)
                .map(name -> resources.with(name, branding.logo()))
                .orElse(resources);
    }
}
