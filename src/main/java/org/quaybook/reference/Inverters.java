package org.quaybook.reference;

import java.util.Comparator;
import java.util.List;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;

/** What to reckon with for an inverter whose data sheet is silent. */
public final class Inverters {

    private static final Inverters STANDARD = new Inverters(
            Table.load("inverter-idle"), Table.load("inverter-efficiency"), Table.load("inverter-weights"));

    private final Table idle;
    private final Table efficiency;
    private final Table weights;

    Inverters(Table idle, Table efficiency, Table weights) {
        this.idle = idle;
        this.efficiency = efficiency.ascending("load");
        this.weights = weights.ascending("load");
        refuseWrongSum(weights);
    }

    /** The project's own tables. */
    public static Inverters standard() {
        return STANDARD;
    }

    /**
     * A point of the efficiency curve, or a weight at a load.
     *
     * @param load output as a share of rated power
     * @param value efficiency or weight
     */
    public record Point(Ratio load, Ratio value) {}

    /**
     * Power drawn with the output on and nothing connected. Of the rows with the smallest rated power that is not below
     * the wanted one, the thirstiest counts: a larger figure is the safe side for a battery.
     *
     * @throws NotInTable above the last row
     */
    public Found<Power> idleDraw(Power rated) {
        List<TableRow> enough = idle.rows().stream()
                .filter(row -> row.number("rated-w") >= rated.watts())
                .toList();
        double nearest = enough.stream()
                .mapToDouble(row -> row.number("rated-w"))
                .min()
                .orElseThrow(() -> new NotInTable(idle.name(), rated.watts() + " W", idle.keys()));
        return enough.stream()
                .filter(row -> row.number("rated-w") == nearest)
                .max(Comparator.comparingDouble(row -> row.number("idle-w")))
                .map(row -> row.found(new Power(row.number("idle-w"))))
                .orElseThrow();
    }

    /** The highest efficiency of the curve. */
    public Found<Ratio> bestEfficiency() {
        return efficiency.rows().stream()
                .max(Comparator.comparingDouble(row -> row.number("efficiency")))
                .map(Inverters::efficiency)
                .orElseThrow();
    }

    /** The efficiency at rated power. */
    public Found<Ratio> fullLoadEfficiency() {
        return efficiency(efficiency.row("1"));
    }

    /** The rows of the efficiency curve, idle draw included, smallest load first. */
    public List<Point> curve() {
        return points(efficiency, "efficiency");
    }

    /** The weights of the European efficiency (EN 50530), which add up to 1. */
    public List<Point> weights() {
        return points(weights, "weight");
    }

    private static Found<Ratio> efficiency(TableRow row) {
        return row.found(new Ratio(row.number("efficiency")));
    }

    private static List<Point> points(Table table, String column) {
        return table.rows().stream()
                .map(row -> new Point(new Ratio(row.number("load")), new Ratio(row.number(column))))
                .toList();
    }

    private static void refuseWrongSum(Table weights) {
        double sum =
                weights.rows().stream().mapToDouble(row -> row.number("weight")).sum();
        if (Math.abs(sum - 1) > 1e-9) {
            throw new TableFault(weights.name(), 0, "the weights add up to " + sum + ", not 1");
        }
    }
}
