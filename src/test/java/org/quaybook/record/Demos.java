package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.quaybook.DemoJobs;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.SealKey;
import org.quaybook.job.Vocabulary;
import org.quaybook.pack.guide.GuidePage;
import org.quaybook.pack.guide.Palette;
import org.quaybook.pack.pictures.Pictures;
import org.quaybook.reference.Rulebook;
import org.quaybook.render.InlineSvg;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** A demo job, read and judged as the program does it, and its record page. */
record Demos(Assessment assessment, Branding branding) {

    static final List<String> NAMES = DemoJobs.ALL;
    static final String SEAL_KEY = "3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4";
    static final List<String> DOWNLOADS = List.of("guide.pdf", "labels.pdf", "figures.json");

    static Demos of(String name) {
        return read(Path.of("demo-jobs", name));
    }

    /** A demo job with other words in its file. */
    static Demos changed(String name, Path folder, Map<String, String> changes) throws IOException {
        Path demo = Path.of("demo-jobs", name);
        String job = Files.readString(demo.resolve("job.yaml"));
        for (Map.Entry<String, String> change : changes.entrySet()) {
            assertThat(job).contains(change.getKey());
            job = job.replace(change.getKey(), change.getValue());
        }
        Files.writeString(folder.resolve("job.yaml"), job);
        Files.copy(demo.resolve("installer.yaml"), folder.resolve("installer.yaml"));
        if (Files.exists(demo.resolve("logo.svg"))) {
            Files.copy(demo.resolve("logo.svg"), folder.resolve("logo.svg"));
        }
        return read(folder);
    }

    private static Demos read(Path folder) {
        JobReading reading =
                JobReader.read(folder.resolve("job.yaml"), new Vocabulary(Rulebook.names(), Words.languages()));
        assertThat(reading.job()).as(() -> folder + ": " + reading.problems()).isNotNull();
        Job job = Objects.requireNonNull(reading.job());
        Installer installer = Objects.requireNonNull(reading.installer());
        Tables tables = Tables.standard(job.job().rulebook());
        Figures.Outcome outcome = Figures.of(job, tables);
        assertThat(outcome.problems()).isEmpty();
        return new Demos(
                Assessment.of(job, installer, Objects.requireNonNull(outcome.figures()), tables),
                Branding.of(installer, logo(folder, installer)));
    }

    private static Optional<byte[]> logo(Path folder, Installer installer) {
        return Optional.ofNullable(installer.logo()).map(file -> {
            try {
                return Files.readAllBytes(folder.resolve(file));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    Job job() {
        return assessment.job();
    }

    String code() {
        return job().job().record().symbols();
    }

    /** The record in the languages of the job. */
    Map<String, byte[]> site() {
        return site(job().job().languages(), List.of());
    }

    Map<String, byte[]> site(List<String> languages, List<Issued> history) {
        return RecordSite.files(leaves(languages), history, branding, Templates.builtIn());
    }

    private List<RecordLeaf> leaves(List<String> languages) {
        return languages.stream()
                .map(language -> leaf(language, language.equals(languages.get(0))))
                .toList();
    }

    /** A demo job whose record is sealed. */
    static Demos sealed(String name, Path folder) throws IOException {
        return changed(
                name,
                folder,
                Map.of("  revision: 1\n", "  sealed: yes\n  seal-key: " + SEAL_KEY + "\n  revision: 1\n"));
    }

    /** What a sealed record is made from, by file name. */
    Map<String, byte[]> plain() {
        Map<String, byte[]> plain =
                new TreeMap<>(RecordSite.wholes(leaves(job().job().languages()), branding, Templates.builtIn()));
        DOWNLOADS.forEach(
                name -> plain.put(name, ("What " + name + " says.").repeat(99).getBytes(StandardCharsets.UTF_8)));
        return plain;
    }

    /** The sealed record in the languages of the job. */
    Map<String, byte[]> sealedSite(List<Issued> history) {
        return SealedSite.files(
                leaves(job().job().languages()),
                plain(),
                history,
                SealKey.parse(SEAL_KEY),
                branding,
                Templates.builtIn());
    }

    private RecordLeaf leaf(String language, boolean first) {
        PublicEdition edition = edition(language);
        Map<String, InlineSvg> pictures =
                Pictures.of(edition.edition().assessment(), edition.edition().words(), new Palette(branding).look());
        return new RecordLeaf(
                edition,
                first,
                Stream.of("batterySide", "mainsSide", "symbols")
                        .flatMap(name -> Pictures.all(pictures, name).stream())
                        .toList(),
                GuidePage.name(language, first),
                new GuidePage(edition, branding, Templates.builtIn()).book(),
                List.of(
                        new RecordLeaf.Download("guide.pdf", "guide", 123_001),
                        new RecordLeaf.Download("labels.pdf", "labels", 1),
                        new RecordLeaf.Download("figures.json", "figures", 999)),
                "ab".repeat(32),
                List.of());
    }

    PublicEdition edition(String language) {
        Job translated = job().in(language);
        Figures figures = Objects.requireNonNull(
                Figures.of(translated, assessment.tables()).figures());
        return PublicEdition.of(new Edition(
                Assessment.of(translated, assessment.installer(), figures, assessment.tables()), Words.of(language)));
    }

    HtmlPage page() {
        return page("index.html");
    }

    HtmlPage page(String file) {
        return HtmlPage.of(Objects.requireNonNull(site().get(code() + "/" + file)));
    }

    HtmlPage unknownCode() {
        return HtmlPage.of(Objects.requireNonNull(site().get("404.html")));
    }
}
