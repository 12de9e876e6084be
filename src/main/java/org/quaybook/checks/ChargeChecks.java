package org.quaybook.checks;

import java.util.Optional;
import org.quaybook.diag.Severity;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.Figures;
import org.quaybook.job.Bank;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/** What charges the bank against what the bank, the alternator and the shore supply bear. */
final class ChargeChecks {

    private static final double COLD_MARGIN_KELVIN = 2;
    private static final double ALTERNATOR_SHARE = 0.6;

    /** Power factor and losses of a mains charger together (common practice). */
    private static final double CHARGER_EFFICIENCY = 0.85;

    /** Charging voltage above nominal (common practice). */
    private static final double CHARGING_OVER_NOMINAL = 1.15;

    private final Job job;
    private final Figures figures;
    private final Findings findings;

    private ChargeChecks(Job job, Figures figures, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Findings findings) {
        ChargeChecks checks = new ChargeChecks(job, figures, findings);
        for (Charging charging : job.charging()) {
            checks.cold(charging);
            checks.alternator(charging);
            checks.loop(charging);
            checks.shore(charging);
        }
        checks.sum();
    }

    private static String name(Charging charging) {
        return charging.name() == null ? charging.kind().name().toLowerCase(java.util.Locale.ROOT) : charging.name();
    }

    private void cold(Charging charging) {
        Bank bank = job.bank();
        if (!BankFigures.isLithium(bank) || Given.isYes(charging.coldStop())) {
            return;
        }
        Temperature least = Optional.ofNullable(bank.protection())
                .flatMap(protection -> Given.maybe(protection.chargeAbove()))
                .or(() -> figures.bank().battery().chargeableAbove())
                .orElse(new Temperature(0));
        Optional<Temperature> coldest = bank.temperature().known();
        if (coldest.isPresent() && coldest.get().kelvinAbove(least) < COLD_MARGIN_KELVIN) {
            findings.add(
                    Severity.FORBIDS,
                    Check.COLD_CHARGE,
                    charging.place(),
                    name(charging),
                    Stated.down(coldest.get()),
                    Stated.up(least));
        }
    }

    private void alternator(Charging charging) {
        Optional<Current> gives = Given.maybe(charging.current());
        Optional<Current> rated = Given.maybe(charging.rated());
        if (charging.kind() == ChargeKind.ALTERNATOR
                && BankFigures.isLithium(job.bank())
                && !Given.isYes(charging.temperatureSensor())
                && gives.isPresent()
                && rated.isPresent()
                && gives.get().ratioTo(rated.get()) > ALTERNATOR_SHARE) {
            findings.add(
                    Severity.DECIDE,
                    Check.ALTERNATOR_HEAT,
                    charging.place(),
                    name(charging),
                    Stated.up(gives.get()),
                    Stated.asGiven(rated.get()),
                    Stated.down(rated.get().times(ALTERNATOR_SHARE)));
        }
    }

    private void loop(Charging charging) {
        if (charging.kind() == ChargeKind.SHORE_CHARGER
                && Given.maybe(charging.fedBy()).orElse(Source.SHORE) == Source.INVERTER) {
            findings.add(Severity.FORBIDS, Check.SOURCE_LOOP, charging.place(), name(charging));
        }
    }

    private void shore(Charging charging) {
        Shore shore = job.shore();
        Optional<Current> gives = Given.maybe(charging.current());
        Optional<Voltage> mains = job.inverter().output().voltage().known();
        boolean fromShore = charging.kind() == ChargeKind.SHORE_CHARGER
                && Given.maybe(charging.fedBy()).orElse(Source.SHORE) == Source.SHORE;
        if (shore == null || !fromShore || gives.isEmpty() || mains.isEmpty()) {
            return;
        }
        double watts = gives.get().amperes()
                * figures.bank().nominal().value().volts()
                * CHARGING_OVER_NOMINAL
                / CHARGER_EFFICIENCY;
        Current takes = new Current(watts / mains.get().volts());
        Optional<Current> supply =
                Given.maybe(shore.smallestPedestal()).or(() -> shore.inlet().known());
        boolean limited = Given.maybe(job.inverter().inputLimit())
                .map(limit -> supply.isPresent() && limit.compareTo(supply.get()) <= 0)
                .orElse(false);
        if (supply.isPresent() && takes.compareTo(supply.get()) > 0 && !limited) {
            findings.add(
                    Severity.DECIDE,
                    Check.SHORE_OVERLOAD,
                    shore.place(),
                    name(charging),
                    Stated.up(takes),
                    Stated.asGiven(supply.get()));
        }
    }

    /** Panels without a stated current give their peak power at the bank's nominal voltage: the most that reaches it. */
    private Optional<Current> current(Charging charging) {
        return Given.maybe(charging.current())
                .or(() -> Given.maybe(charging.peak())
                        .map(peak -> peak.at(figures.bank().nominal().value())));
    }

    /** At the berth the engine rests, under way the shore lead is off: the larger of both sums counts. */
    private void sum() {
        Current atBerth = sum(ChargeKind.ALTERNATOR);
        Current underWay = sum(ChargeKind.SHORE_CHARGER);
        Current sum = atBerth.compareTo(underWay) > 0 ? atBerth : underWay;
        Bank bank = job.bank();
        int strings = figures.bank().sharing().shares().size();
        Current limit = Given.maybe(bank.chargeLimit())
                .map(block -> block.times(strings))
                .orElseGet(() -> new Current(figures.bank().battery().maxChargeRate()
                        * figures.bank().capacity().value().ampereHours()));
        if (sum.compareTo(limit) > 0) {
            findings.add(Severity.DECIDE, Check.CHARGE_CURRENT, bank.place(), Stated.up(sum), Stated.down(limit));
        }
    }

    private Current sum(ChargeKind without) {
        return job.charging().stream()
                .filter(charging -> charging.kind() != without)
                .flatMap(charging -> current(charging).stream())
                .reduce(new Current(0), Current::plus);
    }
}
