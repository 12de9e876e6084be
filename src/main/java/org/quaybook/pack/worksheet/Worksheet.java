package org.quaybook.pack.worksheet;

import java.util.List;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.pack.changes.Changes;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.reference.Rulebook;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Handbook;
import org.quaybook.render.Resources;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The installer's own paper: to take on board, to write on with a pencil, to sign and to keep. Never published. */
public final class Worksheet {

    private static final String TEMPLATE = "worksheet/worksheet.ftlx";

    private Worksheet() {}

    /**
     * Makes the worksheet of a calculated job as a PDF. Holds nothing of the owner; testers are named as the job names them.
     *
     * @param assessment the job with figures and findings; if a finding forbids handing over, every page says so
     * @param labels which label goes where
     * @throws org.quaybook.render.RenderException if a template is faulty, or a text has a character that no font can print
     */
    public static byte[] pdf(Assessment assessment, Words words, Templates templates, List<LabelNote> labels) {
        WorksheetModel model =
                new WorksheetModel(assessment.job(), assessment.tables().rules(), words);
        return print(
                model,
                templates.fill(TEMPLATE, model.whole(assessment, labels)),
                templates,
                assessment.installer(),
                assessment.job());
    }

    /** The survey sheet alone, for a job that lacks what the figures need. */
    public static byte[] survey(Job job, Installer installer, Words words, Templates templates) {
        WorksheetModel model = new WorksheetModel(job, Rulebook.named(job.job().rulebook()), words);
        return print(model, templates.fill(TEMPLATE, model.survey()), templates, installer, job);
    }

    /**
     * The sheet of what a revision changes: what to do with the labels first, then what reads otherwise.
     *
     * @param chapters headings of the guide's chapters that read otherwise
     */
    public static byte[] changes(
            Assessment it, Words words, Templates templates, Changes changes, List<String> chapters) {
        WorksheetModel model = new WorksheetModel(it.job(), it.tables().rules(), words);
        return print(
                model,
                templates.fill(TEMPLATE, model.changes(new ChangesSheet(it, words).facts(changes, chapters))),
                templates,
                it.installer(),
                it.job());
    }

    private static byte[] print(WorksheetModel model, String xhtml, Templates templates, Installer installer, Job job) {
        DocumentInfo info = new DocumentInfo(
                model.title(),
                installer.firm(),
                model.words().say("worksheet.subject"),
                model.words().language(),
                job.job().date());
        return new Handbook().toPdf(xhtml, info, Resources.of(templates));
    }
}
