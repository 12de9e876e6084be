package org.quaybook.reference;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

/** Rest voltage of one cell against its state of charge: rows from empty to full, straight lines between them. */
public final class RestVoltageCurve {

    /** Shares that differ by less are the same: they come out of sums of hundredths. */
    private static final double WITHIN_A_ROW = 1e-9;

    private final Battery battery;
    private final String table;
    private final List<Row> rows;

    /**
     * One row.
     *
     * @param stateOfCharge 0 is empty, 1 is full
     * @param perCell the voltage of one cell, hours after the last current
     * @param citation where the row comes from
     */
    public record Row(Ratio stateOfCharge, Voltage perCell, Citation citation) {}

    RestVoltageCurve(Battery battery, Table table) {
        this.battery = battery;
        this.table = table.name();
        this.rows = table.ascending("charge-percent").ascending("block-v").rows().stream()
                .map(row -> new Row(
                        new Ratio(row.number("charge-percent") / 100),
                        new Voltage(row.number("block-v")).dividedBy(battery.cellsPer12VoltBlock()),
                        row.citation()))
                .toList();
        if (empty().stateOfCharge().fraction() != 0 || full().stateOfCharge().fraction() != 1) {
            throw new TableFault(table.name(), 0, "the curve must go from 0 to 100 %");
        }
    }

    /** All rows, from empty to full. */
    public List<Row> rows() {
        return rows;
    }

    /** The row at 0 %. */
    public Row empty() {
        return rows.get(0);
    }

    /** The row at 100 %. */
    public Row full() {
        return rows.get(rows.size() - 1);
    }

    /** Name of the table. */
    public String table() {
        return table;
    }

    /**
     * Rest voltage of one cell, on the straight line between the rows beside it.
     *
     * @param stateOfCharge from 0 to 1
     * @throws NotInTable outside 0 to 1
     */
    public Voltage perCell(Ratio stateOfCharge) {
        return find(stateOfCharge).value();
    }

    /**
     * The same with its place: a row, or the two it lies between.
     *
     * @param stateOfCharge from 0 to 1
     * @throws NotInTable outside 0 to 1
     */
    public Found<Voltage> find(Ratio stateOfCharge) {
        for (int at = 1; at < rows.size(); at++) {
            Row below = rows.get(at - 1);
            Row above = rows.get(at);
            if (between(below.stateOfCharge(), stateOfCharge, above.stateOfCharge())) {
                double share = share(
                        below.stateOfCharge().fraction(),
                        stateOfCharge.fraction(),
                        above.stateOfCharge().fraction());
                return new Found<>(
                        below.perCell()
                                .plus(above.perCell().minus(below.perCell()).times(share)),
                        table,
                        rows(below, share, above),
                        above.citation());
            }
        }
        throw new NotInTable(table, "state of charge " + stateOfCharge.fraction(), "0 to 1");
    }

    private static String rows(Row below, double share, Row above) {
        if (share < WITHIN_A_ROW) {
            return percent(below) + " %";
        }
        return share > 1 - WITHIN_A_ROW ? percent(above) + " %" : percent(below) + "–" + percent(above) + " %";
    }

    private static long percent(Row row) {
        return Math.round(row.stateOfCharge().fraction() * 100);
    }

    /**
     * State of charge at which one rested cell shows a voltage, on the straight line between the rows beside it; the
     * inverse of {@link #perCell}. Empty below the row at 0 % and above the row at 100 %: compare with {@link #empty}
     * and {@link #full} to tell which.
     */
    public Optional<Ratio> stateOfChargeAt(Voltage perCell) {
        for (int at = 1; at < rows.size(); at++) {
            Row below = rows.get(at - 1);
            Row above = rows.get(at);
            if (between(below.perCell(), perCell, above.perCell())) {
                double share = share(
                        below.perCell().volts(),
                        perCell.volts(),
                        above.perCell().volts());
                return Optional.of(below.stateOfCharge()
                        .plus(above.stateOfCharge().minus(below.stateOfCharge()).times(share)));
            }
        }
        return Optional.empty();
    }

    /**
     * Cells in series in a block.
     *
     * @throws NotInTable if the voltage is not a whole number of cells, to a tenth of a cell
     */
    public int cells(Voltage nominal) {
        return battery.cells(nominal);
    }

    private static <T extends Comparable<T>> boolean between(T low, T value, T high) {
        return low.compareTo(value) <= 0 && value.compareTo(high) <= 0;
    }

    private static double share(double low, double value, double high) {
        return (value - low) / (high - low);
    }
}
