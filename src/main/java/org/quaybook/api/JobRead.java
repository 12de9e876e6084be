package org.quaybook.api;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Diagnostic;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.pack.Road;

/** A job as it was read. */
public final class JobRead {

    private final Road.Read read;
    private final @Nullable Path ownTemplates;

    JobRead(Road.Read read, @Nullable Path ownTemplates) {
        this.read = read;
        this.ownTemplates = ownTemplates;
    }

    /**
     * The job as the last visit of its service log left it.
     *
     * @return empty if the job file has an error
     */
    public Optional<Job> job() {
        return Optional.ofNullable(read.job());
    }

    /**
     * The installer profile that the job names.
     *
     * @return empty if it has an error, or the job file leaves open which one it is
     */
    public Optional<Installer> installer() {
        return Optional.ofNullable(read.installer());
    }

    /**
     * All that is wrong with the files, and warnings.
     *
     * @return in the order of the files, the job file first; an {@link org.quaybook.diag.Severity#ERROR ERROR} keeps the job
     *     from being calculated
     */
    public List<Diagnostic> problems() {
        return read.problems();
    }

    /**
     * Calculates the job.
     *
     * @return its figures
     * @throws NotCalculated if a problem is an error, or the job lacks a value that the figures need
     */
    public JobCalculated calculate() throws NotCalculated {
        Road.Judged judged = Road.judge(read);
        Assessment assessment = judged.assessment();
        if (assessment == null) {
            throw new NotCalculated(judged.problems());
        }
        return new JobCalculated(judged, assessment, ownTemplates);
    }

    /**
     * A sheet to survey what the job still lacks for its figures.
     *
     * @return PDF; empty if nothing is lacking, or the job could not be read
     * @throws NotPrinted if a text is too long for its place, has a character that no font has, or a template is faulty
     */
    public Optional<byte[]> surveySheet() throws NotPrinted {
        Optional<Road.Unfinished> unfinished = Road.judge(read).unfinished();
        if (unfinished.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Road.survey(unfinished.get(), ownTemplates));
        } catch (org.quaybook.pack.NotPrinted e) {
            throw new NotPrinted(e);
        }
    }
}
