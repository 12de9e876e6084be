package org.quaybook.pack.labels;

import org.quaybook.diag.MessageKey;
import org.quaybook.reference.Citation;
import org.quaybook.reference.Citation.Standing;

/**
 * Why a label is there: a sentence and the document that asks for it. The standards themselves were not read whole, so
 * "seen" means a page that quotes or retells them.
 */
public enum LabelReason implements MessageKey {
    RESPONDER("responder", "common practice", Standing.COMMON_PRACTICE),
    SWIM("swim", "common practice", Standing.COMMON_PRACTICE),
    INLET("inlet", "ABYC E-11, notice beside each shore inlet", Standing.SEEN),
    INLET_CARAVAN("inlet-caravan", "IEC 60364-7-721, notice at the inlet", Standing.SEEN),
    MAIN_SWITCH("main-switch", "IEC 60364-7-721, instructions beside the main isolator", Standing.FROM_MEMORY),
    LEAD("lead", "common practice", Standing.COMMON_PRACTICE),
    SOURCES("sources", "BS 7671 514.15; ISO 13297; ABYC A-31", Standing.FROM_MEMORY),
    CIRCUITS("circuits", "46 CFR 111.30-15; ISO 13297 asks the same", Standing.SEEN),
    BREAKERS("breakers", "46 CFR 111.30-15: the load that a breaker serves, and its setting", Standing.SEEN),
    RUNTIME("runtime", "common practice", Standing.COMMON_PRACTICE),
    LEFT_ON("left-on", "common practice", Standing.COMMON_PRACTICE),
    NEUTRAL("neutral", "ISO 13297:2020 6.8", Standing.SEEN),
    DATES("dates", "BS 7671 514.12.1", Standing.SEEN),
    RECORD("record", "common practice", Standing.COMMON_PRACTICE),
    VITAL("vital", "common practice", Standing.COMMON_PRACTICE),
    RCD("rcd", "BS 7671 514.12.2", Standing.SEEN),
    SOCKET("socket", "common practice", Standing.COMMON_PRACTICE),
    APPLIANCE("appliance", "common practice", Standing.COMMON_PRACTICE),
    GENERATOR("generator", "UK MAIB report 2/2015", Standing.SEEN),
    CUT_OUT("cut-out", "common practice", Standing.COMMON_PRACTICE),
    ISOLATOR("isolator", "Boat Safety Scheme, requirement 10", Standing.SEEN),
    ENGINE("engine", "common practice", Standing.COMMON_PRACTICE),
    BATTERY_LEAD("battery-lead", "IEC 62485-2, warning notices of battery rooms", Standing.FROM_MEMORY),
    BATTERY_LITHIUM("battery-lithium", "makers’ limits; short-circuit current by Ohm’s law", Standing.COMMON_PRACTICE),
    FUSE("fuse", "ISO 13297 (identification); the family must break the short circuit: ABYC E-11", Standing.SEEN),
    DC_CIRCUITS("dc-circuits", "46 CFR 111.30-15; ISO 13297 asks the same", Standing.SEEN),
    SWAP("swap", "AS/NZS 3001.2:2022", Standing.SEEN),
    TERMINAL("terminal", "EN 1648-2, 4.3.3", Standing.SEEN),
    CABLE("cable", "ISO 13297 (identification of conductors)", Standing.FROM_MEMORY),
    EARTH("earth", "BS 7671 514.13.1", Standing.FROM_MEMORY);

    private final String id;
    private final String source;
    private final Standing standing;

    LabelReason(String id, String source, Standing standing) {
        this.id = id;
        this.source = source;
        this.standing = standing;
    }

    @Override
    public String key() {
        return "labels.why." + id;
    }

    /** The document or practice behind it. */
    public Citation citation() {
        return new Citation(source, standing);
    }
}
