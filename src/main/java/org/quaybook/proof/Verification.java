package org.quaybook.proof;

import java.util.List;
import java.util.Optional;
import org.quaybook.diag.Message;

/**
 * What verifying a copy gave.
 *
 * @param issues every revision whose manifest could be read, the newest of a record first
 * @param alterations what is not as it was issued, in the order of the files
 * @param notes what could not be judged, or is worth knowing
 */
public record Verification(List<Issue> issues, List<Alteration> alterations, List<Message> notes) {

    /**
     * One revision.
     *
     * @param where its folder, a path inside the copy with a slash at its end; empty for the copy itself
     * @param signer who signed it; empty if nobody did or the signature is wrong
     */
    public record Issue(String where, Manifest manifest, Optional<VerifyingKey> signer) {}

    public Verification {
        issues = List.copyOf(issues);
        alterations = List.copyOf(alterations);
        notes = List.copyOf(notes);
    }

    /** Whether everything is as issued and signed. */
    public boolean isAsIssued() {
        return alterations.isEmpty();
    }

    /** The keys that signed, in the order of the issues. */
    public List<VerifyingKey> signers() {
        return issues.stream()
                .flatMap(issue -> issue.signer().stream())
                .distinct()
                .toList();
    }
}
