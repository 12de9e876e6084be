package org.quaybook.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.checks.Finding;
import org.quaybook.cli.Main;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.workings.Workings.Worked;
import org.quaybook.proof.Manifest;
import org.quaybook.text.Words;
import picocli.CommandLine;

/** The library does what the commands do, and says what they say. */
class QuaybookTest {

    private static final Path DEMO = Path.of("demo-jobs/hut-seventeen");
    private static final Path OTHER = Path.of("demo-jobs/persimmon-tug");

    /** A finding forbids handing this one over. */
    private static final Path AS_FOUND = Path.of("demo-jobs/lantern-moth/as-found.yaml");

    private final Quaybook quaybook = Quaybook.standard();

    @TempDir
    Path folder;

    private static String command(String... arguments) {
        StringWriter out = new StringWriter();
        new CommandLine(new Main())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(out))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .execute(arguments);
        return out.toString();
    }

    /** The pack of the demo, made once: it takes its time. */
    private static final class Made {
        static final Pack PACK = packed(DEMO);
    }

    private static Pack packed(Path job) {
        try {
            return Quaybook.standard().read(job).calculate().check().pack();
        } catch (QuaybookException e) {
            throw new AssertionError(e);
        }
    }

    private static Map<String, byte[]> inside(Path pack) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(pack)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(pack.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private static void assertSame(Pack pack, Map<String, byte[]> files) {
        assertThat(pack.paths()).containsExactlyElementsOf(files.keySet());
        files.forEach((path, content) -> assertThat(pack.bytes(path)).as(path).isEqualTo(content));
    }

    private Path copied(Path demo) throws IOException {
        Path copy = Files.createDirectories(folder.resolve("jobs").resolve(demo.getFileName()));
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }

    private static void edit(Path file, String what, String with) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(what);
        Files.writeString(file, text.replace(what, with));
    }

    @Test
    void theSamePackAsTheCommand() throws Exception {
        command("pack", DEMO.toString(), "--to", folder.resolve("command").toString());
        PackWritten written = pack(DEMO, folder.resolve("library"));

        assertThat(written.outcome()).isEqualTo(PackWritten.Outcome.WRITTEN);
        assertThat(written.changes()).isEmpty();
        assertThat(written.folder()).isEqualTo(folder.resolve("library/26-163"));
        Map<String, byte[]> library = inside(written.folder());
        assertThat(library).hasSizeGreaterThan(20).containsKey("guide.pdf");
        assertSame(Made.PACK, library);
        assertSame(Made.PACK, inside(folder.resolve("command/26-163")));
    }

    @Test
    void threadsDoNotMeet() throws Exception {
        Map<Path, Pack> alone = Map.of(DEMO, Made.PACK, OTHER, packed(OTHER));
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            Map<Path, Future<Pack>> packs = Map.of(
                    DEMO, threads.submit(() -> packed(DEMO)),
                    OTHER, threads.submit(() -> packed(OTHER)));
            for (Map.Entry<Path, Future<Pack>> pack : packs.entrySet()) {
                Pack expected = Objects.requireNonNull(alone.get(pack.getKey()));
                Pack made = pack.getValue().get();
                assertThat(made.paths()).isEqualTo(expected.paths());
                for (String path : made.paths()) {
                    assertThat(made.bytes(path)).as(path).isEqualTo(expected.bytes(path));
                }
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void aTextReadsAsTheFileDoes() throws Exception {
        String text = Files.readString(DEMO.resolve("job.yaml"));
        JobRead read = quaybook.read(text, DEMO);
        assertThat(read.job()).isEqualTo(quaybook.read(DEMO).job()).isPresent();
        assertThat(read.calculate().figures().all())
                .isEqualTo(quaybook.read(DEMO).calculate().figures().all());

        JobRead changed = quaybook.read(text.replace("number: 26-163", "number: 26-164"), DEMO);
        assertThat(changed.job().orElseThrow().job().number()).isEqualTo("26-164");
    }

    /** What is too large for a file is too large for a text. */
    @Test
    void aTextHasTheBoundsOfAFile() {
        assertThat(quaybook.read("#".repeat(1 << 20) + "\n", DEMO).problems())
                .extracting(Quaybook::sentence)
                .singleElement()
                .asString()
                .contains("hut-seventeen/job.yaml:1:1: ", "1024");
    }

    @Test
    void aTextFindsItsInstallerBesideIt() throws IOException {
        String text = Files.readString(DEMO.resolve("job.yaml"));
        JobRead read = quaybook.read(text, folder);
        assertThat(read.job()).isPresent();
        assertThat(read.installer()).isEmpty();
        assertThat(read.problems())
                .extracting(problem -> problem.place().file())
                .containsExactly(folder.resolve("installer.yaml").toString());
    }

    @Test
    void allProblemsAtOnceWithTheirPlaces() throws Exception {
        String text = Files.readString(DEMO.resolve("job.yaml"))
                .replace("number: 26-163", "number: 26 163")
                .replace("revision: 1", "revision: 0");
        JobRead read = quaybook.read(text, DEMO);

        assertThat(read.job()).isEmpty();
        assertThat(read.problems())
                .extracting(problem -> problem.place().path())
                .containsExactly("job.number", "job.revision");
        assertThat(read.problems()).extracting(Diagnostic::severity).containsOnly(Severity.ERROR);
        NotCalculated refused = Objects.requireNonNull(catchThrowableOfType(NotCalculated.class, read::calculate));
        assertThat(refused.problems()).isEqualTo(read.problems());
        assertThat(refused.getMessage().lines())
                .containsExactlyElementsOf(
                        read.problems().stream().map(Quaybook::sentence).toList())
                .allMatch(line -> line.startsWith("demo-jobs/hut-seventeen/job.yaml:"));
        assertThat(read.surveySheet()).isEmpty();
    }

    @Test
    void aMissingFileIsAProblemLikeAnyOther() {
        JobRead read = quaybook.read(folder.resolve("no-such-job.yaml"));
        assertThat(read.problems()).hasSize(1);
        assertThatThrownBy(read::calculate)
                .isInstanceOf(NotCalculated.class)
                .hasMessageContaining("no-such-job.yaml:1:1: ");
    }

    @Test
    void whatTheFiguresLackIsAskedForOnPaper() throws Exception {
        String text = Files.readString(Path.of("demo-jobs/lantern-moth/job.yaml"))
                .replace("length: 1.6 m (measured)", "length: not seen");
        JobRead read = quaybook.read(text, Path.of("demo-jobs/lantern-moth"));
        assertThat(read.job()).isPresent();
        assertThat(read.problems()).isEmpty();
        assertThatThrownBy(read::calculate).isInstanceOf(NotCalculated.class).hasMessageContaining("job.yaml:");
        assertThat(read.surveySheet().orElseThrow()).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void aJobThatMustNotBeHandedOverWritesNothing() throws Exception {
        JobChecked checked = quaybook.read(AS_FOUND).calculate().check();
        assertThat(checked.mayBeHandedOver()).isFalse();
        assertThat(checked.forbidding())
                .isNotEmpty()
                .allMatch(Finding::forbids)
                .extracting(finding -> finding.check().id())
                .contains("cold-charge");
        Path packs = folder.resolve("packs");

        HandoverForbidden forbidden =
                Objects.requireNonNull(catchThrowableOfType(HandoverForbidden.class, () -> checked.pack(packs)));
        assertThat(forbidden.findings()).isEqualTo(checked.forbidding());
        assertThat(forbidden.problems()).isEmpty();
        assertThat(forbidden.getMessage().lines())
                .hasSameSizeAs(checked.forbidding())
                .allMatch(line -> line.startsWith("demo-jobs/lantern-moth/as-found.yaml:"));
        assertThatThrownBy(checked::pack).isInstanceOf(HandoverForbidden.class);
        assertThat(packs).doesNotExist();
        assertThat(checked.worksheet()).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void findingsAreThoseOfTheCommand() throws Exception {
        JobChecked checked = quaybook.read(AS_FOUND).calculate().check();
        Words english = checked.calculated().words("en-GB");
        String told = command("check", AS_FOUND.toString());
        assertThat(checked.findings())
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(told)
                        .contains(
                                finding.check().id() + "  " + finding.place(),
                                english.say(finding.message()),
                                finding.check().citation().source()));
    }

    @Test
    void figuresInEveryLanguage() throws Exception {
        JobCalculated calculated = quaybook.read(DEMO).calculate();
        Figure<?> figure = calculated.figure("bank.reserve").orElseThrow();
        assertThat(calculated.figure("no.such-figure")).isEmpty();
        assertThat(command("explain", DEMO.toString(), "bank.reserve"))
                .startsWith("bank.reserve = " + calculated.words("en-GB").word(figure.stated()));

        for (String language : Words.languages()) {
            List<Worked> all = calculated.workings(language).all();
            assertThat(all).hasSameSizeAs(calculated.figures().all());
            Words words = calculated.words(language);
            for (int i = 0; i < all.size(); i++) {
                Figure<?> it = calculated.figures().all().get(i);
                assertThat(all.get(i).key()).isEqualTo(it.key());
                assertThat(all.get(i).value()).isEqualTo(words.word(it.stated()));
            }
        }
        assertThat(calculated.workings("de").name("appliance.well-pump.time-worn"))
                .hasValueSatisfying(name -> assertThat(name).startsWith("Well pump: "));
        assertThatIllegalArgumentException().isThrownBy(() -> calculated.workings("tlh"));
    }

    @Test
    void whatWasIssuedStays() throws Exception {
        Path job = copied(DEMO);
        Path packs = folder.resolve("packs");
        Path first = packs.resolve("26-163");
        for (String path : Made.PACK.paths()) {
            Path file = first.resolve(path);
            Files.createDirectories(file.getParent());
            Files.write(file, Made.PACK.bytes(path));
        }
        Files.writeString(first.resolve(Manifest.SIGNATURE_FILE), "{}");
        assertThat(pack(job, packs).outcome()).isEqualTo(PackWritten.Outcome.UNCHANGED);

        edit(job.resolve("job.yaml"), "length: 0.40 m", "length: 0.45 m");
        NotPrinted refused = Objects.requireNonNull(catchThrowableOfType(NotPrinted.class, () -> pack(job, packs)));
        assertThat(refused.problems()).hasSize(1);
        assertThat(inside(first)).containsKey(Manifest.SIGNATURE_FILE);

        edit(job.resolve("job.yaml"), "revision: 1", "revision: 2");
        PackWritten second = pack(job, packs);
        assertThat(second.outcome()).isEqualTo(PackWritten.Outcome.FOLLOWS);
        assertThat(second.changes()).isNotEmpty();
        assertThat(packs.resolve("26-163-revision-1")).isDirectory();
        assertThat(inside(second.folder())).containsKey("changes.pdf").doesNotContainKey(Manifest.SIGNATURE_FILE);
    }

    private PackWritten pack(Path job, Path packs) throws QuaybookException {
        return quaybook.read(job).calculate().check().pack(packs);
    }

    @Test
    void aFolderThatCannotBeMadeIsToldAsSuch() throws Exception {
        Path inTheWay = Files.writeString(folder.resolve("letter.txt"), "dear");
        assertThatThrownBy(() -> pack(DEMO, inTheWay))
                .isInstanceOf(NotWritten.class)
                .hasMessageContaining("26-163");
        assertThat(inTheWay).hasContent("dear");
    }

    @Test
    void onlyOneWritesAPackAtATime() throws Exception {
        try (PackFolder other = PackFolder.claim(folder.resolve("26-163"))) {
            assertThat(other).isNotNull();
            assertThatThrownBy(() -> pack(DEMO, folder))
                    .isInstanceOf(NotWritten.class)
                    .hasMessageContaining("26-163");
        }
        assertThat(folder.resolve("26-163")).doesNotExist();
    }

    @Test
    void ownTemplatesAndWords() throws Exception {
        Quaybook own = quaybook.withTemplates(Path.of("docs/example-templates"));
        assertThat(own.read(DEMO).calculate().words("en-GB").sentence("guide.contact.installer"))
                .isEqualTo("Ring us first");
        assertThat(quaybook.read(DEMO).calculate().words("en-GB").sentence("guide.contact.installer"))
                .isNotEqualTo("Ring us first");
        assertThatThrownBy(() -> quaybook.withTemplates(folder.resolve("none")))
                .isInstanceOf(NotDirectoryException.class);

        Path words = Files.createDirectories(folder.resolve("words/en-GB"));
        Files.writeString(words.resolve("ours.properties"), "guide.contact.instaler = Us\n");
        JobCalculated faulty = quaybook.withTemplates(folder).read(DEMO).calculate();
        assertThatThrownBy(() -> faulty.words("en-GB"))
                .isInstanceOf(NotPrinted.class)
                .hasMessageContaining("ours.properties:1:1: ");
        assertThatThrownBy(() -> faulty.check().pack(folder.resolve("packs"))).isInstanceOf(NotPrinted.class);
        assertThat(folder.resolve("packs")).doesNotExist();
    }

    @Test
    void nobodyChangesAPack() throws Exception {
        Pack pack = new Pack(Map.of("a.txt", new byte[] {1}, "b/c.txt", new byte[] {2}));
        pack.bytes("a.txt")[0] = 9;
        assertThat(pack.bytes("a.txt")).containsExactly(1);
        assertThatThrownBy(() -> pack.paths().remove("a.txt")).isInstanceOf(UnsupportedOperationException.class);
        assertThatIllegalArgumentException().isThrownBy(() -> pack.bytes("c.txt"));
    }

    @Test
    void theVersionIsThatOfTheCommand() {
        assertThat(command("--version").strip()).isEqualTo("quaybook " + Quaybook.version());
    }
}
