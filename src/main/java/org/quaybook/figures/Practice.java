package org.quaybook.figures;

import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.reference.Citation;
import org.quaybook.reference.Citation.Standing;

/** Numbers that stand behind figures without a table: each with its source or the words that it has none. */
final class Practice {

    /** Temperature at which capacities are stated. */
    static final Temperature RATED_TEMPERATURE = new Temperature(25);

    /** The rate that lead-acid capacities are stated for, in hours. */
    static final double RATED_HOURS = 20;

    static final Citation RATED_HOURS_SOURCE = new Citation(
            "20-hour rating, usual for batteries of small craft and leisure vehicles", Standing.COMMON_PRACTICE);

    /** A battery with this share of its capacity left is due for renewal. */
    static final Ratio WORN_HEALTH = new Ratio(0.8);

    static final Citation WORN_HEALTH_SOURCE =
            new Citation("IEC 60896: end of life at 80 % of rated capacity", Standing.FROM_MEMORY);

    /** Inner resistance of a worn battery against a new one. */
    static final double WORN_RESISTANCE = 1.5;

    static final Citation WORN_RESISTANCE_SOURCE = new Citation(
            "common practice, no source: inner resistance half as high again when worn", Standing.COMMON_PRACTICE);

    /** Rise of a lead-acid battery's resistance per kelvin below 25 °C: 1.3 times at 0 °C. */
    static final double COLD_RESISTANCE_PER_KELVIN = 0.3 / 25;

    static final Citation COLD_RESISTANCE_SOURCE =
            new Citation("lead-acid resistance about 1.3 times at 0 °C, battery handbooks", Standing.FROM_MEMORY);

    /** Rise of a lithium iron phosphate battery's resistance per kelvin below 25 °C: twice at 0 °C. */
    static final double COLD_RESISTANCE_PER_KELVIN_OF_LITHIUM = 1.0 / 25;

    static final Citation COLD_RESISTANCE_OF_LITHIUM_SOURCE = new Citation(
            "lithium iron phosphate resistance about twice at 0 °C, literature on cells", Standing.FROM_MEMORY);

    /** One sound bolted or crimped joint. */
    static final Resistance JOINT = new Resistance(0.1e-3);

    static final Citation JOINT_SOURCE =
            new Citation("common practice, no source: 0.1 mΩ for a sound joint", Standing.COMMON_PRACTICE);

    /** Joints of a run whose number nobody wrote down: one at each end. */
    static final int JOINTS_PER_RUN = 2;

    static final Citation JOINTS_PER_RUN_SOURCE =
            new Citation("one joint at each end of a run", Standing.COMMON_PRACTICE);

    static final Citation AIR_SOURCE = new Citation(
            "air of the ampacity tables, 50 °C in engine spaces: what their factors fit", Standing.COMPUTED);

    static final Citation LEAST_CONDUCTOR = new Citation(
            "least size of the rulebook that bears the current within the allowed drop", Standing.COMPUTED);

    static final Citation WHOLE_CURRENT =
            new Citation("one fuse carries what the other does: Kirchhoff's current law", Standing.SEEN);

    static final Citation STRINGS_OF_JOB = new Citation("strings in parallel by the job", Standing.COMPUTED);

    static final Citation AT_THE_TERMINAL =
            new Citation("nobody has measured it: as if at the battery terminal", Standing.COMMON_PRACTICE);

    /** Insulation of a conductor whose kind nobody has written. */
    static final Temperature PVC = new Temperature(70);

    static final Citation PVC_SOURCE = new Citation("common practice: PVC of 70 °C", Standing.COMMON_PRACTICE);

    /** Joints of one link between neighbouring strings. */
    static final int JOINTS_PER_LINK = 2;

    static final Citation JOINTS_PER_LINK_SOURCE =
            new Citation("one joint at each end of a link", Standing.COMMON_PRACTICE);

    /** Copper of links, as warm as the usual insulation may become. */
    static final Temperature LINK_TEMPERATURE = new Temperature(70);

    static final Citation LINK_TEMPERATURE_SOURCE = new Citation(
            "common practice, no source: links as warm as 70 °C insulation may become", Standing.COMMON_PRACTICE);

    static final Citation BETTER_TAKE_OFF =
            new Citation("plus off the first string, minus off the last", Standing.COMPUTED);

    static final Citation WORST_TAKE_OFF =
            new Citation("nobody has seen it: the take-off that shares worst is taken", Standing.COMMON_PRACTICE);

    static final Citation NO_PEUKERT_SOURCE =
            new Citation("common practice, no source: Peukert's law is left to lead-acid", Standing.COMMON_PRACTICE);

    static final Citation NOT_WRITTEN =
            new Citation("not written in the job: the usual case is taken", Standing.COMMON_PRACTICE);

    private Practice() {}
}
