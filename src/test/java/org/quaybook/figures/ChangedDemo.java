package org.quaybook.figures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.reference.Rulebook;
import org.quaybook.text.Words;

/** A demo job with some of its text replaced. */
public record ChangedDemo(String demo, List<String> replacements) {

    private static final Vocabulary WORDS = new Vocabulary(Rulebook.names(), Words.languages());

    /**
     * The demo with changes.
     *
     * @param replacements what stands there, what shall stand there instead, and so on
     */
    public static ChangedDemo of(String demo, String... replacements) {
        return new ChangedDemo(demo, List.of(replacements));
    }

    private String text() {
        try {
            String text = Files.readString(Path.of("demo-jobs", demo, "job.yaml"));
            for (int i = 0; i < replacements.size(); i += 2) {
                String found = replacements.get(i);
                int at = text.indexOf(found);
                if (at < 0) {
                    throw new IllegalStateException(demo + " does not hold " + found);
                }
                text = text.substring(0, at) + replacements.get(i + 1) + text.substring(at + found.length());
            }
            return text;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Job job() {
        JobReading reading = JobReader.parse(text(), demo, WORDS);
        if (reading.job() == null) {
            throw new IllegalStateException(this + ": " + reading.problems());
        }
        return reading.job();
    }

    public Tables tables() {
        return Tables.standard(job().job().rulebook());
    }

    public Figures.Outcome outcome() {
        return Figures.of(job(), tables());
    }

    public Figures figures() {
        Figures.Outcome outcome = outcome();
        if (outcome.figures() == null) {
            throw new IllegalStateException(this + ": " + outcome.problems());
        }
        return Objects.requireNonNull(outcome.figures());
    }

    /** The figure of a name. */
    public Figure<?> figure(String key) {
        return figures().all().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(demo + " has no figure " + key));
    }

    /** The figure of a name in the canonical unit of its kind. */
    public double value(String key) {
        return figure(key).value().canonical();
    }
}
