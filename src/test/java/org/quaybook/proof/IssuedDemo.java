package org.quaybook.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.Road;

/**
 * A pack of a demo job as it was issued, and its record as it is published: the files of the record and a manifest, which
 * is signed.
 *
 * @param files by their path in the pack, without manifest and signature
 */
record IssuedDemo(Manifest manifest, Map<String, byte[]> files, PrivateKeyFile key) {

    static final PrivateKeyFile KEY = PrivateKeyFile.draw(new SecureRandom());

    /** A demo job with this key in its installer's profile, and with other words in its file. */
    static IssuedDemo of(String demo, Path folder, Map<String, String> changes, Optional<Manifest.Previous> previous)
            throws IOException, Refused {
        Files.createDirectories(folder);
        try (Stream<Path> given = Files.list(Path.of("demo-jobs", demo))) {
            for (Path file : given.toList()) {
                Files.copy(file, folder.resolve(Objects.toString(file.getFileName())));
            }
        }
        Path profile = folder.resolve("installer.yaml");
        Files.writeString(
                profile,
                Files.readString(profile)
                        .replaceAll(
                                "public-key: .*",
                                "public-key: " + KEY.verifyingKey().base64()));
        Path file = folder.resolve("job.yaml");
        String job = Files.readString(file);
        for (Map.Entry<String, String> change : changes.entrySet()) {
            assertThat(job).contains(change.getKey());
            job = job.replace(change.getKey(), change.getValue());
        }
        Files.writeString(file, job);
        Road.Judged judged = Road.judge(file);
        assertThat(judged.problems()).isEmpty();
        try {
            return of(new TreeMap<>(Road.documents(judged, null, "test"))).after(previous);
        } catch (NotPrinted e) {
            throw new AssertionError(e);
        }
    }

    private static IssuedDemo of(NavigableMap<String, byte[]> pack) throws Refused {
        Manifest manifest = Manifest.read(Objects.requireNonNull(pack.remove(Manifest.FILE)));
        return new IssuedDemo(manifest, pack, KEY);
    }

    private static Manifest with(
            Manifest like, Optional<Manifest.Previous> previous, NavigableMap<String, String> digests) {
        return new Manifest(
                like.program(), like.number(), like.record(), like.revision(), like.date(), previous, digests);
    }

    IssuedDemo after(Optional<Manifest.Previous> previous) {
        return new IssuedDemo(with(manifest, previous, manifest.sha256()), files, key);
    }

    IssuedDemo signedWith(PrivateKeyFile other) {
        return new IssuedDemo(manifest, files, other);
    }

    /** As another content of a file makes it, signed anew. */
    IssuedDemo holding(String path, byte[] content) {
        Map<String, byte[]> other = new TreeMap<>(files);
        other.put(path, content);
        NavigableMap<String, String> digests = new TreeMap<>(manifest.sha256());
        digests.put(path, Digest.of(content));
        return new IssuedDemo(with(manifest, manifest.previous(), digests), other, key);
    }

    Manifest.Previous link() {
        return new Manifest.Previous(manifest.revision(), Digest.of(manifest.json()));
    }

    void writePack(Path folder) throws IOException {
        write(folder, files);
    }

    void writeRecord(Path folder) throws IOException {
        Map<String, byte[]> published = new TreeMap<>();
        manifest.published()
                .keySet()
                .forEach(path -> published.put(
                        path, Objects.requireNonNull(files.get("record/" + manifest.folder() + "/" + path))));
        write(folder, published);
    }

    private void write(Path folder, Map<String, byte[]> content) throws IOException {
        for (Map.Entry<String, byte[]> file : content.entrySet()) {
            Path at = folder.resolve(file.getKey());
            Files.createDirectories(Objects.requireNonNull(at.getParent()));
            Files.write(at, file.getValue());
        }
        Files.write(folder.resolve(Manifest.FILE), manifest.json());
        Files.write(folder.resolve(Manifest.SIGNATURE_FILE), Signing.sign(manifest.json(), key));
    }
}
