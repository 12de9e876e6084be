package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.record.Branding;
import org.quaybook.record.RecordLink;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Label;
import org.quaybook.render.LabelSheet;
import org.quaybook.render.RenderException;
import org.quaybook.render.Sheet;
import org.quaybook.render.SheetLines;
import org.quaybook.text.Words;

/**
 * The warning and information labels of an installation: only those that the job calls for, each as large as its reader
 * is far, in the order of a walk from the outside to the battery.
 */
public final class Labels {

    private final LabelFacts facts;
    private final Branding branding;
    private final RecordLink link;

    private Labels(LabelFacts facts, Branding branding, RecordLink link) {
        this.facts = facts;
        this.branding = branding;
        this.link = link;
    }

    /**
     * Makes the label sheets, A4.
     *
     * @param words the language of the labels
     * @param link what the QR of the record holds
     * @throws RenderException if a text of the job is too long for any label or has a character that no font has
     */
    public static LabelsPrinted sheet(Assessment assessment, Words words, Branding branding, RecordLink link) {
        return new Labels(new LabelFacts(assessment, words), branding, link).print();
    }

    /** All labels of the job before they have a size, in walking order. */
    static List<LabelDesign> designs(Assessment assessment, Words words, Branding branding, RecordLink link) {
        return new Labels(new LabelFacts(assessment, words), branding, link).designs();
    }

    private List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        designs.addAll(new LabelsOutside(facts).designs());
        LabelsBoard board = new LabelsBoard(facts);
        designs.addAll(board.designs());
        designs.addAll(new LabelsRecord(facts, branding, link).designs(board.place()));
        designs.addAll(new LabelsUse(facts).designs());
        designs.addAll(new LabelsInverter(facts).designs());
        designs.addAll(new LabelsBattery(facts).designs());
        designs.sort(Comparator.comparing(LabelDesign::spot));
        return designs;
    }

    /** Labels with their size. Wide ones of a spot come first, so that narrow ones share a row. */
    static List<LabelSetter.Sized> size(List<LabelDesign> designs, Assessment assessment, Words words) {
        List<LabelSetter.Sized> walk = new ArrayList<>();
        List<Diagnostic> refused = new ArrayList<>();
        for (LabelDesign design : designs) {
            try {
                walk.add(LabelSetter.size(design, stamp(design, assessment, words), words));
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

    private static String stamp(LabelDesign design, Assessment assessment, Words words) {
        return words.say(
                "labels.stamp",
                assessment.job().job().number(),
                assessment.job().job().revision(),
                design.id());
    }

    private LabelsPrinted print() {
        List<LabelSetter.Sized> sized = size(designs(), facts.it(), facts.words());
        List<LabelNote> notes = sized.stream().map(one -> one.design().note()).toList();
        LabelsPlacing placing = new LabelsPlacing(facts.words());
        List<Label> labels = new ArrayList<>();
        for (LabelSetter.Sized one : sized) {
            Label label = one.label();
            labels.add(label.withCaption(placing.caption(one.design().note(), labels.size() + 1, label.width())));
        }
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
