package org.quaybook.pack.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.proof.Digest;
import org.quaybook.proof.FolderCopy;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Refused;
import org.quaybook.proof.Verification;
import org.quaybook.proof.Verifier;

/** Publishing revision after revision; whatever is published is as issued by {@link Verifier}. */
class SiteTest {

    private static final String CODE = "81EZD3SWFGV4RK1ZH0YDQ";
    private static final PrivateKeyFile KEY = PrivateKeyFile.draw(new SecureRandom());

    @TempDir
    Path temp;

    private Path site() {
        return temp.resolve("site");
    }

    /** A pack with few small files. */
    private Path pack(String name, int revision, Optional<Manifest.Previous> previous, Map<String, String> published)
            throws IOException {
        Path folder = temp.resolve(name);
        NavigableMap<String, String> digests = new TreeMap<>();
        Map<String, String> files = new TreeMap<>();
        published.forEach((file, content) -> files.put("record/" + CODE + "/" + file, content));
        files.put("record/404.html", "unknown");
        files.put("worksheet.pdf", "private");
        files.put("figures.json", published.getOrDefault("figures.json", "{}"));
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
            digests.put(file.getKey(), Digest.of(file.getValue()));
        }
        Files.write(
                folder.resolve(Manifest.FILE),
                new Manifest(
                                "quaybook test",
                                "26-118",
                                "81EZ-D3SW-FGV4-RK1Z-H0YD-Q",
                                revision,
                                LocalDate.of(2026, 5, revision),
                                previous,
                                digests)
                        .json());
        return folder;
    }

    private static String figures(int revision) {
        return "{\"job\":{\"number\":\"26-118\",\"record\":\"81EZ-D3SW-FGV4-RK1Z-H0YD-Q\",\"revision\":" + revision
                + ",\"date\":\"2026-05-0" + revision + "\"}}";
    }

    private Path first() throws IOException {
        return pack(
                "one",
                1,
                Optional.empty(),
                Map.of("index.html", "page 1", "index-nl.html", "bladzijde 1", "figures.json", figures(1)));
    }

    private Path second(Path first) throws IOException, Refused {
        return pack(
                "two",
                2,
                Optional.of(Manifest.Previous.to(Files.readAllBytes(first.resolve(Manifest.FILE)))),
                Map.of("index.html", "page 2", "figures.json", figures(2)));
    }

    private Verification verified() throws Refused {
        return Verifier.verify(FolderCopy.of(site()), Set.of(KEY.verifyingKey()));
    }

    private Map<String, String> published() {
        try (Stream<Path> all = Files.walk(site())) {
            Map<String, String> files = new TreeMap<>();
            all.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .forEach(file -> files.put(
                            site().relativize(file).toString(), new String(read(file), StandardCharsets.UTF_8)));
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aNewRecord() throws Exception {
        Path pack = first();

        assertThat(Site.at(site()).publish(pack, KEY)).isEqualTo(Site.Outcome.NEW);

        assertThat(published())
                .containsOnlyKeys(
                        "404.html",
                        CODE + "/index.html",
                        CODE + "/index-nl.html",
                        CODE + "/figures.json",
                        CODE + "/issue.json",
                        CODE + "/issue.sig");
        assertThat(read(pack.resolve("issue.sig"))).isEqualTo(read(site().resolve(CODE + "/issue.sig")));
        assertThat(verified().alterations()).isEmpty();
        assertThat(Site.at(site()).publish(pack, KEY)).isEqualTo(Site.Outcome.SAME);
    }

    @Test
    void theNextRevisionKeepsTheOneBefore() throws Exception {
        Path one = first();
        Site.at(site()).publish(one, KEY);

        assertThat(Site.at(site()).publish(second(one), KEY)).isEqualTo(Site.Outcome.NEXT);

        assertThat(published())
                .containsEntry(CODE + "/index.html", "page 2")
                .containsEntry(CODE + "/revision-1/index.html", "page 1")
                .containsEntry(CODE + "/revision-1/index-nl.html", "bladzijde 1")
                .doesNotContainKey(CODE + "/index-nl.html");
        assertThat(verified().alterations()).isEmpty();
        assertThat(verified().issues()).hasSize(2);
    }

    /** At whatever step publishing was broken off, publishing again completes it. */
    @Test
    void goesOnAfterBreakingOff() throws Exception {
        Path one = first();
        Path two = second(one);
        for (int step = 0; step < 4; step++) {
            Site.at(site()).publish(one, KEY);
            Path record = site().resolve(CODE);
            Files.createDirectories(site().resolve(".new-1/x"));
            if (step > 0) {
                Files.createDirectories(record.resolve("revision-1"));
                for (String name :
                        new String[] {"index.html", "index-nl.html", "figures.json", "issue.json", "issue.sig"}) {
                    Files.copy(record.resolve(name), record.resolve("revision-1/" + name));
                }
            }
            if (step > 1) {
                Files.writeString(record.resolve("figures.json"), figures(2));
                Files.writeString(record.resolve(".index.html.new"), "pag");
            }
            if (step > 2) {
                Files.writeString(record.resolve("index.html"), "page 2");
            }

            assertThat(Site.at(site()).publish(two, KEY)).isEqualTo(Site.Outcome.NEXT);

            assertThat(verified().alterations()).as("step " + step).isEmpty();
            assertThat(site().resolve(".new-1")).doesNotExist();
            assertThat(record.resolve(".index.html.new")).doesNotExist();
            try (Stream<Path> all = Files.walk(site())) {
                all.sorted(java.util.Comparator.reverseOrder())
                        .forEach(path -> path.toFile().delete());
            }
        }
    }

    @Test
    void whatIsPublishedIsNeverChanged() throws Exception {
        Path one = first();
        Site.at(site()).publish(one, KEY);
        Map<String, String> before = published();
        Path other = pack("other", 1, Optional.empty(), Map.of("index.html", "another page 1"));
        Path loose = pack("loose", 2, Optional.empty(), Map.of("index.html", "page 2"));

        refused(other, "site.issued-otherwise");
        refused(loose, "site.does-not-follow");
        refused(second(one).resolve("record"), "site.not-a-pack");
        assertThat(published()).isEqualTo(before);

        Site.at(site()).publish(second(one), KEY);
        assertThat(Site.at(site()).publish(one, KEY)).isEqualTo(Site.Outcome.EARLIER);
        refused(other, "site.older");
    }

    private void refused(Path pack, String reason) {
        assertThatThrownBy(() -> Site.at(site()).publish(pack, KEY))
                .isInstanceOfSatisfying(
                        NotPublished.class,
                        refused -> assertThat(refused.diagnostic().rule()).isEqualTo(reason));
    }

    @Test
    void aChainIsNotBegunInTheMiddle() throws Exception {
        refused(second(first()), "site.before-missing");
        assertThat(site())
                .satisfiesAnyOf(
                        folder -> assertThat(folder).doesNotExist(),
                        folder -> assertThat(published()).isEmpty());
    }

    @Test
    void anAlteredPackIsNotPublished() throws Exception {
        Path pack = first();
        Files.writeString(pack.resolve("worksheet.pdf"), "changed");

        refused(pack, "site.pack-altered");
        assertThat(pack.resolve("issue.sig")).doesNotExist();
    }

    @Test
    void anAlteredRecordIsNotCarriedOn() throws Exception {
        Path one = first();
        Site.at(site()).publish(one, KEY);
        Files.writeString(site().resolve(CODE + "/index.html"), "forged");

        refused(second(one), "site.record-altered");
        assertThat(site().resolve(CODE + "/revision-1")).doesNotExist();
    }

    @Test
    void theKeyThatTheDocumentsNameMustSign() throws Exception {
        String figures = figures(1).replace("}}", ",\"key\":\"ABCD-EFGH-JKMN\"}}");

        refused(
                pack("named", 1, Optional.empty(), Map.of("index.html", "p", "figures.json", figures)),
                "site.other-key");
    }

    @Test
    void aWithdrawnRecordLeavesNothing() throws Exception {
        Path one = first();
        Site.at(site()).publish(one, KEY);
        Site.at(site()).publish(second(one), KEY);

        Site.at(site()).withdraw(CODE, "withdrawn page".getBytes(StandardCharsets.UTF_8));

        assertThat(published())
                .containsOnlyKeys("404.html", CODE + "/index.html", CODE + "/withdrawn")
                .containsEntry(CODE + "/index.html", "withdrawn page");
        assertThat(verified().alterations()).isEmpty();
        assertThat(verified().notes().toString()).contains("WITHDRAWN");
        refused(one, "site.withdrawn");
        assertThatThrownBy(() -> Site.at(site()).withdraw("9F3K7TWMX2QA6HCED1RBY", new byte[0]))
                .isInstanceOf(NotPublished.class);
    }

    @Test
    void otherFoldersAreLeftAlone() throws Exception {
        Files.createDirectories(site());
        Files.writeString(site().resolve("letter.txt"), "mine");

        assertThatThrownBy(() -> Site.at(site())).isInstanceOf(NotPublished.class);
    }

    @Test
    void oneAtATime() throws Exception {
        Files.createDirectories(site());
        Path pack = first();
        try (FileChannel other =
                FileChannel.open(site().resolve(".publishing"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            other.lock();
            refused(pack, "site.busy");
        }
        assertThat(Site.at(site()).publish(pack, KEY)).isEqualTo(Site.Outcome.NEW);
    }
}
