package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.job.Isolator;

/** Steps that turn switches on or off, in the order of the job, as fully as there is room for. */
final class SwitchSteps {

    /** So many are named whatever the room. */
    private static final int FEW = 3;

    /** More than these are not named where nobody is in danger: the step for danger names them, in type that is larger then. */
    private static final int MANY = 12;

    /** So many places are said beside the tags; more are looked up. */
    private static final int FEW_PLACES = 4;

    private final Briefing brief;
    private final CardDetail detail;

    SwitchSteps(Briefing brief, CardDetail detail) {
        this.brief = brief;
        this.detail = detail;
    }

    /**
     * Of the battery's switches when nobody is in danger.
     *
     * @param key of the step for one of them; with {@code -all} behind it, of the step for their number
     */
    void battery(Lines steps, String key) {
        List<Isolator> switches = brief.names().batterySwitches();
        boolean fits = detail == CardDetail.FULL || (detail.everywhere() && switches.size() <= MANY);
        if (!detail.whole() && switches.size() <= FEW) {
            switches.forEach(one -> steps.say(key, brief.words().say("guide.named.nowhere", one.id(), one.name())));
        } else if (fits || switches.size() <= FEW) {
            named(switches).forEach(one -> steps.say(key, one));
        } else {
            steps.say(key + "-all", switches.size());
        }
    }

    /**
     * When somebody is in danger.
     *
     * @param source what they make dead, as it stands in keys
     */
    void off(Lines steps, String source, List<Isolator> switches) {
        if (detail.places() || switches.size() <= FEW) {
            named(switches).forEach(one -> steps.say("switch", one));
        } else if (detail.tags()) {
            List<String> places =
                    switches.stream().map(Isolator::where).distinct().toList();
            if (places.size() <= FEW_PLACES) {
                steps.say("switches", switches.size(), tags(switches), places);
            } else {
                steps.say("switches-listed", switches.size(), tags(switches), list());
            }
        } else {
            steps.say("switches-counted." + source, switches.size(), list());
        }
    }

    /** Where the guide lists each switch with its place. */
    private String list() {
        return brief.words().say("guide.chapter.safety");
    }

    private List<String> named(List<Isolator> switches) {
        if (detail == CardDetail.FULL) {
            return brief.names().named(switches);
        }
        List<String> named = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= switches.size(); i++) {
            String place = switches.get(from).where();
            if (i == switches.size() || !switches.get(i).where().equals(place)) {
                List<Isolator> here = switches.subList(from, i);
                named.add(
                        here.size() == 1 && detail.whole()
                                ? brief.names().named(here.get(0))
                                : brief.words().say("guide.placed", tags(here), place));
                from = i;
            }
        }
        return named;
    }

    private static List<String> tags(List<Isolator> switches) {
        return switches.stream().map(Isolator::id).toList();
    }
}
