package org.quaybook.reference;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Voltage;

/** Families of fuses and breakers for direct current. */
public final class Fuses {

    static final String INTERRUPTING = "fuse-interrupting";
    private static final String GG = "nh-gg";
    private static final Fuses STANDARD = of(TableShelf.standard());

    private final Table table;
    private final Table selectivity;
    private final Map<String, FuseFamilyRow> byFamily;

    Fuses(Table table, Table interrupting, Table selectivity) {
        this.table = table;
        this.selectivity = selectivity;
        this.byFamily = table.rows().stream()
                .map(row -> family(row, interrupting))
                .collect(Collectors.toUnmodifiableMap(FuseFamilyRow::family, Function.identity()));
    }

    /**
     * By an installer's copies.
     *
     * @throws TableFault if the tables do not go together
     */
    public static Fuses of(TableShelf shelf) {
        return new Fuses(Table.load("fuses"), Table.load(INTERRUPTING), shelf.table("fuse-selectivity"));
    }

    /** The project's own tables. */
    public static Fuses standard() {
        return STANDARD;
    }

    /** All families, in the order of the table. */
    public List<String> families() {
        return table.rows().stream().map(TableRow::key).toList();
    }

    /**
     * The row of a family.
     *
     * @throws NotInTable if there is no such family
     */
    public FuseFamilyRow of(String family) {
        FuseFamilyRow row = byFamily.get(family);
        if (row == null) {
            throw new NotInTable(table.name(), family, table.keys());
        }
        return row;
    }

    /** Ratio of two ratings from which the fuse nearer to the fault surely opens first, whatever the order given. */
    public Found<Double> selectiveFrom(String oneFamily, String otherFamily) {
        boolean bothGg = oneFamily.equals(GG) && otherFamily.equals(GG);
        TableRow row = selectivity.row(bothGg ? "both-" + GG : "others");
        return row.found(row.number("ratio"));
    }

    private static FuseFamilyRow family(TableRow row, Table interrupting) {
        List<FuseFamilyRow.Interrupting> breaks = interrupting.rows().stream()
                .filter(candidate -> candidate.text("family").equals(row.key()))
                .map(Fuses::interrupting)
                .toList();
        refuseDisorder(row, breaks);
        return new FuseFamilyRow(
                row.key(),
                row.text("form"),
                row.text("use"),
                row.numbers("ratings-a").stream().map(Current::new).toList(),
                new Voltage(row.number("max-v")),
                new Voltage(row.number("highest-version-v")),
                breaks,
                row.citation());
    }

    private static FuseFamilyRow.Interrupting interrupting(TableRow row) {
        return new FuseFamilyRow.Interrupting(
                new Voltage(row.number("at-v")),
                new Current(row.number("least-ka") * 1000),
                new Current(row.number("typical-ka") * 1000),
                row.citation());
    }

    /** The higher the voltage, the less a fuse breaks; and none breaks above the voltage it is made for. */
    private static void refuseDisorder(TableRow family, List<FuseFamilyRow.Interrupting> breaks) {
        if (breaks.isEmpty()) {
            throw new TableFault(INTERRUPTING, 0, "no row for " + family.key());
        }
        for (int at = 0; at < breaks.size(); at++) {
            FuseFamilyRow.Interrupting here = breaks.get(at);
            boolean disorder = at > 0
                    && (here.at().compareTo(breaks.get(at - 1).at()) <= 0
                            || here.least().compareTo(breaks.get(at - 1).least()) > 0);
            if (disorder
                    || here.least().compareTo(here.typical()) > 0
                    || here.at().volts() > family.number("highest-version-v")) {
                throw new TableFault(INTERRUPTING, 0, "the rows for " + family.key() + " contradict each other");
            }
        }
    }
}
