package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.quaybook.job.Given;
import org.quaybook.job.Rcd;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.record.Rows;

/** The test of the RCDs and the care calendar: what to do and how often. */
final class CareChapter {

    private final Briefing brief;

    CareChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("calendar", calendar())
                .put("rcds", rcds())
                .put("measured", brief.words().say("guide.shore.rcd." + (measured() ? "measured" : "not-measured")))
                .map();
    }

    private List<Map<String, Object>> rcds() {
        return brief.job().rcds().stream().map(this::rcd).toList();
    }

    private boolean measured() {
        return brief.job().testsAtHandover().stream().anyMatch(test -> test.test() == TestKind.RCD_TRIP);
    }

    private Map<String, Object> rcd(Rcd rcd) {
        return new Rows()
                .put("id", rcd.id())
                .put("where", rcd.where())
                .put(
                        "trips",
                        brief.job().testsAtHandover().stream()
                                .filter(test -> test.test() == TestKind.RCD_TRIP
                                        && test.of().contains(rcd.id()))
                                .map(this::trip)
                                .toList())
                .map();
    }

    private Map<String, Object> trip(TestResult test) {
        return new Rows()
                .put(
                        "source",
                        Given.maybe(test.source()).map(brief.words()::term).orElse(""))
                .put(
                        "time",
                        test.result() == null
                                ? ""
                                : test.result().known().map(brief.words()::word).orElse(""))
                .map();
    }

    /** One row an interval, shortest first; intervals without work are left out. */
    private List<Map<String, Object>> calendar() {
        List<Map<String, Object>> rows = new ArrayList<>();
        add(rows, "plug", brief.lines("care.plug").sayIf(brief.has().shore(), "lead"));
        add(rows, "week", brief.lines("care.week").sayIf(brief.has().leadAcid(), "full"));
        add(rows, "month", month());
        add(
                rows,
                "half-year",
                brief.lines("care.half-year").say("alarm").sayIf(brief.has().shore(), "rehearse"));
        add(rows, "year", year());
        return List.copyOf(rows);
    }

    private Lines month() {
        Equipment has = brief.has();
        List<String> rcds = brief.job().rcds().stream().map(Rcd::id).toList();
        return brief.lines("care.month")
                .sayIf(rcds.size() == 1, "rcd", rcds)
                .sayIf(rcds.size() > 1, "rcds", rcds)
                .say("look")
                .say("dust")
                .sayIf(has.vented(), "water")
                .sayIf(has.leadAcid(), "air")
                .sayIf(has.lithium(), "full");
    }

    private Lines year() {
        Equipment has = brief.has();
        Lines lines = brief.lines("care.year");
        Given.maybe(brief.job().bank().torque())
                .ifPresentOrElse(torque -> lines.say("joints", torque), () -> lines.say("joints.any"));
        return lines.sayIf(has.boat() && has.shore(), "anodes")
                .sayIf(has.rcds(), "rcd")
                .sayIf(has.galvanicIsolator(), "isolator")
                .sayIf(brief.job().inverter().bypass() != null, "bypass")
                .say("drop");
    }

    private void add(List<Map<String, Object>> rows, String interval, Lines work) {
        if (!work.list().isEmpty()) {
            rows.add(new Rows()
                    .put("when", brief.words().say("guide.care." + interval))
                    .put("what", work.list())
                    .map());
        }
    }
}
