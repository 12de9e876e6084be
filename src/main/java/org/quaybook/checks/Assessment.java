package org.quaybook.checks;

import java.util.List;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;

/** A job read, calculated and judged: what every document is made of. */
public record Assessment(Job job, Installer installer, Figures figures, List<Finding> findings, Tables tables) {

    public Assessment {
        findings = List.copyOf(findings);
    }

    /** Judges a calculated job. */
    public static Assessment of(Job job, Installer installer, Figures figures, Tables tables) {
        return new Assessment(job, installer, figures, Findings.of(job, figures, tables), tables);
    }

    /** Whether a finding forbids handing over. */
    public boolean forbidsHandover() {
        return findings.stream().anyMatch(Finding::forbids);
    }
}
