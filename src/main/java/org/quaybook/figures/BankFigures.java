package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.quaybook.calc.RestVoltage;
import org.quaybook.calc.Sharing;
import org.quaybook.calc.SourceBank;
import org.quaybook.job.Bank;
import org.quaybook.job.Chemistry;
import org.quaybook.job.Given;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Battery;

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
 * @param blockResistance resistance of one block
 * @param resistance resistance between the take-off points as the bank is, links and their joints included
 * @param resistanceLow the same of a nearly empty bank; empty where its chemistry makes no difference
 * @param worstShare part of the load that the hardest worked string takes
 * @param unevenness that part against a fair one, 100 % being fair
 * @param worstShareOppositeEnds that share if plus and minus were taken off at opposite ends; empty where that would
 *     change nothing
 * @param restFull rest voltage when full
 * @param restAtReserve rest voltage at the reserve
 * @param shortCircuit current of a bolted short; links are left out, and a resistance that the job does not state is
 *     taken at the least end of its usual span, both of which can only make it larger
 * @param capacityWorn capacity when due for renewal, at its lowest usual temperature
 * @param resistanceWorn resistance between the take-off points then
 * @param resistanceWornLow the same when nearly empty; empty where the chemistry makes no difference
 * @param sharing shares of the strings
 * @param wornResistanceOf resistance then with another number of the same strings
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
        Figure<Resistance> blockResistance,
        Figure<Resistance> resistance,
        Optional<Figure<Resistance>> resistanceLow,
        Figure<Ratio> worstShare,
        Figure<Ratio> unevenness,
        Optional<Figure<Ratio>> worstShareOppositeEnds,
        Figure<Voltage> restFull,
        Figure<Voltage> restAtReserve,
        Figure<Current> shortCircuit,
        Figure<Charge> capacityWorn,
        Figure<Resistance> resistanceWorn,
        Optional<Figure<Resistance>> resistanceWornLow,
        Sharing sharing,
        IntFunction<Resistance> wornResistanceOf,
        SourceBank asItIs,
        SourceBank worn,
        List<RestRow> restTable) {

    public BankFigures {
        restTable = List.copyOf(restTable);
    }

    /** One line of the owner's voltage table. */
    public record RestRow(Ratio stateOfCharge, Figure<Voltage> rest) {}

    static BankFigures of(Bank bank, Tables tables, FigureBook book) {
        return new BankReckoning(bank, tables, book).figures();
    }

    /** The inner resistance at a state of charge. */
    Figure<Resistance> resistanceAt(Ratio stateOfCharge) {
        return stateOfCharge.compareTo(asItIs.lowBelow()) < 0 ? resistanceLow.orElse(resistance) : resistance;
    }

    /** The inner resistances, each as what runs over many states of charge is worked out from. */
    List<Input> resistances() {
        return resistances(resistance, resistanceLow);
    }

    /** The same of the bank worn and cold. */
    List<Input> resistancesWorn() {
        return resistances(resistanceWorn, resistanceWornLow);
    }

    private static List<Input> resistances(Figure<Resistance> usual, Optional<Figure<Resistance>> low) {
        return Stream.concat(Stream.of(Input.of("R", usual)), low.map(it -> Input.of("R₃₀", it)).stream())
                .toList();
    }

    /** What the rest voltage at a state of charge is worked out from. */
    List<Input> restInputs(Figure<Ratio> stateOfCharge) {
        return restInputs(stateOfCharge, asItIs.rest(), battery);
    }

    static List<Input> restInputs(Figure<Ratio> stateOfCharge, RestVoltage rest, Battery battery) {
        return Stream.concat(
                        Stream.of(Input.of("s", stateOfCharge)),
                        restInputs(stateOfCharge.value(), rest, battery).stream())
                .toList();
    }

    static List<Input> restInputs(Ratio stateOfCharge, RestVoltage rest, Battery battery) {
        return List.of(
                Input.of("E₁(s)", rest.cell().find(stateOfCharge)), Input.usual("n", rest.cells(), battery.citation()));
    }

    /** The value of a field that calculation cannot do without; {@link Needs} has made sure of it. */
    static <T> T seen(Given<T> given) {
        return Optional.ofNullable(given.value())
                .orElseThrow(() -> new IllegalArgumentException(given.place().path() + " was not seen"));
    }

    /** Voltage that a bank of this chemistry is usually charged to at most, equalising included (table of batteries). */
    public Voltage highestUsual() {
        return battery.voltages().highest().times((double) asItIs.rest().cells() / battery.cellsPer12VoltBlock());
    }

    /** Whether the bank is of lithium iron phosphate. */
    public static boolean isLithium(Bank bank) {
        return bank.chemistry().value() == Chemistry.LITHIUM_IRON_PHOSPHATE;
    }
}
