package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.RunConditions;
import org.quaybook.calc.RunCurrent;
import org.quaybook.calc.RunRating;
import org.quaybook.job.Cable;
import org.quaybook.job.Given;
import org.quaybook.job.Pole;
import org.quaybook.job.Route;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.DropFormula;
import org.quaybook.reference.Found;

/**
 * The DC path from bank to inverter and back.
 *
 * @param runs each cable
 * @param allowedDrop the rulebook's limit for this feed
 * @param dropByRule drop over all runs by the rulebook's formula, full load at cut-out voltage
 * @param dropAt20 predicted drop over all runs with cold conductors
 * @param drop predicted drop over all runs with conductors at working temperature
 * @param jointDrop drop over all joints
 * @param bankDrop drop inside the bank
 * @param decidingDrop the larger of {@code dropByRule} and {@code drop}
 * @param decidingShare that drop against the system voltage
 * @param resistance resistance of runs at working temperature and joints
 */
public record SupplyFigures(
        List<RunFigures> runs,
        Figure<Voltage> allowedDrop,
        Figure<Voltage> dropByRule,
        Figure<Voltage> dropAt20,
        Figure<Voltage> drop,
        Figure<Voltage> jointDrop,
        Figure<Voltage> bankDrop,
        Figure<Voltage> decidingDrop,
        Figure<Ratio> decidingShare,
        Figure<Resistance> jointResistance,
        Figure<Resistance> resistance) {

    public SupplyFigures {
        runs = List.copyOf(runs);
    }

    /**
     * One cable.
     *
     * @param fitted whether the job states its conductor; otherwise it is a proposal
     * @param drawn what the inverter and every branch through it draw at most
     * @param carried that, or what charges through it where that is more
     * @param rating what it bears, and what it drops at the drawn current
     * @param least the least conductor that would do; empty if none of the rulebook's does
     * @param leastElsewhere that conductor in the other series of sizes; empty if that ends before it
     * @param allowed what it may carry
     * @param bundled that in one bundle with its return; only of conductors in parallel of which nobody has written how many lie
     *     together
     * @param margin that over what it carries
     * @param temperature what it reaches at what it carries
     * @param diameter outside, that the job states, else the usual one of its size; empty for a size without a usual one
     * @param joints joints counted in this run
     */
    public record RunFigures(
            Cable cable,
            boolean fitted,
            Figure<Current> drawn,
            Figure<Current> carried,
            RunRating rating,
            Optional<Conductor> least,
            Optional<Conductor> leastElsewhere,
            Figure<Current> allowed,
            Optional<Figure<Current>> bundled,
            Figure<Ratio> margin,
            Figure<Temperature> temperature,
            Figure<Voltage> drop,
            Optional<Figure<Length>> diameter,
            int joints) {

        /** Whether it belongs to the positive pole. */
        public boolean positive() {
            return cable.side().filter(Pole.POSITIVE::equals).isPresent();
        }

        /** Its conductor, as fitted or proposed. */
        Input conductor() {
            return conductorInput(cable.fitted(), rating.conductor());
        }

        private static Input conductorInput(@Nullable Given<Conductor> fitted, Conductor conductor) {
            return fitted != null && fitted.value() != null
                    ? Input.of("S", fitted)
                    : Input.usual("S", conductor, Reason.LEAST_CONDUCTOR);
        }

        /** Resistance of the run with its joints, conductor at 20 °C: what a drop test shows. */
        public Resistance cold() {
            return rating.at20().plus(Practice.JOINT.times(joints));
        }
    }

    /** The most that any of the runs draws of the bank: what the drop is told at. */
    public Figure<Current> mostDrawn() {
        return mostDrawn(runs);
    }

    private static Figure<Current> mostDrawn(List<RunFigures> runs) {
        return runs.stream()
                .map(RunFigures::drawn)
                .max(Comparator.comparing(Figure::value))
                .orElseThrow();
    }

    /** Resistance of some of the runs with their joints, conductors at working temperature. */
    Resistance of(Set<String> cables) {
        return runs.stream()
                .filter(run -> cables.contains(run.cable().id()))
                .map(run -> run.rating().atWorking().plus(Practice.JOINT.times(run.joints())))
                .reduce(new Resistance(0), Resistance::plus);
    }

    /** How the job says that a cable is laid. */
    static RunConditions conditions(Cable cable) {
        return new RunConditions(
                BankFigures.seen(cable.length()),
                BankFigures.seen(cable.insulation()),
                BankFigures.seen(cable.route()) == Route.ENGINE_SPACE,
                Given.maybe(cable.ambient()),
                Given.maybe(cable.bundled()).orElse(1),
                !Given.isNo(cable.tinned()));
    }

    static SupplyFigures of(
            List<Cable> cables,
            SharedWay way,
            BankFigures bank,
            InverterFigures inverter,
            Tables tables,
            FigureBook book) {
        return new Builder(cables, way, bank, inverter, tables, book).build();
    }

    private static final class Builder {
        private final List<Cable> cables;
        private final SharedWay way;
        private final BankFigures bank;
        private final Figure<Current> worst;
        private final Tables tables;
        private final FigureBook book;
        private final Figure<Voltage> allowedDrop;
        private final double wholeLength;

        Builder(
                List<Cable> cables,
                SharedWay way,
                BankFigures bank,
                InverterFigures inverter,
                Tables tables,
                FigureBook book) {
            this.cables = cables;
            this.way = way;
            this.bank = bank;
            this.worst = inverter.worstCurrent();
            this.tables = tables;
            this.book = book;
            this.allowedDrop = book.enter(
                    "supply.allowed-drop",
                    bank.system()
                            .value()
                            .times(tables.rules().inverterFeedDrop().value().fraction()),
                    Rounding.DOWN,
                    Formula.ALLOWED_DROP,
                    Input.of("U", bank.system()),
                    Input.of("d", tables.rules().inverterFeedDrop()));
            this.wholeLength = cables.stream()
                    .mapToDouble(cable -> BankFigures.seen(cable.length()).metres())
                    .sum();
        }

        SupplyFigures build() {
            List<RunFigures> runs = new ArrayList<>();
            for (Cable cable : cables) {
                runs.add(run(cable));
            }
            Figure<Resistance> joints = jointResistance(runs);
            Figure<Current> most = mostDrawn(runs);
            Figure<Voltage> byRule = sum(
                    "supply.drop-by-rule",
                    runs,
                    Formula.DROP_BY_RULE,
                    List.of(constant()),
                    RunRating::dropByRule,
                    this::copper);
            Figure<Voltage> at20 = sum(
                    "supply.drop-at-20",
                    runs,
                    Formula.DROP_AT_20,
                    List.of(),
                    RunRating::dropAt20,
                    run -> List.of(Input.of("r", run.rating().perMetre()).per("m"), run.conductor()));
            Figure<Voltage> working = book.enter(
                    "supply.drop",
                    runs.stream().map(run -> run.drop().value()).reduce(new Voltage(0), Voltage::plus),
                    Rounding.UP,
                    Formula.SUM_OF_DROPS,
                    runs.stream().map(run -> Input.of("U", run.drop())).toList());
            Figure<Voltage> deciding = byRule.value().compareTo(working.value()) > 0 ? byRule : working;
            Figure<Voltage> decidingDrop = book.enter(
                    "supply.deciding-drop",
                    deciding.value(),
                    Rounding.UP,
                    Formula.LARGER,
                    Input.of("a", byRule),
                    Input.of("b", working));
            Resistance copper =
                    runs.stream().map(run -> run.rating().atWorking()).reduce(new Resistance(0), Resistance::plus);
            return new SupplyFigures(
                    runs,
                    allowedDrop,
                    byRule,
                    at20,
                    working,
                    drop("supply.joint-drop", most, joints),
                    drop("supply.bank-drop", worst, bank.resistance()),
                    decidingDrop,
                    book.enter(
                            "supply.deciding-share",
                            new Ratio(decidingDrop.value().ratioTo(bank.system().value())),
                            Rounding.UP,
                            Formula.SHARE,
                            Input.of("a", decidingDrop),
                            Input.of("b", bank.system())),
                    joints,
                    book.enter(
                            "supply.resistance",
                            copper.plus(joints.value()),
                            Rounding.UP,
                            Formula.PATH_RESISTANCE,
                            pathInputs(runs, working, joints)));
        }

        /** Where runs carry different currents, the drop of each stands beside its own. */
        private List<Input> pathInputs(List<RunFigures> runs, Figure<Voltage> working, Figure<Resistance> joints) {
            List<Input> inputs = new ArrayList<>();
            if (runs.stream().allMatch(run -> run.drawn().equals(worst))) {
                inputs.add(Input.of("U", working));
                inputs.add(Input.of("I", worst));
            } else {
                for (RunFigures run : runs) {
                    inputs.add(Input.of("U", run.drop()));
                    inputs.add(Input.of("I", run.drawn()));
                }
            }
            inputs.add(Input.of("R_j", joints));
            return inputs;
        }

        private RunFigures run(Cable cable) {
            String key = "cable." + cable.id();
            SharedWay.Carried shared = way.carried(key, Set.of(cable.id()), worst, bank, book);
            Figure<Current> carried = shared.carried();
            RunCurrent current = new RunCurrent(shared.drawn().value(), carried.value());
            RunConditions conditions = conditions(cable);
            Optional<RunRating> least = Unanswerable.lookedUpFor(
                    cable.insulation().place(),
                    () -> RunRating.least(
                            conditions,
                            current,
                            bank.system().value(),
                            partOfDrop(conditions.length()),
                            tables.rules(),
                            tables.conductors()));
            Optional<Conductor> fitted = Given.maybe(cable.fitted());
            Conductor conductor = fitted.orElseGet(() -> least.map(RunRating::conductor)
                    .orElseThrow(() -> new Unanswerable(
                            cable.place(), FiguresMessage.NO_CONDUCTOR, FiguresMessage.NO_CONDUCTOR_HINT, cable.id())));
            RunRating rating = Unanswerable.lookedUpFor(
                    cable.fitted() == null ? cable.place() : cable.fitted().place(),
                    () -> RunRating.of(
                            conductor,
                            conditions,
                            current,
                            bank.system().value(),
                            tables.rules(),
                            tables.conductors()));
            Figure<Current> allowed = book.enter(
                    key + ".allowed",
                    rating.allowed(),
                    Rounding.DOWN,
                    Formula.ALLOWED_CURRENT,
                    RunFigures.conductorInput(cable.fitted(), conductor),
                    Input.of("I₁", rating.base()),
                    Input.of("k₁", rating.space()),
                    Input.of("k₂", rating.bundle()));
            Figure<Temperature> temperature = book.enter(
                    key + ".temperature",
                    rating.working(),
                    Rounding.UP,
                    Formula.CONDUCTOR_TEMPERATURE,
                    RunFigures.conductorInput(cable.fitted(), conductor),
                    air(cable.ambient(), conditions),
                    Input.of("I", carried),
                    Input.of("I₁", rating.base()),
                    Input.of("k₂", rating.bundle()),
                    Input.of("T₁", cable.insulation()));
            Figure<Voltage> drop = book.enter(
                    key + ".drop",
                    rating.dropAtWorking(),
                    Rounding.UP,
                    Formula.DROP,
                    Input.of("I", shared.drawn()),
                    Input.of("L", cable.length()),
                    Input.of("r", rating.perMetre()).per("m"),
                    Input.of("T", temperature),
                    RunFigures.conductorInput(cable.fitted(), conductor));
            Figure<Ratio> margin = book.enter(
                    key + ".margin",
                    new Ratio(allowed.value().ratioTo(carried.value())),
                    Rounding.DOWN,
                    Formula.SHARE,
                    Input.of("a", allowed),
                    Input.of("b", carried));
            return new RunFigures(
                    cable,
                    fitted.isPresent(),
                    shared.drawn(),
                    carried,
                    rating,
                    least.map(RunRating::conductor),
                    least.map(RunRating::conductor).flatMap(this::elsewhere),
                    allowed,
                    bundled(key, cable, conductor, allowed),
                    margin,
                    temperature,
                    drop,
                    diameter(key, cable, conductor),
                    Given.maybe(cable.joints()).orElse(Practice.JOINTS_PER_RUN));
        }

        /** Conductors in parallel lie together with their return as likely as not, and then they count as a bundle. */
        private Optional<Figure<Current>> bundled(
                String key, Cable cable, Conductor conductor, Figure<Current> allowed) {
            if (conductor.parallel() == 1 || Given.maybe(cable.bundled()).isPresent()) {
                return Optional.empty();
            }
            Found<Double> factor = tables.rules()
                    .ampacity()
                    .bundleFactor(2 * conductor.parallel(), bank.system().value());
            return Optional.of(book.enter(
                    key + ".bundled",
                    allowed.value().times(factor.value()),
                    Rounding.DOWN,
                    Formula.BUNDLED,
                    Input.of("k₂", factor),
                    Input.of("I₁", allowed)));
        }

        private Optional<Figure<Length>> diameter(String key, Cable cable, Conductor conductor) {
            String name = key + ".diameter";
            Given<Length> stated = cable.diameter();
            if (stated != null && stated.value() != null) {
                return Optional.of(book.stated(name, stated));
            }
            return tables.diameters()
                    .of(conductor.size())
                    .map(usual -> book.enter(
                            name,
                            usual.value(),
                            Rounding.NEAREST,
                            Formula.FROM_TABLE,
                            RunFigures.conductorInput(cable.fitted(), conductor),
                            Input.of("d", usual)));
        }

        /** A run's fair part of the allowed drop: by its length. */
        private Voltage partOfDrop(Length length) {
            return allowedDrop.value().times(length.metres() / wholeLength);
        }

        private Optional<Conductor> elsewhere(Conductor conductor) {
            return tables.conductors()
                    .inOtherSeries(conductor.size())
                    .map(size -> new Conductor(conductor.parallel(), size));
        }

        private static Input air(@Nullable Given<Temperature> stated, RunConditions conditions) {
            return stated != null && stated.value() != null
                    ? Input.of("T₀", stated)
                    : Input.usual("T₀", conditions.air(), Reason.AIR);
        }

        private Figure<Resistance> jointResistance(List<RunFigures> runs) {
            int joints = runs.stream().mapToInt(RunFigures::joints).sum();
            List<Input> inputs = new ArrayList<>();
            for (RunFigures run : runs) {
                Given<Integer> stated = run.cable().joints();
                inputs.add(
                        stated == null || stated.value() == null
                                ? Input.usual("n", run.joints(), Reason.JOINTS_PER_RUN)
                                : Input.of("n", stated));
            }
            inputs.add(Input.usual("r", Practice.JOINT, Reason.JOINT));
            return book.enter(
                    "supply.joint-resistance", Practice.JOINT.times(joints), Rounding.UP, Formula.JOINTS, inputs);
        }

        private Figure<Voltage> drop(String key, Figure<Current> current, Figure<Resistance> over) {
            return book.enter(
                    key,
                    current.value().through(over.value()),
                    Rounding.UP,
                    Formula.OHM,
                    Input.of("I", current),
                    Input.of("R", over));
        }

        /** The runs' drops one after the other; a current that all carry is listed once. */
        private Figure<Voltage> sum(
                String key,
                List<RunFigures> runs,
                Formula formula,
                List<Input> constants,
                Function<RunRating, Voltage> part,
                Function<RunFigures, List<Input>> of) {
            Voltage sum = runs.stream().map(run -> part.apply(run.rating())).reduce(new Voltage(0), Voltage::plus);
            List<Input> inputs = new ArrayList<>(constants);
            boolean same = runs.stream().map(RunFigures::drawn).distinct().count() == 1;
            for (RunFigures run : runs) {
                if (!same || run.equals(runs.get(0))) {
                    inputs.add(Input.of("I", run.drawn()));
                }
                inputs.addAll(of.apply(run));
                inputs.add(Input.of("L", run.cable().length()));
            }
            return book.enter(key, sum, Rounding.UP, formula, inputs);
        }

        private Input constant() {
            DropFormula drop = tables.rules().drop();
            return Input.usual("k", drop.ohmSquareMillimetresPerMetre(), drop.citation())
                    .in("Ω·mm²/m");
        }

        /** The copper that the rulebook's formula counts; an AWG number counts with its smallest area. */
        private List<Input> copper(RunFigures run) {
            Conductor conductor = run.rating().conductor();
            Area copper = tables.conductors().copper(conductor.size()).times(conductor.parallel());
            Input area = new Input("A", copper, run.conductor().origin());
            return conductor.size().system() == ConductorSize.Series.AWG
                    ? List.of(run.conductor(), area)
                    : List.of(area);
        }
    }
}
