package org.quaybook.reference;

import org.quaybook.quantity.TimeSpan;

/** Longest times to trip of residual-current devices (IEC 61008-1 and 61009-1). */
public final class RcdTimes {

    private static final RcdTimes STANDARD = new RcdTimes(Table.load("rcd-times"));

    private final Table table;

    RcdTimes(Table table) {
        this.table = table;
    }

    /** The project's own table. */
    public static RcdTimes standard() {
        return STANDARD;
    }

    /**
     * Longest time in which a residual-current device must trip.
     *
     * @param delayed whether it is a time-delayed device (type S)
     * @param multiple of the rated residual current: 1, 2 or 5
     * @throws NotInTable for other multiples
     */
    public Found<TimeSpan> tripTime(boolean delayed, int multiple) {
        TableRow row = table.row((delayed ? "delayed" : "general") + " " + multiple);
        return row.found(new TimeSpan(row.number("most-ms") / 1000));
    }
}
