package org.quaybook.figures;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Source;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

/**
 * A charger that is fed from the mains.
 *
 * @param efficiency DC output over AC input
 * @param powerFactor of its input
 * @param efficiencyInput where the efficiency comes from
 * @param powerFactorInput where the power factor comes from
 */
record MainsCharger(Ratio efficiency, double powerFactor, Input efficiencyInput, Input powerFactorInput) {

    static MainsCharger of(Charging charging) {
        return new MainsCharger(
                Given.maybe(charging.efficiency()).orElse(Practice.CHARGER_EFFICIENCY),
                Given.maybe(charging.powerFactor()).orElse(Practice.CHARGER_POWER_FACTOR),
                Input.ofOr("η", charging.efficiency(), Practice.CHARGER_EFFICIENCY, Reason.CHARGER),
                Input.ofOr("λ", charging.powerFactor(), Practice.CHARGER_POWER_FACTOR, Reason.CHARGER));
    }

    /** One that is yet to be chosen. */
    static MainsCharger usual() {
        return new MainsCharger(
                Practice.CHARGER_EFFICIENCY,
                Practice.CHARGER_POWER_FACTOR,
                Input.usual("η", Practice.CHARGER_EFFICIENCY, Reason.CHARGER),
                Input.usual("λ", Practice.CHARGER_POWER_FACTOR, Reason.CHARGER));
    }

    /** The one that takes most of the mains for what it gives; the usual one if there is none. */
    static MainsCharger leastEfficient(Stream<MainsCharger> chargers) {
        return chargers.max(Comparator.comparing(MainsCharger::inputPerWatt)).orElseGet(MainsCharger::usual);
    }

    /** Where the charger's current comes from; the shore where a mains charger does not say. */
    static boolean fedBy(Charging charging, Source source) {
        Source usual = charging.kind() == ChargeKind.GENERATOR ? Source.GENERATOR : Source.SHORE;
        return (charging.kind() == ChargeKind.SHORE_CHARGER || charging.kind() == ChargeKind.GENERATOR)
                && Given.maybe(charging.fedBy()).orElse(usual) == source;
    }

    /** Voltage of the shore supply, the inverter's where that is not written; empty if nobody has seen it. */
    static Optional<Given<Voltage>> shoreVoltage(Job job) {
        return Stream.of(
                        Optional.ofNullable(job.shore()).flatMap(shore -> Optional.ofNullable(shore.voltage())),
                        Optional.of(job.inverter().output().voltage()))
                .flatMap(Optional::stream)
                .filter(it -> it.value() != null)
                .findFirst();
    }

    /** Volt-amperes of its input for each watt that it gives the bank. */
    double inputPerWatt() {
        return 1 / (efficiency.fraction() * powerFactor);
    }
}
