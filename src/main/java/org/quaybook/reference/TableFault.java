package org.quaybook.reference;

/** A table file that cannot be trusted: a gap, a number that is none, rows out of order or twice. */
public final class TableFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** What is wrong. */
    public enum Kind {
        /** No column names or no rows. */
        NO_ROWS,
        /** A comment line in another form than {@code # heading: words}, or twice. */
        HEADING,
        /** Headings that are missing or strange. */
        HEADINGS,
        /** A column name twice, or columns other than the table must have. */
        COLUMNS,
        /** More or fewer cells than columns. */
        CELLS,
        /** A cell that is empty, quoted or has blanks around it. */
        CELL,
        /** A cell that must be a number. */
        NUMBER,
        /** A row that stands twice. */
        TWICE,
        /** A standing that is none, or not the one that is due. */
        STANDING,
        /** A row that the table has no use for. */
        ROW,
        /** A table that cannot be replaced. */
        TABLE,
        /** Numbers that do not rise as they must. */
        ORDER,
        /** Rows that contradict each other or leave something out. */
        OTHER
    }

    private final Kind kind;
    private final String table;
    private final int line;
    private final String column;
    private final String found;
    private final String allowed;

    TableFault(String table, int line, String fault) {
        this(Kind.OTHER, table, line, "", fault, "");
    }

    TableFault(Kind kind, String table, int line, String column, String found, String allowed) {
        super("shared/" + table + ".csv" + (line > 0 ? ", line " + line : "")
                + (column.isEmpty() ? "" : ", column " + column) + ": "
                + (kind == Kind.OTHER ? found : kind + ", found '" + found + "', allowed: " + allowed));
        this.kind = kind;
        this.table = table;
        this.line = line;
        this.column = column;
        this.found = found;
        this.allowed = allowed;
    }

    public Kind kind() {
        return kind;
    }

    /** Name of the table. */
    public String table() {
        return table;
    }

    /** Line of the file, counted from 1; 0 for the whole file. */
    public int line() {
        return line;
    }

    /** Name of the column; empty for the whole line. */
    public String column() {
        return column;
    }

    /** What was found. */
    public String found() {
        return found;
    }

    /** What is allowed, where that can be listed; empty otherwise. */
    public String allowed() {
        return allowed;
    }
}
