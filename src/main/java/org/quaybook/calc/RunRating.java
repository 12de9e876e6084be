package org.quaybook.calc;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.AmpacityTable;
import org.quaybook.reference.Conductors;
import org.quaybook.reference.Found;
import org.quaybook.reference.NotInTable;
import org.quaybook.reference.Rulebook;

/**
 * What one DC run bears, and what it drops at a current.
 *
 * @param conductor the conductor of the run
 * @param base allowed current of one conductor by the rulebook's table
 * @param space factor for the space it runs through
 * @param bundle factor for its bundle
 * @param allowed allowed current of all its conductors together, factors applied
 * @param perMetre resistance of one conductor per metre at 20 °C
 * @param at20 resistance of the run at 20 °C
 * @param working conductor temperature at what it carries
 * @param atWorking resistance of the run at that temperature
 * @param dropByRule drop by the rulebook's own formula; an AWG number counts with its smallest area
 * @param dropAt20 predicted drop, conductor at 20 °C
 * @param dropAtWorking predicted drop, conductor at its working temperature
 */
public record RunRating(
        Conductor conductor,
        Found<Current> base,
        Found<Double> space,
        Found<Double> bundle,
        Current allowed,
        Found<Resistance> perMetre,
        Resistance at20,
        Temperature working,
        Resistance atWorking,
        Voltage dropByRule,
        Voltage dropAt20,
        Voltage dropAtWorking) {

    private static final int MOST_PARALLEL = 3;
    private static final Temperature ROOM = new Temperature(20);

    /**
     * Rates a run.
     *
     * @throws NotInTable if the rulebook's tables do not hold the size or the insulation rating
     */
    public static RunRating of(
            Conductor conductor,
            RunConditions conditions,
            RunCurrent current,
            Voltage nominal,
            Rulebook rules,
            Conductors copper) {
        Found<Current> base = rules.ampacity().base(conductor.size(), conditions.insulation());
        Found<Double> space = space(conditions, rules.ampacity());
        Found<Double> bundle = rules.ampacity().bundleFactor(conditions.bundled(), nominal);
        Current unfactored = base.value().times(conductor.parallel());
        Found<Resistance> perMetre = copper.perMetreAt20(conductor.size(), conditions.tinned());
        Temperature working = DcRun.workingTemperature(
                current.carried(), unfactored.times(bundle.value()), conditions.air(), conditions.insulation());
        Resistance at20 = DcRun.resistance(perMetre.value(), conductor, conditions.length(), ROOM);
        Resistance atWorking = DcRun.resistance(perMetre.value(), conductor, conditions.length(), working);
        return new RunRating(
                conductor,
                base,
                space,
                bundle,
                unfactored.times(space.value() * bundle.value()),
                perMetre,
                at20,
                working,
                atWorking,
                DcRun.dropByRule(
                        rules.drop(),
                        current.drawn().dividedBy(conductor.parallel()),
                        conditions.length(),
                        copper.copper(conductor.size())),
                current.drawn().through(at20),
                current.drawn().through(atWorking));
    }

    /** Where the air is known, its factor; in an engine space never more than the rulebook's own. */
    private static Found<Double> space(RunConditions conditions, AmpacityTable table) {
        Found<Double> bySpace = table.spaceFactor(conditions.insulation(), conditions.engineSpace());
        return conditions
                .ambient()
                .map(air -> table.airFactor(conditions.insulation(), air))
                .filter(byAir -> !conditions.engineSpace() || byAir.value() < bySpace.value())
                .orElse(bySpace);
    }

    /** The larger of the rulebook's drop and the predicted one: the one that decides. */
    public Voltage decidingDrop() {
        return dropByRule.compareTo(dropAtWorking) > 0 ? dropByRule : dropAtWorking;
    }

    /** Whether the run bears a current and drops no more than allowed. */
    public boolean does(Current current, Voltage allowedDrop) {
        return allowed.compareTo(current) >= 0 && decidingDrop().compareTo(allowedDrop) <= 0;
    }

    /**
     * The least conductor of the rulebook's sizes that bears a current within an allowed drop: single first, then two and
     * three in parallel of sizes that the rulebook lets share.
     *
     * @return empty if even three of the largest size do not
     */
    public static Optional<RunRating> least(
            RunConditions conditions,
            RunCurrent current,
            Voltage nominal,
            Voltage allowedDrop,
            Rulebook rules,
            Conductors copper) {
        for (int parallel = 1; parallel <= MOST_PARALLEL; parallel++) {
            for (ConductorSize size : sizes(rules, parallel)) {
                RunRating rating = of(new Conductor(parallel, size), conditions, current, nominal, rules, copper);
                if (rating.does(current.carried(), allowedDrop)) {
                    return Optional.of(rating);
                }
            }
        }
        return Optional.empty();
    }

    private static List<ConductorSize> sizes(Rulebook rules, int parallel) {
        return rules.ampacity().sizes().stream()
                .filter(size ->
                        parallel == 1 || size.compareTo(rules.parallelLeast().value()) >= 0)
                .toList();
    }
}
