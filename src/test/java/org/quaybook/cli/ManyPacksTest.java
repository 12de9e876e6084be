package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.text.Words;
import picocli.CommandLine.Help.Ansi;

/** Several jobs in one run: each on its own, and none made twice. */
class ManyPacksTest {

    private static final String CABIN = "demo-jobs/hut-seventeen";

    @TempDir
    Path folder;

    private String out = "";
    private String err = "";

    private int pack(String... arguments) {
        StringWriter told = new StringWriter();
        StringWriter toldOfErrors = new StringWriter();
        String[] all = Stream.concat(
                        Stream.of("pack", "--to", folder.resolve("packs").toString()), Stream.of(arguments))
                .toArray(String[]::new);
        int code = Main.run(new PrintWriter(told, true), new PrintWriter(toldOfErrors, true), Ansi.OFF, all);
        out = told.toString();
        err = toldOfErrors.toString();
        return code;
    }

    /** The cabin with another number and one change, in a folder of its own. */
    private Path cabin(String number, String from, String to) throws IOException {
        Path job = folder.resolve("jobs").resolve("of-" + number);
        Files.createDirectories(job);
        Files.copy(Path.of(CABIN, "installer.yaml"), job.resolve("installer.yaml"));
        String text = Files.readString(Path.of(CABIN, "job.yaml"));
        assertThat(text).contains(from).contains("number: 26-163").contains("languages: [en-GB, de]");
        Files.writeString(
                job.resolve("job.yaml"),
                text.replace("number: 26-163", "number: " + number)
                        .replace("languages: [en-GB, de]", "languages: [en-GB]")
                        .replace(from, to));
        return job;
    }

    private Path cabin(String number) throws IOException {
        return cabin(number, "", "");
    }

    private Path made(String number, String file) {
        return folder.resolve("packs").resolve(number).resolve(file);
    }

    /** A job that fails holds up no other, and the summary says which it was. */
    @Test
    void goesOnAfterAJobThatFailsAndCountsInTheEnd() throws IOException {
        cabin("C-1");
        cabin("C-2", "languages:", "langauges:");
        cabin("C-3");
        assertThat(pack(folder.resolve("jobs").toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(made("C-1", "guide.pdf")).exists();
        assertThat(made("C-3", "guide.pdf")).exists();
        assertThat(made("C-2", "guide.pdf")).doesNotExist();
        assertThat(out).contains("Jobs: 3").contains("packs made: 2").contains("something to mend: 1");
        assertThat(err)
                .contains("langauges")
                .contains("To mend: " + folder.resolve("jobs").resolve("of-C-2"));
    }

    /** Nothing has changed, so nothing is made again; what has changed, on either side, is. */
    @Test
    void leavesAloneWhatWouldComeOutTheSame() throws IOException {
        Path first = cabin("C-1");
        Path second = cabin("C-2");
        assertThat(pack(first.toString(), second.toString())).isZero();
        byte[] guide = Files.readAllBytes(made("C-1", "guide.pdf"));

        assertThat(pack(first.toString(), second.toString())).isZero();
        assertThat(out).contains("packs left as they are: 2").doesNotContain("packs made");

        // A file of the pack is gone; it comes back as it was.
        Files.delete(made("C-1", "guide.pdf"));
        assertThat(pack(first.toString(), second.toString())).isZero();
        assertThat(out).contains("packs left as they are: 1").contains("packs made: 1");
        assertThat(made("C-1", "guide.pdf")).hasBinaryContent(guide);

        // The installer's telephone is on every guide.
        Path profile = second.resolve("installer.yaml");
        Files.writeString(profile, Files.readString(profile).replaceFirst("phone: .*", "phone: 01632 960111"));
        assertThat(pack(first.toString(), second.toString())).isZero();
        assertThat(out).contains("packs left as they are: 1").contains("packs made: 1");

        assertThat(pack("--anew", first.toString(), second.toString())).isZero();
        assertThat(out).contains("packs made: 2");
    }

    /** One after the other or at once: the same bytes. */
    @Test
    void makesTheSamePacksAsOneByOne() throws IOException {
        Path first = cabin("C-1");
        Path second = cabin("C-2");
        assertThat(pack("--at-once", "3", first.toString(), second.toString())).isZero();
        byte[] manifest = Files.readAllBytes(made("C-1", "issue.json"));
        assertThat(pack(first.toString())).isZero();
        assertThat(made("C-1", "issue.json")).hasBinaryContent(manifest);
    }

    @Test
    void refusesASecondJobOfTheSameNumber() throws IOException {
        Path first = cabin("C-1");
        assertThat(pack(first.toString(), CABIN, CABIN + "/job.yaml")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err).contains("its number 26-163 is also that of");
        assertThat(made("C-1", "guide.pdf")).exists();
        assertThat(made("26-163", "guide.pdf")).exists();
    }

    /** The job named first takes long to read: still the second is refused. */
    @Test
    void ofTwoJobsOfOneNumberTheOneNamedLaterIsRefused() throws IOException {
        Path slow = cabin("C-1");
        Path quick = Files.createDirectories(folder.resolve("jobs").resolve("again"));
        for (String file : List.of("job.yaml", "installer.yaml")) {
            Files.copy(slow.resolve(file), quick.resolve(file));
        }
        Path job = slow.resolve("job.yaml");
        Files.writeString(job, Files.readString(job) + "# seen on the way\n".repeat(55_000));

        assertThat(pack("--at-once", "2", slow.toString(), quick.toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err).contains(quick + ": its number C-1 is also that of " + slow);
    }

    @Test
    void takesAListOfJobs() throws IOException {
        Path list = folder.resolve("jobs.txt");
        Files.writeString(list, "# those of spring\n\n" + cabin("C-1") + "\n  " + cabin("C-2") + "\n");
        assertThat(pack("--list", list.toString())).isZero();
        assertThat(out).contains("packs made: 2");
        assertThat(pack("--list", folder.resolve("none.txt").toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err).contains("none.txt");
        assertThat(pack()).isEqualTo(Exit.BAD_INPUT);
        assertThat(err).contains("Name a job");
    }

    /** A clock that says what the test wants. */
    private static final class HandSet extends Clock {
        private Instant now = Instant.EPOCH;

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    /** Two of eight jobs took 10 s: the other six take 30 s. */
    @Test
    void tellsOnATerminalHowLongTheRestTakes() {
        StringWriter told = new StringWriter();
        StringWriter shown = new StringWriter();
        HandSet clock = new HandSet();
        Progress progress =
                new Progress(new PrintWriter(told), new PrintWriter(shown), Words.of("en-GB"), true, 8, clock);
        clock.now = clock.now.plusSeconds(10);
        progress.tell("one\n", "");
        progress.tell("two\n", "");
        assertThat(shown.toString()).endsWith("2 of 8 jobs, about 0:30 left");
        progress.end();
        assertThat(shown.toString()).endsWith("\r\u001b[K");
        assertThat(told.toString()).isEqualTo("one\ntwo\n");
    }

    @ParameterizedTest
    @CsvSource({"0, 0:00", "1, 0:01", "1000, 0:01", "59001, 1:00", "3599000, 59:59", "3725000, 1:02:05"})
    void timesAreThoseOfAStopWatch(long milliseconds, String shown) {
        assertThat(Progress.clock(Duration.ofMillis(milliseconds))).isEqualTo(shown);
    }

    @Test
    void sayNothingMoreWhereNobodyWatches() {
        StringWriter told = new StringWriter();
        StringWriter shown = new StringWriter();
        Progress progress = new Progress(
                new PrintWriter(told), new PrintWriter(shown), Words.of("en-GB"), false, 2, Clock.systemUTC());
        progress.tell("one\n", "wrong\n");
        progress.end();
        assertThat(List.of(told.toString(), shown.toString())).containsExactly("one\n", "wrong\n");
    }
}
