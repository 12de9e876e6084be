package org.quaybook.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
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
        WayChecks.run(job, figures, tables, findings);
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
        add(severity, check, check.remedy(), place, arguments);
    }

    /**
     * Adds a finding whose remedy names a size or rating, the last of its arguments.
     *
     * @param fit what would do; empty if none does, which the remedy then says
     */
    void addWithFit(Severity severity, Check check, Place place, Optional<?> fit, Object... arguments) {
        if (fit.isPresent()) {
            Object[] all = Arrays.copyOf(arguments, arguments.length + 1);
            all[arguments.length] = fit.get();
            add(severity, check, check.remedy(), place, all);
        } else {
            add(severity, check, check.remedyIfNoneDoes(), place, arguments);
        }
    }

    /**
     * Adds a finding whose remedy asks for something that can be had or not.
     *
     * @param canBeHad whether it can; if not, the remedy says what else to do
     */
    void add(Severity severity, Check check, boolean canBeHad, Place place, Object... arguments) {
        add(severity, check, canBeHad ? check.remedy() : check.remedyIfNoneDoes(), place, arguments);
    }

    /** Adds a finding whose remedy names a limit among its arguments; one of nothing cannot be kept, which the remedy then says. */
    void addWithLimit(Severity severity, Check check, Place place, Figure<?> limit, Object... arguments) {
        add(
                severity,
                check,
                limit.value().canonical() > 0 ? check.remedy() : check.remedyIfNoneDoes(),
                place,
                arguments);
    }

    private void add(Severity severity, Check check, MessageKey remedy, Place place, Object... arguments) {
        List<Object> list = List.of(arguments);
        found.add(new Finding(
                check, severity, place, new Message(check, list), new Message(remedy, list), Optional.empty()));
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
