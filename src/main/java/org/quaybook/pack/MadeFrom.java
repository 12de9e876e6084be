package org.quaybook.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.pack.changes.IssuedBefore;
import org.quaybook.pack.changes.IssuedPacks;
import org.quaybook.pack.changes.NotComparable;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.Refused;

/**
 * Remembers beside each pack what it was made from, so that it need not be made again while all of that is the same and
 * the pack is as it was made. Everything is compared by its content (SHA-256), nothing by its time.
 */
public final class MadeFrom {

    private final String surroundings;

    /**
     * @param program files and folders that the program consists of: another build may make other packs
     * @param ownTemplates folder whose templates take the place of the built-in ones; null for none
     * @throws UncheckedIOException if one of them cannot be read
     */
    public MadeFrom(List<Path> program, @Nullable Path ownTemplates) {
        this.surroundings = Digest.of(Stream.concat(program.stream(), Stream.ofNullable(ownTemplates))
                .flatMap(place -> inside(place).stream())
                .collect(Collectors.joining("\n")));
    }

    private static List<String> inside(Path place) {
        try (Stream<Path> all = Files.walk(place)) {
            return all.filter(Files::isRegularFile)
                    .sorted()
                    .map(file -> place.relativize(file) + " " + digest(file))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What a pack would be made from.
     *
     * @param number of the job
     * @param digest of everything that has a say in the pack
     */
    public record Origin(String number, String digest) {}

    /**
     * Reads what the pack of a job would be made from.
     *
     * @param packs folder of the packs
     * @return empty if that cannot be read; whoever makes the pack then tells why
     */
    public Optional<Origin> of(Path job, Path packs) {
        JobReading reading = JobReader.read(Road.file(job), Road.vocabulary());
        if (reading.job() == null) {
            return Optional.empty();
        }
        String number = reading.job().job().number();
        try {
            List<String> parts = new ArrayList<>(List.of(surroundings));
            for (Path input : Road.inputs(job, reading)) {
                parts.add(input.getFileName() + " " + (Files.isRegularFile(input) ? digest(input) : ""));
            }
            for (IssuedBefore issued : IssuedPacks.of(packs.resolve(number)).allBefore(Integer.MAX_VALUE)) {
                parts.add(Digest.of(issued.manifest().json()));
            }
            return Optional.of(new Origin(number, Digest.of(String.join("\n", parts))));
        } catch (NotComparable | UncheckedIOException e) {
            return Optional.empty();
        }
    }

    /** Whether the pack of a job is there, was made from this, and no file of it was changed or taken away since. */
    public boolean isMade(Origin origin, Path packs) {
        Path pack = packs.resolve(origin.number());
        try {
            byte[] manifest = Files.readAllBytes(pack.resolve(Manifest.FILE));
            return Files.readString(memory(origin, packs)).equals(memory(origin, manifest)) && isWhole(pack, manifest);
        } catch (IOException | Refused | UncheckedIOException e) {
            return false;
        }
    }

    private static boolean isWhole(Path pack, byte[] manifest) throws Refused {
        for (Map.Entry<String, String> file : Manifest.read(manifest).sha256().entrySet()) {
            if (!digest(pack.resolve(file.getKey())).equals(file.getValue())) {
                return false;
            }
        }
        return true;
    }

    /**
     * Remembers that the pack was made.
     *
     * @throws PackFolder.NotWritten if that cannot be written
     */
    public void remember(Origin origin, Path packs) throws PackFolder.NotWritten {
        try {
            byte[] manifest = Files.readAllBytes(packs.resolve(origin.number()).resolve(Manifest.FILE));
            PackFolder.writeFile(memory(origin, packs), memory(origin, manifest).getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            // Taken away meanwhile: there is nothing to remember.
        }
    }

    private static Path memory(Origin origin, Path packs) {
        return packs.resolve("." + origin.number() + ".made");
    }

    private static String memory(Origin origin, byte[] manifest) {
        return origin.digest() + "\n" + Digest.of(manifest) + "\n";
    }

    private static String digest(Path file) {
        try {
            return Digest.of(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
