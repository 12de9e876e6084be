package org.quaybook.reference;

import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;

/** How the capacity of lead-acid batteries falls in the cold. */
public final class Temperatures {

    private static final Temperatures STANDARD = new Temperatures(Table.load("capacity-temperature"));

    private final Table table;

    Temperatures(Table table) {
        this.table = table.ascending("from-h");
    }

    /** The project's own table. */
    public static Temperatures standard() {
        return STANDARD;
    }

    /**
     * Share of the capacity at 25 °C that one kelvin changes, by how long the discharge lasts: the row of the longest
     * time not above it.
     *
     * @throws NotInTable for discharges shorter than the first row's
     */
    public Found<Double> perKelvin(TimeSpan discharge) {
        return table.rows().stream()
                .filter(row -> row.number("from-h") <= discharge.hours())
                .reduce((shorter, longer) -> longer)
                .map(row -> row.found(row.number("per-k")))
                .orElseThrow(() -> new NotInTable(table.name(), discharge.hours() + " h", table.keys()));
    }

    /**
     * Capacity at a temperature as a share of that at 25 °C: C(T) = C25 (1 + λ (T − 25)), the form of IEC 60896 (from
     * memory). Never above 1, since nothing may be promised on the strength of a warm day, and never below 0.
     *
     * @param perKelvin λ, such as {@link Battery#capacityPerKelvin}
     */
    public static Ratio capacityShare(Temperature temperature, double perKelvin) {
        double share = 1 + perKelvin * temperature.kelvinAbove(Batteries.referenceTemperature());
        return new Ratio(Math.max(0, Math.min(1, share)));
    }
}
