package org.quaybook.pack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.quaybook.render.RenderException;

/**
 * Makes documents that hang on no other at the same time, on as many cores as there are; called from a pool of its own
 * kind, on those of that pool.
 */
final class SideBySide {

    private SideBySide() {}

    /** What became of one of them. */
    private record Made(Map<String, byte[]> files, Optional<RenderException> refused) {}

    /**
     * Path to content of all.
     *
     * @param makers those that take longest first
     * @throws RenderException of the first one that is refused, whichever was done first
     */
    static Map<String, byte[]> files(List<Supplier<Map<String, byte[]>>> makers) {
        Map<String, byte[]> files = new TreeMap<>();
        for (Made made : makers.parallelStream().map(SideBySide::make).toList()) {
            made.refused().ifPresent(refused -> {
                throw refused;
            });
            files.putAll(made.files());
        }
        return files;
    }

    private static Made make(Supplier<Map<String, byte[]>> maker) {
        try {
            return new Made(maker.get(), Optional.empty());
        } catch (RenderException e) {
            return new Made(Map.of(), Optional.of(e));
        }
    }
}
