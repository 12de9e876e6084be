package org.quaybook.pack.site;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.quaybook.diag.Message;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.Refused;

/** A pack as it lies in its folder, every file as its manifest says. */
final class IssuedPack {

    private static final String FIGURES = "figures.json";
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String UNKNOWN_CODE = "record/404.html";

    private final Path folder;
    private final Manifest manifest;
    private final byte[] manifestBytes;
    private final NavigableMap<String, byte[]> files;

    private IssuedPack(Path folder, Manifest manifest, byte[] manifestBytes, NavigableMap<String, byte[]> files) {
        this.folder = folder;
        this.manifest = manifest;
        this.manifestBytes = manifestBytes;
        this.files = files;
    }

    /** Where it lies. */
    Path folder() {
        return folder;
    }

    /** What was issued. */
    Manifest manifest() {
        return manifest;
    }

    /** The manifest as it lies there. */
    byte[] manifestBytes() {
        return manifestBytes;
    }

    /** Content of the files that are published, by their path in the record's folder. */
    NavigableMap<String, byte[]> published() {
        String beside = "record/" + manifest.folder() + "/";
        NavigableMap<String, byte[]> published = new TreeMap<>();
        manifest.published().keySet().forEach(path -> published.put(path, content(beside + path)));
        return published;
    }

    private byte[] content(String path) {
        return Objects.requireNonNull(files.get(path), path);
    }

    /** What figures.json says of the job; empty if it cannot be read. */
    JsonNode job() {
        try {
            byte[] figures = files.get(FIGURES);
            return figures == null
                    ? MissingNode.getInstance()
                    : JSON.readTree(figures).path("job");
        } catch (IOException e) {
            return MissingNode.getInstance();
        }
    }

    /** Fingerprint of the key that the documents name. */
    Optional<String> namedKey() {
        return Optional.of(job().path("key").asText()).filter(key -> !key.isEmpty());
    }

    /** Content of the page for unknown codes. */
    byte[] unknownCode() {
        return content(UNKNOWN_CODE);
    }

    /**
     * Reads a pack.
     *
     * @throws NotPublished if it is none, or a file is missing or altered
     */
    static IssuedPack read(Path folder) throws NotPublished {
        byte[] manifestBytes;
        Manifest manifest;
        try {
            manifestBytes = Files.readAllBytes(folder.resolve(Manifest.FILE));
            manifest = Manifest.read(manifestBytes);
        } catch (IOException e) {
            throw NotPublished.refused(folder, Message.of(SiteMessage.NOT_A_PACK, folder.toString(), Manifest.FILE));
        } catch (Refused e) {
            throw NotPublished.refused(
                    folder, Message.of(SiteMessage.NOT_A_PACK, folder.toString(), Manifest.FILE), e.reason());
        }
        NavigableMap<String, byte[]> files = new TreeMap<>();
        List<String> altered = new ArrayList<>();
        manifest.sha256()
                .forEach((path, digest) -> read(folder.resolve(path), digest)
                        .ifPresentOrElse(content -> files.put(path, content), () -> altered.add(path)));
        if (!altered.isEmpty() || !files.containsKey(UNKNOWN_CODE)) {
            throw NotPublished.refused(
                    folder,
                    Message.of(SiteMessage.PACK_ALTERED, altered.isEmpty() ? UNKNOWN_CODE : String.join(", ", altered)),
                    Message.of(SiteMessage.PACK_ALTERED_HINT));
        }
        return new IssuedPack(folder, manifest, manifestBytes, files);
    }

    private static Optional<byte[]> read(Path file, String digest) {
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.empty();
            }
            byte[] content = Files.readAllBytes(file);
            return Digest.of(content).equals(digest) ? Optional.of(content) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
