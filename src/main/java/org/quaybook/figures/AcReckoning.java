package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.FaultDisconnection;
import org.quaybook.figures.AcFigures.CableFigures;
import org.quaybook.figures.AcFigures.CircuitFigures;
import org.quaybook.figures.AcFigures.Largest;
import org.quaybook.figures.AcFigures.Opener;
import org.quaybook.figures.AcFigures.RcdFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Appliance;
import org.quaybook.job.BreakerCurve;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Laid;
import org.quaybook.job.LoadKind;
import org.quaybook.job.Rcd;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Found;

/** Works out the figures of the AC side. */
final class AcReckoning {

    private final Job job;
    private final Tables tables;
    private final FigureBook book;
    private final Optional<Figure<Current>> inverterFault;
    private final BondLogic bonds;

    AcReckoning(Job job, InverterFigures inverter, Tables tables, FigureBook book) {
        this.job = job;
        this.tables = tables;
        this.book = book;
        Given<Voltage> output = job.inverter().output().voltage();
        this.inverterFault = output.known()
                .map(volts -> book.enter(
                        "ac.inverter-fault",
                        FaultDisconnection.inverterGives(inverter.continuous().value(), volts),
                        Rounding.DOWN,
                        Formula.INVERTER_FAULT,
                        Input.of("P", inverter.continuous()),
                        Input.of("U", output)));
        this.bonds = BondLogic.of(job);
    }

    AcFigures figures() {
        Shore shore = job.shore();
        return new AcFigures(
                inverterFault,
                job.acCircuits().stream().map(this::circuit).toList(),
                shore == null ? Optional.empty() : cable("shore", shore.cable(), shore.laid(), shore.insulation()),
                job.rcds().stream().map(this::rcd).toList(),
                bonds);
    }

    private CircuitFigures circuit(AcCircuit circuit) {
        String key = "circuit." + circuit.id();
        Optional<Figure<Current>> trip = circuit.breaker()
                .known()
                .flatMap(rating -> Given.maybe(circuit.curve())
                        .map(curve -> book.enter(
                                key + ".trip",
                                rating.times(surelyTrips(curve)),
                                Rounding.UP,
                                Formula.TRIP,
                                Input.of("I_n", circuit.breaker()),
                                Input.usual("c", surelyTrips(curve), Reason.TRIP_BANDS))));
        Optional<Boolean> breakerTrips =
                inverterFault.flatMap(gives -> trip.map(wants -> gives.value().compareTo(wants.value()) >= 0));
        boolean onInverter = circuit.source().value() == Source.INVERTER;
        return new CircuitFigures(
                circuit,
                cable(key, circuit.cable(), circuit.laid(), circuit.insulation()),
                largest(key, circuit),
                trip,
                onInverter ? breakerTrips.map(trips -> trips ? Opener.BREAKER : Opener.INVERTER) : Optional.empty(),
                onInverter ? onEarthFault(circuit, breakerTrips) : Optional.empty());
    }

    private Optional<Largest> largest(String key, AcCircuit circuit) {
        Optional<Given<Voltage>> voltage = circuit.source().value() == Source.SHORE
                ? MainsCharger.shoreVoltage(job)
                : Optional.of(job.inverter().output().voltage());
        return job.appliances().stream()
                .filter(it -> circuit.id().equals(it.circuit()))
                .max(Comparator.comparing(it -> BankFigures.seen(it.power())))
                .flatMap(it -> voltage.flatMap(given -> given.known()
                        .map(volts -> new Largest(
                                it,
                                book.enter(
                                        key + ".appliance",
                                        BankFigures.seen(it.power()).at(volts),
                                        Rounding.UP,
                                        Formula.CURRENT,
                                        Input.of("P", it.power()),
                                        Input.of("U", given))))));
    }

    /** Without a bond a first fault drives no current that anything could see. */
    private Optional<Opener> onEarthFault(AcCircuit circuit, Optional<Boolean> breakerTrips) {
        Optional<Boolean> bonded = bonds.of(SupplyMode.INVERTER).flatMap(BondLogic.Mode::inverterBond);
        if (bonded.isEmpty()) {
            return Optional.empty();
        }
        if (!bonded.get()) {
            return Optional.of(Opener.NOBODY);
        }
        boolean seen = job.rcds().stream()
                .anyMatch(rcd -> rcd.id().equals(circuit.rcd()) && rcd.source().value() == Source.INVERTER);
        return seen ? Optional.of(Opener.RCD) : breakerTrips.map(trips -> trips ? Opener.BREAKER : Opener.NOBODY);
    }

    private static double surelyTrips(BreakerCurve curve) {
        return switch (curve) {
            case B -> 5;
            case C -> 10;
            case D -> 20;
        };
    }

    private Optional<CableFigures> cable(
            String key,
            @Nullable Given<ConductorSize> size,
            @Nullable Given<Laid> laid,
            @Nullable Given<Temperature> insulation) {
        if (size == null || size.value() == null) {
            return Optional.empty();
        }
        ConductorSize conductor = size.value();
        Temperature rating = Given.maybe(insulation).orElse(Practice.PVC);
        boolean metric = conductor.system() == ConductorSize.Series.METRIC;
        Laid way = Given.maybe(laid).orElse(Laid.IN_INSULATION);
        Optional<Found<Current>> allowed = metric ? ofTable(conductor, rating, way) : byRulebook(conductor, rating);
        if (allowed.isEmpty()) {
            return Optional.empty();
        }
        List<Input> inputs = new ArrayList<>(List.of(Input.of("S", size), Input.of("I₁", allowed.get())));
        inputs.add(
                insulation != null && insulation.value() != null
                        ? Input.of("T₁", insulation)
                        : Input.usual("T₁", rating, Reason.PVC));
        if (metric) {
            inputs.add(
                    laid != null && laid.value() != null
                            ? Input.of("l", laid)
                            : Input.usual("l", way, Reason.COOLS_WORST));
        }
        Figure<Current> figure =
                book.enter(key + ".allowed", allowed.get().value(), Rounding.DOWN, Formula.FROM_TABLE, inputs);
        Current best = metric
                ? ofTable(conductor, rating, Laid.ON_SURFACE).map(Found::value).orElse(figure.value())
                : figure.value();
        return Optional.of(new CableFigures(
                figure,
                !metric || Given.maybe(laid).isPresent(),
                best,
                metric ? mostBreaker(key, figure) : Optional.empty()));
    }

    private Optional<Found<Current>> ofTable(ConductorSize size, Temperature rating, Laid way) {
        return tables.acCables().allowed(size, rating, Ids.of(way));
    }

    /** American sizes: the rulebook's own table, if it is made for them. */
    private Optional<Found<Current>> byRulebook(ConductorSize size, Temperature rating) {
        return tables.rules().ampacity().sizes().contains(size)
                ? Optional.of(tables.rules().ampacity().base(size, rating))
                : Optional.empty();
    }

    private Optional<Figure<Current>> mostBreaker(String key, Figure<Current> allowed) {
        return tables.breakers()
                .largest(allowed.value())
                .map(found -> book.enter(
                        key + ".most-breaker",
                        found.value(),
                        Rounding.DOWN,
                        Formula.BREAKER_MOST,
                        Input.of("I", allowed),
                        Input.of("I_n", found)));
    }

    private RcdFigures rcd(Rcd rcd) {
        String key = "rcd." + rcd.id();
        List<Input> inputs = new ArrayList<>();
        Current standing = new Current(0);
        for (Appliance appliance : job.appliances()) {
            if (!mayPass(appliance, rcd)) {
                continue;
            }
            Given<Current> leakage = appliance.leakage();
            if (leakage != null && leakage.value() != null) {
                standing = standing.plus(leakage.value());
                inputs.add(Input.of("I", leakage));
            } else {
                Current usual = usualLeakage(appliance);
                if (usual.amperes() > 0) {
                    standing = standing.plus(usual);
                    inputs.add(Input.usual("I", usual, Reason.USUAL_LEAKAGE));
                }
            }
        }
        boolean known = rcd.rating().known().isPresent();
        return new RcdFigures(
                rcd,
                inputs.isEmpty()
                        ? Optional.empty()
                        : Optional.of(book.enter(key + ".leakage", standing, Rounding.UP, Formula.LEAKAGE, inputs)),
                known ? Optional.of(budget(key, rcd)) : Optional.empty(),
                known ? Optional.of(mostLoop(key, rcd)) : Optional.empty());
    }

    /** What hangs on a circuit passes the RCD of that and those of its sources; where no circuit is written, any. */
    private boolean mayPass(Appliance appliance, Rcd rcd) {
        return job.circuitOf(appliance)
                .map(circuit -> {
                    List<Source> sources = new CircuitSources(job).of(circuit);
                    return rcd.id().equals(circuit.rcd())
                            || sources.isEmpty()
                            || (isOf(job.shore() == null ? null : job.shore().rcd(), rcd)
                                    && sources.contains(Source.SHORE))
                            || (isOf(
                                            job.generator() == null
                                                    ? null
                                                    : job.generator().rcd(),
                                            rcd)
                                    && sources.contains(Source.GENERATOR));
                })
                .orElse(true);
    }

    private static boolean isOf(@Nullable String id, Rcd rcd) {
        return rcd.id().equals(id);
    }

    /**
     * What an appliance usually leaks through its heating elements or the filter of its supply. Microwave ovens have such a
     * filter, and so has a medical device: its kind tells that somebody depends on it, not that it is no electronics. One
     * of unknown kind counts as the worse of the two.
     */
    private static Current usualLeakage(Appliance appliance) {
        LoadKind kind = appliance.kind();
        if (kind == LoadKind.MOTOR) {
            return new Current(0);
        }
        Current ofElements = Practice.LEAKAGE_OF_A_KILOWATT.times(
                BankFigures.seen(appliance.power()).watts() / 1000);
        if (kind == LoadKind.HEATING) {
            return ofElements;
        }
        return kind == null && ofElements.compareTo(Practice.LEAKAGE_OF_A_FILTER) > 0
                ? ofElements
                : Practice.LEAKAGE_OF_A_FILTER;
    }

    private Figure<Current> budget(String key, Rcd rcd) {
        return book.enter(
                key + ".leakage-budget",
                BankFigures.seen(rcd.rating()).times(Practice.LEAKAGE_SHARE.fraction()),
                Rounding.DOWN,
                Formula.LEAKAGE_BUDGET,
                Input.of("I_n", rcd.rating()),
                Input.usual("a", Practice.LEAKAGE_SHARE, Reason.LEAKAGE_SHARE));
    }

    private Figure<Resistance> mostLoop(String key, Rcd rcd) {
        return book.enter(
                key + ".most-loop",
                new Resistance(Practice.TOUCH_VOLTAGE.volts()
                        / BankFigures.seen(rcd.rating()).amperes()),
                Rounding.DOWN,
                Formula.EARTH_LOOP,
                Input.usual("U", Practice.TOUCH_VOLTAGE, Reason.TOUCH_VOLTAGE),
                Input.of("I_n", rcd.rating()));
    }
}
