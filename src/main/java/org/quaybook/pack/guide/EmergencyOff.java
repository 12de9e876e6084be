package org.quaybook.pack.guide;

import java.util.List;
import org.quaybook.job.ChargeKind;

/**
 * What is switched off when somebody is in danger, in order: every source that can keep the sockets live. What turns
 * stops first, because an alternator that loses its battery makes a voltage surge; the shore power goes last, because an
 * inverter that still has its battery would take over. Common practice, no source.
 */
final class EmergencyOff {

    private final Briefing brief;

    EmergencyOff(Briefing brief) {
        this.brief = brief;
    }

    List<String> steps() {
        Equipment has = brief.has();
        boolean engine = has.chargedBy(ChargeKind.ALTERNATOR);
        Lines steps = brief.lines("off")
                .sayIf(engine && has.generator(), "engine-generator")
                .sayIf(engine && !has.generator(), "engine")
                .sayIf(!engine && has.generator(), "generator");
        List<String> switches = brief.names().batterySwitches();
        switches.forEach(one -> steps.say("switch", one));
        return steps.sayIf(switches.isEmpty(), "inverter")
                .sayIf(has.shore(), "post", brief.names().post())
                .list();
    }
}
