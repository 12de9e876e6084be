package org.quaybook.reference;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.ConductorSize.Series;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;

/** Resistance of copper conductors by size. */
public final class Conductors {

    /** Relative rise of copper's resistance for each kelvin above 20 °C (handbook value, from memory). */
    private static final double RISE_PER_KELVIN = 0.00393;

    private static final Temperature METRIC_TABLE_AT = new Temperature(20);
    private static final Temperature AWG_TABLE_AT = new Temperature(75);
    private static final double METRES_PER_KILOMETRE = 1000;
    private static final double METRES_PER_THOUSAND_FEET = 304.8;

    private static final Conductors STANDARD = of(TableShelf.standard());

    private final Table metric;
    private final Table awg;
    private final Table smallestAreas;

    Conductors(Table metric, Table awg, Table smallestAreas) {
        this.metric = metric.ascending("size");
        this.awg = awg;
        this.smallestAreas = smallestAreas.ascending("circular-mils");
        refuseDisorder(metric, Series.METRIC);
        refuseDisorder(awg, Series.AWG);
    }

    /**
     * By an installer's copies.
     *
     * @throws TableFault if the tables do not go together
     */
    public static Conductors of(TableShelf shelf) {
        return new Conductors(
                shelf.table("conductors-metric"), shelf.table("conductors-awg"), shelf.table("conductors-sae-areas"));
    }

    /** The project's own tables. */
    public static Conductors standard() {
        return STANDARD;
    }

    /** All sizes of a series, smallest first. */
    public List<ConductorSize> sizes(Series series) {
        return sizes(table(series), series);
    }

    /**
     * Direct-current resistance of one metre of one conductor at 20 °C. Metric: the largest that IEC 60228 allows for
     * flexible conductors (class 5). AWG: NEC chapter 9 table 8, stranded, given at 75 °C and divided by
     * {@code temperatureFactor(75 °C)}.
     *
     * @param tinned whether the strands are tinned ("coated" in the AWG table)
     * @throws NotInTable if the series has no such size
     */
    public Found<Resistance> perMetreAt20(ConductorSize size, boolean tinned) {
        TableRow row = table(size.system()).row(size.designation());
        return size.system() == Series.METRIC
                ? perMetre(row, size, tinned ? "tinned" : "plain", METRES_PER_KILOMETRE, METRIC_TABLE_AT)
                : perMetre(row, size, tinned ? "coated" : "uncoated", METRES_PER_THOUSAND_FEET, AWG_TABLE_AT);
    }

    /** Resistance of copper at a temperature, in multiples of that at 20 °C: 1 + 0.00393 (T − 20). */
    public static double temperatureFactor(Temperature temperature) {
        return 1 + RISE_PER_KELVIN * temperature.kelvinAbove(METRIC_TABLE_AT);
    }

    /**
     * The smallest copper area that a cable sold under an AWG number may have when it is made to the SAE sizes: 3 to 11 %
     * below the gauge's own area, so the one to choose a size by.
     *
     * @throws NotInTable for metric sizes and for AWG numbers without a printed SAE area (3 AWG)
     */
    public Found<Area> smallestArea(ConductorSize size) {
        if (size.system() != Series.AWG) {
            throw new NotInTable(smallestAreas.name(), size.toString(), "AWG " + smallestAreas.keys());
        }
        TableRow row = smallestAreas.row(size.designation());
        return row.foundAt(CircularMils.toArea(row.number("circular-mils")), size.toString());
    }

    /**
     * The least size of the other series that holds at least as much copper; an AWG number counts with the smallest area
     * it may have (3 AWG with its gauge's own).
     *
     * @return empty if the other series ends before it
     */
    public Optional<ConductorSize> inOtherSeries(ConductorSize size) {
        Series other = size.system() == Series.METRIC ? Series.AWG : Series.METRIC;
        Area copper = copper(size);
        return sizes(other).stream()
                .filter(candidate -> copper(candidate).compareTo(copper) >= 0)
                .findFirst();
    }

    /** Copper that a conductor of this size surely has; nominal for metric sizes, whose resistance is what is laid down. */
    public Area copper(ConductorSize size) {
        boolean hasSaeSize = size.system() == Series.AWG && !size.designation().equals("3");
        return hasSaeSize ? smallestArea(size).value() : size.area();
    }

    private Table table(Series series) {
        return series == Series.METRIC ? metric : awg;
    }

    private static Found<Resistance> perMetre(
            TableRow row, ConductorSize size, String column, double metres, Temperature tableAt) {
        double perMetre = row.number(column) / metres / temperatureFactor(tableAt);
        return row.foundAt(new Resistance(perMetre), size + ", " + column);
    }

    private static void refuseDisorder(Table table, Series series) {
        List<ConductorSize> sizes = sizes(table, series);
        for (int at = 1; at < sizes.size(); at++) {
            if (sizes.get(at).compareTo(sizes.get(at - 1)) <= 0) {
                throw new TableFault(table.name(), table.rows().get(at).line(), "sizes do not ascend");
            }
        }
    }

    static List<ConductorSize> sizes(Table table, Series series) {
        return table.rows().stream().map(row -> size(row, series)).toList();
    }

    private static ConductorSize size(TableRow row, Series series) {
        return series == Series.METRIC ? ConductorSize.metric(row.number("size")) : ConductorSize.awg(row.text("size"));
    }
}
