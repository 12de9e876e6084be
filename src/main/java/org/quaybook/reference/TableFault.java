package org.quaybook.reference;

/** A table file that cannot be trusted: a gap, a number that is none, rows out of order or twice. */
public final class TableFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    TableFault(String table, int line, String fault) {
        super("shared/" + table + ".csv" + (line > 0 ? ", line " + line : "") + ": " + fault);
    }
}
