package org.quaybook.pack.changes;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.Refused;
import org.quaybook.record.Issued;
import org.quaybook.record.RecordLink;

/** A pack that was issued: signed, and so never to be changed. */
public final class IssuedBefore {

    private static final String FIGURES = "figures.json";

    private final Path folder;
    private final Manifest manifest;
    private final byte[] manifestBytes;
    private final JsonNode figures;
    private final JsonNode publishedFigures;

    private IssuedBefore(
            Path folder, Manifest manifest, byte[] manifestBytes, JsonNode figures, JsonNode publishedFigures) {
        this.folder = folder;
        this.manifest = manifest;
        this.manifestBytes = manifestBytes;
        this.figures = figures;
        this.publishedFigures = publishedFigures;
    }

    /** Reads a pack; empty if the folder holds none or it is not signed. */
    static Optional<IssuedBefore> read(Path folder) throws NotComparable {
        if (!Files.exists(folder.resolve(Manifest.SIGNATURE_FILE))) {
            return Optional.empty();
        }
        try {
            byte[] bytes = Files.readAllBytes(folder.resolve(Manifest.FILE));
            Manifest manifest = Manifest.read(bytes);
            return Optional.of(new IssuedBefore(
                    folder.toAbsolutePath().normalize(),
                    manifest,
                    bytes,
                    json(folder.resolve(FIGURES)),
                    json(record(folder, manifest).resolve(FIGURES))));
        } catch (IOException | Refused e) {
            throw new NotComparable(folder.toString(), e);
        }
    }

    private static JsonNode json(Path file) throws IOException {
        return new ObjectMapper().readTree(Files.readAllBytes(file));
    }

    /** Where its record can be read. */
    private static Path record(Path folder, Manifest manifest) {
        return manifest.sha256().containsKey(RecordLink.UNSEALED + "/" + FIGURES)
                ? folder.resolve(RecordLink.UNSEALED)
                : folder.resolve("record").resolve(manifest.folder());
    }

    /** Where it lies. */
    Path folder() {
        return folder;
    }

    /** What was issued. */
    public Manifest manifest() {
        return manifest;
    }

    /** Whether a manifest is this one to the byte. */
    public boolean is(byte[] other) {
        return Arrays.equals(manifestBytes, other);
    }

    /** The link to it, for the manifest of the next revision. */
    public Manifest.Previous link() {
        return new Manifest.Previous(manifest.revision(), Digest.of(manifestBytes));
    }

    /** What the record page of a later revision says of it. */
    public Issued issued() {
        return new Issued(manifest.revision(), manifest.date(), Digest.of(manifestBytes));
    }

    /** The figures.json of its published record, which holds nobody's name. */
    JsonNode publishedFigures() {
        return publishedFigures;
    }

    /** Its figures.json. */
    JsonNode figures() {
        return figures;
    }

    /** A page of its published record; empty if it has none of that name. */
    Optional<String> page(String name) {
        Path file = record(folder, manifest).resolve(name);
        try {
            return Files.isRegularFile(file)
                    ? Optional.of(Files.readString(file, StandardCharsets.UTF_8))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
