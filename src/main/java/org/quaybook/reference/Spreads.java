package org.quaybook.reference;

import java.util.Locale;
import org.quaybook.quantity.Ratio;

/** How far a value may lie from the truth, by what it is a value of and by how it is known. */
public final class Spreads {

    /** What may be off. */
    public enum Subject {
        /** Capacity of a bank. */
        CAPACITY,
        /** Inner resistance of a bank. */
        RESISTANCE,
        /** Resistance of the cables and joints of a way. */
        WAY,
        /** Power of a load while it works. */
        POWER,
        /** Share of the time that a load works, or its mean power. */
        DUTY
    }

    /** The word for a value that comes from a table of this project. */
    public static final String FROM_TABLE = "table";

    private static final Spreads STANDARD = new Spreads(Table.load("spreads"));

    private final Table rows;

    Spreads(Table rows) {
        this.rows = rows;
        for (TableRow row : rows.rows()) {
            double spread = row.number("spread");
            if (spread <= 0 || spread >= 1) {
                throw new TableFault(rows.name(), row.line(), "a spread lies between 0 and 1, not at " + spread);
            }
        }
    }

    /** The project's own table. */
    public static Spreads standard() {
        return STANDARD;
    }

    /**
     * The spread as a share of the value: the truth lies within it about nineteen times in twenty.
     *
     * @param known how the value is known, as the job file writes it, or {@link #FROM_TABLE}
     * @throws NotInTable if nobody has said how far such a value may be off
     */
    public Found<Ratio> of(Subject subject, String known) {
        TableRow row = rows.row(subject.name().toLowerCase(Locale.ROOT) + " " + known);
        return row.found(new Ratio(row.number("spread")));
    }
}
