package org.quaybook.pack.guide;

import java.util.Optional;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.job.Appliance;
import org.quaybook.job.Changeover;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.LoadKind;
import org.quaybook.job.Protection;
import org.quaybook.job.Source;
import org.quaybook.job.WhenShoreFails;
import org.quaybook.quantity.Temperature;
import org.quaybook.record.EnergySource;

/** What an installation has: decides which advice its owner needs. */
final class Equipment {

    private final Assessment it;
    private final Job job;

    Equipment(Assessment it) {
        this.it = it;
        this.job = it.job();
    }

    boolean boat() {
        return job.craft().kind() == CraftKind.BOAT;
    }

    boolean cabin() {
        return job.craft().kind() == CraftKind.CABIN;
    }

    boolean leadAcid() {
        return it.figures().bank().battery().leadAcid();
    }

    boolean lithium() {
        return !leadAcid();
    }

    /** Whether cells are topped up with water. */
    boolean vented() {
        return it.figures().bank().battery().vented();
    }

    /** Lowest temperature at which the battery accepts charge, if it is known. */
    Optional<Temperature> chargeAbove() {
        Protection protection = job.bank().protection();
        return protection == null ? Optional.empty() : Given.maybe(protection.chargeAbove());
    }

    boolean shore() {
        return job.shore() != null;
    }

    boolean polarityLamp() {
        return job.shore() != null && Given.isYes(job.shore().polarityLamp());
    }

    boolean galvanicIsolator() {
        return job.shore() != null && Given.isYes(job.shore().galvanicIsolator());
    }

    /** Whether an isolating transformer parts what is on board from the shore, its earth too as far as anybody knows. */
    boolean transformer() {
        return job.shore() != null
                && job.shore().transformer() != null
                && !Given.isYes(job.shore().transformer().shoreEarthGoesOn());
    }

    boolean generator() {
        return EnergySource.GENERATOR.isOf(job);
    }

    /** Whether the generator feeds a charger. */
    boolean generatorCharges() {
        return chargedBy(ChargeKind.GENERATOR)
                || job.charging().stream()
                        .anyMatch(charging -> Given.maybe(charging.fedBy())
                                .filter(Source.GENERATOR::equals)
                                .isPresent());
    }

    /** Whether all solar charging is known to stop by itself when the battery is too cold to charge. */
    boolean solarStopsInCold() {
        return job.charging().stream()
                .filter(charging -> charging.kind() == ChargeKind.SOLAR)
                .allMatch(charging -> Given.isYes(charging.coldStop()));
    }

    boolean chargedBy(ChargeKind kind) {
        return job.charging().stream().anyMatch(charging -> charging.kind() == kind);
    }

    /** Whether it has an engine that burns fuel: one that charges, or the one that drives a motorhome. */
    boolean engine() {
        return chargedBy(ChargeKind.ALTERNATOR) || job.craft().kind() == CraftKind.MOTORHOME;
    }

    /** Whether the generator reaches sockets that the inverter also feeds. */
    boolean generatorFeedsSockets() {
        return generator()
                && (job.sockets().stream()
                                .anyMatch(socket -> Given.maybe(socket.generatorOn())
                                        .filter(Source.GENERATOR::equals)
                                        .isPresent())
                        || job.acCircuits().stream()
                                .anyMatch(circuit -> Given.maybe(circuit.source())
                                        .filter(Source.GENERATOR::equals)
                                        .isPresent()));
    }

    boolean rcds() {
        return !job.rcds().isEmpty();
    }

    /** Whether the inverter goes on by itself when shore power fails. */
    boolean takesOver() {
        return shoreFails(WhenShoreFails.TAKE_OVER);
    }

    boolean staysOff() {
        return shoreFails(WhenShoreFails.STAY_OFF);
    }

    private boolean shoreFails(WhenShoreFails what) {
        Changeover changeover = job.inverter().changeover();
        return shore()
                && changeover != null
                && Given.maybe(changeover.whenShoreFails()).filter(what::equals).isPresent();
    }

    boolean changeover() {
        return changeoverKind().filter(kind -> kind != ChangeoverKind.NONE).isPresent();
    }

    boolean changeoverByItself() {
        return changeoverKind().filter(ChangeoverKind.AUTOMATIC::equals).isPresent();
    }

    boolean changeoverByHand() {
        return changeoverKind().filter(ChangeoverKind.MANUAL::equals).isPresent();
    }

    private Optional<ChangeoverKind> changeoverKind() {
        Changeover changeover = job.inverter().changeover();
        return changeover == null ? Optional.empty() : changeover.kind().known();
    }

    boolean searchMode() {
        return job.inverter().searchMode() != null
                && Given.isYes(job.inverter().searchMode().on());
    }

    boolean leftOn() {
        return !it.figures().absence().leftOn().isEmpty();
    }

    /** Whether there are more batteries than one to grow old unevenly. */
    boolean severalBlocks() {
        return job.bank().series().known().orElse(1)
                        * job.bank().parallel().known().orElse(1)
                > 1;
    }

    boolean microwave() {
        return has(LoadKind.MICROWAVE);
    }

    /** Whether somebody depends on what the inverter feeds. */
    boolean mustNotFail() {
        return it.figures().appliances().stream()
                .map(ApplianceFigures::appliance)
                .anyMatch(Appliance::isReliedOn);
    }

    boolean heats() {
        return has(LoadKind.HEATING) || has(LoadKind.MICROWAVE);
    }

    boolean motors() {
        return has(LoadKind.MOTOR);
    }

    private boolean has(LoadKind kind) {
        return job.appliances().stream().anyMatch(appliance -> appliance.kind() == kind);
    }
}
