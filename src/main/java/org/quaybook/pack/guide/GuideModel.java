package org.quaybook.pack.guide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.pictures.Pictures;
import org.quaybook.record.Branding;
import org.quaybook.record.FactSheet;
import org.quaybook.record.Rows;
import org.quaybook.render.InlineSvg;
import org.quaybook.render.Lazy;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Prose;
import org.quaybook.render.TemplateFunction;
import org.quaybook.text.Words;

/** What the templates of the owner's guide see: the facts of the job, and chapter by chapter what its owner needs. */
final class GuideModel {

    private final Assessment it;
    private final Briefing brief;
    private final Words words;
    private final Branding branding;
    private final Lazy<Map<String, InlineSvg>> pictures;
    private final Lazy<Map<String, Object>> all;

    GuideModel(Assessment it, Words words, Branding branding) {
        this.it = it;
        this.brief = Briefing.of(it, words);
        this.words = words;
        this.branding = branding;
        this.pictures = new Lazy<>(() -> Pictures.of(it, words, new Palette(branding).look()));
        this.all = new Lazy<>(this::make);
    }

    /**
     * The model for a printed guide.
     *
     * @param card how the quick card is set
     * @param closeChapters the places of the chapters, from 0, that are set closer than the others
     */
    Map<String, Object> printed(PageFormat format, CardSetting card, Set<Integer> closeChapters) {
        Map<String, Object> printed = part("whole", format);
        printed.put("card", card(card.detail()));
        printed.put("cardRuns", card.detail().runs());
        printed.put("cardSize", card.size());
        printed.put("closeChapters", List.copyOf(closeChapters));
        return printed;
    }

    /**
     * The same for the quick card alone, once in each size, to see in which it fits on its page.
     *
     * @param detail how much it says
     * @param cardSizes of its text, in points
     */
    Map<String, Object> cards(PageFormat format, CardDetail detail, List<String> cardSizes) {
        Map<String, Object> cards = part("cards", format);
        cards.put("card", card(detail));
        cards.put("cardRuns", detail.runs());
        cards.put("cardSizes", cardSizes);
        return cards;
    }

    /**
     * The same for pages for notes that follow the guide.
     *
     * @param emptyPages before them, so that they have the side that they will have behind the guide
     */
    Map<String, Object> notes(PageFormat format, int emptyPages, int notePages) {
        Map<String, Object> notes = part("notes", format);
        notes.put("emptyPages", emptyPages);
        notes.put("notePages", notePages);
        return notes;
    }

    private Map<String, Object> part(String part, PageFormat format) {
        Map<String, Object> printed = new LinkedHashMap<>(all());
        printed.put("part", part);
        printed.put("page", format.lengths());
        printed.put("closeChapters", List.of());
        return printed;
    }

    /** The same whatever it is printed on; made at the first use, whichever thread asks first. */
    Map<String, Object> all() {
        return all.get();
    }

    /** The pictures by their names; made at the first use. */
    Map<String, InlineSvg> pictures() {
        return pictures.get();
    }

    private Map<String, Object> make() {
        RunChapter run = new RunChapter(brief);
        return new Rows()
                .put("facts", new FactSheet(it, words).all())
                .put("language", words.language())
                .put("title", title())
                .put("palette", new Palette(branding).facts())
                .put("pictures", pictures())
                .put("logo", logoName(branding).orElse(""))
                .put("blocked", it.forbidsHandover())
                .put("aboard", brief.names().aboard())
                .put("post", brief.names().post())
                .put("chapters", new Chapters(brief, branding).rows())
                .put("tips", tips())
                .put("card", card(CardDetail.FULL))
                .put("cardRuns", CardDetail.FULL.runs())
                .put("safety", new SafetyChapter(brief).facts())
                .put("run", run.facts())
                .put("search", run.search())
                .put("together", new TogetherChapter(brief).facts())
                .put("volts", new VoltsChapter(brief).facts())
                .put("cutout", new CutOutChapter(brief).facts())
                .put("normal", new NormalChapter(brief).facts())
                .put("recharge", new RechargeChapter(brief).facts())
                .put("mains", new ShoreChapter(brief).facts())
                .put("map", new SocketsChapter(brief).facts())
                .put("rehearsal", new RehearsalChapter(brief).facts())
                .put("away", new AwayChapter(brief).facts())
                .put("seasons", new SeasonsChapter(brief).facts())
                .put("care", new CareChapter(brief).facts())
                .put("troubles", new TroubleChapter(brief).rows())
                .put("recovery", new RecoveryChapter(brief).facts())
                .put("sheet", new SheetChapter(brief).facts())
                .put("workings", new WorkingsChapter(brief).groups())
                .put("own", branding.chapter(words.language()).map(Prose::xhtml).orElse(""))
                .put("terms", new Glossary(brief).terms())
                .put("contact", new ContactChapter(brief).facts())
                .put("say", (TemplateFunction) this::say)
                .map();
    }

    private Map<String, Object> card(CardDetail detail) {
        return new QuickCard(brief, detail).facts();
    }

    String title() {
        return words.say("guide.document-title", it.job().craft().name());
    }

    /** The name that the templates know the logo by; empty without one. */
    static Optional<String> logoName(Branding branding) {
        return branding.logoName().map(name -> "logo" + name.substring(name.lastIndexOf('.')));
    }

    private String say(List<Object> arguments) {
        return words.say(
                arguments.get(0).toString(),
                arguments.subList(1, arguments.size()).toArray());
    }

    private List<String> tips() {
        String mistake = it.job().ownersFirstMistake();
        boolean shore = brief.has().shore();
        return brief.lines("tip")
                .sayIf(mistake != null, "mistake", mistake == null ? "" : mistake)
                .say("rest")
                .say(shore ? "heat" : "heat.no-shore", words.say("guide.sheet.source.shore"))
                .say(brief.has().leadAcid() ? "full.lead" : "full.lithium")
                .list();
    }
}
