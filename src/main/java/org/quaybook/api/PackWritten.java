package org.quaybook.api;

import java.nio.file.Path;
import java.util.List;
import org.quaybook.pack.Reissue;

/**
 * A pack that lies in its folder.
 *
 * @param folder of the pack
 * @param outcome what became of it
 * @param changes sentences for the installer about what it changes against the one issued before; empty if none was
 */
public record PackWritten(Path folder, Outcome outcome, List<String> changes) {

    /** What became of a pack. */
    public enum Outcome {
        /** It was written in the place of a draft or of nothing. */
        WRITTEN,
        /** It was written; the signed pack that lay there lies beside it now. */
        FOLLOWS,
        /** The same pack has been signed before; nothing was written. */
        UNCHANGED;

        static Outcome of(Reissue.Outcome outcome) {
            return switch (outcome) {
                case WRITTEN -> WRITTEN;
                case FOLLOWS -> FOLLOWS;
                case UNCHANGED -> UNCHANGED;
            };
        }
    }

    /**
     * Takes a copy of the changes.
     *
     * @param folder of the pack
     * @param outcome what became of it
     * @param changes sentences for the installer
     */
    public PackWritten {
        changes = List.copyOf(changes);
    }
}
