package org.quaybook.pack.guide;

import org.quaybook.checks.Assessment;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Handbook;
import org.quaybook.render.Resources;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The owner's guide: an A5 book for whoever lives with the installation and is no electrician. */
public final class Guide {

    private Guide() {}

    /**
     * Makes the guide of a job as a PDF. Holds nothing personal of the owner.
     *
     * @param edition the job with figures and findings, and the reader's language; if a finding forbids handing over, the
     *     cover says so
     * @param branding the installer's look
     * @param templates where {@code guide/guide.ftlx} and the files that it names are found
     * @throws org.quaybook.render.RenderException if a template or picture is faulty, or a text has a character that no
     *     font can print
     */
    public static byte[] pdf(Edition edition, Branding branding, Templates templates) {
        Assessment assessment = edition.assessment();
        Words words = edition.words();
        GuideModel model = new GuideModel(assessment, words, branding);
        String xhtml = templates.fill("guide/guide.ftlx", model.all());
        DocumentInfo info = new DocumentInfo(
                model.title(),
                assessment.installer().firm(),
                words.say("guide.subject"),
                words.language(),
                assessment.job().job().date());
        return new Handbook().toPdf(xhtml, info, resources(branding, templates));
    }

    private static Resources resources(Branding branding, Templates templates) {
        Resources resources = Resources.of(templates);
        return GuideModel.logoName(branding)
                .map(name -> resources.with(name, branding.logo()))
                .orElse(resources);
    }
}
