package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.Paper;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.render.Booklet;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Enlarged;
import org.quaybook.render.Handbook;
import org.quaybook.render.LaidOut;
import org.quaybook.render.PageFit;
import org.quaybook.render.PageFormat;
import org.quaybook.render.PartEnd;
import org.quaybook.render.Resources;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/**
 * The owner's guide: a small book for whoever lives with the installation and is no electrician. Several threads may lay
 * it out at the same time.
 */
public final class Guide {

    /** Share of a page that setting it closer frees, and the most that is tried. */
    private static final double GAIN_PER_PAGE = 0.2;

    private static final double MOST_GAINED = 0.3;

    /** Class of the parts of the document that are chapters. */
    private static final String CHAPTER = "chapter";

    /** From the size of the text around it down to where its small print is still above 7 pt. */
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
     * Lays the guide out. Its pages hold nothing personal of the owner.
     *
     * @param format the page; templates are written for A5
     * @throws org.quaybook.render.RenderException if a template or picture is faulty, or a text has a character that no
     *     font can print
     */
    public GuidePages on(PageFormat format) {
        CardSetting card = card(format);
        LaidOut loose = laidOut(model.printed(format, card, Set.of()), format);
        Set<Integer> close = closer(loose.ends(CHAPTER));
        LaidOut pages = close.isEmpty() ? loose : laidOut(model.printed(format, card, close), format);
        return new GuidePages(pages, card, close);
    }

    /**
     * Lays the guide out as another one of the same job is: both have the same chapters on the same pages.
     *
     * @param format the page that the other one is on
     * @param other the guide for another reader, in the same language
     * @throws org.quaybook.render.RenderException as above
     */
    public GuidePages like(GuidePages other, PageFormat format) {
        LaidOut pages = laidOut(model.printed(format, other.card(), other.close()), format);
        return chapterPages(pages).equals(chapterPages(other.pages()))
                ? new GuidePages(pages, other.card(), other.close())
                : on(format);
    }

    /** First and last page of each chapter. */
    private static List<List<Integer>> chapterPages(LaidOut pages) {
        return pages.ends(CHAPTER).stream()
                .map(end -> List.of(end.firstPage(), end.lastPage()))
                .toList();
    }

    /**
     * The small guide on sheets to be printed on both sides and folded, its last sheet filled up with pages for notes.
     *
     * @param paper whose whole sheets are printed on
     * @param pages of the guide on half of such a sheet
     * @param small its PDF
     */
    public byte[] booklet(Paper paper, GuidePages pages, byte[] small) {
        PageFormat half = paper.small();
        List<Booklet.Part> parts = new ArrayList<>(List.of(new Booklet.Part(small, 0)));
        int filled = pages.pages().pages();
        int missing = Booklet.missing(filled);
        if (missing > 0) {
            // An odd page lies on the right.
            int before = filled % 2 == 0 ? 2 : 1;
            byte[] notes = laidOut(model.notes(half, before, missing), half).pdf(List.of(), filled + 1 - before);
            parts.add(new Booklet.Part(notes, before));
        }
        return Booklet.toPdf(
                parts,
                half,
                /* width= */ paper.full().height(),
                /* height= */ paper.full().width(),
                words.say("guide.booklet"),
                info());
    }

    /**
     * The small guide on whole pages of the same shape: it has the same text on each page.
     *
     * @param paper whose small page is enlarged to the full one
     * @param small its PDF
     * @throws IllegalArgumentException if the two pages differ in shape
     */
    public byte[] enlarged(Paper paper, byte[] small) {
        return Enlarged.toPdf(small, paper.small(), paper.full(), info());
    }

    private LaidOut laidOut(Map<String, Object> printed, PageFormat format) {
        return new Handbook().layOut(templates.fill("guide/guide.ftlx", printed), info(), resources(), format.scale());
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

    /** The quick card is one page in every language: the fullest that is, in the largest type. */
    private CardSetting card(PageFormat format) {
        for (CardDetail detail : CardDetail.values()) {
            Optional<String> size = CARD_SIZES.size(cards(format, detail), CHAPTER);
            if (size.isPresent()) {
                return new CardSetting(detail, size.get());
            }
        }
        throw CARD_SIZES.tooLarge(cards(format, CardDetail.SHORT), CHAPTER, info());
    }

    private LaidOut cards(PageFormat format, CardDetail detail) {
        return laidOut(model.cards(format, detail, CARD_SIZES.sizes()), format);
    }

    GuideModel model() {
        return model;
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
