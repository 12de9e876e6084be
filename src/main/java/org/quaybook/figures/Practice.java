package org.quaybook.figures;

import org.quaybook.calc.Drift;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** Numbers that stand behind figures without a table; {@link Reason} has their sources, or the words that they have none. */
final class Practice {

    /** Temperature at which capacities are stated. */
    static final Temperature RATED_TEMPERATURE = new Temperature(25);

    /** The rate that lead-acid capacities are stated for, in hours. */
    static final double RATED_HOURS = 20;

    /** A battery with this share of its capacity left is due for renewal. */
    static final Ratio WORN_HEALTH = new Ratio(0.8);

    /** Inner resistance of a worn battery against a new one. */
    static final double WORN_RESISTANCE = 1.5;

    /** Rise of a lead-acid battery's resistance per kelvin below 25 °C: 1.3 times at 0 °C. */
    static final double COLD_RESISTANCE_PER_KELVIN = 0.3 / 25;

    /** Rise of a lithium iron phosphate battery's resistance per kelvin below 25 °C: twice at 0 °C. */
    static final double COLD_RESISTANCE_PER_KELVIN_OF_LITHIUM = 1.0 / 25;

    /** What the largest short meets of a block's stated resistance: a new, warm and full block may have less than stated. */
    static final Ratio FAULT_RESISTANCE = new Ratio(0.9);

    /** One sound bolted or crimped joint. */
    static final Resistance JOINT = new Resistance(0.1e-3);

    /** Joints of a run whose number nobody wrote down: one at each end. */
    static final int JOINTS_PER_RUN = 2;

    /** Part of an RCD's rating that standing leakage should stay below. */
    static final Ratio LEAKAGE_SHARE = new Ratio(0.3);

    /** Largest voltage that may stand on touchable metal for long. */
    static final Voltage TOUCH_VOLTAGE = new Voltage(50);

    /** Time within which the fuse ends a short from positive to a case. */
    static final TimeSpan CASE_FAULT = new TimeSpan(0.1);

    /** Part of a battery's own discharge limit that it should carry all the time. */
    static final Ratio PROTECTION_LOAD = new Ratio(0.8);

    /** Part of its rating that an alternator bears for hours. */
    static final Ratio ALTERNATOR_SHARE = new Ratio(0.6);

    /** Part of the system voltage that a charger's cable may lose before charging suffers. */
    static final Ratio CHARGE_DROP = new Ratio(0.03);

    /** Insulation of a conductor whose kind nobody has written. */
    static final Temperature PVC = new Temperature(70);

    /** Joints of one link between neighbouring strings. */
    static final int JOINTS_PER_LINK = 2;

    /** Copper of links, as warm as the usual insulation may become. */
    static final Temperature LINK_TEMPERATURE = new Temperature(70);

    /** Temperature above which an inverter gives less, and how much less for each kelvin, of its output. */
    static final Temperature DERATE_ABOVE = new Temperature(40);

    static final Ratio DERATE_PER_KELVIN = new Ratio(0.02);

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

    /** Standing leakage of heating elements for each kilowatt, and of the filter in a switched supply. */
    static final Current LEAKAGE_OF_A_KILOWATT = new Current(1e-3);

    static final Current LEAKAGE_OF_A_FILTER = new Current(1e-3);

    private Practice() {}
}
