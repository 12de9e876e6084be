package org.quaybook.figures;

import java.util.Locale;
import org.quaybook.diag.MessageKey;
import org.quaybook.reference.Citation.Standing;

/** Why a value was taken that neither the job states nor a table holds: its source, or the words that it has none. */
public enum Reason implements MessageKey {
    RATED_HOURS(Standing.COMMON_PRACTICE),
    WORN_HEALTH(Standing.FROM_MEMORY),
    WORN_RESISTANCE(Standing.COMMON_PRACTICE),
    BLOCKS_WHEN_NEW(Standing.SEEN),
    COLD_RESISTANCE(Standing.FROM_MEMORY),
    COLD_RESISTANCE_OF_LITHIUM(Standing.FROM_MEMORY),
    FAULT_RESISTANCE(Standing.FROM_MEMORY),
    JOINT(Standing.COMMON_PRACTICE),
    JOINTS_PER_RUN(Standing.COMMON_PRACTICE),
    AIR(Standing.COMPUTED),
    LEAST_CONDUCTOR(Standing.COMPUTED),
    WHOLE_CURRENT(Standing.SEEN),
    STRINGS_OF_JOB(Standing.COMPUTED),
    AT_THE_TERMINAL(Standing.COMMON_PRACTICE),
    POSITIVE_OF_JOB(Standing.COMPUTED),
    TRIP_BANDS(Standing.FROM_MEMORY),
    COOLS_WORST(Standing.COMMON_PRACTICE),
    LEAKAGE_SHARE(Standing.COMMON_PRACTICE),
    TOUCH_VOLTAGE(Standing.FROM_MEMORY),
    CASE_FAULT(Standing.COMMON_PRACTICE),
    PVC(Standing.COMMON_PRACTICE),
    CHARGE_INSULATION(Standing.COMMON_PRACTICE),
    PROTECTION_LOAD(Standing.COMMON_PRACTICE),
    ALTERNATOR_SHARE(Standing.COMMON_PRACTICE),
    CHARGE_DROP(Standing.COMMON_PRACTICE),
    JOINTS_PER_LINK(Standing.COMMON_PRACTICE),
    LINK_TEMPERATURE(Standing.COMMON_PRACTICE),
    BETTER_TAKE_OFF(Standing.COMPUTED),
    WORST_TAKE_OFF(Standing.COMMON_PRACTICE),
    DERATING(Standing.FROM_MEMORY),
    RECALCULATED(Standing.COMPUTED),
    ROW(Standing.COMPUTED),
    RUN_END(Standing.COMPUTED),
    CHARGED_THROUGH(Standing.SEEN),
    SHARED_RUN(Standing.SEEN),
    NO_SHARED_RUN(Standing.SEEN),
    SAME_KIND(Standing.COMPUTED),
    NO_PEUKERT(Standing.COMMON_PRACTICE),
    NOT_WRITTEN(Standing.COMMON_PRACTICE),
    CHARGER(Standing.COMMON_PRACTICE),
    MOVED(Standing.COMMON_PRACTICE),
    METER_BLUR(Standing.COMMON_PRACTICE),
    INSULATION_CEILING(Standing.COMMON_PRACTICE),
    USUAL_LEAKAGE(Standing.COMMON_PRACTICE);

    private final Standing standing;

    Reason(Standing standing) {
        this.standing = standing;
    }

    @Override
    public String key() {
        return "reason." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How far the source can be trusted. */
    public Standing standing() {
        return standing;
    }
}
