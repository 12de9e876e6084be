package org.quaybook.pack.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Account;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Mentions;
import org.quaybook.job.Shore;
import org.quaybook.pack.guide.Palette;
import org.quaybook.record.Branding;
import org.quaybook.record.Discretion;
import org.quaybook.record.RecordFacts;
import org.quaybook.record.RecordLink;
import org.quaybook.record.Rows;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.PageFit;
import org.quaybook.render.QrCode;
import org.quaybook.render.Resources;
import org.quaybook.render.TemplateFunction;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/**
 * A page each for those who ask for one thing only: the harbour or site office, the surveyor or insurer, the next
 * electrician before he travels; several pages for an installation too large for one. What the job does not say is a line to write on. Nothing of the owner is in them.
 */
public final class SingleSheets {

    /** Down to the least that is still read without effort on paper (common practice, no source). */
    private static final PageFit FIT =
            new PageFit(List.of("10.5", "10", "9.5", "9.25", "9", "8.75", "8.5", "8.25", "8", "7.75", "7.5"));

    /** Of what does not fit on one page and so has room to be read without effort (common practice, no source). */
    private static final String READING_SIZE = "9.5";

    /** Read from 15 cm away, the paper in the other hand (common practice, no source). */
    private static final double MODULE_MILLIMETRES = 0.5;

    private final Assessment it;
    private final Words words;
    private final Branding branding;
    private final Templates templates;
    private final SheetNotes notes;

    private SingleSheets(Assessment it, Words words, Branding branding, Templates templates) {
        this.it = it;
        this.words = words;
        this.branding = branding;
        this.templates = templates;
        this.notes = new SheetNotes(it, words);
    }

    /**
     * The sheets of a job as PDFs by file name; the harbour's only where there is shore power.
     *
     * @throws org.quaybook.render.RenderException if a template is faulty
     */
    public static Map<String, byte[]> pdfs(Assessment it, Words words, Branding branding, Templates templates) {
        SingleSheets sheets = new SingleSheets(it, words, branding, templates);
        Map<String, byte[]> files = new LinkedHashMap<>();
        Shore shore = it.job().shore();
        if (shore != null) {
            files.put(
                    "sheet-harbour.pdf",
                    sheets.pdf(
                            FIT,
                            "harbour",
                            words.say("sheets.harbour.title."
                                    + kind(it.job().craft().kind())),
                            new HarbourSheet(sheets.notes, shore).facts()));
        }
        files.put(
                "sheet-surveyor.pdf",
                sheets.pdf(
                        FIT.startingAt("9"),
                        "surveyor",
                        words.say("sheets.surveyor.title"),
                        List.of(new SurveyorSheet(sheets.notes).facts())));
        files.put(
                "sheet-electrician.pdf",
                sheets.pdf(
                        FIT.startingAt("9.5"),
                        "electrician",
                        words.say("sheets.electrician.title"),
                        List.of(new ElectricianSheet(sheets.notes).facts())));
        return files;
    }

    /**
     * The sheet for whoever buys the installation.
     *
     * @param it the job without its former owner
     * @param accounts those that went with it
     * @param seller whom the sheet does not name
     * @throws org.quaybook.render.RenderException as above
     */
    public static byte[] buyers(
            Assessment it,
            Words words,
            List<Account> accounts,
            Mentions seller,
            Branding branding,
            Templates templates) {
        SingleSheets sheets = new SingleSheets(it, words, branding, templates);
        return sheets.pdf(
                FIT.startingAt("9"),
                "buyer",
                words.say("sheets.buyer.title"),
                List.of(new BuyerSheet(sheets.notes, accounts, seller).facts()));
    }

    /** Last part of keys that differ by the kind of craft. */
    static String kind(CraftKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /**
     * Lays out a sheet.
     *
     * @param id names its template
     * @param facts what is on it, the one that says most first: the first that fits on a page, else the last on several
     */
    private byte[] pdf(PageFit fit, String id, String title, List<Map<String, Object>> facts) {
        Discretion discretion = Discretion.ofOwner(it, words.say("record.blanked"));
        RecordLink link = RecordLink.of(it);
        Rows model = new Rows()
                .put("facts", discretion.blank(new RecordFacts(it, words).all()))
                .put("id", id)
                .put("title", title)
                .put("language", words.language())
                .put("palette", new Palette(branding).facts())
                .put("paper", SheetPaper.of(it).sheet())
                .put("kind", kind(it.job().craft().kind()))
                .put("blocked", it.forbidsHandover())
                .put("qr", QrCode.of(link.address()).toSvg(MODULE_MILLIMETRES))
                .put("say", (TemplateFunction) arguments -> words.say(
                        arguments.get(0).toString(),
                        arguments.subList(1, arguments.size()).toArray()));
        DocumentInfo info = new DocumentInfo(
                words.say("sheets.document-title", title, it.job().craft().name()),
                it.installer().firm(),
                words.say("guide.subject"),
                words.language(),
                it.job().job().date());
        List<Function<String, String>> onePage = facts.stream()
                .map(discretion::blank)
                .<Function<String, String>>map(sheet -> size -> filled(model, sheet, size, false))
                .toList();
        Object last = discretion.blank(facts.get(facts.size() - 1));
        return fit.toPdf(onePage, () -> filled(model, last, READING_SIZE, true), info, Resources.of(templates));
    }

    private String filled(Rows model, Object sheet, String size, boolean runsOn) {
        return templates.fill(
                "sheets/sheet.ftlx",
                model.put("sheet", sheet)
                        .put("size", size)
                        .put("runsOn", runsOn)
                        .map());
    }
}
