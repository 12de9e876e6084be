package org.quaybook.pack.labels;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.reference.Rulebook;
import org.quaybook.render.Sheet;
import org.quaybook.text.Words;

/** A job file, calculated and judged, with what its labels are made of; for the demo jobs and changed copies of them. */
record DemoJob(Assessment assessment, Words words, Branding branding, RecordLink link) {

    static DemoJob read(Path folder) {
        JobReading reading =
                JobReader.read(folder.resolve("job.yaml"), new Vocabulary(Rulebook.names(), Words.languages()));
        Job job = Objects.requireNonNull(reading.job(), () -> reading.problems().toString());
        var installer = Objects.requireNonNull(reading.installer());
        Tables tables = Tables.standard(job.job().rulebook());
        Figures figures = Objects.requireNonNull(Figures.of(job, tables).figures());
        Assessment assessment = Assessment.of(job, installer, figures, tables);
        return new DemoJob(
                assessment,
                Words.of("en-GB"),
                Branding.of(installer, Optional.ofNullable(installer.logo()).map(name -> bytes(folder.resolve(name)))),
                RecordLink.of(assessment));
    }

    static DemoJob demo(String name) {
        return read(Path.of("demo-jobs", name));
    }

    /**
     * A demo job with some of its text replaced.
     *
     * @param changes what is replaced and by what, in turn; each must occur
     */
    static DemoJob changed(String name, Path folder, String... changes) {
        Path demo = Path.of("demo-jobs", name);
        String job = new String(bytes(demo.resolve("job.yaml")), StandardCharsets.UTF_8);
        for (int i = 0; i < changes.length; i += 2) {
            if (!job.contains(changes[i])) {
                throw new IllegalArgumentException("not in the job: " + changes[i]);
            }
            job = job.replace(changes[i], changes[i + 1]);
        }
        try {
            Files.writeString(folder.resolve("job.yaml"), job);
            for (String other : List.of("installer.yaml", "logo.svg")) {
                if (Files.exists(demo.resolve(other))) {
                    Files.write(folder.resolve(other), bytes(demo.resolve(other)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return read(folder);
    }

    /** A demo job whose record is sealed. */
    static DemoJob sealed(String name, Path folder) {
        return changed(
                name,
                folder,
                "  revision: 1\n",
                "  sealed: yes\n  seal-key: 3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4\n  revision: 1\n");
    }

    List<Edition> editions() {
        return List.of(new Edition(assessment, words));
    }

    private Labels labels() {
        return new Labels(editions(), branding, link);
    }

    LabelsPrinted print() {
        return labels().sheets(Sheet.A4);
    }

    List<LabelDesign> designs() {
        return labels().designs();
    }

    LabelDesign design(String id) {
        return designs().stream()
                .filter(design -> design.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no label " + id));
    }

    List<String> ids() {
        return designs().stream().map(LabelDesign::id).toList();
    }

    List<LabelSetter.Sized> sized() {
        return labels().sized(Sheet.A4);
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
