package org.quaybook.reference;

/** A look-up asked for something that its table does not hold. Nothing is guessed in its place. */
public final class NotInTable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String table;
    private final String wanted;
    private final String holds;

    NotInTable(String table, String wanted, String holds) {
        super("table " + table + " has no row for " + wanted + "; it holds " + holds);
        this.table = table;
        this.wanted = wanted;
        this.holds = holds;
    }

    /** Name of the table. */
    public String table() {
        return table;
    }

    /** What was asked for. */
    public String wanted() {
        return wanted;
    }

    /** What the table can answer. */
    public String holds() {
        return holds;
    }
}
