package org.quaybook.figures;

import org.quaybook.calc.Drift;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;
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

    static final Citation POSITIVE_OF_JOB =
            new Citation("the positive of the job, fitted or proposed", Standing.COMPUTED);

    static final Citation TRIP_BANDS =
            new Citation("IEC 60898-1: upper ends of bands B, C and D", Standing.FROM_MEMORY);

    static final Citation COOLS_WORST =
            new Citation("nobody has written how it is laid: the way that cools worst", Standing.COMMON_PRACTICE);

    /** Part of an RCD's rating that standing leakage should stay below. */
    static final Ratio LEAKAGE_SHARE = new Ratio(0.3);

    static final Citation LEAKAGE_SHARE_SOURCE =
            new Citation("common practice, no source: 30 % of the RCD's rating", Standing.COMMON_PRACTICE);

    /** Largest voltage that may stand on touchable metal for long. */
    static final Voltage TOUCH_VOLTAGE = new Voltage(50);

    static final Citation TOUCH_VOLTAGE_SOURCE = new Citation("IEC 60364-4-41: 50 V alternating", Standing.FROM_MEMORY);

    /** Time within which the fuse ends a short from positive to a case. */
    static final TimeSpan CASE_FAULT = new TimeSpan(0.1);

    static final Citation CASE_FAULT_SOURCE =
            new Citation("common practice, no source: the fuse opens within 0.1 s", Standing.COMMON_PRACTICE);

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

    /** Temperature above which an inverter gives less, and how much less for each kelvin, of its output. */
    static final Temperature DERATE_ABOVE = new Temperature(40);

    static final Ratio DERATE_PER_KELVIN = new Ratio(0.02);

    static final Citation DERATE_SOURCE =
            new Citation("1 to 2 % for each kelvin above 40 °C, the worse taken", Standing.FROM_MEMORY);

    static final Citation RECALCULATED =
            new Citation("the time again with one input at an end of its spread", Standing.COMPUTED);

    static final Citation ROW = new Citation("state of charge of this row of the table", Standing.COMPUTED);

    static final Citation SAME_KIND =
            new Citation("strings of the same blocks, links and take-off added", Standing.COMPUTED);

    static final Citation NO_PEUKERT_SOURCE =
            new Citation("common practice, no source: Peukert's law is left to lead-acid", Standing.COMMON_PRACTICE);

    static final Citation NOT_WRITTEN =
            new Citation("not written in the job: the usual case is taken", Standing.COMMON_PRACTICE);

    /** Air where nobody has written its temperature. */
    static final Temperature ROOM = new Temperature(20);

    /** Drops have moved as resistances: half as much again and 0.1 mΩ, a whole sound joint (common practice, no source). */
    static final Drift RESISTANCE_MOVED = new Drift(1.5, 0.1e-3);

    /** Rise of a joint over the air: half as much again and 5 K (common practice, no source). */
    static final Drift WARMTH_MOVED = new Drift(1.5, 5);

    /** Time of an RCD: half as long again and 10 ms (common practice, no source). */
    static final Drift TIME_MOVED = new Drift(1.5, 10e-3);

    /** Leakage: half as much again and 1 mA (common practice, no source). */
    static final Drift LEAKAGE_MOVED = new Drift(1.5, 1e-3);

    /** Insulation: less than half, and 1 MΩ less (common practice, no source). */
    static final Drift INSULATION_MOVED = new Drift(2, 1e6);

    /** Above this an insulation reading tells of the weather, not of the circuit (common practice, no source). */
    static final double INSULATION_CEILING = 20e6;

    /** Earth continuity and neutral-earth bond: half as much again and 0.05 Ω (common practice, no source). */
    static final Drift CONTINUITY_MOVED = new Drift(1.5, 0.05);

    /** Rest voltage: 0.1 V lower for each 12 V of the system (common practice, no source). */
    static final double REST_FALL_PER_VOLT = 0.1 / 12;

    /** What a hand-held meter blurs a drop by, in volts (common practice, no source). */
    static final double MILLIVOLT = 1e-3;

    /** What the difference of two readings of the bank's voltage is blurred by, in volts (common practice, no source). */
    static final double BANK_VOLTS_BLUR = 10e-3;

    /** What a contact or infrared thermometer blurs a rise by, in kelvin (common practice, no source). */
    static final double KELVIN_BLUR = 2;

    /** DC output over AC input of a mains charger. */
    static final Ratio CHARGER_EFFICIENCY = new Ratio(0.85);

    /** Power factor of a mains charger's input. */
    static final double CHARGER_POWER_FACTOR = 0.95;

    static final Citation CHARGER_SOURCE = new Citation(
            "common practice, no source: a mains charger of 85 % efficiency and a power factor of 0.95",
            Standing.COMMON_PRACTICE);

    /** Standing leakage of heating elements for each kilowatt, and of the filter in a switched supply. */
    static final Current LEAKAGE_OF_A_KILOWATT = new Current(1e-3);

    static final Current LEAKAGE_OF_A_FILTER = new Current(1e-3);

    static final Citation USUAL_LEAKAGE_SOURCE = new Citation(
            "common practice, no source: 1 mA for each kilowatt of heating, 1 mA for the filter of electronics",
            Standing.COMMON_PRACTICE);

    private Practice() {}
}
