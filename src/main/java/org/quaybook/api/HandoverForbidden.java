package org.quaybook.api;

import java.util.List;
import org.quaybook.checks.Finding;

/** Somebody could be hurt: the installation must not be handed over like this, and no pack is made. */
public final class HandoverForbidden extends QuaybookException {
    private static final long serialVersionUID = 1;

    private final transient List<Finding> findings;

    HandoverForbidden(List<Finding> findings) {
        super(List.of(), null);
        this.findings = List.copyOf(findings);
    }

    /**
     * What forbids handing over.
     *
     * @return at least one
     */
    public List<Finding> findings() {
        return findings;
    }

    /** Every finding in English, one a line, with its place. */
    @Override
    public String getMessage() {
        return Sentences.ofFindings(findings);
    }
}
