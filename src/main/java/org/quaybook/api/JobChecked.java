package org.quaybook.api;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.Reissue;
import org.quaybook.pack.Road;

/** A job with what was found, ready to be handed over unless a finding forbids it. */
public final class JobChecked {

    private final JobCalculated calculated;
    private final Road.Judged judged;
    private final Assessment assessment;
    private final @Nullable Path ownTemplates;

    JobChecked(JobCalculated calculated, Road.Judged judged, Assessment assessment, @Nullable Path ownTemplates) {
        this.calculated = calculated;
        this.judged = judged;
        this.assessment = assessment;
        this.ownTemplates = ownTemplates;
    }

    /**
     * The job and its figures.
     *
     * @return what was judged
     */
    public JobCalculated calculated() {
        return calculated;
    }

    /**
     * What was found.
     *
     * @return worst first; each with its check and the check's source, how much it matters, place, message and remedy
     */
    public List<Finding> findings() {
        return assessment.findings();
    }

    /**
     * What forbids handing over.
     *
     * @return some of {@link #findings()}, usually none
     */
    public List<Finding> forbidding() {
        return findings().stream().filter(Finding::forbids).toList();
    }

    /**
     * Whether the job may be handed over.
     *
     * @return whether nothing forbids it; it is no proof that the installation is safe
     */
    public boolean mayBeHandedOver() {
        return !assessment.forbidsHandover();
    }

    /**
     * Makes the documents of a pack that follows no earlier one; writes nothing.
     *
     * @return the same bytes for the same job, whenever and wherever
     * @throws HandoverForbidden if a finding forbids handing over
     * @throws NotPrinted if a text is too long for its place, has a character that no font has, or a template is faulty
     */
    public Pack pack() throws HandoverForbidden, NotPrinted {
        allow();
        try {
            return new Pack(Road.documents(judged, ownTemplates, Quaybook.version()));
        } catch (org.quaybook.pack.NotPrinted e) {
            throw new NotPrinted(e);
        }
    }

    /**
     * Makes the documents and puts them into a folder named by the job's number, all of them or none. A draft that lies there is
     * replaced; a pack that has been signed is kept beside the one that follows it; nothing but a pack is ever replaced.
     *
     * @param packs the folder of packs; it is made if it is not there
     * @return where the pack lies and what became of it
     * @throws HandoverForbidden if a finding forbids handing over
     * @throws NotPrinted as {@link #pack()}, or if this revision has been issued and the job says something else now, or is not
     *     the next one
     * @throws NotWritten if another program is making the pack, something else lies there, or the system refuses; what was
     *     there is still there
     */
    public PackWritten pack(Path packs) throws HandoverForbidden, NotPrinted, NotWritten {
        allow();
        Path folder = packs.resolve(assessment.job().job().number());
        try {
            Reissue.Written written = Reissue.write(folder, judged, ownTemplates, Quaybook.version());
            return new PackWritten(folder, PackWritten.Outcome.of(written.outcome()), written.changes());
        } catch (org.quaybook.pack.NotPrinted e) {
            throw new NotPrinted(e);
        } catch (PackFolder.NotWritten e) {
            throw new NotWritten(e);
        }
    }

    private void allow() throws HandoverForbidden {
        if (assessment.forbidsHandover()) {
            throw new HandoverForbidden(forbidding());
        }
    }

    /**
     * Makes the installer's worksheet alone. While the job may not be handed over it says so on every page.
     *
     * @return PDF
     * @throws NotPrinted as {@link #pack()}
     */
    public byte[] worksheet() throws NotPrinted {
        try {
            return Road.worksheet(assessment, judged.branding(), ownTemplates);
        } catch (org.quaybook.pack.NotPrinted e) {
            throw new NotPrinted(e);
        }
    }
}
