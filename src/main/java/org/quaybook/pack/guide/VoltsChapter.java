package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.BankFigures.RestRow;
import org.quaybook.figures.Input;
import org.quaybook.job.ChargeKind;
import org.quaybook.record.DirectDraw;
import org.quaybook.record.EnergySource;
import org.quaybook.record.Rows;
import org.quaybook.reference.Citation;

/** How to read the battery's voltage, and what it can tell. */
final class VoltsChapter {

    /** The flat part of a lithium iron phosphate curve, as everybody sees it in the table. */
    private static final int FLAT_FROM = 90;

    private static final int FLAT_TO = 30;

    private final Briefing brief;

    VoltsChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("read", read())
                .put("honest", honest())
                .put("reserve", reserve())
                .put("caption", caption())
                .map();
    }

    private List<String> read() {
        List<String> direct = new DirectDraw(brief.figures().absence().draw(), brief.words()).running();
        return brief.lines("volts.read")
                .sayIf(direct.isEmpty(), "off")
                .sayIf(!direct.isEmpty(), "off-direct", direct)
                .sayIf(goesOn(ChargeKind.SOLAR, EnergySource.SOLAR), "solar")
                .sayIf(goesOn(ChargeKind.WIND, EnergySource.WIND), "wind")
                .say(brief.has().leadAcid() ? "wait.lead" : "wait.lithium")
                .say("table")
                .list();
    }

    /** A bank that is being charged reads too full. */
    private boolean goesOn(ChargeKind kind, EnergySource source) {
        return brief.has().chargedBy(kind) && source.isolators(brief.job()).isEmpty();
    }

    private List<String> honest() {
        if (brief.has().leadAcid()) {
            return brief.lines("volts.honest.lead")
                    .say("fair")
                    .say("false")
                    .say("age")
                    .list();
        }
        RestRow upper = row(FLAT_FROM);
        RestRow lower = row(FLAT_TO);
        return brief.lines("volts.honest.lithium")
                .say("flat")
                .say(
                        "range",
                        upper.stateOfCharge(),
                        lower.stateOfCharge(),
                        upper.rest().value(),
                        lower.rest().value())
                .say("count")
                .list();
    }

    private RestRow row(int percent) {
        return brief.figures().bank().restTable().stream()
                .filter(row -> Math.round(row.stateOfCharge().fraction() * 100) == percent)
                .findFirst()
                .orElseThrow();
    }

    private String reserve() {
        BankFigures bank = brief.figures().bank();
        return brief.words().say("guide.volts.reserve", brief.say(bank.reserve()), brief.say(bank.restAtReserve()));
    }

    /** Where the rest voltages come from; every row of a table has the same source. */
    private String caption() {
        return brief.figures().bank().restTable().get(0).rest().working().inputs().stream()
                .flatMap(input ->
                        input.origin() instanceof Input.Usual usual ? Stream.of(usual.citation()) : Stream.of())
                .findFirst()
                .map((Citation citation) -> brief.words()
                        .say("guide.volts.caption", brief.words().cited(citation.source()), citation.standing()))
                .orElse("");
    }
}
