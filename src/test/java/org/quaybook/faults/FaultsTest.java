package org.quaybook.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.pack.PackFolder;
import org.quaybook.proof.FolderCopy;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Verifier;

/**
 * Whatever happens to a run, what was there before is whole, the exit code and a message say what happened, and the next run
 * leaves nothing temporary. {@code src/test/faults} breaks off far more runs, whole packs too.
 */
class FaultsTest {

    private static final int ROUNDS = 6;
    private static final int NOT_WRITTEN = 3;
    private static final int OUR_FAULT = 4;

    @TempDir
    Path folder;

    private List<String> names(Path in) throws IOException {
        try (Stream<Path> inside = Files.list(in)) {
            return inside.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void killedWhileReplacingAPack() throws Exception {
        new Kills(26).packs(folder, ROUNDS);
    }

    @Test
    void killedWhilePublishing() throws Exception {
        new Kills(27).site(folder, ROUNDS);
    }

    @Test
    void twoRunsIntoOneFolder() throws Exception {
        Path target = folder.resolve("26-118");
        List<String> endless = List.of("packs", target.toString(), "1", "150");
        Process one = Program.here().start(Writing.class.getName(), endless);
        Process other = Program.here().start(Writing.class.getName(), endless);

        Program.Ended first = Program.end(one);
        Program.Ended second = Program.end(other);

        for (Program.Ended ended : List.of(first, second)) {
            assertThat(ended.code()).as(ended.said()).isZero();
            assertThat(ended.said().lines())
                    .allMatch(line -> line.startsWith("done ") || line.startsWith(Writing.BUSY));
            assertThat(ended.said()).contains("done ");
        }
        SmallPack.whole(target);
        assertThat(names(folder)).containsExactly("26-118");
    }

    @Test
    void aPackThatIsBeingMadeIsNeitherReplacedNorSigned() throws Exception {
        PrivateKeyFile key = Writing.key(folder);
        assertThat(Writing.publish(folder, 1, key)).isEqualTo("done 1");
        Path pack = folder.resolve("packs/26-118-1");
        try (FileChannel other = FileChannel.open(
                pack.resolveSibling(".26-118-1.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            other.lock();

            assertThat(Writing.pack(pack, 2)).startsWith(Writing.BUSY);
            assertThat(Writing.publish(folder, 1, key)).startsWith(Writing.BUSY);
        }
        assertThat(SmallPack.issue(SmallPack.whole(pack))).isEqualTo(1);
        // The file alone, as a killed run leaves it, keeps nobody out.
        assertThat(Writing.pack(pack, 2)).isEqualTo("done 2");
        assertThat(names(folder.resolve("packs"))).containsExactly("26-118-1");
    }

    /** POSIX: writing past the limit fails with EFBIG, as writing to a full disk does with ENOSPC. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aFullDisk() throws Exception {
        Path target = folder.resolve("26-118");
        Writing.pack(target, 1);

        Program.Ended ended = Program.end(Program.here()
                .withFilesUpTo(16)
                .start(Writing.class.getName(), List.of("packs", target.toString(), "2", "1")));

        assertThat(ended.said()).contains("told pack.cannot-write").contains("too large");
        assertThat(SmallPack.issue(SmallPack.whole(target))).isEqualTo(1);
        assertThat(names(folder)).containsExactly("26-118");

        Program.Ended key = Program.here()
                .withFilesUpTo(0)
                .run("key", folder.resolve("k.pem").toString());
        assertThat(key.code()).as(key.said()).isEqualTo(NOT_WRITTEN);
        assertThat(key.said()).contains("could not be written").doesNotContain("\tat ");
        Program.Ended start = Program.here()
                .withFilesUpTo(0)
                .run("start", folder.resolve("job.yaml").toString());
        assertThat(start.code()).as(start.said()).isEqualTo(NOT_WRITTEN);
        assertThat(start.said()).contains("could not be written").doesNotContain("\tat ");
        assertThat(names(folder)).containsExactly("26-118");
    }

    @Test
    void tooLittleMemory() throws Exception {
        Program.Ended ended = Program.here().with("-Xmx10m").run("check", "demo-jobs/lantern-moth");

        assertThat(ended.code()).as(ended.said()).isEqualTo(OUR_FAULT);
        assertThat(ended.said()).contains("too little memory").contains("-Xmx").doesNotContain("\tat ");

        Program.Ended least = Program.here().with("-Xmx6m").run("check", "demo-jobs/lantern-moth");
        assertThat(least.code()).as(least.said()).isEqualTo(OUR_FAULT);
        assertThat(least.said()).containsIgnoringCase("memory").doesNotContain("\tat ");
    }

    /** A clock that was wrong once: everything that lies there is of the next century. */
    @Test
    void filesFromTheFuture() throws Exception {
        PrivateKeyFile key = Writing.key(folder);
        assertThat(Writing.publish(folder, 1, key)).isEqualTo("done 1");
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.toList()) {
                Files.setLastModifiedTime(path, FileTime.from(Instant.parse("2126-01-01T00:00:00Z")));
            }
        }

        assertThat(Writing.publish(folder, 2, key)).isEqualTo("done 2");
        assertThat(Writing.pack(folder.resolve("packs/26-118-2"), 7)).isEqualTo("done 7");

        assertThat(Verifier.verify(FolderCopy.of(folder.resolve("site")), Set.of())
                        .alterations())
                .isEmpty();
    }

    /** What killed runs leave, at its worst: between the two moves, with a half-written pack beside it. */
    @Test
    void betweenTheTwoMoves() throws Exception {
        Path target = folder.resolve("26-118");
        Writing.pack(target, 1);
        Files.createDirectory(folder.resolve(".26-118.former"));
        Files.move(target, folder.resolve(".26-118.former/26-118"));
        Files.createDirectory(folder.resolve(".26-118.new"));
        Files.writeString(folder.resolve(".26-118.new/guide.pdf"), "%PDF-1.7 cut o", StandardCharsets.US_ASCII);
        Files.createFile(folder.resolve(".26-118.lock"));

        PackFolder.claim(target).close();

        assertThat(SmallPack.issue(SmallPack.whole(target))).isEqualTo(1);
        assertThat(names(folder)).containsExactly("26-118");
    }
}
