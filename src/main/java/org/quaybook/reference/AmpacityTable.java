package org.quaybook.reference;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.ConductorSize.Series;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/**
 * The current that a single copper conductor may carry all the time, by size and by the temperature rating of its
 * insulation, in air of 30 °C, with the factors for hot spaces and for bundles.
 */
public final class AmpacityTable {

    /** Air that the tables are made for, in °C. */
    private static final double TABLE_AIR = 30;

    private static final Citation AIR_FACTOR =
            new Citation("Joule’s law: the root of (T - Ta) / (T - 30 °C)", Citation.Standing.COMPUTED);

    private final Series series;
    private final Table amperes;
    private final Table spaces;
    private final Table bundles;
    private final List<ConductorSize> sizes;
    private final List<Integer> insulations;

    AmpacityTable(Series series, Table amperes, Table spaces, Table bundles) {
        this.series = series;
        this.amperes = amperes;
        this.spaces = spaces.ascending("insulation-c");
        this.bundles = bundles.ascending("from");
        this.sizes = Conductors.sizes(amperes, series);
        this.insulations = amperes.rows().get(0).cells().keySet().stream()
                .filter(column -> column.matches("t\\d+"))
                .map(column -> Integer.parseInt(column.substring(1)))
                .toList();
        refuseDisorder();
        refuseHoles();
    }

    static AmpacityTable of(TableShelf shelf, Series series, String suffix) {
        return new AmpacityTable(
                series,
                shelf.table("ampacity-" + suffix),
                shelf.table("ampacity-" + suffix + "-spaces"),
                shelf.table("ampacity-" + suffix + "-bundles"));
    }

    /** All sizes of the table, smallest first. */
    public List<ConductorSize> sizes() {
        return sizes;
    }

    /**
     * Current that the conductor may carry outside engine spaces, not bundled.
     *
     * @param insulation temperature rating of the insulation; the column of the highest rating not above it counts
     * @throws NotInTable if there is no such size, or the insulation is rated below the lowest column
     */
    public Found<Current> base(ConductorSize size, Temperature insulation) {
        if (size.system() != series) {
            throw new NotInTable(amperes.name(), size.toString(), amperes.keys());
        }
        int column = column(insulation);
        TableRow row = amperes.row(size.designation());
        return row.foundAt(new Current(row.number("t" + column)), size + ", " + column + " °C");
    }

    /**
     * Factor for the space that the conductor runs through; 1 outside engine spaces.
     *
     * @param insulation temperature rating of the insulation; the row of the highest rating not above it counts
     * @throws NotInTable if insulation of so low a rating has no place in an engine space
     */
    public Found<Double> spaceFactor(Temperature insulation, boolean engineSpace) {
        if (!engineSpace) {
            return new Found<>(
                    1.0,
                    spaces.name(),
                    "outside engine spaces",
                    spaces.rows().get(0).citation());
        }
        TableRow row = spaces.rows().stream()
                .filter(candidate -> candidate.number("insulation-c") <= insulation.celsius())
                .reduce((lower, higher) -> higher)
                .orElseThrow(
                        () -> tooCool(spaces, insulation, spaces.rows().get(0).number("insulation-c")));
        return row.foundAt(row.number("factor"), row.key() + " °C");
    }

    /**
     * Factor for air of a known temperature, the root of (T - Ta) / (T - 30 °C) for a rating T: what warms a conductor
     * from the air to its rating goes with the square of the current (Joule's law). Never above 1; 0 in air as hot as
     * the rating.
     *
     * @param insulation temperature rating of the insulation; as in {@link #base}, the column not above it counts
     * @param air temperature of the air
     * @throws NotInTable if the insulation is rated below the lowest column
     */
    public Found<Double> airFactor(Temperature insulation, Temperature air) {
        double rating = column(insulation);
        double share = (rating - air.celsius()) / (rating - TABLE_AIR);
        return new Found<>(
                Math.sqrt(Math.max(0, Math.min(1, share))),
                amperes.name(),
                (int) rating + " °C in air of " + air.celsius() + " °C",
                AIR_FACTOR);
    }

    /**
     * Factor for conductors bundled together.
     *
     * @param bundled current-carrying conductors in the bundle, this one included, at least 1
     * @param nominal nominal voltage of the circuit: some rules ask for the factor only from a voltage on
     * @throws NotInTable if the table ends before so large a bundle
     */
    public Found<Double> bundleFactor(int bundled, Voltage nominal) {
        TableRow row = bundles.rows().stream()
                .filter(candidate -> candidate.number("from") <= bundled
                        && candidate.maybe("to").map(to -> bundled <= to).orElse(true))
                .findFirst()
                .orElseThrow(() -> new NotInTable(bundles.name(), bundled + " conductors", bundles.keys()));
        double fromVoltage = row.number("from-v");
        return nominal.volts() < fromVoltage
                ? row.foundAt(1.0, "below " + (int) fromVoltage + " V")
                : row.foundAt(row.number("factor"), bundle(row));
    }

    private int column(Temperature insulation) {
        return insulations.stream()
                .filter(rating -> rating <= insulation.celsius())
                .reduce((lower, higher) -> higher)
                .orElseThrow(() -> tooCool(amperes, insulation, insulations.get(0)));
    }

    private static String bundle(TableRow row) {
        String upTo = row.maybe("to").map(to -> "to " + to.intValue()).orElse("or more");
        return row.whole("from") + " " + upTo + " conductors";
    }

    private static NotInTable tooCool(Table table, Temperature insulation, double lowest) {
        return new NotInTable(
                table.name(), "insulation rated " + insulation.celsius() + " °C", "ratings from " + lowest + " °C on");
    }

    private void refuseDisorder() {
        for (int at = 0; at < sizes.size(); at++) {
            TableRow row = amperes.rows().get(at);
            Optional<TableRow> above =
                    at == 0 ? Optional.empty() : Optional.of(amperes.rows().get(at - 1));
            if (at > 0 && sizes.get(at).compareTo(sizes.get(at - 1)) <= 0) {
                throw new TableFault(amperes.name(), row.line(), "sizes do not ascend");
            }
            for (int column = 0; column < insulations.size(); column++) {
                refuseFall(row, above, column);
            }
        }
    }

    /** A thicker conductor never carries less, nor does better insulation. */
    private void refuseFall(TableRow row, Optional<TableRow> above, int column) {
        String name = "t" + insulations.get(column);
        double here = row.number(name);
        boolean belowThinner = above.map(thinner -> here < thinner.number(name)).orElse(false);
        boolean belowCooler = column > 0
                && (insulations.get(column) <= insulations.get(column - 1)
                        || here < row.number("t" + insulations.get(column - 1)));
        if (here <= 0 || belowThinner || belowCooler) {
            throw new TableFault(TableFault.Kind.ORDER, amperes.name(), row.line(), name, row.text(name), "");
        }
    }

    private void refuseHoles() {
        double next = 1;
        for (TableRow row : bundles.rows()) {
            if (row.number("from") != next) {
                throw new TableFault(bundles.name(), row.line(), "no row for " + (int) next + " conductors");
            }
            next = row.maybe("to").orElse(Double.MAX_VALUE) + 1;
        }
    }
}
