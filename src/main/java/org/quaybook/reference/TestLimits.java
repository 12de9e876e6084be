package org.quaybook.reference;

import java.util.List;
import java.util.Locale;

/** The measurements of a hand-over. */
public final class TestLimits {

    private static final TestLimits STANDARD = new TestLimits(Table.load("test-limits"));

    private final Table table;
    private final List<TestLimit> limits;

    TestLimits(Table table) {
        this.table = table;
        this.limits = table.rows().stream().map(TestLimits::limit).toList();
    }

    /** The project's own table. */
    public static TestLimits standard() {
        return STANDARD;
    }

    /** All measurements, in the order of the table. */
    public List<TestLimit> all() {
        return limits;
    }

    /**
     * The measurement of a name.
     *
     * @throws NotInTable if there is none
     */
    public TestLimit of(String name) {
        return limits.stream()
                .filter(limit -> limit.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotInTable(table.name(), name, table.keys()));
    }

    private static TestLimit limit(TableRow row) {
        TestLimit limit = new TestLimit(
                row.key(),
                row.text("measurement"),
                row.text("unit"),
                row.maybe("least"),
                row.maybe("most"),
                row.text("condition"),
                supply(row),
                row.citation());
        if (limit.least().isPresent()
                && limit.most().isPresent()
                && limit.least().get() > limit.most().get()) {
            throw new TableFault(row.table(), row.line(), "the least is more than the most");
        }
        return limit;
    }

    private static TestLimit.Supply supply(TableRow row) {
        for (TestLimit.Supply supply : TestLimit.Supply.values()) {
            if (supply.name().toLowerCase(Locale.ROOT).equals(row.text("supply"))) {
                return supply;
            }
        }
        throw new TableFault(row.table(), row.line(), "no supply: " + row.text("supply"));
    }
}
