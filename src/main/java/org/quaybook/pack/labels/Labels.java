package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.LabelSheet;
import org.quaybook.render.RenderException;
import org.quaybook.render.Sheet;
import org.quaybook.render.SheetLines;
import org.quaybook.render.Stock;
import org.quaybook.text.Words;

/**
 * The warning and information labels of an installation: only those that the job calls for, each as large as its reader
 * is far, in the order of a walk from the outside to the battery.
 */
public final class Labels {

    /** Of the language that stands first. */
    private final LabelFacts facts;

    private final List<Edition> editions;
    private final Branding branding;
    private final RecordLink link;

    private Labels(List<Edition> editions, Branding branding, RecordLink link) {
        this.editions = List.copyOf(editions);
        this.facts = facts(editions.get(0));
        this.branding = branding;
        this.link = link;
    }

    private static LabelFacts facts(Edition edition) {
        return new LabelFacts(edition.assessment(), edition.words());
    }

    /**
     * Makes the label sheets, A4.
     *
     * @param editions the job in the languages of its labels: one, or two that stand on each label
     * @param link what the QR of the record holds
     * @throws RenderException if a text of the job is too long for any label or has a character that no font has
     */
    public static LabelsPrinted sheet(List<Edition> editions, Branding branding, RecordLink link) {
        return new Labels(editions, branding, link).print();
    }

    /** All labels of the job before they have a size, in walking order. */
    static List<LabelDesign> designs(List<Edition> editions, Branding branding, RecordLink link) {
        return new Labels(editions, branding, link).designs();
    }

    private List<LabelDesign> designs() {
        List<LabelDesign> first = designs(facts);
        if (editions.size() == 1) {
            return first;
        }
        List<String> languages =
                editions.stream().map(edition -> edition.words().language()).toList();
        return LabelsBilingual.of(languages, first, designs(facts(editions.get(1))));
    }

    private List<LabelDesign> designs(LabelFacts facts) {
        List<LabelDesign> designs = new ArrayList<>();
        designs.addAll(new LabelsOutside(facts).designs());
        LabelsBoard board = new LabelsBoard(facts);
        designs.addAll(board.designs());
        designs.addAll(new LabelsBreakers(facts, board.place()).designs());
        designs.addAll(new LabelsRecord(facts, branding, link).designs(board.place()));
        designs.addAll(new LabelsUse(facts).designs());
        designs.addAll(new LabelsInverter(facts).designs());
        designs.addAll(new LabelsEngines(facts).designs());
        designs.addAll(new LabelsBattery(facts).designs());
        designs.addAll(new LabelsFuses(facts).designs());
        designs.addAll(new LabelsTerminals(facts).designs());
        designs.addAll(new LabelsCables(facts).designs());
        designs.sort(Comparator.comparing(LabelDesign::spot));
        return designs;
    }

    /** Labels with their size. Wide ones of a spot come first, so that narrow ones share a row. */
    static List<LabelSetter.Sized> size(List<LabelDesign> designs, List<Edition> editions) {
        Edition first = editions.get(0);
        List<LabelRoom> rooms = LabelRoom.of(Stock.A4, Dots.DPI_300);
        List<Words> words = editions.stream().map(Edition::words).toList();
        List<LabelSetter.Sized> walk = new ArrayList<>();
        List<Diagnostic> refused = new ArrayList<>();
        for (LabelDesign design : designs) {
            try {
                walk.addAll(LabelSetter.size(design, facts(first)::stamp, words, rooms));
            } catch (RenderException e) {
                refused.addAll(e.diagnostics());
            }
        }
        if (!refused.isEmpty()) {
            throw new RenderException(refused);
        }
        walk.sort(
                Comparator.comparing((LabelSetter.Sized sized) -> sized.design().spot())
                        .thenComparing(sized -> -sized.label().width()));
        return LabelsOrder.fill(walk, Sheet.A4);
    }

    private LabelsPrinted print() {
        List<LabelSetter.Sized> sized = size(designs(), editions);
        List<LabelNote> notes = sized.stream().map(one -> one.design().note()).toList();
        LabelsPlacing placing = new LabelsPlacing(facts.words());
        List<Label> labels = new ArrayList<>();
        for (LabelSetter.Sized one : sized) {
            Label label = one.label();
            labels.add(label.withCaption(placing.caption(one.design().note(), labels.size() + 1, label.width())));
        }
        List<Label> plain = sized.stream().map(LabelSetter.Sized::label).toList();
        labels.addAll(new LabelsMap(facts.words(), placing).pieces(notes, plain, Sheet.A4.room()));
        labels.addAll(placing.list(notes, Sheet.A4.room()));
        return new LabelsPrinted(LabelSheet.toPdf(labels, Sheet.A4, lines(), info()), notes);
    }

    private SheetLines lines() {
        String job = facts.say(
                "sheet.header",
                facts.job().job().number(),
                facts.job().craft().name(),
                facts.job().job().revision(),
                facts.job().job().date());
        long forbidding =
                facts.it().findings().stream().filter(Finding::forbids).count();
        return new SheetLines(
                forbidding == 0 ? job : facts.say("sheet.forbidden", forbidding, job),
                facts.say("sheet.footer"),
                facts.say("sheet.rule"));
    }

    private DocumentInfo info() {
        return new DocumentInfo(
                facts.say("sheet.title", facts.job().craft().name()),
                facts.it().installer().firm(),
                facts.job().job().number(),
                facts.words().language(),
                facts.job().job().date());
    }
}
