package org.quaybook.reference;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Temperature;

/** How fast cells may be charged at their temperature. */
public final class ChargeRates {

    private static final String TABLE = "charge-temperature";
    private static final ChargeRates STANDARD = new ChargeRates(Table.load(TABLE));

    private final List<TableRow> rows;

    ChargeRates(Table table) {
        this.rows = table.rows();
        for (int at = 1; at < rows.size(); at++) {
            TableRow row = rows.get(at);
            TableRow before = rows.get(at - 1);
            if (row.text("chemistry").equals(before.text("chemistry"))
                    && row.number("from-c") <= before.number("from-c")) {
                throw new TableFault(row.table(), row.line(), "column from-c does not ascend");
            }
        }
    }

    /** The project's own table. */
    public static ChargeRates standard() {
        return STANDARD;
    }

    /**
     * The largest charging rate at a temperature of the cells, in capacities per hour.
     *
     * @return empty for a chemistry that the table does not hold: its charging does not hang on the temperature; 0 where it
     *     must not be charged, and below the first row
     */
    public Optional<Found<Double>> at(String chemistry, Temperature cells) {
        List<TableRow> own = rows.stream()
                .filter(row -> row.text("chemistry").equals(chemistry))
                .toList();
        return own.stream()
                .filter(row -> row.number("from-c") <= cells.celsius())
                .reduce((lower, higher) -> higher)
                .map(row -> row.found(row.number("rate")))
                .or(() -> own.stream().findFirst().map(first -> first.found(0.0)));
    }
}
