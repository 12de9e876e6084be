package org.quaybook.reference;

import java.util.List;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** Tables for the mains side: residual-current devices, breakers, protective conductors, shore inlets, clauses. */
public final class AcProtection {

    private static final AcProtection STANDARD = new AcProtection(
            Table.load("rcd-times"),
            Table.load("protective-conductors"),
            Table.load("breaker-ratings"),
            Table.load("shore-inlets"),
            Table.load("ac-clauses"));

    private final Table rcdTimes;
    private final Table protectiveConductors;
    private final Table breakerRatings;
    private final Table shoreInlets;
    private final Table clauses;

    AcProtection(Table rcdTimes, Table protectiveConductors, Table breakerRatings, Table shoreInlets, Table clauses) {
        this.rcdTimes = rcdTimes;
        this.protectiveConductors = protectiveConductors.ascending("line-above-mm2");
        this.breakerRatings = breakerRatings;
        this.shoreInlets = shoreInlets;
        this.clauses = clauses;
    }

    /** The project's own tables. */
    public static AcProtection standard() {
        return STANDARD;
    }

    /**
     * A shore inlet.
     *
     * @param name the key
     * @param voltage nominal voltage
     * @param rated rated current
     * @param power what it can supply
     * @param citation where the row comes from
     */
    public record ShoreInlet(String name, Voltage voltage, Current rated, Power power, Citation citation) {}

    /**
     * A requirement of a standard.
     *
     * @param name the key
     * @param subject what it is about
     * @param demand what it asks, a figure with its unit or a few words
     * @param citation the clause
     */
    public record Clause(String name, String subject, String demand, Citation citation) {}

    /**
     * Longest time in which a residual-current device must trip.
     *
     * @param delayed whether it is a time-delayed device (type S)
     * @param multiple of the rated residual current: 1, 2 or 5
     * @throws NotInTable for other multiples
     */
    public Found<TimeSpan> tripTime(boolean delayed, int multiple) {
        TableRow row = rcdTimes.row((delayed ? "delayed" : "general") + " " + multiple);
        return row.found(new TimeSpan(row.number("most-ms") / 1000));
    }

    /**
     * Smallest copper protective conductor for a line conductor of the same material (IEC 60364-5-54).
     *
     * @param line cross-section of the line conductor, more than zero
     * @throws NotInTable for no cross-section at all
     */
    public Found<Area> protectiveConductor(Area line) {
        TableRow row = protectiveConductors.rows().stream()
                .filter(candidate -> candidate.number("line-above-mm2") < line.squareMillimetres())
                .reduce((thinner, thicker) -> thicker)
                .orElseThrow(() -> new NotInTable(
                        protectiveConductors.name(), line.squareMillimetres() + " mm²", "line conductors above 0 mm²"));
        return row.found(new Area(row.number("fixed-mm2") + row.number("share-of-line") * line.squareMillimetres()));
    }

    /** Rated currents of circuit breakers for household and similar use, smallest first. */
    public Found<List<Current>> breakerRatings() {
        TableRow row = breakerRatings.rows().get(0);
        return row.found(row.numbers("ratings-a").stream().map(Current::new).toList());
    }

    /** All shore inlets. */
    public List<ShoreInlet> shoreInlets() {
        return shoreInlets.rows().stream().map(AcProtection::shoreInlet).toList();
    }

    /** All clauses. */
    public List<Clause> clauses() {
        return clauses.rows().stream()
                .map(row -> new Clause(row.key(), row.text("subject"), row.text("demand"), row.citation()))
                .toList();
    }

    private static ShoreInlet shoreInlet(TableRow row) {
        Voltage voltage = new Voltage(row.number("voltage-v"));
        Current rated = new Current(row.number("rated-a"));
        return new ShoreInlet(row.key(), voltage, rated, new Power(voltage.volts() * rated.amperes()), row.citation());
    }
}
