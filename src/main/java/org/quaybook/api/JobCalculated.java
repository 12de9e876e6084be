package org.quaybook.api;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Diagnostic;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.pack.Road;
import org.quaybook.pack.workings.Workings;
import org.quaybook.text.Words;

/** A job with its figures. They are estimates: local codes, the makers' instructions and licensed practice come first. */
public final class JobCalculated {

    private final Road.Judged judged;
    private final Assessment assessment;
    private final @Nullable Path ownTemplates;

    JobCalculated(Road.Judged judged, Assessment assessment, @Nullable Path ownTemplates) {
        this.judged = judged;
        this.assessment = assessment;
        this.ownTemplates = ownTemplates;
    }

    /**
     * The job.
     *
     * @return as the last visit of its service log left it
     */
    public Job job() {
        return assessment.job();
    }

    /**
     * The installer profile that the job names.
     *
     * @return as it was read
     */
    public Installer installer() {
        return assessment.installer();
    }

    /**
     * What there is to say about the files of a job that can be calculated all the same.
     *
     * @return no errors
     */
    public List<Diagnostic> problems() {
        return judged.problems();
    }

    /**
     * All figures, by what they are about.
     *
     * @return {@link Figures#all()} has every one in the order it was reached
     */
    public Figures figures() {
        return assessment.figures();
    }

    /**
     * A figure: exact value with its unit, the safe side of its rounding, formula and inputs.
     *
     * @param id its name, such as {@code inverter.worst-current}; {@code quaybook explain} lists those of a job
     * @return empty if this job has no such figure
     */
    public Optional<Figure<?>> figure(String id) {
        return figures().all().stream()
                .filter(figure -> figure.key().equals(id))
                .findFirst();
    }

    /**
     * The figures in the words of a language: names, values rounded as documents print them, formulas, sources, and where each
     * input comes from. What the job file names is called as it does.
     *
     * @param language one of {@link Words#languages()}; the job need not have its documents in it
     * @return all of them, by the same names as {@link #figures()}
     * @throws NotPrinted if the installer's own words cannot be used
     * @throws IllegalArgumentException if there are no words in that language
     */
    public Workings workings(String language) throws NotPrinted {
        return new Workings(figures(), words(language), Workings.Places.FILE);
    }

    /**
     * The words of a language for this job and its findings, such as {@code words.say(finding.message())} or
     * {@code words.word(figure.stated())}.
     *
     * @param language one of {@link Words#languages()}
     * @return with the installer's own in place of the built-in ones
     * @throws NotPrinted if the installer's own words cannot be used
     * @throws IllegalArgumentException if there are no words in that language
     */
    public Words words(String language) throws NotPrinted {
        try {
            return Road.words(job(), language, ownTemplates);
        } catch (org.quaybook.pack.NotPrinted e) {
            throw new NotPrinted(e);
        }
    }

    /**
     * Judges the job by its figures.
     *
     * @return what was found
     */
    public JobChecked check() {
        return new JobChecked(this, judged, assessment, ownTemplates);
    }
}
