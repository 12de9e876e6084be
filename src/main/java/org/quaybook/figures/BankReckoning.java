package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.DcRun;
import org.quaybook.calc.RestVoltage;
import org.quaybook.calc.Sharing;
import org.quaybook.calc.ShortCircuit;
import org.quaybook.calc.SourceBank;
import org.quaybook.calc.TakeOffPoint;
import org.quaybook.job.Bank;
import org.quaybook.job.Given;
import org.quaybook.job.Link;
import org.quaybook.job.Provenance;
import org.quaybook.job.TakeOff;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Battery;
import org.quaybook.reference.Found;
import org.quaybook.reference.Temperatures;

/** Works out the figures of a bank. */
final class BankReckoning {

    private static final int REST_ROWS = 10;

    private static final String LEAST_BLOCK_RESISTANCE = "bank.block-resistance-least";

    private final Bank bank;
    private final Tables tables;
    private final FigureBook book;
    private final Battery battery;
    private final int series;
    private final int parallel;

    BankReckoning(Bank bank, Tables tables, FigureBook book) {
        this.bank = bank;
        this.tables = tables;
        this.book = book;
        this.battery = tables.batteries().of(Ids.of(BankFigures.seen(bank.chemistry())));
        this.series = BankFigures.seen(bank.series());
        this.parallel = BankFigures.seen(bank.parallel());
    }

    BankFigures figures() {
        Figure<Voltage> nominal = nominal();
        Figure<Voltage> system = book.enter(
                "bank.system-voltage",
                new Voltage(12 * Math.max(1, Math.rint(nominal.value().volts() / 12.8))),
                Rounding.NEAREST,
                Formula.SYSTEM_VOLTAGE,
                Input.of("U", nominal));
        Figure<Charge> capacity = capacity();
        Figure<Charge> now = capacityNow(capacity);
        Figure<Energy> energy = book.enter(
                "bank.energy",
                new Energy(nominal.value().volts() * capacity.value().ampereHours()),
                Rounding.DOWN,
                Formula.ENERGY,
                Input.of("U", nominal),
                Input.of("C", capacity));
        Figure<Ratio> reserve = book.stated("bank.reserve", bank.reserve());
        Figure<Charge> usable = book.enter(
                "bank.usable-charge",
                now.value().times(1 - reserve.value().fraction()),
                Rounding.DOWN,
                Formula.USABLE,
                Input.of("C₀", now),
                Input.of("s", reserve));
        Figure<Energy> usableEnergy = book.enter(
                "bank.usable-energy",
                new Energy(nominal.value().volts() * usable.value().ampereHours()),
                Rounding.DOWN,
                Formula.ENERGY,
                Input.of("U", nominal),
                Input.of("C", usable));
        Figure<Resistance> block = blockResistance();
        Figure<Resistance> blockNow = blockResistanceNow(block);
        Figure<Resistance> string = stringResistance(blockNow);
        Resistance stringNew = new Resistance(string.value().ohms()
                - series * (blockNow.value().ohms() - block.value().ohms()));
        Optional<Figure<Resistance>> link =
                parallel > 1 ? Optional.of(linkResistance("bank.link-resistance", bank.links())) : Optional.empty();
        Sharing sharing = share(string, link, takeOff());
        List<Input> ladder = ladderInputs(string, link);
        RestVoltage rest = restVoltage();
        List<BankFigures.RestRow> table = restTable(rest);
        Figure<Voltage> restFull = table.get(0).rest();
        Figure<Resistance> resistance =
                book.enter("bank.resistance", sharing.resistance(), Rounding.UP, Formula.LADDER, ladder);
        Optional<Figure<Resistance>> resistanceLow = resistanceLow("bank.resistance-low", resistance);
        Figure<Ratio> worstShare = book.enter("bank.worst-share", sharing.worst(), Rounding.UP, Formula.LADDER, ladder);
        Figure<Charge> capacityWorn = capacityWorn(capacity, now);
        IntFunction<Resistance> asItIs = strings -> ladder(string.value(), strings, link);
        IntFunction<Resistance> whenNew = strings -> ladder(stringNew, strings, link);
        Figure<Resistance> resistanceWorn = resistanceWorn(resistance, whenNew.apply(parallel));
        Optional<Figure<Resistance>> resistanceWornLow = resistanceLow("bank.resistance-worn-low", resistanceWorn);
        return new BankFigures(
                battery,
                nominal,
                system,
                capacity,
                now,
                energy,
                usable,
                usableEnergy,
                reserve,
                block,
                resistance,
                resistanceLow,
                worstShare,
                book.enter(
                        "bank.unevenness",
                        new Ratio(sharing.worstOverMean()),
                        Rounding.UP,
                        Formula.UNEVENNESS,
                        Input.of("share", worstShare),
                        Input.of("m", bank.parallel())),
                withOppositeEnds(string, link),
                restFull,
                book.enter(
                        "bank.rest-at-reserve",
                        rest.at(reserve.value()),
                        Rounding.UP,
                        Formula.REST_VOLTAGE,
                        BankFigures.restInputs(reserve, rest, battery)),
                shortCircuit(restFull, leastBlockResistance(block, restFull)),
                capacityWorn,
                resistanceWorn,
                resistanceWornLow,
                sharing,
                strings -> worn(asItIs.apply(strings), whenNew.apply(strings)),
                source(rest, now.value(), sharing.resistance()),
                source(rest, capacityWorn.value(), resistanceWorn.value()),
                table);
    }

    private Figure<Voltage> nominal() {
        Voltage block = BankFigures.seen(bank.block().voltage());
        return book.enter(
                "bank.nominal-voltage",
                block.times(series),
                Rounding.NEAREST,
                Formula.IN_SERIES,
                Input.of("U₁", bank.block().voltage()),
                Input.of("n", bank.series()));
    }

    private Figure<Charge> capacity() {
        return book.enter(
                "bank.capacity",
                BankFigures.seen(bank.block().capacity()).times(parallel),
                Rounding.DOWN,
                Formula.IN_PARALLEL,
                Input.of("C₁", bank.block().capacity()),
                Input.of("m", bank.parallel()));
    }

    private Figure<Charge> capacityNow(Figure<Charge> capacity) {
        Ratio health = Given.maybe(bank.health()).orElse(Ratio.WHOLE);
        return book.enter(
                "bank.capacity-now",
                capacity.value().times(health.fraction()),
                Rounding.DOWN,
                Formula.HEALTH,
                Input.of("C₀", capacity),
                bank.health() == null || bank.health().value() == null
                        ? Input.usual("h", Ratio.WHOLE, Reason.NOT_WRITTEN)
                        : Input.of("h", bank.health()));
    }

    private Figure<Resistance> blockResistance() {
        Given<Resistance> stated = bank.block().resistance();
        if (stated != null && stated.value() != null) {
            return book.enter(
                    "bank.block-resistance", stated.value(), Rounding.NEAREST, Formula.AS_STATED, Input.of("", stated));
        }
        Found<Resistance> usual = Unanswerable.lookedUpFor(
                bank.block().voltage().place(),
                () -> battery.blockResistance(
                        BankFigures.seen(bank.block().voltage()),
                        BankFigures.seen(bank.block().capacity())));
        return book.enter(
                "bank.block-resistance", usual.value(), Rounding.UP, Formula.FROM_TABLE, Input.of("r", usual));
    }

    /** What was measured is as it is; a plate or a table speaks of a new block. */
    private Figure<Resistance> blockResistanceNow(Figure<Resistance> block) {
        double missing = 1 - Given.maybe(bank.health()).orElse(Ratio.WHOLE).fraction();
        Given<Resistance> stated = bank.block().resistance();
        boolean measured = stated != null && stated.value() != null && stated.provenance() == Provenance.MEASURED;
        if (measured || missing <= 0) {
            return block;
        }
        double rise = 1 + (Practice.WORN_RESISTANCE - 1) * missing / (1 - Practice.WORN_HEALTH.fraction());
        return book.enter(
                "bank.block-resistance-now",
                block.value().times(rise),
                Rounding.UP,
                Formula.AGED_RESISTANCE,
                Input.of("r₀", block),
                Input.of("h", Objects.requireNonNull(bank.health())),
                Input.usual("a", Practice.WORN_RESISTANCE, Reason.WORN_RESISTANCE));
    }

    /** Blocks in series with the links between them. */
    private Figure<Resistance> stringResistance(Figure<Resistance> block) {
        if (series == 1) {
            return block;
        }
        Figure<Resistance> link = linkResistance("bank.series-link-resistance", bank.seriesLinks());
        return book.enter(
                "bank.string-resistance",
                block.value().times(series).plus(link.value().times(series - 1)),
                Rounding.UP,
                Formula.STRING,
                Input.of("r", block),
                Input.of("n", bank.series()),
                Input.of("l", link));
    }

    private Sharing share(Figure<Resistance> string, Optional<Figure<Resistance>> link, TakeOffPoint takeOff) {
        return Sharing.of(
                Collections.nCopies(parallel, string.value()),
                link.map(Figure::value).orElse(new Resistance(0)),
                takeOff);
    }

    /** What moving the take-off would gain: the hardest worked string's share with plus and minus at opposite ends. */
    private Optional<Figure<Ratio>> withOppositeEnds(Figure<Resistance> string, Optional<Figure<Resistance>> link) {
        if (link.isEmpty() || takeOff() != TakeOffPoint.SAME_END) {
            return Optional.empty();
        }
        return Optional.of(book.enter(
                "bank.worst-share-opposite-ends",
                share(string, link, TakeOffPoint.OPPOSITE_ENDS).worst(),
                Rounding.UP,
                Formula.LADDER,
                Input.of("r", string),
                Input.of("m", bank.parallel()),
                Input.of("l", link.get()),
                Input.usual("t₁", TakeOff.OPPOSITE_ENDS, Reason.BETTER_TAKE_OFF)));
    }

    /** A link whose cable nobody has written has its two joints at least. */
    private Figure<Resistance> linkResistance(String key, @Nullable Link links) {
        Resistance joints = Practice.JOINT.times(Practice.JOINTS_PER_LINK);
        List<Input> inputs = new ArrayList<>(List.of(
                Input.usual("j", Practice.JOINTS_PER_LINK, Reason.JOINTS_PER_LINK),
                Input.usual("r_j", Practice.JOINT, Reason.JOINT)));
        if (links == null || links.size().value() == null || links.length().value() == null) {
            return book.enter(key, joints, Rounding.UP, Formula.JOINTS_OF_LINK, inputs);
        }
        Conductor conductor = BankFigures.seen(links.size());
        Found<Resistance> perMetre = Unanswerable.lookedUpFor(
                links.size().place(), () -> tables.conductors().perMetreAt20(conductor.size(), true));
        Resistance copper = DcRun.resistance(
                perMetre.value(), conductor, BankFigures.seen(links.length()), Practice.LINK_TEMPERATURE);
        inputs.add(Input.of("r", perMetre).per("m"));
        inputs.add(Input.of("S", links.size()));
        inputs.add(Input.of("L", links.length()));
        inputs.add(Input.usual("T", Practice.LINK_TEMPERATURE, Reason.LINK_TEMPERATURE));
        return book.enter(key, copper.plus(joints), Rounding.UP, Formula.LINK, inputs);
    }

    /** One that nobody has seen is taken at its worst; with one string it does not matter. */
    private TakeOffPoint takeOff() {
        return switch (Given.maybe(bank.takeOff()).orElse(TakeOff.SAME_END)) {
            case OPPOSITE_ENDS -> TakeOffPoint.OPPOSITE_ENDS;
            case SAME_END -> TakeOffPoint.SAME_END;
            case BUSBAR -> TakeOffPoint.BUSBAR;
        };
    }

    private List<Input> ladderInputs(Figure<Resistance> string, Optional<Figure<Resistance>> link) {
        List<Input> inputs = new ArrayList<>(List.of(Input.of("r", string), Input.of("m", bank.parallel())));
        link.ifPresent(one -> {
            inputs.add(Input.of("l", one));
            inputs.add(
                    bank.takeOff() == null || bank.takeOff().value() == null
                            ? Input.usual("t", TakeOff.SAME_END, Reason.WORST_TAKE_OFF)
                            : Input.of("t", bank.takeOff()));
        });
        return inputs;
    }

    private Figure<Current> shortCircuit(Figure<Voltage> restFull, Figure<Resistance> least) {
        return book.enter(
                "bank.short-circuit",
                ShortCircuit.prospective(restFull.value(), least.value().times(series / (double) parallel)),
                Rounding.UP,
                Formula.SHORT_CIRCUIT,
                Input.of("E", restFull),
                Input.of("r", least),
                Input.of("n", bank.series()),
                Input.of("m", bank.parallel()));
    }

    /** A short is worst where the resistance is least: of all that the job states of it, what allows the larger one. */
    private Figure<Resistance> leastBlockResistance(Figure<Resistance> block, Figure<Voltage> restFull) {
        boolean stated = Given.maybe(bank.block().resistance()).isPresent();
        Optional<Current> current = Given.maybe(bank.block().shortCircuit());
        if (!stated && current.isEmpty()) {
            return leastOfTable(block);
        }
        List<Resistance> known = new ArrayList<>();
        List<Input> inputs = new ArrayList<>();
        if (stated) {
            known.add(block.value().times(Practice.FAULT_RESISTANCE.fraction()));
            inputs.add(Input.of("r₀", block));
            inputs.add(Input.usual("a", Practice.FAULT_RESISTANCE, Reason.FAULT_RESISTANCE));
        }
        current.ifPresent(it -> {
            known.add(new Resistance(restFull.value().volts() / series / it.amperes()));
            inputs.add(Input.of("E", restFull));
            inputs.add(Input.of("n", bank.series()));
            inputs.add(Input.of("I", Objects.requireNonNull(bank.block().shortCircuit())));
        });
        Formula formula = current.isEmpty()
                ? Formula.LEAST_OF_STATED
                : stated ? Formula.LEAST_OF_BOTH : Formula.BEHIND_STATED_SHORT;
        return book.enter(LEAST_BLOCK_RESISTANCE, Collections.min(known), Rounding.DOWN, formula, inputs);
    }

    private Figure<Resistance> leastOfTable(Figure<Resistance> block) {
        Battery.Usual<Resistance> span = battery.blockResistance();
        return book.enter(
                LEAST_BLOCK_RESISTANCE,
                block.value().times(span.least().ratioTo(span.value())),
                Rounding.DOWN,
                Formula.LEAST_RESISTANCE,
                Input.of("r₀", block),
                Input.usual("a", span.least(), battery.citation()),
                Input.usual("b", span.value(), battery.citation()));
    }

    /** Of a nearly empty bank, where its chemistry makes a difference. */
    private Optional<Figure<Resistance>> resistanceLow(String key, Figure<Resistance> resistance) {
        return battery.resistanceRiseWhenLow() > 1
                ? Optional.of(book.enter(
                        key,
                        resistance.value().times(battery.resistanceRiseWhenLow()),
                        Rounding.UP,
                        Formula.LOW_RESISTANCE,
                        Input.of("R₀", resistance),
                        Input.usual("k", battery.resistanceRiseWhenLow(), battery.citation())))
                : Optional.empty();
    }

    private RestVoltage restVoltage() {
        String chemistry = Ids.of(BankFigures.seen(bank.chemistry()));
        var curve = tables.restVoltages().of(chemistry);
        Given<Voltage> block = bank.block().voltage();
        int cells = Unanswerable.lookedUpFor(block.place(), () -> curve.cells(BankFigures.seen(block)));
        return new RestVoltage(curve, cells * series);
    }

    private List<BankFigures.RestRow> restTable(RestVoltage rest) {
        return IntStream.rangeClosed(0, REST_ROWS)
                .mapToObj(row -> new Ratio((REST_ROWS - row) / (double) REST_ROWS))
                .map(soc -> new BankFigures.RestRow(
                        soc,
                        book.enter(
                                "bank.rest-at-" + Math.round(soc.fraction() * 100),
                                rest.at(soc),
                                Rounding.NEAREST,
                                Formula.REST_VOLTAGE,
                                BankFigures.restInputs(soc, rest, battery))))
                .toList();
    }

    private SourceBank source(RestVoltage rest, Charge capacity, Resistance resistance) {
        return new SourceBank(
                rest,
                capacity,
                Practice.RATED_HOURS,
                battery.leadAcid() ? battery.peukert().value() : 1,
                resistance,
                battery.resistanceRiseWhenLow(),
                Battery.LOW);
    }

    private double kelvinBelowRated() {
        return Math.max(0, Practice.RATED_TEMPERATURE.kelvinAbove(BankFigures.seen(bank.temperature())));
    }

    /** Due for renewal, or as it is if that is less, and cold: what the owner should plan on. */
    private Figure<Charge> capacityWorn(Figure<Charge> whenNew, Figure<Charge> now) {
        double share = now.value().ratioTo(whenNew.value());
        boolean wornAlready = share < Practice.WORN_HEALTH.fraction();
        Ratio health = wornAlready ? new Ratio(share) : Practice.WORN_HEALTH;
        return book.enter(
                "bank.capacity-worn",
                whenNew.value()
                        .times(health.fraction()
                                * Temperatures.capacityShare(
                                                BankFigures.seen(bank.temperature()), battery.capacityPerKelvin())
                                        .fraction()),
                Rounding.DOWN,
                Formula.WORN_CAPACITY,
                Input.of("C₀", whenNew),
                wornAlready && bank.health() != null
                        ? Input.of("h", bank.health())
                        : Input.usual("h", health, Reason.WORN_HEALTH),
                Input.of("T", bank.temperature()),
                Input.usual("λ", new Ratio(battery.capacityPerKelvin()), battery.citation())
                        .per("K"));
    }

    /** The same strings in another number; a bank of one string has no links, whatever its take-off is called. */
    private Resistance ladder(Resistance string, int strings, Optional<Figure<Resistance>> link) {
        if (strings == 1 && parallel == 1) {
            return string;
        }
        return Sharing.of(
                        Collections.nCopies(strings, string),
                        link.map(Figure::value).orElse(Practice.JOINT.times(Practice.JOINTS_PER_LINK)),
                        takeOff())
                .resistance();
    }

    /** A used block has some of its ageing behind it, or all of it: only a new one gets the whole. */
    private Figure<Resistance> resistanceWorn(Figure<Resistance> resistance, Resistance whenNew) {
        boolean aged = whenNew.compareTo(resistance.value()) < 0;
        List<Input> inputs = new ArrayList<>();
        inputs.add(aged ? Input.usual("R₀", whenNew, Reason.BLOCKS_WHEN_NEW) : Input.of("R₀", resistance));
        if (aged) {
            inputs.add(Input.of("R₁", resistance));
        }
        inputs.add(Input.usual("a", Practice.WORN_RESISTANCE, Reason.WORN_RESISTANCE));
        inputs.add(Input.usual(
                "k", coldRise(), battery.leadAcid() ? Reason.COLD_RESISTANCE : Reason.COLD_RESISTANCE_OF_LITHIUM));
        inputs.add(Input.of("T", bank.temperature()));
        return book.enter(
                "bank.resistance-worn",
                worn(resistance.value(), whenNew),
                Rounding.UP,
                aged ? Formula.WORN_RESISTANCE_OF_USED : Formula.WORN_RESISTANCE,
                inputs);
    }

    private Resistance worn(Resistance asItIs, Resistance whenNew) {
        Resistance due = whenNew.times(Practice.WORN_RESISTANCE);
        return (due.compareTo(asItIs) > 0 ? due : asItIs).times(coldRise());
    }

    private double coldRise() {
        double perKelvin = battery.leadAcid()
                ? Practice.COLD_RESISTANCE_PER_KELVIN
                : Practice.COLD_RESISTANCE_PER_KELVIN_OF_LITHIUM;
        return 1 + perKelvin * kelvinBelowRated();
    }
}
