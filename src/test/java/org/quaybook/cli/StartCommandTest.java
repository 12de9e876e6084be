package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.Provenance;
import org.quaybook.job.Vocabulary;
import org.quaybook.pack.Road;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.reference.Rulebook;
import org.quaybook.text.Words;
import org.yaml.snakeyaml.Yaml;
import picocli.CommandLine;

/** Beginning a job file: by questions, by example, from an earlier job. */
class StartCommandTest {

    private static final Clock MAY = Clock.fixed(Instant.parse("2027-05-04T10:00:00Z"), ZoneOffset.UTC);

    /** An answer for every question that has nothing usual; Enter for the rest. */
    private static final String DIALOGUE = """
            27-001
            Pelican's Elbow: "the old one"

            river boat, 8 m

            J. Quince
            -
            Elbow & Oar
            01632 960777
            https://records.example.org/
            agm

            115 Ah (plate)

            2
            1


            under the berth
            800 W




            2
            locker, port side
            2.1 m (measured)
            35 mm2
            2.2 m (measured)
            35 mm2


            class-t
            125 A
            150 mm (measured)
            beside the steps
            16 A

            6 A
            Cabin sockets
            10 A

            2.5 mm2
            -

            shore-charger
            30 A
            -
            Laptop





            -

            """;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int start(@Nullable String typed, String... arguments) {
        StartCommand command =
                new StartCommand(MAY, typed == null ? null : new BufferedReader(new StringReader(typed)));
        return new CommandLine(command)
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    private String file() {
        return folder.resolve("job.yaml").toString();
    }

    private JobReading read() {
        return JobReader.read(folder.resolve("job.yaml"), new Vocabulary(Rulebook.names(), Words.languages()));
    }

    private Job job() {
        JobReading reading = read();
        return Objects.requireNonNull(reading.job(), () -> reading.problems() + "\n" + out);
    }

    private static long inside(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.count();
        }
    }

    /** The manual's first command names a folder that is not there yet. */
    @Test
    void theFolderIsMade() {
        Path job = folder.resolve("new").resolve("my-job").resolve("job.yaml");
        assertThat(start(null, job.toString())).isEqualTo(Exit.DONE);
        assertThat(job).isRegularFile();
    }

    @Test
    void aFolderThatCannotBeMadeIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("my-job"), "a file");
        assertThat(start(null, file.resolve("job.yaml").toString())).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(err.toString()).contains(file.toString(), "could not be made", "Nothing was written");
        assertThat(file).hasContent("a file");
    }

    @Test
    void asksAndWritesAJobThatCanBeChecked() throws IOException {
        assertThat(start(DIALOGUE, file())).isZero();
        assertThat(err.toString()).isEmpty();
        Job job = job();
        assertThat(job.craft().name()).isEqualTo("Pelican's Elbow: \"the old one\"");
        assertThat(job.job().date()).hasToString("2027-05-04");
        assertThat(job.job().rulebook()).isEqualTo("iso-13297");
        assertThat(job.cables())
                .hasSize(2)
                .allSatisfy(cable -> assertThat(cable.length().provenance()).isEqualTo(Provenance.MEASURED));
        assertThat(job.appliances()).hasSize(1);
        assertThat(Objects.requireNonNull(read().installer()).firm()).isEqualTo("Elbow & Oar");
        assertThat(Road.judge(folder.resolve("job.yaml")).assessment()).isNotNull();
        assertThat(out.toString()).contains("What check still misses");
        assertThat(inside(folder)).isEqualTo(2);
    }

    @Test
    void tellsAtOnceWhatIsWrongAndAsksAgain() {
        String typed =
                DIALOGUE.replace("115 Ah (plate)", "115\n115 A\n115 Ah (plate)").replace("\nagm\n", "\nlead\nagm\n");
        assertThat(start(typed, file())).isZero();
        assertThat(out.toString())
                .contains("115 A", "“lead” is none of these", "Did you mean one of these: flooded, agm, gel?");
        assertThat(job().bank().block().capacity().value()).isNotNull();
    }

    /** What YAML 1.1 and 1.2 take for a truth value, nothing, a number, a date or a list reads back as the text typed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "yes",
                "No",
                "on",
                "OFF",
                "y",
                "true",
                "null",
                "1e3",
                "12:30",
                "0x1F",
                "0o17",
                "1_000",
                "1.5",
                "007",
                "2027-05-04",
                "[old]",
                "a: b",
                "say \"hi\"",
                "Toaster"
            })
    void whatIsAnsweredReadsBack(String name) throws IOException {
        assertThat(start(DIALOGUE.replace("\nLaptop\n", "\n" + name + "\n\n500 W\n"), file()))
                .isZero();
        assertThat(job().appliances().get(0).name()).isEqualTo(name);
        Object appliances = new Yaml()
                .<Map<String, Object>>load(Files.readString(Path.of(file())))
                .get("appliances");
        assertThat(appliances)
                .asInstanceOf(InstanceOfAssertFactories.LIST)
                .first(InstanceOfAssertFactories.MAP)
                .containsEntry("name", name);
    }

    @Test
    void longTimesAreOfferedInHours() {
        assertThat(start(DIALOGUE.replace("\nLaptop\n", "\nfridge\n"), file())).isZero();
        assertThat(out.toString()).contains("24 h (assumed)").doesNotContain("1440 min");
        assertThat(Objects.requireNonNull(job().appliances().get(0).perUse()).value())
                .isEqualTo(new TimeSpan(86_400));
    }

    @Test
    void goesOnWhereItWasLeftAndGoesBack() throws IOException {
        assertThat(start("27-001\nWrong name\n<\nPelican's Elbow\n.\n", file())).isZero();
        assertThat(Files.exists(folder.resolve("job.yaml"))).isFalse();
        assertThat(out.toString()).contains("2 answers are kept");
        String rest = DIALOGUE.substring(DIALOGUE.indexOf("\n\nriver boat") + 1);
        assertThat(start(rest, file())).isZero();
        assertThat(job().craft().name()).isEqualTo("Pelican's Elbow");
        assertThat(inside(folder)).isEqualTo(2);
    }

    @Test
    void withoutATerminalItWritesAnExample() {
        assertThat(start(null, file())).isZero();
        assertThat(job().job().number()).isEqualTo("26-001");
        assertThat(Road.judge(folder.resolve("job.yaml")).assessment()).isNotNull();
    }

    /** Private and seen-there things stay behind: the next customer's boat is another. */
    @Test
    void aCopyLeavesBehindWhatBelongsToTheOtherCraft() throws IOException {
        assertThat(start("27-002\nThird Biscuit\nA. Newcomer\n", file(), "--from", "demo-jobs/second-biscuit"))
                .isZero();
        Job earlier = Objects.requireNonNull(JobReader.read(
                        Path.of("demo-jobs/second-biscuit/job.yaml"),
                        new Vocabulary(Rulebook.names(), Words.languages()))
                .job());
        Job job = job();
        assertThat(job.job().number()).isEqualTo("27-002");
        assertThat(job.job().record()).isNotEqualTo(earlier.job().record());
        assertThat(job.craft().name()).isEqualTo("Third Biscuit");
        assertThat(Objects.requireNonNull(job.owner()).name()).isEqualTo("A. Newcomer");
        assertThat(job.tests()).isEmpty();
        assertThat(job.deviations()).isEmpty();
        assertThat(job.inverter().serial()).isNull();
        assertThat(job.cables().get(0).length().provenance()).isEqualTo(Provenance.ASSUMED);
        assertThat(job.cables().get(0).length().value())
                .isEqualTo(earlier.cables().get(0).length().value());
        assertThat(Files.readString(folder.resolve("job.yaml"))).doesNotContain("Larkspur", "Brackenwhistle, 2026");
    }

    @Test
    void aSealedJobGetsAKeyOfItsOwn() {
        assertThat(start(null, file(), "--sealed")).isZero();
        assertThat(job().job().seal()).isPresent();
        assertThat(Road.judge(folder.resolve("job.yaml")).assessment()).isNotNull();
    }

    /** With the key of the earlier job whoever has its labels could read the new record. */
    @Test
    void aCopyOfASealedJobGetsAnotherKey() throws IOException {
        String key = "3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4";
        Path earlier = Files.createDirectories(folder.resolve("earlier")).resolve("job.yaml");
        Files.writeString(
                earlier,
                Files.readString(Path.of("demo-jobs/second-biscuit/job.yaml"))
                        .replace("  revision: 1\n", "  sealed: yes\n  seal-key: " + key + "\n  revision: 1\n"));
        Files.copy(Path.of("demo-jobs/second-biscuit/installer.yaml"), earlier.resolveSibling("installer.yaml"));

        assertThat(start(null, file(), "--from", earlier.toString())).isZero();

        assertThat(job().job().seal()).get().asString().isNotEqualTo(key);
        assertThat(Files.readString(folder.resolve("job.yaml"))).doesNotContain(key);
    }

    @Test
    void writesOverNothing() throws IOException {
        Files.writeString(folder.resolve("job.yaml"), "mine");
        assertThat(start(DIALOGUE, file())).isEqualTo(Exit.BAD_INPUT);
        assertThat(Files.readString(folder.resolve("job.yaml"))).isEqualTo("mine");
    }
}
