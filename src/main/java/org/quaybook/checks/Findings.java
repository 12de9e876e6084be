package org.quaybook.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Deviation;
import org.quaybook.job.Job;

/** Runs every check over a job and its figures. */
public final class Findings {

    private final List<Finding> found = new ArrayList<>();

    private Findings() {}

    /** All findings, worst first, then in the order of the file. */
    public static List<Finding> of(Job job, Figures figures, Tables tables) {
        Findings findings = new Findings();
        SupplyChecks.run(job, figures, tables, findings);
        FuseChecks.run(job, figures, findings);
        BankChecks.run(job, figures, findings);
        VentChecks.run(job.bank(), figures, findings);
        LoadChecks.run(job, figures, findings);
        ChargeChecks.run(job, figures, tables, findings);
        MainsChecks.run(job, figures, tables, findings);
        BreakerChecks.run(job, figures, findings);
        EarthChecks.run(job, figures, findings);
        FittingChecks.run(job, figures, tables, findings);
        TestChecks.run(job, figures, tables, findings);
        EvidenceChecks.run(job, figures, findings);
        findings.settleDeviations(job.deviations());
        return findings.found.stream()
                .sorted(Comparator.comparing(Finding::severity)
                        .thenComparing(finding -> finding.place().position()))
                .toList();
    }

    /** Adds a finding; the remedy's places are filled with the same arguments. */
    void add(Severity severity, Check check, Place place, Object... arguments) {
        List<Object> list = List.of(arguments);
        found.add(new Finding(
                check,
                severity,
                place,
                new Message(check, list),
                new Message(check.remedy(), list),
                java.util.Optional.empty()));
    }

    private void settleDeviations(List<Deviation> deviations) {
        for (Deviation deviation : deviations) {
            boolean known =
                    Arrays.stream(Check.values()).anyMatch(check -> check.id().equals(deviation.check()));
            boolean forbidding = false;
            boolean matched = false;
            for (int i = 0; i < found.size(); i++) {
                Finding finding = found.get(i);
                if (finding.check().id().equals(deviation.check())) {
                    matched = true;
                    forbidding |= finding.forbids();
                    if (!finding.forbids()) {
                        found.set(i, finding.acceptedBy(deviation));
                    }
                }
            }
            if (!known || !matched) {
                add(Severity.NOTE, Check.DEVIATION_UNKNOWN, deviation.place(), deviation.check());
            }
            if (forbidding) {
                add(Severity.NOTE, Check.DEVIATION_REFUSED, deviation.place(), deviation.check());
            }
        }
    }
}
