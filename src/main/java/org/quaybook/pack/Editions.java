package org.quaybook.pack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figures;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Job;
import org.quaybook.record.Edition;
import org.quaybook.text.Words;

/** A job in each language of its documents. */
final class Editions {

    private Editions() {}

    /**
     * The editions in the order of the job's languages.
     *
     * @param ownTemplates folder that may hold the installer's own words; null for none
     * @throws NotPrinted if these cannot be used, or a translation changes what is calculated or found
     */
    static List<Edition> of(Assessment it, @Nullable Path ownTemplates) throws NotPrinted {
        return of(it, it.job().job().languages(), ownTemplates);
    }

    /** The editions of the labels, one or two: the first language of the documents unless the job says others. */
    static List<Edition> ofLabels(Assessment it, @Nullable Path ownTemplates) throws NotPrinted {
        List<String> own = it.job().job().labelLanguages();
        return of(it, own.isEmpty() ? it.job().job().languages().subList(0, 1) : own, ownTemplates);
    }

    private static List<Edition> of(Assessment it, List<String> languages, @Nullable Path ownTemplates)
            throws NotPrinted {
        List<Edition> editions = new ArrayList<>();
        for (String language : languages) {
            editions.add(new Edition(in(it, language), OwnWords.of(words(it.job(), language), ownTemplates)));
        }
        return List.copyOf(editions);
    }

    /** The words of a language for what a job is about. */
    static Words words(Job job, String language) {
        return about(job, Words.of(language));
    }

    /** The installer's words for what a job is about. */
    static Words installers(Job job) {
        return about(job, Words.forInstaller(job.job().languages()));
    }

    private static Words about(Job job, Words words) {
        return job.craft().kind() == CraftKind.BOAT ? words : words.onLand();
    }

    private static Assessment in(Assessment it, String language) throws NotPrinted {
        Job job = it.job().in(language);
        if (job.equals(it.job())) {
            return it;
        }
        Figures figures = Figures.of(job, it.tables()).figures();
        if (figures != null) {
            Assessment translated = Assessment.of(job, it.installer(), figures, it.tables());
            if (values(translated).equals(values(it)) && findings(translated).equals(findings(it))) {
                return translated;
            }
        }
        Message message = Message.of(PackMessage.TRANSLATION_CHANGES, language);
        throw new NotPrinted(List.of(
                new Diagnostic(Severity.ERROR, message.key().key(), it.job().place(), "", message, List.of())));
    }

    private static List<Object> values(Assessment it) {
        return it.figures().all().stream().<Object>map(figure -> figure.value()).toList();
    }

    private static List<Object> findings(Assessment it) {
        return it.findings().stream()
                .<Object>map(finding -> List.of(finding.check(), finding.place()))
                .toList();
    }
}
