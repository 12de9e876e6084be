package org.quaybook.pack.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.pack.Paper;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.reference.Rulebook;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** One of the demo jobs, as it is or with a change in its text. */
public record DemoJob(Assessment assessment, Branding branding) {

    public static final Words WORDS = Words.of("en-GB");

    public static DemoJob of(String name) {
        return changed(name, "", "");
    }

    /** @param find what the job's text is searched for; must occur unless it is empty */
    public static DemoJob changed(String name, String find, String replacement) {
        Path folder = Path.of("demo-jobs", name);
        String text = read(folder.resolve("job.yaml"));
        if (!text.contains(find)) {
            throw new IllegalArgumentException(name + " has no " + find);
        }
        return of(folder, find.isEmpty() ? text : text.replace(find, replacement));
    }

    /** @param added what follows each of the lines, which must occur */
    public static DemoJob changed(String name, Map<String, String> added) {
        Path folder = Path.of("demo-jobs", name);
        String text = read(folder.resolve("job.yaml"));
        for (Map.Entry<String, String> entry : added.entrySet()) {
            if (!text.contains("\n" + entry.getKey())) {
                throw new IllegalArgumentException(name + " has no " + entry.getKey());
            }
            text = text.replace("\n" + entry.getKey(), "\n" + entry.getKey() + entry.getValue());
        }
        return of(folder, text);
    }

    /** What no document of it cuts by the end of a line: the installer's telephone number and the date of handing over. */
    public List<String> neverCut(Words words) {
        return List.of(
                assessment.installer().phone(),
                words.date(assessment.job().job().date()));
    }

    /** A demo without one of its top-level sections. */
    public static DemoJob without(String name, String section) {
        Path folder = Path.of("demo-jobs", name);
        return of(
                folder,
                read(folder.resolve("job.yaml")).replaceFirst("(?m)^" + section + ":.*\n(^[ \t].*\n|^\n)*", ""));
    }

    private static DemoJob of(Path folder, String text) {
        JobReading reading = JobReader.parse(text, "job.yaml", new Vocabulary(Rulebook.names(), Words.languages()));
        Job job = reading.job();
        if (job == null) {
            throw new IllegalArgumentException(reading.problems().toString());
        }
        Installer installer = Objects.requireNonNull(
                JobReader.parseInstaller(read(folder.resolve("installer.yaml")), "installer.yaml")
                        .installer());
        Tables tables = Tables.standard(job.job().rulebook());
        Figures.Outcome outcome = Figures.of(job, tables);
        Figures figures = Objects.requireNonNull(outcome.figures(), outcome.problems()::toString);
        Optional<byte[]> logo = Optional.ofNullable(installer.logo()).map(file -> bytes(folder.resolve(file)));
        return new DemoJob(Assessment.of(job, installer, figures, tables), Branding.of(installer, logo));
    }

    public byte[] guide() {
        return guide(PageFormat.A5);
    }

    byte[] guide(PageFormat format) {
        Guide guide = new Guide(new Edition(assessment, WORDS), branding, Templates.builtIn());
        return format.equals(PageFormat.A4)
                ? guide.enlarged(Paper.A4, guide())
                : guide.on(format).pdf(List.of());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
