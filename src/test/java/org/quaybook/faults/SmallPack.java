package org.quaybook.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.Refused;

/** Packs of few invented files that are written fast, so that many writings can be broken off. */
final class SmallPack {

    static final String CODE = "81EZD3SWFGV4RK1ZH0YDQ";

    private static final String GROUPED = "81EZ-D3SW-FGV4-RK1Z-H0YD-Q";
    private static final int LONG = 30_000;

    private SmallPack() {}

    /**
     * The files of a pack.
     *
     * @param revision from 1; every file says it
     * @param issue tells packs of one revision apart
     */
    static Map<String, byte[]> files(int revision, int issue, Optional<Manifest.Previous> previous) {
        Map<String, byte[]> files = new TreeMap<>();
        files.put("guide.pdf", content("guide", revision, issue));
        files.put("labels.pdf", content("labels", revision, issue));
        files.put("record/404.html", content("unknown", 1, 1));
        for (String name : new String[] {"index.html", "offline.js", "pictures/system.svg"}) {
            files.put("record/" + CODE + "/" + name, content(name, revision, issue));
        }
        LocalDate date = LocalDate.of(2026, 5, 1).plusDays(revision);
        files.put(
                "record/" + CODE + "/figures.json",
                text("{\"job\":{\"number\":\"26-118\",\"record\":\"" + GROUPED + "\",\"revision\":" + revision
                        + ",\"date\":\"" + date + "\"},\"issue\":" + issue + "}"));
        NavigableMap<String, String> digests = new TreeMap<>();
        files.forEach((path, content) -> digests.put(path, Digest.of(content)));
        files.put(
                Manifest.FILE,
                new Manifest("quaybook test " + issue, "26-118", GROUPED, revision, date, previous, digests).json());
        return files;
    }

    private static byte[] content(String name, int revision, int issue) {
        return text(name + " of " + revision + " " + issue);
    }

    /** Long enough that writing it takes a moment. */
    private static byte[] text(String said) {
        byte[] content = new byte[LONG];
        Arrays.fill(content, (byte) ' ');
        byte[] text = said.getBytes(StandardCharsets.UTF_8);
        System.arraycopy(text, 0, content, 0, text.length);
        return content;
    }

    /** Holds a pack against its manifest: each file as it says, none missing, none besides; gives the manifest. */
    static Manifest whole(Path pack) throws IOException, Refused {
        Manifest manifest = Manifest.read(Files.readAllBytes(pack.resolve(Manifest.FILE)));
        Map<String, String> there = digests(pack);
        there.remove(Manifest.FILE);
        there.remove(Manifest.SIGNATURE_FILE);
        assertThat(there).as(pack.toString()).isEqualTo(manifest.sha256());
        return manifest;
    }

    /** Which of the small packs it is. */
    static int issue(Manifest manifest) {
        String program = manifest.program();
        return Integer.parseInt(program.substring(program.lastIndexOf(' ') + 1));
    }

    /** Digest of each file in a folder, by its path with slashes. */
    static Map<String, String> digests(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .collect(Collectors.toMap(
                            file -> folder.relativize(file).toString().replace('\\', '/'),
                            file -> Digest.of(read(file)),
                            (one, other) -> one,
                            TreeMap::new));
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
}
