package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.quaybook.calc.RunConditions;
import org.quaybook.calc.RunCurrent;
import org.quaybook.calc.RunRating;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Route;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Rulebook;

/**
 * What is lost between a charging source and the bank.
 *
 * @param most the most that the source gives
 * @param drop over both poles at that current, conductors at their working temperature, and over the cables that it shares with
 *     the inverter at what charges through them at once
 * @param share that drop against the system voltage
 * @param allowedDrop what charging bears well
 * @param least the least conductor that bears that current and drops no more; empty if none of the rulebook's does
 */
public record ChargeCable(
        Figure<Current> most,
        Figure<Voltage> drop,
        Figure<Ratio> share,
        Figure<Voltage> allowedDrop,
        Optional<Conductor> least) {

    private static final Temperature LEAST_INSULATION = new Temperature(70);

    private static final Temperature LEAST_INSULATION_AWG = new Temperature(75);

    private static final int POLES = 2;

    /** The conductor of a source, where the job states one that the rulebook's ampacity table holds. */
    public static Optional<Conductor> judged(Charging charging, Rulebook rules) {
        return Given.maybe(charging.cable())
                .filter(cable -> rules.ampacity().sizes().contains(cable.size()));
    }

    /** Insulation nobody has written is taken at the least that the tables hold everywhere. */
    public static Temperature insulation(Charging charging, Rulebook rules) {
        return Given.maybe(charging.insulation())
                .orElse(rules.conductors() == ConductorSize.Series.AWG ? LEAST_INSULATION_AWG : LEAST_INSULATION);
    }

    /** An alternator's cable of which nobody has written where it runs is in the engine space. */
    public static boolean inEngineSpace(Charging charging) {
        return Given.maybe(charging.route())
                .map(Route.ENGINE_SPACE::equals)
                .orElse(charging.kind() == ChargeKind.ALTERNATOR);
    }

    /** Empty where the job does not tell conductor, length and current. */
    static Optional<ChargeCable> of(
            Charging charging,
            String key,
            Optional<Figure<Current>> most,
            BankFigures bank,
            SharedWay way,
            SupplyFigures supply,
            Tables tables,
            FigureBook book) {
        Given<Length> length = charging.length();
        Given<Conductor> cable = charging.cable();
        if (cable == null || judged(charging, tables.rules()).isEmpty() || length == null || length.value() == null) {
            return Optional.empty();
        }
        return most.map(
                gives -> new Run(charging, key, cable, length, gives, bank, way, supply, tables, book).figures());
    }

    /** The most that a source gives; empty where the job tells neither current nor power. */
    static Optional<Figure<Current>> most(Charging charging, String key, BankFigures bank, FigureBook book) {
        String name = key + ".most";
        Optional<Given<Current>> stated = ChargingAtOnce.current(charging);
        if (stated.isPresent()) {
            return Optional.of(book.stated(name, stated.get()));
        }
        Current most = ChargingAtOnce.given(charging, bank.nominal().value());
        return most.amperes() > 0 && charging.peak() != null
                ? Optional.of(book.enter(
                        name,
                        most,
                        Rounding.UP,
                        Formula.CURRENT,
                        Input.of("P", charging.peak()),
                        Input.of("U", bank.nominal())))
                : Optional.empty();
    }

    private record Run(
            Charging charging,
            String key,
            Given<Conductor> cable,
            Given<Length> length,
            Figure<Current> most,
            BankFigures bank,
            SharedWay way,
            SupplyFigures supply,
            Tables tables,
            FigureBook book) {

        ChargeCable figures() {
            Temperature insulation = insulation(charging, tables.rules());
            RunConditions conditions =
                    new RunConditions(BankFigures.seen(length), insulation, inEngineSpace(charging), 1, true);
            RunRating rating = RunRating.of(
                    BankFigures.seen(cable),
                    conditions,
                    RunCurrent.of(most.value()),
                    bank.system().value(),
                    tables.rules(),
                    tables.conductors());
            Figure<Temperature> temperature = book.enter(
                    key + ".cable-temperature",
                    rating.working(),
                    Rounding.UP,
                    Formula.CONDUCTOR_TEMPERATURE,
                    Input.of("S", cable),
                    Input.usual("T₀", conditions.air(), Reason.AIR),
                    Input.of("I", most),
                    Input.of("I₁", rating.base()),
                    Input.of("k₂", rating.bundle()),
                    Input.ofOr("T₁", charging.insulation(), insulation, Reason.CHARGE_INSULATION));
            List<SupplyFigures.RunFigures> shared = supply.runs().stream()
                    .filter(run -> way.passes(charging, Set.of(run.cable().id())))
                    .toList();
            Figure<Voltage> own = book.enter(
                    key + (shared.isEmpty() ? ".drop" : ".own-drop"),
                    rating.dropAtWorking().times(POLES),
                    Rounding.UP,
                    Formula.DROP_BOTH_WAYS,
                    Input.of("I", most),
                    Input.of("L", length),
                    Input.of("r", rating.perMetre()).per("m"),
                    Input.of("T", temperature),
                    Input.of("S", cable));
            Figure<Voltage> drop = shared.isEmpty() ? own : withShared(own, shared);
            Figure<Voltage> allowedDrop = book.enter(
                    key + ".allowed-drop",
                    bank.system().value().times(Practice.CHARGE_DROP.fraction()),
                    Rounding.DOWN,
                    Formula.ALLOWED_DROP,
                    Input.of("U", bank.system()),
                    Input.usual("d", Practice.CHARGE_DROP, Reason.CHARGE_DROP));
            return new ChargeCable(
                    most,
                    drop,
                    book.enter(
                            key + ".drop-share",
                            new Ratio(drop.value().ratioTo(bank.system().value())),
                            Rounding.UP,
                            Formula.SHARE,
                            Input.of("a", drop),
                            Input.of("b", bank.system())),
                    allowedDrop,
                    RunRating.least(
                                    conditions,
                                    RunCurrent.of(most.value()),
                                    bank.system().value(),
                                    leftFor(allowedDrop, own, drop).dividedBy(POLES),
                                    tables.rules(),
                                    tables.conductors())
                            .map(RunRating::conductor));
        }

        /** Of what charging bears well, what the shared cables leave to its own. */
        private static Voltage leftFor(Figure<Voltage> allowed, Figure<Voltage> own, Figure<Voltage> whole) {
            return new Voltage(Math.max(
                    0, allowed.value().minus(whole.value().minus(own.value())).volts()));
        }

        private Figure<Voltage> withShared(Figure<Voltage> own, List<SupplyFigures.RunFigures> shared) {
            List<Input> inputs = new ArrayList<>(List.of(Input.of("U", own)));
            Voltage whole = own.value();
            for (SupplyFigures.RunFigures run : shared) {
                String id = run.cable().id();
                Current charged = through(id);
                Resistance resistance = supply.of(Set.of(id));
                whole = whole.plus(charged.through(resistance));
                inputs.add(Input.usual("I", charged, Reason.CHARGED_THROUGH));
                inputs.add(Input.usual("R", resistance, Reason.SHARED_RUN));
            }
            return book.enter(key + ".drop", whole, Rounding.UP, Formula.DROP_WITH_SHARED, inputs);
        }

        /** What charges through a cable of the inverter at once, this source among it. */
        private Current through(String id) {
            return new ChargingAtOnce(
                            way.chargingThrough(Set.of(id)), bank.nominal().value())
                    .mostWith(charging);
        }
    }
}
