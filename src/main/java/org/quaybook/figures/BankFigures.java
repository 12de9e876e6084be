package org.quaybook.figures;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.quaybook.calc.RestVoltage;
import org.quaybook.calc.Sharing;
import org.quaybook.calc.ShortCircuit;
import org.quaybook.calc.SourceBank;
import org.quaybook.calc.TakeOffPoint;
import org.quaybook.job.Bank;
import org.quaybook.job.Chemistry;
import org.quaybook.job.Given;
import org.quaybook.job.Link;
import org.quaybook.job.TakeOff;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Battery;
import org.quaybook.reference.Found;

/**
 * The bank in figures.
 *
 * @param battery what the table says of the chemistry
 * @param nominal nominal voltage of a string
 * @param system the system voltage people say: 12, 24, 36 or 48 V
 * @param capacity capacity when new
 * @param capacityNow capacity as it is
 * @param energy energy when new at nominal voltage
 * @param usableCharge charge above the reserve as it is
 * @param usableEnergy energy above the reserve as it is, at nominal voltage
 * @param resistance resistance between the take-off points, links included
 * @param worstShare part of the load that the hardest worked string takes
 * @param unevenness that part against a fair one, 100 % being fair
 * @param restFull rest voltage when full
 * @param restAtReserve rest voltage at the reserve
 * @param shortCircuit current of a bolted short; links are left out, which can only make it larger
 * @param sharing shares of the strings
 * @param asItIs the bank as it is at 25 °C
 * @param worn the bank when due for renewal, at its lowest usual temperature
 * @param restTable rest voltages for the owner, full first
 */
public record BankFigures(
        Battery battery,
        Figure<Voltage> nominal,
        Figure<Voltage> system,
        Figure<Charge> capacity,
        Figure<Charge> capacityNow,
        Figure<Energy> energy,
        Figure<Charge> usableCharge,
        Figure<Energy> usableEnergy,
        Figure<Ratio> reserve,
        Figure<Resistance> resistance,
        Figure<Ratio> worstShare,
        Figure<Ratio> unevenness,
        Figure<Voltage> restFull,
        Figure<Voltage> restAtReserve,
        Figure<Current> shortCircuit,
        Sharing sharing,
        SourceBank asItIs,
        SourceBank worn,
        List<RestRow> restTable) {

    public BankFigures {
        restTable = List.copyOf(restTable);
    }

    /** One line of the owner's voltage table. */
    public record RestRow(Ratio stateOfCharge, Figure<Voltage> rest) {}

    private static final int REST_ROWS = 10;

    static BankFigures of(Bank bank, Tables tables, FigureBook book) {
        return new Builder(bank, tables, book).build();
    }

    private static final class Builder {
        private final Bank bank;
        private final Tables tables;
        private final FigureBook book;
        private final Battery battery;
        private final int series;
        private final int parallel;

        Builder(Bank bank, Tables tables, FigureBook book) {
            this.bank = bank;
            this.tables = tables;
            this.book = book;
            this.battery = tables.batteries().of(Ids.of(seen(bank.chemistry())));
            this.series = seen(bank.series());
            this.parallel = seen(bank.parallel());
        }

        BankFigures build() {
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
                    Input.of("C", now),
                    Input.of("s", reserve));
            Figure<Energy> usableEnergy = book.enter(
                    "bank.usable-energy",
                    new Energy(nominal.value().volts() * usable.value().ampereHours()),
                    Rounding.DOWN,
                    Formula.ENERGY,
                    Input.of("U", nominal),
                    Input.of("C", usable));
            Figure<Resistance> block = blockResistance();
            Sharing sharing =
                    Sharing.of(Collections.nCopies(parallel, block.value().times(series)), linkResistance(), takeOff());
            RestVoltage rest = restVoltage();
            List<RestRow> table = restTable(rest);
            Figure<Voltage> restFull = table.get(0).rest();
            Figure<Resistance> resistance = book.enter(
                    "bank.resistance", sharing.resistance(), Rounding.UP, Formula.LADDER, ladderInputs(block));
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
                    resistance,
                    book.enter("bank.worst-share", sharing.worst(), Rounding.UP, Formula.LADDER, ladderInputs(block)),
                    book.enter(
                            "bank.unevenness",
                            new Ratio(sharing.worstOverMean()),
                            Rounding.UP,
                            Formula.UNEVENNESS,
                            ladderInputs(block)),
                    restFull,
                    book.enter(
                            "bank.rest-at-reserve",
                            rest.at(reserve.value()),
                            Rounding.UP,
                            Formula.REST_VOLTAGE,
                            Input.of("s", reserve)),
                    book.enter(
                            "bank.short-circuit",
                            ShortCircuit.prospective(
                                    restFull.value(), block.value().times(series / (double) parallel)),
                            Rounding.UP,
                            Formula.SHORT_CIRCUIT,
                            Input.of("E", restFull),
                            Input.of("r", block),
                            Input.of("n", bank.series()),
                            Input.of("m", bank.parallel())),
                    sharing,
                    source(rest, now.value(), sharing.resistance()),
                    worn(rest, capacity, now, sharing.resistance()),
                    table);
        }

        private Figure<Voltage> nominal() {
            Voltage block = seen(bank.block().voltage());
            return book.enter(
                    "bank.nominal-voltage",
                    block.times(series),
                    Rounding.NEAREST,
                    Formula.IN_SERIES,
                    Input.of("U", bank.block().voltage()),
                    Input.of("n", bank.series()));
        }

        private Figure<Charge> capacity() {
            return book.enter(
                    "bank.capacity",
                    seen(bank.block().capacity()).times(parallel),
                    Rounding.DOWN,
                    Formula.IN_PARALLEL,
                    Input.of("C", bank.block().capacity()),
                    Input.of("m", bank.parallel()));
        }

        private Figure<Charge> capacityNow(Figure<Charge> capacity) {
            Ratio health = Given.maybe(bank.health()).orElse(Ratio.WHOLE);
            return book.enter(
                    "bank.capacity-now",
                    capacity.value().times(health.fraction()),
                    Rounding.DOWN,
                    Formula.HEALTH,
                    Input.of("C", capacity),
                    bank.health() == null || bank.health().value() == null
                            ? Input.usual("h", Ratio.WHOLE, Practice.NOT_WRITTEN)
                            : Input.of("h", bank.health()));
        }

        private Figure<Resistance> blockResistance() {
            Given<Resistance> stated = bank.block().resistance();
            if (stated != null && stated.value() != null) {
                return book.enter(
                        "bank.block-resistance",
                        stated.value(),
                        Rounding.NEAREST,
                        Formula.AS_STATED,
                        Input.of("", stated));
            }
            Found<Resistance> usual = battery.blockResistance(
                    seen(bank.block().voltage()), seen(bank.block().capacity()));
            return book.enter(
                    "bank.block-resistance", usual.value(), Rounding.UP, Formula.FROM_TABLE, Input.of("r", usual));
        }

        private Resistance linkResistance() {
            Link links = bank.links();
            if (links == null || links.size().value() == null || links.length().value() == null) {
                return new Resistance(0);
            }
            Length length = links.length().value();
            Resistance copper = tables.conductors()
                    .perMetreAt20(links.size().value().size(), true)
                    .value()
                    .times(length.metres() / links.size().value().parallel());
            return copper.plus(Practice.JOINT.times(2));
        }

        private TakeOffPoint takeOff() {
            TakeOff stated = Given.maybe(bank.takeOff()).orElse(TakeOff.BUSBAR);
            return switch (stated) {
                case OPPOSITE_ENDS -> TakeOffPoint.OPPOSITE_ENDS;
                case SAME_END -> TakeOffPoint.SAME_END;
                case BUSBAR -> TakeOffPoint.BUSBAR;
            };
        }

        private List<Input> ladderInputs(Figure<Resistance> block) {
            return List.of(
                    Input.of("r", block),
                    Input.of("n", bank.series()),
                    Input.of("m", bank.parallel()),
                    Input.usual("l", linkResistance(), Practice.JOINT_SOURCE),
                    bank.takeOff() == null || bank.takeOff().value() == null
                            ? Input.usual("t", TakeOff.BUSBAR, Practice.NOT_WRITTEN)
                            : Input.of("t", bank.takeOff()));
        }

        private RestVoltage restVoltage() {
            String chemistry = Ids.of(seen(bank.chemistry()));
            int cells =
                    tables.restVoltages().of(chemistry).cells(seen(bank.block().voltage()));
            return new RestVoltage(tables.restVoltages().of(chemistry), cells * series);
        }

        private List<RestRow> restTable(RestVoltage rest) {
            return IntStream.rangeClosed(0, REST_ROWS)
                    .mapToObj(row -> new Ratio(1 - row / (double) REST_ROWS))
                    .map(soc -> new RestRow(
                            soc,
                            book.enter(
                                    "bank.rest-at-" + Math.round(soc.fraction() * 100),
                                    rest.at(soc),
                                    Rounding.NEAREST,
                                    Formula.REST_VOLTAGE,
                                    Input.usual(
                                            "s", soc, rest.cell().rows().get(0).citation()),
                                    Input.usual(
                                            "n",
                                            rest.cells(),
                                            rest.cell().rows().get(0).citation()))))
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

        /** Due for renewal and cold: what the owner should plan on. */
        private SourceBank worn(RestVoltage rest, Figure<Charge> whenNew, Figure<Charge> now, Resistance resistance) {
            Temperature cold = seen(bank.temperature());
            double below = Math.max(0, Practice.RATED_TEMPERATURE.kelvinAbove(cold));
            double health = Math.min(now.value().ratioTo(whenNew.value()), Practice.WORN_HEALTH.fraction());
            Figure<Charge> capacity = book.enter(
                    "bank.capacity-worn",
                    whenNew.value().times(health * (1 - battery.capacityPerKelvin() * below)),
                    Rounding.DOWN,
                    Formula.WORN_CAPACITY,
                    Input.of("C", whenNew),
                    Input.usual("h", new Ratio(health), Practice.WORN_HEALTH_SOURCE),
                    Input.of("T", bank.temperature()),
                    Input.usual("λ", battery.capacityPerKelvin(), battery.citation()));
            double coldRise = battery.leadAcid() ? 1 + Practice.COLD_RESISTANCE_PER_KELVIN * below : 1;
            Figure<Resistance> risen = book.enter(
                    "bank.resistance-worn",
                    resistance.times(Practice.WORN_RESISTANCE * coldRise),
                    Rounding.UP,
                    Formula.WORN_RESISTANCE,
                    Input.usual("a", Practice.WORN_RESISTANCE, Practice.WORN_RESISTANCE_SOURCE),
                    Input.usual("k", coldRise, Practice.COLD_RESISTANCE_SOURCE));
            return source(rest, capacity.value(), risen.value());
        }
    }

    /** The value of a field that calculation cannot do without; {@link Needs} has made sure of it. */
    static <T> T seen(Given<T> given) {
        return Optional.ofNullable(given.value())
                .orElseThrow(() -> new IllegalArgumentException(given.place().path() + " was not seen"));
    }

    /** Whether the bank is of lithium iron phosphate. */
    public static boolean isLithium(Bank bank) {
        return bank.chemistry().value() == Chemistry.LITHIUM_IRON_PHOSPHATE;
    }
}
