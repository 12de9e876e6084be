package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Limits;
import org.quaybook.calc.RunCurrent;
import org.quaybook.calc.RunRating;
import org.quaybook.job.Appliance;
import org.quaybook.job.Cable;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Provenance;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.reference.Found;
import org.quaybook.reference.Spreads;
import org.quaybook.reference.Spreads.Subject;

/**
 * What every load of a job runs on.
 *
 * @param draw what draws besides the inverter
 * @param now the bank as it is
 * @param worn the bank worn and cold
 * @param capacitySpread how far the capacity may be off
 * @param resistanceSpread how far the bank's resistance may be off
 * @param waySpread how far the resistance of cables and joints may be off
 */
record RunSystem(
        Job job,
        BankFigures bank,
        InverterFigures inverter,
        SupplyFigures supply,
        SteadyDraw draw,
        Limits limits,
        Discharge now,
        Discharge worn,
        Found<Ratio> capacitySpread,
        Found<Ratio> resistanceSpread,
        Found<Ratio> waySpread,
        Tables tables,
        FigureBook book) {

    private static final int MOST_PARALLEL = 3;

    static RunSystem of(
            Job job,
            BankFigures bank,
            InverterFigures inverter,
            SupplyFigures supply,
            SteadyDraw draw,
            Limits limits,
            Tables tables,
            FigureBook book) {
        return new RunSystem(
                job,
                bank,
                inverter,
                supply,
                draw,
                limits,
                new Discharge(bank.asItIs(), supply.resistance().value()),
                new Discharge(bank.worn(), supply.resistance().value()),
                capacitySpread(job, tables.spreads()),
                resistanceSpread(job, tables.spreads()),
                waySpread(job, tables.spreads()),
                tables,
                book);
    }

    /** Where the job says what is left of the capacity, that is the figure that may be off. */
    private static Found<Ratio> capacitySpread(Job job, Spreads spreads) {
        Given<Ratio> health = job.bank().health();
        Provenance known = health != null && health.value() != null
                ? health.provenance()
                : job.bank().block().capacity().provenance();
        return spreads.of(Subject.CAPACITY, Ids.of(known));
    }

    private static Found<Ratio> resistanceSpread(Job job, Spreads spreads) {
        Given<Resistance> stated = job.bank().block().resistance();
        return spreads.of(
                Subject.RESISTANCE,
                stated == null || stated.value() == null ? Spreads.FROM_TABLE : Ids.of(stated.provenance()));
    }

    /** As far as the worst known length. */
    private static Found<Ratio> waySpread(Job job, Spreads spreads) {
        return job.cables().stream()
                .map(Cable::length)
                .map(length -> spreads.of(Subject.WAY, Ids.of(length.provenance())))
                .reduce(RunSystem::larger)
                .orElseThrow();
    }

    static Found<Ratio> larger(Found<Ratio> a, Found<Ratio> b) {
        return b.value().compareTo(a.value()) > 0 ? b : a;
    }

    /** What draws on the bank however everything is switched, beside every load. */
    Power standing() {
        return draw.asPower();
    }

    /** The rest voltage at a state of charge: a row of the owner's table, or as that is worked out. */
    Input rest(Ratio stateOfCharge) {
        return bank.restTable().stream()
                .filter(row -> row.stateOfCharge().equals(stateOfCharge))
                .findFirst()
                .map(row -> Input.of("E", row.rest()))
                .orElseGet(() -> Input.usual(
                        "E",
                        bank.asItIs().rest().at(stateOfCharge),
                        bank.battery().citation()));
    }

    /** With what always draws, if the job says. */
    List<Input> withStanding(List<Input> inputs) {
        return Stream.concat(inputs.stream(), draw.powerInputs().stream()).toList();
    }

    Found<Ratio> powerSpread(Appliance appliance) {
        return tables.spreads().of(Subject.POWER, Ids.of(appliance.power().provenance()));
    }

    /** Empty for a load that always works: it cannot be off in how much of the time it does. */
    Optional<Found<Ratio>> dutySpread(Appliance appliance) {
        return Stream.of(appliance.average(), appliance.duty())
                .flatMap(given -> Optional.<Given<?>>ofNullable(given).stream())
                .filter(given -> given.known().isPresent())
                .findFirst()
                .map(given -> tables.spreads().of(Subject.DUTY, Ids.of(given.provenance())));
    }

    /**
     * The least conductor of the rulebook that bears the current in every run and keeps cables and joints within a
     * resistance: single first, then two and three in parallel.
     */
    Optional<Conductor> leastConductor(Resistance most) {
        List<ConductorSize> sizes = tables.rules().ampacity().sizes();
        for (int parallel = 1; parallel <= MOST_PARALLEL; parallel++) {
            for (ConductorSize size : sizes) {
                Conductor conductor = new Conductor(parallel, size);
                if (keeps(conductor, most)) {
                    return Optional.of(conductor);
                }
            }
        }
        return Optional.empty();
    }

    private boolean keeps(Conductor conductor, Resistance most) {
        Resistance way = supply.jointResistance().value();
        for (SupplyFigures.RunFigures run : supply.runs()) {
            RunRating rating = RunRating.of(
                    conductor,
                    SupplyFigures.conditions(run.cable()),
                    new RunCurrent(run.drawn().value(), run.carried().value()),
                    bank.system().value(),
                    tables.rules(),
                    tables.conductors());
            if (rating.allowed().compareTo(run.carried().value()) < 0) {
                return false;
            }
            way = way.plus(rating.atWorking());
        }
        return way.compareTo(most) <= 0;
    }
}
