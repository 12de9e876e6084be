package org.quaybook.pack.guide;

import java.util.List;
import org.quaybook.job.ChargeKind;
import org.quaybook.record.EnergySource;

/**
 * What is switched off when somebody is in danger: every source that can keep the sockets live, in the order of
 * {@link EnergySource}. An inverter that takes over from a source that is off goes off with the battery at the end.
 */
final class EmergencyOff {

    private final Briefing brief;
    private final SwitchSteps switches;

    EmergencyOff(Briefing brief) {
        this(brief, CardDetail.FULL);
    }

    /** The same with switches as briefly as a card has room for. */
    EmergencyOff(Briefing brief, CardDetail detail) {
        this.brief = brief;
        this.switches = new SwitchSteps(brief, detail);
    }

    List<String> steps() {
        Lines steps = brief.lines("off");
        for (EnergySource source : EnergySource.values()) {
            stop(source, steps);
        }
        return steps.list();
    }

    private void stop(EnergySource source, Lines steps) {
        Equipment has = brief.has();
        PartNames names = brief.names();
        switch (source) {
            case SHORE -> steps.sayIf(has.shore(), "post", names.post());
            case GENERATOR ->
                steps.sayIf(has.generator(), "generator", brief.words().say("term.stop.generator"));
            case ALTERNATOR -> steps.sayIf(has.chargedBy(ChargeKind.ALTERNATOR), "engine");
            case SOLAR, WIND -> switches.off(steps, source.id(), names.switchesOnlyOf(source));
            case BATTERY -> {
                switches.off(steps, source.id(), names.batterySwitches());
                steps.sayIf(names.batterySwitches().isEmpty(), "inverter");
            }
        }
    }
}
