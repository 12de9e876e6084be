package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.quaybook.calc.Adiabatic;
import org.quaybook.calc.DcRun;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Earth;
import org.quaybook.job.EarthKind;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Source;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.reference.Found;

/**
 * An earth or bonding conductor.
 *
 * @param least smallest copper that it must have; empty if the line it goes with is unknown
 * @param heat smallest copper that bears the fault until it is cleared; empty if no fault is reckoned for it
 * @param resistance of the conductor at 20 °C, for its continuity test; empty without length or size
 * @param proposal least size of the rulebook's series that does; empty if none does or nothing is known
 */
public record EarthFigures(
        Earth earth,
        Optional<Figure<Area>> least,
        Optional<Figure<Area>> heat,
        Optional<Figure<Resistance>> resistance,
        Optional<ConductorSize> proposal) {

    /** Copper as fitted, all conductors together; empty if nobody has seen it. */
    public Optional<Area> fitted() {
        return earth.fitted().known().map(Conductor::copper);
    }

    static List<EarthFigures> of(
            Job job, BankFigures bank, SupplyFigures supply, AcFigures ac, Tables tables, FigureBook book) {
        return job.earths().stream()
                .map(earth -> new Builder(earth, job, bank, supply, ac, tables, book).build())
                .toList();
    }

    private static final class Builder {
        private static final Temperature COLD = new Temperature(20);

        private final Earth earth;
        private final Job job;
        private final BankFigures bank;
        private final SupplyFigures supply;
        private final AcFigures ac;
        private final Tables tables;
        private final FigureBook book;
        private final String key;

        Builder(
                Earth earth,
                Job job,
                BankFigures bank,
                SupplyFigures supply,
                AcFigures ac,
                Tables tables,
                FigureBook book) {
            this.earth = earth;
            this.job = job;
            this.bank = bank;
            this.supply = supply;
            this.ac = ac;
            this.tables = tables;
            this.book = book;
            this.key = "earth." + earth.id();
        }

        EarthFigures build() {
            Optional<EarthKind> kind = earth.kind().known();
            Optional<Figure<Area>> least = kind.flatMap(it -> switch (it) {
                case PROTECTIVE -> protective();
                case CASE -> Optional.of(ofCase());
                case BOND -> Optional.of(bond());
            });
            return new EarthFigures(
                    earth,
                    least,
                    kind.flatMap(this::heat),
                    resistance(),
                    least.flatMap(area -> tables.rules().ampacity().sizes().stream()
                            .filter(size -> size.area().compareTo(area.value()) >= 0)
                            .findFirst()));
        }

        private Optional<Figure<Area>> protective() {
            return line().map(line -> {
                Found<Area> byLine =
                        tables.earths().protective(BankFigures.seen(line).area());
                Found<Area> separate = tables.earths().separate();
                boolean core = Given.isYes(earth.inCable());
                Area area = !core && separate.value().compareTo(byLine.value()) > 0 ? separate.value() : byLine.value();
                List<Input> inputs = new ArrayList<>(List.of(Input.of("S_line", line), Input.of("S₁", byLine)));
                if (!core) {
                    inputs.add(Input.of("S₂", separate));
                }
                return book.enter(
                        key + ".least",
                        area,
                        Rounding.UP,
                        core ? Formula.FROM_TABLE : Formula.PROTECTIVE_CONDUCTOR,
                        inputs);
            });
        }

        private Optional<Given<ConductorSize>> line() {
            Optional<Given<ConductorSize>> line = "shore".equals(earth.of())
                    ? Optional.ofNullable(job.shore()).map(shore -> shore.cable())
                    : circuit().map(AcCircuit::cable);
            return line.filter(size -> size.value() != null);
        }

        private Optional<AcCircuit> circuit() {
            return job.acCircuits().stream()
                    .filter(circuit -> circuit.id().equals(earth.of()))
                    .findFirst();
        }

        /** One size below the thickest positive; conductors in parallel count with all their copper. */
        private Figure<Area> ofCase() {
            Conductor positive = supply.runs().stream()
                    .max(Comparator.comparing(RunFigures::positive)
                            .thenComparing(run -> run.rating().conductor().copper()))
                    .orElseThrow()
                    .rating()
                    .conductor();
            List<ConductorSize> sizes = tables.rules().ampacity().sizes();
            Area below = sizes.stream()
                    .map(ConductorSize::area)
                    .filter(area -> area.compareTo(positive.copper()) < 0)
                    .reduce((thinner, thicker) -> thicker)
                    .orElse(positive.copper());
            Found<Area> smallest = tables.earths().ofCase();
            return book.enter(
                    key + ".least",
                    below.compareTo(smallest.value()) < 0 ? smallest.value() : below,
                    Rounding.UP,
                    Formula.CASE_CONDUCTOR,
                    Input.usual("S₊", positive, Reason.POSITIVE_OF_JOB),
                    Input.of("S₂", smallest));
        }

        private Figure<Area> bond() {
            Found<Area> least = tables.earths().bond(tables.rules().name());
            return book.enter(key + ".least", least.value(), Rounding.UP, Formula.FROM_TABLE, Input.of("S", least));
        }

        /** A case sees a short from the positive; an AC circuit on the inverter what that gives until the RCD trips. */
        private Optional<Figure<Area>> heat(EarthKind kind) {
            if (kind == EarthKind.CASE) {
                return Optional.of(heat(
                        bank.shortCircuit(),
                        Practice.CASE_FAULT,
                        Input.usual("Δt", Practice.CASE_FAULT, Reason.CASE_FAULT)));
            }
            boolean onInverter = circuit()
                    .filter(circuit -> circuit.source().value() == Source.INVERTER && circuit.rcd() != null)
                    .isPresent();
            Found<TimeSpan> trip = tables.rules().rcd().timeAtRated();
            return kind == EarthKind.PROTECTIVE && onInverter
                    ? ac.inverterFault().map(fault -> heat(fault, trip.value(), Input.of("Δt", trip)))
                    : Optional.empty();
        }

        private Figure<Area> heat(Figure<Current> fault, TimeSpan cleared, Input time) {
            Temperature insulation = Given.maybe(earth.insulation()).orElse(Practice.PVC);
            Found<Double> k = tables.earths().k(Given.isYes(earth.inCable()), insulation);
            return book.enter(
                    key + ".heat",
                    Adiabatic.least(fault.value(), cleared, k.value()),
                    Rounding.UP,
                    Formula.ADIABATIC,
                    Input.of("I", fault),
                    time,
                    Input.of("k", k).in("A·√s/mm²"));
        }

        private Optional<Figure<Resistance>> resistance() {
            Given<org.quaybook.quantity.Length> length = earth.length();
            Optional<Conductor> conductor = earth.fitted().known();
            if (length == null || length.value() == null || conductor.isEmpty()) {
                return Optional.empty();
            }
            Found<Resistance> perMetre = Unanswerable.lookedUpFor(
                    earth.fitted().place(),
                    () -> tables.conductors().perMetreAt20(conductor.get().size(), true));
            return Optional.of(book.enter(
                    key + ".resistance",
                    DcRun.resistance(perMetre.value(), conductor.get(), length.value(), COLD),
                    Rounding.UP,
                    Formula.EARTH_RESISTANCE,
                    Input.of("r", perMetre).per("m"),
                    Input.of("L", length),
                    Input.of("S", earth.fitted())));
        }
    }
}
