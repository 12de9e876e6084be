package org.quaybook.figures;

import java.util.List;
import java.util.stream.Stream;
import org.quaybook.job.Appliance;
import org.quaybook.job.Source;
import org.quaybook.quantity.Power;

/** An appliance as shore power or a generator meets it. */
public sealed interface MainsLoad permits ApplianceFigures, PastInverterFigures {

    Appliance appliance();

    /** What the keys of its figures begin with. */
    String key();

    /** Its input while it works. */
    Figure<Power> power();

    /** Its input while it starts. */
    Figure<Power> startPower();

    /** What a source can feed: all that hangs on the inverter, through its changeover, and what the source feeds past it. */
    static List<MainsLoad> on(Source source, List<ApplianceFigures> onInverter, List<PastInverterFigures> past) {
        return Stream.<MainsLoad>concat(onInverter.stream(), past.stream().filter(it -> it.isOn(source)))
                .toList();
    }
}
