package org.quaybook.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive of loaded classes that the launcher keeps: it makes a run faster and nothing else of it other. */
class ClassArchiveIT {

    private static final Duration LONGEST = Duration.ofMinutes(4);
    private static final String[] FAILING = {"check", "demo-jobs/nowhere"};

    @TempDir
    static Path folder;

    private static Path home;
    private static Path cache;

    /** Two runs at once begin with nothing, on a class path that is theirs alone. */
    @BeforeAll
    static void madeOnce() throws Exception {
        Path product = Installed.product("archive");
        Installed.run(folder, List.of("tar", "-xzf", product + ".tar.gz"));
        home = folder.resolve(product.getFileName());
        cache = folder.resolve("Zwischen lager");
        Process one = quaybook().start("--version");
        Process other = quaybook().start(FAILING);
        assertThat(Installed.end(one).code()).isZero();
        assertThat(Installed.end(other).code()).isEqualTo(2);
        Instant latest = Instant.now().plus(LONGEST);
        while (archives(cache).isEmpty() || making(cache)) {
            assertThat(Instant.now()).as("an archive in time").isBefore(latest);
            Thread.sleep(200);
        }
    }

    private static Installed quaybook() {
        return Installed.at(home.resolve("quaybook"), home).with("XDG_CACHE_HOME", cache.toString());
    }

    private static Installed without() {
        return quaybook().with("QUAYBOOK_NO_ARCHIVE", "1");
    }

    private static List<Path> list(Path cache) throws IOException {
        try (Stream<Path> files = Files.list(cache.resolve("quaybook"))) {
            return files.toList();
        }
    }

    private static List<Path> archives(Path cache) throws IOException {
        return list(cache).stream()
                .filter(file -> file.getFileName().toString().matches("classes-[0-9-]+"))
                .toList();
    }

    private static boolean making(Path cache) throws IOException {
        return list(cache).stream()
                .anyMatch(file -> file.getFileName().toString().startsWith("making-"));
    }

    /** Where the class of the program came from, as the virtual machine logs it (JEP 158) after all options of the launcher. */
    private static String loaded(Installed program) throws Exception {
        Path log = folder.resolve("loaded");
        Files.deleteIfExists(log);
        program.with("_JAVA_OPTIONS", "-Xlog:class+load=info:file=" + log).run("--version");
        return Files.readAllLines(log).stream()
                .filter(line -> line.contains(" org.quaybook.cli.Main "))
                .findFirst()
                .orElseThrow();
    }

    /** With an archive as it is now, runs say and return what they do without. */
    private static void changesNothing(Installed with) throws Exception {
        for (String[] arguments : new String[][] {{"check", "demo-jobs/hut-seventeen"}, FAILING}) {
            assertThat(with.run(arguments)).isEqualTo(without().run(arguments));
        }
    }

    @Test
    void twoRunsAtOnceMadeOneAndItIsUsed() throws Exception {
        assertThat(archives(cache)).hasSize(1);
        // Its sum and when it was begun stand beside it.
        assertThat(list(cache)).hasSize(3);
        assertThat(loaded(quaybook())).contains("shared objects file");
        assertThat(loaded(without())).doesNotContain("shared objects file");
        changesNothing(quaybook());
    }

    /** A copy of the cache with the archive, whose owner may spoil it. */
    private static Path copied(String name) throws IOException {
        Path copy = Files.createDirectories(folder.resolve(name).resolve("quaybook"));
        for (Path file : list(cache)) {
            Path to = copy.resolve(file.getFileName());
            Files.copy(file, to);
            to.toFile().setWritable(true);
        }
        return copy.getParent();
    }

    @Test
    void aBrokenOneIsOfNoConsequence() throws Exception {
        long size = Files.size(archives(cache).get(0));
        long[][] holes = {{0, 64}, {size / 3, 4096}, {size / 2, 1 << 20}, {size - 4096, 4096}};
        for (long[] hole : holes) {
            Path copy = copied("hole at " + hole[0]);
            try (FileChannel file = FileChannel.open(archives(copy).get(0), StandardOpenOption.WRITE)) {
                file.write(ByteBuffer.allocate((int) hole[1]), hole[0]);
            }
            changesNothing(quaybook().with("XDG_CACHE_HOME", copy.toString()));
        }
        Path cut = copied("cut");
        try (FileChannel file = FileChannel.open(archives(cut).get(0), StandardOpenOption.WRITE)) {
            file.truncate(size / 2);
        }
        changesNothing(quaybook().with("XDG_CACHE_HOME", cut.toString()));
    }

    @Test
    void oneThatOthersMayWriteIsNotUsed() throws Exception {
        Path copy = copied("open");
        Path archive = archives(copy).get(0);
        Installed program = quaybook().with("XDG_CACHE_HOME", copy.toString());
        for (String open : List.of("rw--w----", "rw-----w-")) {
            Files.setPosixFilePermissions(archive, PosixFilePermissions.fromString(open));
            assertThat(loaded(program)).as(open).doesNotContain("shared objects file");
        }
        changesNothing(program);
        Files.setPosixFilePermissions(archive, PosixFilePermissions.fromString("rw-r--r--"));
        assertThat(loaded(program)).contains("shared objects file");
    }

    /** Whoever runs the tests cannot give a file away unless it is root: fakeroot makes the launcher see what it would see. */
    @Test
    void oneOfAnotherUserIsNotUsed() throws Exception {
        Path copy = copied("given away");
        Path archive = archives(copy).get(0);
        for (String owner : List.of("0", "65534")) {
            Installed program = quaybook()
                    .with("XDG_CACHE_HOME", copy.toString())
                    .under(
                            "fakeroot",
                            "sh",
                            "-c",
                            "chown \"$0\" \"$1\" && shift && exec \"$@\"",
                            owner,
                            archive.toString());
            if (owner.equals("0")) {
                assertThat(loaded(program)).contains("shared objects file");
            } else {
                assertThat(loaded(program)).doesNotContain("shared objects file");
                changesNothing(program);
            }
        }
    }

    @Test
    void noneIsKeptWhereNothingCanBeWritten() throws Exception {
        Path file = Files.writeString(folder.resolve("a file"), "");
        changesNothing(quaybook().with("XDG_CACHE_HOME", file.resolve("below").toString()));
        Installed homeless = Installed.at(home.resolve("quaybook"), home);
        changesNothing(homeless);
        changesNothing(homeless.with("HOME", folder.resolve("nowhere").toString()));
        assertThat(folder.resolve("nowhere")).doesNotExist();
    }

    @Test
    void oneOfOtherLibrariesIsNotUsed() throws Exception {
        Path library;
        try (Stream<Path> libraries = Files.list(home.resolve("lib"))) {
            library = libraries.findFirst().orElseThrow();
        }
        FileTime before = Files.getLastModifiedTime(library);
        Files.setLastModifiedTime(library, FileTime.from(Instant.now().plusSeconds(1)));
        try {
            assertThat(loaded(quaybook())).doesNotContain("shared objects file");
            changesNothing(quaybook());
        } finally {
            Files.setLastModifiedTime(library, before);
        }
    }

    /** After an update, whose making is killed; then with the former archive under the name of the new one. */
    @Test
    void oneOfAnotherProgramIsNotUsedAndAKilledMakingLeavesNothing() throws Exception {
        Path newer = folder.resolve("newer");
        Installed.run(folder, List.of("cp", "-a", home.toString(), newer.toString()));
        Files.write(newer.resolve("quaybook.jar"), new byte[] {0}, StandardOpenOption.APPEND);
        Path copy = copied("update");
        Path former = archives(copy).get(0);
        Installed updated = Installed.at(newer.resolve("quaybook"), home).with("XDG_CACHE_HOME", copy.toString());
        assertThat(loaded(updated)).doesNotContain("shared objects file");

        maker(copy).destroyForcibly();
        Instant latest = Instant.now().plus(LONGEST);
        while (making(copy)) {
            assertThat(Instant.now()).as("tidied in time").isBefore(latest);
            Thread.sleep(50);
        }
        assertThat(archives(copy)).containsExactly(former);

        for (Path file : list(copy)) {
            String name = file.toString();
            if (name.endsWith(".tried") && !name.equals(former + ".tried")) {
                String archive = name.substring(0, name.length() - ".tried".length());
                Files.copy(former, Path.of(archive));
                Files.copy(Path.of(former + ".sum"), Path.of(archive + ".sum"));
            }
        }
        assertThat(archives(copy)).hasSize(2);
        assertThat(loaded(updated)).doesNotContain("shared objects file");
        changesNothing(updated);
    }

    private static ProcessHandle maker(Path cache) throws InterruptedException {
        Instant latest = Instant.now().plus(LONGEST);
        while (Instant.now().isBefore(latest)) {
            var found = ProcessHandle.allProcesses()
                    .filter(process ->
                            process.info().commandLine().orElse("").matches(".*java .*" + cache + ".*/making-.*"))
                    .findFirst();
            if (found.isPresent()) {
                return found.get();
            }
            Thread.sleep(50);
        }
        throw new AssertionError("nobody makes an archive in " + cache);
    }
}
