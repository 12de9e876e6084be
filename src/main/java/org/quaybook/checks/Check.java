package org.quaybook.checks;

import org.quaybook.diag.MessageKey;
import org.quaybook.reference.Citation;
import org.quaybook.reference.Citation.Standing;

/**
 * The checks by their stable id, each with its source. Message and remedy stand in the message files under
 * {@code check.<id>} and {@code check.<id>.remedy}.
 */
public enum Check implements MessageKey {
    MAIN_FUSE_MISSING(
            "main-fuse-missing", "ISO 13297 (over-current protection near the battery)", Standing.FROM_MEMORY),
    FUSE_DISTANCE("fuse-distance", "rulebook: longest unfused conductor", Standing.FROM_MEMORY),
    FUSE_DISTANCE_UNKNOWN("fuse-distance-unknown", "rulebook: longest unfused conductor", Standing.FROM_MEMORY),
    FUSE_INTERRUPTING(
            "fuse-interrupting",
            "Ohm’s law against the breaking capacity of the family; ABYC E-11 asks the same",
            Standing.SEEN),
    FITTED_UNKNOWN("fitted-unknown", "common practice: as-built records name what is there", Standing.COMMON_PRACTICE),
    FUSE_FAMILY_UNKNOWN(
            "fuse-family-unknown",
            "Ohm’s law against the breaking capacity of the family; ABYC E-11 asks the same",
            Standing.SEEN),
    FUSE_VOLTAGE("fuse-voltage", "table of fuses: the family is not made for this voltage", Standing.FROM_MEMORY),
    FUSE_VOLTAGE_UNWRITTEN(
            "fuse-voltage-unwritten",
            "table of fuses and table of batteries: usual voltages of charging",
            Standing.FROM_MEMORY),
    FUSE_OVER_CABLE("fuse-over-cable", "ISO 13297:2020 13.1.5; 33 CFR 183.455(c)", Standing.SEEN),
    FUSE_UNDER_LOAD("fuse-under-load", "80 % loading rule", Standing.SEEN),
    FUSE_SELECTIVITY(
            "fuse-selectivity", "IEC 60269-1 for gG; twice the rating is common practice", Standing.FROM_MEMORY),
    STRING_FUSES("string-fuses", "common practice: a fuse in each string of a bank", Standing.COMMON_PRACTICE),
    CABLE_AMPACITY("cable-ampacity", "rulebook: ampacity table", Standing.FROM_MEMORY),
    PARALLEL_UNEVEN(
            "parallel-uneven",
            "IEC 60364-5-52 523.7: of one length, size and kind; else they do not share evenly",
            Standing.FROM_MEMORY),
    PARALLEL_UNPROVED(
            "parallel-unproved",
            "IEC 60364-5-52 523.7: of one length, size and kind; else they do not share evenly",
            Standing.FROM_MEMORY),
    PARALLEL_THIN("parallel-thin", "rulebook: least size of conductors in parallel", Standing.FROM_MEMORY),
    BUNDLE_UNWRITTEN("bundle-unwritten", "rulebook: factor for conductors bundled together", Standing.FROM_MEMORY),
    SUPPLY_DROP("supply-drop", "ISO 10133 4.7, ABYC E-11: 3 % where safety hangs on it, 10 % at most", Standing.SEEN),
    ALARM_EARLY("alarm-early", "constant-power working point", Standing.COMPUTED),
    CUT_OUT_EARLY("cut-out-early", "constant-power working point", Standing.COMPUTED),
    APPLIANCE_TOO_LARGE("appliance-too-large", "continuous rating of the inverter", Standing.COMMON_PRACTICE),
    START_TOO_LARGE("start-too-large", "short-time rating of the inverter", Standing.COMMON_PRACTICE),
    START_TOO_LONG("start-too-long", "short-time rating of the inverter", Standing.COMMON_PRACTICE),
    CUTS_OUT_WHEN_FULL("cuts-out-when-full", "constant-power working point", Standing.COMPUTED),
    TOGETHER_TOO_LARGE("together-too-large", "continuous rating of the inverter", Standing.COMMON_PRACTICE),
    TOGETHER_CUTS_OUT("together-cuts-out", "constant-power working point", Standing.COMPUTED),
    TOGETHER_START_LONG("together-start-long", "short-time rating of the inverter", Standing.COMMON_PRACTICE),
    WISHED_TIME("wished-time", "the running time with the battery old and cold", Standing.COMPUTED),
    INVERTER_DERATED(
            "inverter-derated",
            "derating of inverters in heat: the maker’s, or 2 % for each kelvin",
            Standing.FROM_MEMORY),
    LINKS_UNKNOWN("links-unknown", "Kirchhoff’s laws", Standing.SEEN),
    TAKE_OFF_UNEVEN("take-off-uneven", "Kirchhoff’s laws; 110 % is common practice", Standing.COMMON_PRACTICE),
    STRINGS_MANY(
            "strings-many", "common practice: at most three or four strings of lead-acid", Standing.COMMON_PRACTICE),
    SHORT_CIRCUIT_UNLIKELY(
            "short-circuit-unlikely",
            "Ohm’s law; that a third or three times is worth another look is common practice",
            Standing.COMMON_PRACTICE),
    LEFT_ON_TAKE_OVER("left-on-take-over", "common practice", Standing.COMMON_PRACTICE),
    HEATING_LEFT_ON(
            "heating-left-on", "common practice: more than a tenth of the bank an hour", Standing.COMMON_PRACTICE),
    COLD_CHARGE(
            "cold-charge",
            "lithium iron phosphate makers’ limit; 2 K of margin is common practice",
            Standing.COMMON_PRACTICE),
    ALTERNATOR_HEAT(
            "alternator-heat",
            "common practice: at most 60 % of its rating without a temperature sensor",
            Standing.COMMON_PRACTICE),
    ALTERNATOR_LIMIT_UNKNOWN(
            "alternator-limit-unknown",
            "an alternator is held to a voltage, not to a current (textbook)",
            Standing.FROM_MEMORY),
    ALTERNATOR_UNKNOWN(
            "alternator-unknown",
            "common practice: at most 60 % of its rating without a temperature sensor",
            Standing.COMMON_PRACTICE),
    ALTERNATOR_RATING_UNWRITTEN(
            "alternator-rating-unwritten",
            "common practice: at most 60 % of its rating without a temperature sensor",
            Standing.COMMON_PRACTICE),
    CHARGER_BEATEN("charger-beaten", "Kirchhoff’s current law", Standing.SEEN),
    CHARGE_COLD(
            "charge-cold",
            "table of charging rates by temperature: usual limits of lithium iron phosphate cells",
            Standing.FROM_MEMORY),
    CHARGE_CABLE(
            "charge-cable",
            "rulebook: ampacity table, insulation of 70 °C or, by the American rules, 75 °C; ISO 13297 and ABYC E-11 ask for"
                    + " no fuse at the end of a source that gives no more than its conductor bears",
            Standing.FROM_MEMORY),
    CHARGE_UNJUDGED("charge-unjudged", "rulebook: ampacity table", Standing.FROM_MEMORY),
    CHARGE_DROP(
            "charge-drop",
            "common practice: 3 % of the system voltage for charging; rulebook: most drop of any feed",
            Standing.COMMON_PRACTICE),
    CHARGE_CABLE_ENGINE(
            "charge-cable-engine", "rulebook: ampacity table and its factor for engine spaces", Standing.FROM_MEMORY),
    CHARGE_FUSE(
            "charge-fuse",
            "ISO 13297; ABYC E-11: over-current protection at every source of a conductor, the bank included",
            Standing.FROM_MEMORY),
    CHARGE_FUSE_LARGE("charge-fuse-large", "ISO 13297:2020 13.1.5; 33 CFR 183.455(c)", Standing.SEEN),
    CHARGE_FUSE_SMALL("charge-fuse-small", "80 % loading rule", Standing.SEEN),
    CHARGE_CURRENT("charge-current", "usual charge limit of the chemistry, or the maker’s", Standing.FROM_MEMORY),
    CHARGE_VOLTAGE_HIGH(
            "charge-voltage-high", "table of batteries: highest usual voltage of charging", Standing.FROM_MEMORY),
    BLOCKS_MIXED(
            "blocks-mixed",
            "common practice: one make, type and age in a bank; AS/NZS 3001.2 asks the same",
            Standing.FROM_MEMORY),
    LINKS_UNEQUAL("links-unequal", "Kirchhoff’s laws; common practice", Standing.COMMON_PRACTICE),
    PROTECTION_SILENT(
            "protection-silent",
            "common practice: an alternator that loses its battery under load is damaged",
            Standing.COMMON_PRACTICE),
    PROTECTION_CURRENT(
            "protection-current", "common practice: 80 % of the protection’s limit", Standing.COMMON_PRACTICE),
    DISCHARGE_RATE(
            "discharge-rate", "table of batteries: largest usual lasting discharge current", Standing.FROM_MEMORY),
    RESERVE_LOW(
            "reserve-low", "common practice: lead-acid is not run below half of its charge", Standing.COMMON_PRACTICE),
    PROTECTION_PEAK(
            "protection-peak", "short-time limit of the protection; Kirchhoff’s current law", Standing.COMPUTED),
    PROTECTION_CUT_OUT(
            "protection-cut-out", "the inverter must switch off before the battery does", Standing.COMMON_PRACTICE),
    PROTECTION_CASCADE(
            "protection-cascade",
            "common practice: the other blocks must bear the load when one opens",
            Standing.COMMON_PRACTICE),
    VENTILATION("ventilation", "IEC 62485-2", Standing.SEEN),
    VENT_FAN("vent-fan", "IEC 62485-2", Standing.SEEN),
    VENT_PLACES("vent-places", "IEC 62485-2: one opening low, one high", Standing.FROM_MEMORY),
    VENT_INSIDE("vent-inside", "IEC 62485-2: to the open air", Standing.FROM_MEMORY),
    VENT_OUTSIDE_UNKNOWN("vent-outside-unknown", "IEC 62485-2: to the open air", Standing.FROM_MEMORY),
    VENTILATION_UNKNOWN("ventilation-unknown", "IEC 62485-2", Standing.SEEN),
    RCD_MISSING("rcd-missing", "IEC 60364-4-41 415.1", Standing.SEEN),
    RCD_MISSING_SHORE("rcd-missing-shore", "IEC 60364-4-41 415.1; IEC 60364-7-709", Standing.SEEN),
    RCD_MISSING_GENERATOR("rcd-missing-generator", "IEC 60364-4-41 415.1", Standing.SEEN),
    RCD_ON_GENERATOR(
            "rcd-on-generator",
            "IEC 60364-4-41 415.1; an RCD in the shore feed sees nothing of what the generator feeds past it",
            Standing.COMPUTED),
    RCD_UPSTREAM(
            "rcd-upstream",
            "IEC 60364-4-41; an RCD before the inverter sees nothing of what flows behind it",
            Standing.COMPUTED),
    RCD_RATING("rcd-rating", "IEC 60364-4-41 415.1", Standing.SEEN),
    RCD_TYPE("rcd-type", "IEC 60364-5-53: type AC does not see pulsating direct current", Standing.SEEN),
    NEUTRAL_BOND_MISSING("neutral-bond-missing", "ISO 13297:2020 6.8", Standing.SEEN),
    NEUTRAL_BOND_ALWAYS("neutral-bond-always", "ISO 13297:2020 6.8", Standing.SEEN),
    GENERATOR_BOND("generator-bond", "ISO 13297:2020 6.8", Standing.SEEN),
    GENERATOR_BOND_UNKNOWN("generator-bond-unknown", "ISO 13297:2020 6.8", Standing.SEEN),
    TRANSFORMER_BOND("transformer-bond", "ISO 13297:2020 6.8; ABYC E-11 from memory", Standing.SEEN),
    TRANSFORMER_EARTH(
            "transformer-earth",
            "ISO 13297; ABYC E-11: the shore’s earth ends at an isolating transformer",
            Standing.FROM_MEMORY),
    TRANSFORMER_UNKNOWN("transformer-unknown", "ISO 13297:2020 6.8; ABYC E-11 from memory", Standing.SEEN),
    NEUTRAL_BUS_COMMON(
            "neutral-bus-common",
            "common practice: until the bond relay opens, a common bus ties shore neutral to earth",
            Standing.COMMON_PRACTICE),
    NEUTRAL_BOND_UNKNOWN("neutral-bond-unknown", "ISO 13297:2020 6.8", Standing.SEEN),
    BREAKER_UNJUDGED(
            "breaker-unjudged", "table of AC cables, or the rulebook’s for American sizes", Standing.FROM_MEMORY),
    CIRCUIT_UNJUDGED("circuit-unjudged", "table of AC cables", Standing.FROM_MEMORY),
    CIRCUIT_LOAD("circuit-load", "IEC 60364-4-43 433.1: load, breaker, cable in this order", Standing.FROM_MEMORY),
    RELIED_ON_PAST(
            "relied-on-past", "common practice: a second way for what somebody depends on", Standing.COMMON_PRACTICE),
    CIRCUITS_UNKNOWN("circuits-unknown", "IEC 60364-4-41 415.1", Standing.SEEN),
    SOURCE_MISSING(
            "source-missing", "common practice: what feeds a circuit is described, too", Standing.COMMON_PRACTICE),
    BREAKER_CABLE_LAID(
            "breaker-cable-laid",
            "IEC 60364-5-52 Tables B.52.2 and B.52.3: methods A2, B2 and C",
            Standing.FROM_MEMORY),
    INLET_OVER_CABLE(
            "inlet-over-cable",
            "ISO 13297:2020 13.1.5; the supply ashore may give what the inlet bears",
            Standing.FROM_MEMORY),
    BREAKER_OVER_CABLE(
            "breaker-over-cable",
            "ISO 13297:2020 13.1.5; IEC 60364-5-52, American sizes by the rulebook",
            Standing.FROM_MEMORY),
    BREAKER_OVER_INLET("breaker-over-inlet", "IEC 60309-2: rating of the inlet", Standing.COMMON_PRACTICE),
    BREAKER_ON_BATTERY(
            "breaker-on-battery",
            "IEC 60898-1 trip bands; fault current of inverters from memory",
            Standing.FROM_MEMORY),
    EARTH_THIN(
            "earth-thin",
            "IEC 60364-5-54 Table 54.2; ABYC E-11 older text for direct current; IEC 60364-7-721",
            Standing.SEEN),
    EARTH_HOT("earth-hot", "IEC 60364-5-54 543.1.2; 0.1 s is common practice", Standing.COMMON_PRACTICE),
    EARTH_UNJUDGED("earth-unjudged", "IEC 60364-5-54", Standing.SEEN),
    EARTH_CASE_UNKNOWN("earth-case-unknown", "IEC 60364-4-41 411.3.1", Standing.FROM_MEMORY),
    EARTH_BOND_UNKNOWN("earth-bond-unknown", "IEC 60364-4-41 411.3.1.2; IEC 60364-7-721", Standing.FROM_MEMORY),
    METAL_HULL_UNKNOWN("metal-hull-unknown", "IEC 60364-4-41 411.3.1.2; ISO 13297", Standing.FROM_MEMORY),
    LEAKAGE_BUDGET("leakage-budget", "common practice: at most 30 % of the RCD’s rating", Standing.COMMON_PRACTICE),
    CHANGEOVER_INTERLOCK("changeover-interlock", "IEC 60364-5-55 551.6", Standing.FROM_MEMORY),
    CHANGEOVER_UNKNOWN("changeover-unknown", "IEC 60364-5-55 551.6", Standing.FROM_MEMORY),
    CHANGEOVER_MISSING("changeover-missing", "IEC 60364-5-55 551.6", Standing.FROM_MEMORY),
    GENERATOR_INTERLOCK("generator-interlock", "IEC 60364-5-55 551.6", Standing.FROM_MEMORY),
    GENERATOR_INTERLOCK_UNKNOWN("generator-interlock-unknown", "IEC 60364-5-55 551.6", Standing.FROM_MEMORY),
    ENGINE_SPACE_INSULATION("engine-space-insulation", "33 CFR 183.435: 75 °C in engine spaces", Standing.FROM_MEMORY),
    AC_DC_TOGETHER("ac-dc-together", "ISO 10133:2012 7: AC and DC conductors apart", Standing.SEEN),
    BLACK_NEGATIVE(
            "black-negative",
            "common practice: yellow for the DC negative where AC conductors are black",
            Standing.COMMON_PRACTICE),
    INVERTER_FAR(
            "inverter-far",
            "common practice: 1.5 m at 12 V, in proportion above, for more than 1 kW",
            Standing.COMMON_PRACTICE),
    IGNITION_PROTECTION(
            "ignition-protection", "33 CFR 183.410; ISO 8846: protected against igniting gases", Standing.FROM_MEMORY),
    PETROL_UNKNOWN("petrol-unknown", "33 CFR 183.410; ISO 10133", Standing.FROM_MEMORY),
    IGNITION_UNKNOWN("ignition-unknown", "33 CFR 183.410; ISO 8846", Standing.FROM_MEMORY),
    ISOLATOR_MISSING("isolator-missing", "ISO 13297 (battery isolator)", Standing.FROM_MEMORY),
    ISOLATOR_TOOL("isolator-tool", "common practice: reachable without tools", Standing.COMMON_PRACTICE),
    ISOLATOR_RATING(
            "isolator-rating",
            "ISO 13297; ABYC E-11: a battery switch bears the largest lasting current that passes it",
            Standing.FROM_MEMORY),
    ISOLATOR_RATING_UNKNOWN(
            "isolator-rating-unknown",
            "ISO 13297; ABYC E-11: a battery switch bears the largest lasting current that passes it",
            Standing.FROM_MEMORY),
    BRANCH_CUTS_OUT("branch-cuts-out", "Ohm’s and Kirchhoff’s laws", Standing.COMPUTED),
    BRANCH_ALARMS("branch-alarms", "Ohm’s and Kirchhoff’s laws", Standing.COMPUTED),
    BRANCH_AVERAGE("branch-average", "Kirchhoff’s current law", Standing.SEEN),
    WAY_UNKNOWN("way-unknown", "Kirchhoff’s current law; ISO 13297; ABYC E-11", Standing.FROM_MEMORY),
    SUPPLY_ONE_POLE("supply-one-pole", "Kirchhoff’s current law", Standing.SEEN),
    WAY_ONE_POLE("way-one-pole", "Kirchhoff’s current law", Standing.SEEN),
    GENERATOR_PASS_THROUGH(
            "generator-pass-through",
            "ABYC E-11, A-31: the changeover is protected at its rating",
            Standing.FROM_MEMORY),
    SHORE_VOLTAGE("shore-voltage", "IEC 60038: within 10 % of the nominal voltage", Standing.FROM_MEMORY),
    PASS_THROUGH("pass-through", "ABYC E-11, A-31: the changeover is protected at its rating", Standing.FROM_MEMORY),
    PASS_THROUGH_UNKNOWN(
            "pass-through-unknown", "ABYC E-11, A-31: the changeover is protected at its rating", Standing.FROM_MEMORY),
    GALVANIC_ISOLATOR(
            "galvanic-isolator",
            "ISO 13297: isolator or isolating transformer against galvanic currents",
            Standing.FROM_MEMORY),
    SEARCH_MODE(
            "search-mode",
            "common practice: in load search it can read dead and come alive when touched",
            Standing.COMMON_PRACTICE),
    SOURCE_LOOP("source-loop", "an inverter cannot charge its own battery", Standing.COMPUTED),
    SHORE_NEARLY_FULL(
            "shore-nearly-full", "common practice: at most 80 % of a supply for hours", Standing.COMMON_PRACTICE),
    SHORE_OVERLOAD(
            "shore-overload",
            "definition of power and power factor; the charger’s efficiency, unwritten, is common practice",
            Standing.COMPUTED),
    SHORE_RETURN("shore-return", "definition of power; one heater that was on is common practice", Standing.COMPUTED),
    GENERATOR_SMALL("generator-small", "definition of power and power factor", Standing.COMPUTED),
    GENERATOR_BEYOND("generator-beyond", "short-time power of the set", Standing.COMMON_PRACTICE),
    GENERATOR_START("generator-start", "short-time power of the set", Standing.COMMON_PRACTICE),
    MUST_NOT_FAIL(
            "must-not-fail",
            "the running time with the battery old and cold; that somebody depends on it, the job says",
            Standing.COMPUTED),
    DAY_CUT_OUT("day-cut-out", "the day’s course, own model", Standing.COMPUTED),
    SHORE_BREAKER_DISTANCE_UNKNOWN(
            "shore-breaker-distance-unknown",
            "rulebook: longest conductor from inlet to breaker",
            Standing.FROM_MEMORY),
    SHORE_CABLE_UNKNOWN("shore-cable-unknown", "table of AC cables", Standing.FROM_MEMORY),
    SHORE_BREAKER_UNKNOWN(
            "shore-breaker-unknown", "ISO 13297:2020 13.2.2; ABYC E-11 and IEC 60364-7-721 from memory", Standing.SEEN),
    SHORE_BREAKER_DISTANCE("shore-breaker-distance", "ISO 13297:2020 13.2.2; ABYC E-11 from memory", Standing.SEEN),
    RCD_NOT_TESTED("rcd-not-tested", "IEC 60364-6; on each source, common practice", Standing.COMMON_PRACTICE),
    RCD_SLOW("rcd-slow", "IEC 61008-1", Standing.SEEN),
    INLET_NOT_TESTED("inlet-not-tested", "IEC 60364-5-55 551", Standing.FROM_MEMORY),
    INLET_LIVE("inlet-live", "IEC 60364-5-55 551; limit of 5 V from memory", Standing.FROM_MEMORY),
    INSULATION_LOW("insulation-low", "IEC 60364-6 Table 6.1", Standing.SEEN),
    DROP_UNEXPECTED(
            "drop-unexpected",
            "common practice: half to one and a half times the prediction",
            Standing.COMMON_PRACTICE),
    DROP_NOT_TESTED(
            "drop-not-tested",
            "common practice: measured at a stated load at handover, so that a later visit can compare",
            Standing.COMMON_PRACTICE),
    JOINT_HIGH("joint-high", "common practice: some 0.1 mΩ a joint; table of tests", Standing.FROM_MEMORY),
    JOINT_HOT("joint-hot", "IEC 60947-1 Table 2, of which 50 K is common practice", Standing.FROM_MEMORY),
    BASELINE_MOVED(
            "baseline-moved",
            "common practice, no source: half as much again, and more than the meter blurs",
            Standing.COMMON_PRACTICE),
    TEST_FAILED("test-failed", "the test itself", Standing.COMMON_PRACTICE),
    TORQUE_MISSING("torque-missing", "common practice", Standing.COMMON_PRACTICE),
    STACK_ORDER("stack-order", "common practice: the lug lies on the terminal face", Standing.COMMON_PRACTICE),
    WING_NUTS("wing-nuts", "ABYC E-11: no wing nuts on conductors of 6 AWG and larger", Standing.FROM_MEMORY),
    LUGS_CROWDED("lugs-crowded", "ABYC E-11: at most four conductors on a terminal stud", Standing.FROM_MEMORY),
    LUG_ORDER("lug-order", "common practice: the largest lug lies on the terminal face", Standing.COMMON_PRACTICE),
    ONE_POLE_BREAKER(
            "one-pole-breaker",
            "IEC 60364-7-721: double-pole breakers in caravans; ISO 13297 for craft that meet reversed polarity; ABYC E-11 lets one pole do where a lamp shows it",
            Standing.FROM_MEMORY),
    NEUTRAL_TO_CASE("neutral-to-case", "ISO 13297:2020 6.8: neutral is earthed at the source only", Standing.SEEN),
    MICROWAVE_INPUT(
            "microwave-input",
            "common practice: 1 kW and less is mostly what it gives, not its input",
            Standing.COMMON_PRACTICE),
    POLARITY_NOT_TESTED("polarity-not-tested", "IEC 60364-6 6.4.3: polarity", Standing.FROM_MEMORY),
    EARTH_NOT_TESTED(
            "earth-not-tested", "IEC 60364-6 6.4.3: continuity of protective conductors", Standing.FROM_MEMORY),
    INSULATION_NOT_TESTED("insulation-not-tested", "IEC 60364-6 Table 6.1", Standing.SEEN),
    AC_AFTER_DC(
            "ac-after-dc",
            "common practice: AC finished and proved dead before the battery is connected",
            Standing.COMMON_PRACTICE),
    SHORE_LOSS_NOT_REHEARSED("shore-loss-not-rehearsed", "common practice", Standing.COMMON_PRACTICE),
    BYPASS_NOT_OPERATED("bypass-not-operated", "common practice", Standing.COMMON_PRACTICE),
    LEAKAGE_MEASURED(
            "leakage-measured", "IEC 60364-5-53 531.3.2: at most 30 % of the RCD’s rating", Standing.FROM_MEMORY),
    MEASUREMENT_DUE(
            "measurement-due",
            "common practice: what a figure or a limit hangs on is measured, not told",
            Standing.COMMON_PRACTICE),
    SERIAL_MISSING("serial-missing", "common practice", Standing.COMMON_PRACTICE),
    IDLE_DRAIN("idle-drain", "common practice: a tenth of the usable charge a day", Standing.COMMON_PRACTICE),
    HEATING_ON_BATTERY(
            "heating-on-battery", "common practice: a quarter of the bank for one use", Standing.COMMON_PRACTICE),
    EFFICIENCIES_DISAGREE("efficiencies-disagree", "three-term loss model, own derivation", Standing.COMPUTED),
    WAVE_MODIFIED("wave-modified", "common practice", Standing.COMMON_PRACTICE),
    MICROWAVE_POWER(
            "microwave-power", "common practice: input is cooking power / 0.6 to 0.7", Standing.COMMON_PRACTICE),
    MAINS_MISMATCH("mains-mismatch", "the appliance’s plate", Standing.COMMON_PRACTICE),
    DEVIATION_UNKNOWN("deviation-unknown", "the list of checks", Standing.COMMON_PRACTICE),
    DEVIATION_REFUSED("deviation-refused", "a finding that can kill is never accepted away", Standing.COMMON_PRACTICE);

    private final String id;
    private final String source;
    private final Standing standing;

    Check(String id, String source, Standing standing) {
        this.id = id;
        this.source = source;
        this.standing = standing;
    }

    /** The stable name, as a deviation writes it. */
    public String id() {
        return id;
    }

    @Override
    public String key() {
        return "check." + id;
    }

    /** Key of what to do about it. */
    public MessageKey remedy() {
        return () -> key() + ".remedy";
    }

    /** Key of what to do about it where none of what {@link #remedy()} would name does. */
    MessageKey remedyIfNoneDoes() {
        return () -> key() + ".remedy-if-none-does";
    }

    public Citation citation() {
        return new Citation(source, standing);
    }
}
