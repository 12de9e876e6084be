package org.quaybook.pack;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.job.Header;
import org.quaybook.pack.changes.IssuedBefore;
import org.quaybook.pack.changes.IssuedPacks;
import org.quaybook.pack.changes.NotComparable;
import org.quaybook.proof.Manifest;

/** Makes a pack where one may have been issued already: what was issued is never changed. */
public final class Reissue {

    private Reissue() {}

    /** What became of a pack. */
    public enum Outcome {
        /** It is there, in the place of a draft or of nothing. */
        WRITTEN,
        /** It is there; the issued pack that was there lies beside it. */
        FOLLOWS,
        /** The same pack has been issued; nothing was written. */
        UNCHANGED
    }

    /**
     * What became of a pack, and what it changes.
     *
     * @param changes sentences about what it changes against the one issued before; empty if none was
     */
    public record Written(Outcome outcome, List<String> changes) {
        public Written {
            changes = List.copyOf(changes);
        }
    }

    /**
     * Makes the documents and writes them.
     *
     * @param target the pack's folder
     * @throws NotPrinted as {@link Road#documents}; or if the revision was issued and the job says something else now, or is
     *     not the next one
     * @throws PackFolder.NotWritten if another run is making the pack, something else than a pack is there, or the system refuses
     */
    public static Written write(Path target, Road.Judged judged, @Nullable Path ownTemplates, String version)
            throws NotPrinted, PackFolder.NotWritten {
        // For all of it: what is compared with, signed meanwhile or replaced, would be lost.
        try (PackFolder folder = PackFolder.claim(target)) {
            return write(folder, target, judged, ownTemplates, version);
        }
    }

    private static Written write(
            PackFolder folder, Path target, Road.Judged judged, @Nullable Path ownTemplates, String version)
            throws NotPrinted, PackFolder.NotWritten {
        Header job = Objects.requireNonNull(judged.assessment()).job().job();
        IssuedPacks issued = issued(target);
        Optional<IssuedBefore> same = issued.of(job.revision());
        Optional<Manifest> last = issued.last().map(IssuedBefore::manifest);
        if (same.isEmpty() && last.isPresent() && job.revision() != last.get().revision() + 1) {
            throw refused(
                    job.place(),
                    Message.of(
                            PackMessage.REVISION_NOT_NEXT,
                            job.revision(),
                            last.get().revision(),
                            last.get().date().toString(),
                            last.get().revision() + 1));
        }
        Map<String, byte[]> files = Road.documents(judged, ownTemplates, issued, version);
        if (same.isPresent()) {
            if (same.get().is(Objects.requireNonNull(files.get(Manifest.FILE)))) {
                return new Written(Outcome.UNCHANGED, List.of());
            }
            throw refused(
                    job.place(),
                    Message.of(
                            PackMessage.REVISION_ISSUED,
                            job.revision(),
                            same.get().manifest().date().toString(),
                            last.get().revision() + 1));
        }
        // Before the pack that it is compared with is moved.
        List<String> changes = Road.changes(judged, issued, files);
        Optional<Path> kept = issued.keptAt();
        if (kept.isPresent()) {
            folder.writeNext(kept.get(), files);
        } else {
            folder.write(files);
        }
        return new Written(kept.isPresent() ? Outcome.FOLLOWS : Outcome.WRITTEN, changes);
    }

    private static IssuedPacks issued(Path target) throws NotPrinted {
        try {
            return IssuedPacks.of(target);
        } catch (NotComparable e) {
            throw refused(new Place(e.at(), "", Position.START), Message.of(PackMessage.ISSUE_UNREADABLE, e.at()));
        }
    }

    private static NotPrinted refused(Place at, Message message) {
        return new NotPrinted(
                List.of(new Diagnostic(Severity.ERROR, message.key().key(), at, "", message, List.of())));
    }
}
