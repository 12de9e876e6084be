package org.quaybook.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.pack.PackFolder;

/** Many runs broken off, whole packs among them: too long for every build. {@code src/test/faults} runs it and prints figures. */
class FaultsAtLength {

    private static final String JOB = "demo-jobs/persimmon-tug";
    private static final String NUMBER = "26-140";
    private static final int ROUNDS = Integer.getInteger("faults.rounds", 200);
    private static final long SEED = Long.getLong("faults.seed", 1);

    /** Rounds of small packs to one of a whole pack. */
    private static final int DEARER = 20;

    /** What changes a folder on Linux; each call is a moment to be killed at. */
    private static final List<String> CHANGES =
            List.of("mkdir", "rename", "unlink", "rmdir", "fsync", "pwrite64", "write", "ftruncate");

    /** Bytes in a block of {@code ulimit -f}. */
    private static final int BLOCK = 512;

    private static final int MORE_THAN_A_WRITING_HAS = 500;

    @TempDir
    Path folder;

    private static void figure(String what, String figure) {
        System.out.println(what + ": " + figure);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void packsKilledAtRandom() throws Exception {
        Kills kills = new Kills(SEED);
        kills.packs(folder, ROUNDS);
        figure("killed while replacing a pack", ROUNDS + ", " + kills.met());
    }

    @Test
    void publishingKilledAtRandom() throws Exception {
        Kills kills = new Kills(SEED);
        kills.site(folder, ROUNDS);
        figure("killed while publishing", ROUNDS + ", " + kills.met());
    }

    /** Killed before each system call that changes something, with strace(1). */
    @Test
    void killedAtEachStep() throws Exception {
        assertThat(Path.of("/usr/bin/strace")).as("src/test/faults installs it").isExecutable();
        Path target = folder.resolve("26-118");
        Writing.pack(target, 1);
        int issue = 1;
        int steps = 0;
        int aside = 0;
        for (String change : CHANGES) {
            boolean ended = false;
            for (int step = 1; !ended; step++) {
                assertThat(step).as(change).isLessThan(MORE_THAN_A_WRITING_HAS);
                ended = Program.end(killedAt(change, step, target, issue + 1)).code() == 0;
                steps += ended ? 0 : 1;
                boolean there = Files.exists(target);
                aside += there ? 0 : 1;
                int found = SmallPack.issue(SmallPack.whole(there ? target : folder.resolve(".26-118.former/26-118")));
                assertThat(found).as(change + " " + step).isBetween(issue, issue + 1);
                issue = found + 1;
                assertThat(Writing.pack(target, issue)).isEqualTo("done " + issue);
                assertThat(names()).as(change + " " + step).containsExactly("26-118");
            }
        }
        assertThat(aside).as("the moment between the two moves").isPositive();
        figure("killed before each step of replacing a pack", steps + ", between the two moves " + aside);
    }

    /** Killed before it makes a system call for the so manieth time. */
    private static Process killedAt(String change, int step, Path target, int issue) throws IOException {
        return Program.here()
                .with("-XX:-UsePerfData")
                .through(List.of("strace", "-f", "-qqq", "-o", "/dev/null"))
                .through(List.of("-e", "trace=" + change))
                .through(List.of("-e", "inject=" + change + ":signal=SIGKILL:when=" + step))
                .start(Writing.class.getName(), List.of("packs", target.toString(), String.valueOf(issue), "1"));
    }

    /** The program itself, killed at any moment of making a pack; every third time as soon as it begins to write. */
    @Test
    void wholePacksKilled() throws Exception {
        Path target = folder.resolve(NUMBER);
        String[] pack = {"pack", JOB, "--to", folder.toString()};
        long begun = System.nanoTime();
        assertThat(Program.here().run(pack).code()).isZero();
        int takes = (int) TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
        Random random = new Random(SEED);
        int rounds = Math.max(3, ROUNDS / DEARER);
        int writing = 0;
        for (int round = 0; round < rounds; round++) {
            Process process = Program.here().start(pack);
            if (round % 3 == 0) {
                while (process.isAlive() && !Files.exists(folder.resolve("." + NUMBER + ".new"))) {
                    Thread.sleep(1);
                }
                Thread.sleep(random.nextInt(20));
            } else {
                Thread.sleep(random.nextInt(takes));
            }
            process.destroyForcibly().waitFor();
            writing += Files.exists(folder.resolve("." + NUMBER + ".new")) ? 1 : 0;
            PackFolder.claim(target).close();
            opens(target);
            assertThat(names()).containsExactly(NUMBER);
        }
        Program.Ended last = Program.here().run(pack);
        assertThat(last.code()).as(last.said()).isZero();
        opens(target);
        assertThat(names()).containsExactly(NUMBER);
        figure("killed while making a whole pack", rounds + ", while writing it " + writing);
    }

    private static void opens(Path pack) throws Exception {
        for (String path : SmallPack.whole(pack).sha256().keySet()) {
            if (path.endsWith(".pdf")) {
                try (PDDocument pdf = Loader.loadPDF(pack.resolve(path).toFile())) {
                    assertThat(pdf.getNumberOfPages()).as(path).isPositive();
                }
            }
        }
    }

    /** The program itself, its files limited to each of some sizes: what it writes first fails, or only the largest. */
    @Test
    void wholePacksOnAFullDisk() throws Exception {
        Path target = folder.resolve(NUMBER);
        String[] pack = {"pack", JOB, "--to", folder.toString()};
        assertThat(Program.here().run(pack).code()).isZero();
        long largest = 0;
        for (String path : SmallPack.digests(target).keySet()) {
            largest = Math.max(largest, Files.size(target.resolve(path)));
        }
        List<Integer> codes = new ArrayList<>();
        for (int blocks : List.of(0, 100, (int) (largest / BLOCK) - 1)) {
            Program.Ended ended = Program.here().withFilesUpTo(blocks).run(pack);
            codes.add(ended.code());
            assertThat(ended.code()).as(ended.said()).isEqualTo(3);
            assertThat(ended.said()).contains("was there before").doesNotContain("\tat ");
            opens(target);
            assertThat(names()).containsExactly(NUMBER);
        }
        figure("whole packs on a full disk", codes.size() + ", exit codes " + codes);
    }

    /** Less and less memory, down to what the virtual machine itself begins with. */
    @Test
    void wholePacksWithTooLittleMemory() throws Exception {
        Path target = folder.resolve(NUMBER);
        String[] pack = {"pack", JOB, "--to", folder.toString()};
        assertThat(Program.here().run(pack).code()).isZero();
        List<Integer> codes = new ArrayList<>();
        for (int mebibytes : List.of(48, 36, 28, 20, 12, 8)) {
            Program.Ended ended = Program.here().with("-Xmx" + mebibytes + "m").run(pack);
            codes.add(ended.code());
            assertThat(ended.code()).as(mebibytes + " MiB: " + ended.said()).isIn(0, 4);
            if (ended.code() == 4) {
                assertThat(ended.said()).containsIgnoringCase("memory").doesNotContain("\tat ");
            }
            opens(target);
            assertThat(names()).containsExactly(NUMBER);
        }
        assertThat(codes).contains(4);
        figure("whole packs with too little memory", codes.size() + ", exit codes " + codes);
    }
}
