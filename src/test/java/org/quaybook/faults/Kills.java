package org.quaybook.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.quaybook.proof.Digest;
import org.quaybook.proof.FolderCopy;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Refused;
import org.quaybook.proof.Verifier;

/** Writing that is killed (SIGKILL) at random moments, and what is found after each. */
final class Kills {

    /** Milliseconds; a writing takes a few of them, so that every moment of one can be met. */
    private static final int LATEST = 120;

    private static final int ENDLESS = 1_000_000;

    private final Random random;

    /** Where a killed writing has left the former pack beside its place. */
    private int aside;

    /** Where it has left temporary files. */
    private int leftovers;

    Kills(long seed) {
        this.random = new Random(seed);
    }

    /** What was met, for the figures. */
    String met() {
        return "with leftovers " + leftovers + ", between the two moves " + aside;
    }

    /** Replaces a pack again and again; after each kill the former or the new one is whole, and the next run tidies up. */
    void packs(Path folder, int rounds) throws Exception {
        Path target = folder.resolve("26-118");
        int issue = 1;
        Writing.pack(target, issue);
        for (int round = 0; round < rounds; round++) {
            int last = killed("packs", target, issue + 1, issue);
            leftovers += Math.min(1, names(folder).size() - 1);
            Path there = target;
            if (!Files.exists(target)) {
                aside++;
                there = folder.resolve(".26-118.former/26-118");
            }
            int found = SmallPack.issue(SmallPack.whole(there));
            assertThat(found).as("round " + round).isBetween(last, last + 1);
            issue = found + 1;
            assertThat(Writing.pack(target, issue)).isEqualTo("done " + issue);
            assertThat(SmallPack.issue(SmallPack.whole(target))).isEqualTo(issue);
            assertThat(names(folder)).as("round " + round).containsExactly("26-118");
        }
    }

    /** Publishes revision after revision; after each kill every file is whole, and publishing again completes the record. */
    void site(Path folder, int rounds) throws Exception {
        PrivateKeyFile key = Writing.key(folder);
        Path site = folder.resolve("site");
        Path record = site.resolve(SmallPack.CODE);
        int revision = 0;
        for (int round = 0; round < rounds; round++) {
            int last = killed("site", folder, revision + 1, revision);
            leftovers += temporary(folder).isEmpty() ? 0 : 1;
            if (Files.exists(record)) {
                eachFileIsWhole(record, last);
            }
            // What was broken off, again.
            revision = last + 1;
            assertThat(Writing.publish(folder, revision, key)).isEqualTo("done " + revision);
            assertThat(Verifier.verify(FolderCopy.of(site), Set.of()).alterations())
                    .as("round " + round)
                    .isEmpty();
            assertThat(Manifest.read(Files.readAllBytes(record.resolve(Manifest.FILE)))
                            .revision())
                    .isEqualTo(revision);
            assertThat(temporary(folder)).as("round " + round).isEmpty();
        }
    }

    /** A file of the newest revision is of that or of the next one; earlier revisions are as they were. */
    private static void eachFileIsWhole(Path record, int last) throws IOException, Refused {
        byte[] issued = Files.readAllBytes(record.resolve(Manifest.FILE));
        Manifest now = Manifest.read(issued);
        assertThat(now.revision()).isBetween(last, last + 1);
        Manifest next = Manifest.read(SmallPack.files(now.revision() + 1, 1, Optional.of(Manifest.Previous.to(issued)))
                .get(Manifest.FILE));
        for (String path : now.published().keySet()) {
            assertThat(Digest.of(Files.readAllBytes(record.resolve(path))))
                    .as(path)
                    .isIn(now.published().get(path), next.published().get(path));
        }
        for (int earlier = 1; earlier < now.revision(); earlier++) {
            Path kept = record.resolve("revision-" + earlier);
            Manifest manifest = Manifest.read(Files.readAllBytes(kept.resolve(Manifest.FILE)));
            assertThat(SmallPack.digests(kept)).containsAllEntriesOf(manifest.published());
        }
    }

    /** Lets it write for a while and kills it; gives what it had done last. */
    private int killed(String what, Path place, int first, int before) throws IOException, InterruptedException {
        Process process = Program.here()
                .start(
                        Writing.class.getName(),
                        List.of(what, place.toString(), String.valueOf(first), String.valueOf(ENDLESS)));
        int last = before;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            // Warm: from now on it does little else than write.
            assertThat(said.readLine()).isEqualTo("done " + first);
            last = first;
            Thread.sleep(random.nextInt(LATEST), random.nextInt(1_000_000));
            // Through its handle: the process itself would close what it has said, too.
            process.toHandle().destroyForcibly();
            process.waitFor();
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                // The last line may be cut off, in its number too.
                if (line.equals("done " + (last + 1))) {
                    last++;
                } else {
                    assertThat("done " + (last + 1)).startsWith(line);
                }
            }
        }
        return last;
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    /** What is hidden, but for the lock of the site, which stays. */
    private static List<Path> temporary(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.getFileName().toString().startsWith("."))
                    .filter(path -> !path.getFileName().toString().equals(".publishing"))
                    .toList();
        }
    }
}
