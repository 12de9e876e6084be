package org.quaybook.reference;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Frequency;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

/**
 * The rules that an installation follows. A job names its rulebook; nothing else asks for the country.
 *
 * @param name as written in the job file
 * @param title the standard it follows, for the reader
 * @param mainsVoltage nominal voltage of shore power and inverter output
 * @param mainsFrequency their frequency
 * @param conductors the series of sizes that its tables are made for
 * @param ampacity what conductors may carry
 * @param drop how the voltage drop is reckoned
 * @param criticalDrop largest drop, as a share of nominal voltage, where safety hangs on it
 * @param otherDrop largest drop elsewhere
 * @param inverterFeedDrop largest drop between battery and inverter
 * @param fuseLoad largest share of its rating that a fuse may carry all the time
 * @param fuseOverAmpacityLow largest fuse rating as a multiple of what the conductor may carry, below 50 V
 * @param fuseOverAmpacityHigh the same from 50 V on
 * @param unfused how long a conductor may be before its first fuse
 * @param parallelLeast thinnest conductor that may share its current with others in parallel
 * @param inletToBreaker longest conductor from shore inlet to the first breaker; empty when the rulebook names none
 * @param rcd what a residual-current device must do
 * @param noticeInItalics whether NOTICE on a label is in italics, as no other signal word is
 */
public record Rulebook(
        String name,
        String title,
        Found<Voltage> mainsVoltage,
        Found<Frequency> mainsFrequency,
        ConductorSize.Series conductors,
        AmpacityTable ampacity,
        DropFormula drop,
        Found<Ratio> criticalDrop,
        Found<Ratio> otherDrop,
        Found<Ratio> inverterFeedDrop,
        Found<Ratio> fuseLoad,
        Found<Ratio> fuseOverAmpacityLow,
        Found<Ratio> fuseOverAmpacityHigh,
        UnfusedLengths unfused,
        Found<ConductorSize> parallelLeast,
        Optional<Found<Length>> inletToBreaker,
        RcdLimits rcd,
        boolean noticeInItalics) {

    private static final Voltage LOW_BELOW = new Voltage(50);

    /** All rulebooks, in the order of the table. */
    public static List<String> names() {
        return Rulebooks.STANDARD.names();
    }

    /**
     * The rulebook of a name.
     *
     * @throws NotInTable if there is none
     */
    public static Rulebook named(String name) {
        return Rulebooks.STANDARD.named(name);
    }

    /**
     * The rulebook of a name, by an installer's copies of its tables.
     *
     * @throws NotInTable if there is none
     * @throws TableFault if the tables do not go together
     */
    public static Rulebook named(String name, TableShelf shelf) {
        return new Rulebooks(shelf).named(name);
    }

    /** The larger of the two multiples only below 50 V. */
    public Found<Ratio> fuseOverAmpacity(Voltage nominal) {
        return nominal.compareTo(LOW_BELOW) < 0 ? fuseOverAmpacityLow : fuseOverAmpacityHigh;
    }
}
