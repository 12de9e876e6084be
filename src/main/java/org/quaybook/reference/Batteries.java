package org.quaybook.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/** What is usual for each battery chemistry. */
public final class Batteries {

    static final String TABLE = "batteries";
    private static final Batteries STANDARD = new Batteries(Table.load(TABLE), Table.load("gassing"));

    private final Table table;
    private final Map<String, Battery> byChemistry;

    Batteries(Table table, Table gassing) {
        this.table = table;
        this.byChemistry = table.rows().stream()
                .map(row -> battery(row, gassing))
                .collect(Collectors.toUnmodifiableMap(Battery::chemistry, Function.identity()));
    }

    /** The project's own table. */
    public static Batteries standard() {
        return STANDARD;
    }

    /** The temperature that the table's capacities and voltages are meant for. */
    public static Temperature referenceTemperature() {
        return new Temperature(25);
    }

    /** All chemistries, in the order of the table. */
    public List<String> chemistries() {
        return table.rows().stream().map(TableRow::key).toList();
    }

    /**
     * What is usual for a chemistry.
     *
     * @throws NotInTable if there is no such chemistry
     */
    public Battery of(String chemistry) {
        Battery battery = byChemistry.get(chemistry);
        if (battery == null) {
            throw new NotInTable(TABLE, chemistry, table.keys());
        }
        return battery;
    }

    private static Battery battery(TableRow row, Table gassing) {
        return new Battery(
                row.key(),
                row.whole("cells"),
                new Voltage(row.number("cell-v")),
                usual(row, "peukert", Function.identity()),
                usual(row, "resistance-mohm", milliohms -> new Resistance(milliohms / 1000)),
                row.number("capacity-per-k"),
                new Ratio(row.number("usual-depth")),
                row.number("max-charge-rate"),
                row.number("max-discharge-rate"),
                new Ratio(row.number("coulombic-efficiency")),
                new Ratio(row.number("self-discharge-percent-month") / 100),
                new Battery.BlockVoltages(
                        new Voltage(row.number("absorption-v")),
                        new Voltage(row.number("highest-v")),
                        new Voltage(row.number("float-v")),
                        new Voltage(row.number("charge-mv-per-k") / 1000),
                        new Voltage(row.number("discharged-v"))),
                row.text("gassing").equals("vented"),
                gassing(row, gassing),
                row.number("resistance-rise-when-low"),
                row.maybe("chargeable-above-c").map(Temperature::new),
                row.citation());
    }

    private static <T> Battery.Usual<T> usual(TableRow row, String column, Function<Double, T> make) {
        double least = row.number(column + "-least");
        double value = row.number(column);
        double most = row.number(column + "-most");
        if (least > value || value > most) {
            throw new TableFault(row.table(), row.line(), column + " does not lie in its own span");
        }
        return new Battery.Usual<>(make.apply(least), make.apply(value), make.apply(most));
    }

    private static Optional<Gassing> gassing(TableRow row, Table gassing) {
        String kind = row.text("gassing");
        if (kind.equals(Table.NONE)) {
            return Optional.empty();
        }
        TableRow currents = gassing.row(kind);
        return Optional.of(new Gassing(
                new Current(currents.number("float-ma-per-ah") / 1000),
                new Current(currents.number("boost-ma-per-ah") / 1000),
                currents.citation()));
    }
}
