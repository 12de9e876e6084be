package org.quaybook.pack.changes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The issued packs of a job in the folder of packs: the newest in the pack's own place, the earlier ones beside it. A pack is
 * issued once it is signed.
 */
public final class IssuedPacks {

    private final Path place;
    private final List<IssuedBefore> packs;

    private IssuedPacks(Path place, List<IssuedBefore> packs) {
        this.place = place;
        this.packs = packs;
    }

    /** Nothing was issued before. */
    public static IssuedPacks none() {
        return new IssuedPacks(Path.of(""), List.of());
    }

    /**
     * Reads what was issued.
     *
     * @param place of the job's pack; nothing may be there yet
     * @throws NotComparable if a signed pack cannot be read
     */
    public static IssuedPacks of(Path place) throws NotComparable {
        List<IssuedBefore> packs = new ArrayList<>();
        for (Path folder : folders(place)) {
            IssuedBefore.read(folder).ifPresent(packs::add);
        }
        packs.sort(Comparator.comparing(pack -> pack.manifest().revision()));
        return new IssuedPacks(place, List.copyOf(packs));
    }

    private static List<Path> folders(Path place) throws NotComparable {
        Path parent = place.toAbsolutePath().normalize().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            return List.of();
        }
        Pattern ours =
                Pattern.compile(Pattern.quote(String.valueOf(place.getFileName())) + "(-revision-[1-9][0-9]{0,2})?");
        try (Stream<Path> all = Files.list(parent)) {
            return all.filter(folder ->
                            ours.matcher(folder.getFileName().toString()).matches())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new NotComparable(parent.toString(), e);
        }
    }

    /** The pack of this revision, if it has been issued. */
    public Optional<IssuedBefore> of(int revision) {
        return packs.stream()
                .filter(pack -> pack.manifest().revision() == revision)
                .findFirst();
    }

    /** The last one issued before a revision. */
    public Optional<IssuedBefore> before(int revision) {
        return packs.stream()
                .filter(pack -> pack.manifest().revision() < revision)
                .reduce((earlier, later) -> later);
    }

    /** The last one issued. */
    public Optional<IssuedBefore> last() {
        return packs.isEmpty() ? Optional.empty() : Optional.of(packs.get(packs.size() - 1));
    }

    /** All that were issued before a revision, oldest first. */
    public List<IssuedBefore> allBefore(int revision) {
        return packs.stream()
                .filter(pack -> pack.manifest().revision() < revision)
                .toList();
    }

    /** Where an issued pack goes when a new one takes its place; empty if none lies there. */
    public Optional<Path> keptAt() {
        return packs.stream()
                .filter(pack -> pack.folder().equals(place.toAbsolutePath().normalize()))
                .findFirst()
                .map(pack -> place.resolveSibling(
                        place.getFileName() + "-revision-" + pack.manifest().revision()));
    }
}
