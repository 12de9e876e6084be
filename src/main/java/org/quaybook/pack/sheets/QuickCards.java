package org.quaybook.pack.sheets;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.guide.CardDetail;
import org.quaybook.pack.guide.Palette;
import org.quaybook.pack.guide.QuickCard;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.record.FactSheet;
import org.quaybook.record.RecordLink;
import org.quaybook.record.Rows;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Lazy;
import org.quaybook.render.PageFit;
import org.quaybook.render.QrCode;
import org.quaybook.render.Resources;
import org.quaybook.render.TemplateFunction;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The quick card alone, to laminate: a page a language, two of them the front and the back of one card. */
public final class QuickCards {

    /** From a size for wet hands and poor light down to the least that is still read at arm's length (no source). */
    private static final PageFit FIT = new PageFit(
                    List.of("13", "12.5", "12", "11.5", "11", "10.5", "10", "9.5", "9", "8.5", "8"))
            .startingAt("10");

    /** With this module the code of a usual address is some 20 mm wide: read from 20 cm away (common practice, no source). */
    private static final double MODULE_MILLIMETRES = 0.55;

    private QuickCards() {}

    /**
     * Makes the card as a PDF, in all its languages as full as fits in each.
     *
     * @param editions the languages in their order, at least one
     * @throws org.quaybook.render.RenderException if a language does not fit on its page, or a template is faulty
     */
    public static byte[] pdf(List<Edition> editions, Branding branding, Templates templates) {
        Assessment it = editions.get(0).assessment();
        Words first = editions.get(0).words();
        String title = first.say("sheets.card.title", it.job().craft().name());
        Rows whole = new Rows()
                .put("title", title)
                .put("language", first.language())
                .put("palette", new Palette(branding).facts())
                .put("paper", SheetPaper.of(it).card());
        DocumentInfo info = new DocumentInfo(
                title,
                it.installer().firm(),
                first.say("sheets.card.subject"),
                first.language(),
                it.job().job().date());
        List<Function<String, String>> wordings = Arrays.stream(CardDetail.values())
                .map(detail -> new Lazy<>(() ->
                        Map.of("pages", pages(editions, detail, templates), "mostSteps", mostSteps(editions, detail))))
                .<Function<String, String>>map(cards -> size -> {
                    cards.get().forEach(whole::put);
                    return templates.fill(
                            "sheets/quick-cards.ftlx", whole.put("size", size).map());
                })
                .toList();
        return FIT.toPdf(editions.size(), wordings, info, Resources.of(templates));
    }

    /** Of the longest list, that for danger; numbers of two digits need more room. */
    private static int mostSteps(List<Edition> editions, CardDetail detail) {
        return editions.stream()
                .map(edition -> QuickCard.of(edition.assessment(), edition.words(), detail)
                        .get("danger"))
                .mapToInt(steps -> ((List<?>) steps).size())
                .max()
                .orElse(0);
    }

    private static List<String> pages(List<Edition> editions, CardDetail detail, Templates templates) {
        return editions.stream()
                .map(edition ->
                        templates.fill("sheets/quick-card.ftlx", card(edition.assessment(), edition.words(), detail)))
                .toList();
    }

    private static Map<String, Object> card(Assessment it, Words words, CardDetail detail) {
        RecordLink link = RecordLink.of(it);
        return new Rows()
                .put("facts", new FactSheet(it, words).all())
                .put("card", QuickCard.of(it, words, detail))
                .put("cardRuns", detail.runs())
                .put("language", words.language())
                .put("blocked", it.forbidsHandover())
                .put("qr", QrCode.of(link.address()).toSvg(MODULE_MILLIMETRES))
                .put("say", (TemplateFunction) arguments -> words.say(
                        arguments.get(0).toString(),
                        arguments.subList(1, arguments.size()).toArray()))
                .map();
    }
}
