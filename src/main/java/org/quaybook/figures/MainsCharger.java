package org.quaybook.figures;

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
 */
record MainsCharger(Charging charging, Ratio efficiency, double powerFactor) {

    static MainsCharger of(Charging charging) {
        return new MainsCharger(
                charging,
                Given.maybe(charging.efficiency()).orElse(Practice.CHARGER_EFFICIENCY),
                Given.maybe(charging.powerFactor()).orElse(Practice.CHARGER_POWER_FACTOR));
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

    Input efficiencyInput() {
        return charging.efficiency() != null && charging.efficiency().value() != null
                ? Input.of("η", charging.efficiency())
                : Input.usual("η", efficiency, Reason.CHARGER);
    }

    Input powerFactorInput() {
        return charging.powerFactor() != null && charging.powerFactor().value() != null
                ? Input.of("λ", charging.powerFactor())
                : Input.usual("λ", powerFactor, Reason.CHARGER);
    }

    /** Volt-amperes of its input for each watt that it gives the bank. */
    double inputPerWatt() {
        return 1 / (efficiency.fraction() * powerFactor);
    }

    /** The same of a charger of which nothing is known, or that is yet to be chosen. */
    static double usualInputPerWatt() {
        return 1 / (Practice.CHARGER_EFFICIENCY.fraction() * Practice.CHARGER_POWER_FACTOR);
    }
}
