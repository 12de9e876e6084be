package org.quaybook.pack.guide;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.quaybook.record.Rows;

/** The words that the guide uses and explains; none that this job has no use for. */
final class Glossary {

    private static final Pattern ACCENT = Pattern.compile("\\p{M}+");

    private final Briefing brief;
    private final List<Map<String, Object>> terms = new ArrayList<>();

    Glossary(Briefing brief) {
        this.brief = brief;
    }

    List<Map<String, Object>> terms() {
        var inverter = brief.figures().inverter();
        Equipment has = brief.has();
        add("ampere");
        add("ampere-hour");
        add("volt", brief.say(brief.figures().bank().nominal()));
        add("watt");
        add("watt-hour");
        add("times");
        add("alarm", brief.say(inverter.alarm()));
        addIf(has.lithium(), "protection");
        add("breaker");
        if (has.changeover()) {
            terms.add(row("changeover", brief.words().say("guide.term.changeover.means" + changeover(has))));
        }
        add("charge");
        add("cut-out", brief.say(inverter.cutOut()));
        add("fuse");
        addIf(has.galvanicIsolator(), "galvanic");
        add("record");
        add("inverter");
        addIf(!brief.job().isolators().isEmpty(), "isolator");
        addIf(has.rcds(), "bond");
        add("plan-on");
        addIf(has.polarityLamp(), "polarity");
        addIf(has.rcds(), "rcd");
        add("reserve", brief.say(brief.figures().bank().reserve()));
        add("rest");
        addIf(has.shore(), "shore", brief.names().post());
        return terms.stream()
                .sorted(Comparator.comparing(row -> alphabetic(String.valueOf(row.get("term")))))
                .toList();
    }

    /** Letters without accents and capitals: the order that readers of all our languages look things up in. */
    private static String alphabetic(String term) {
        return ACCENT.matcher(Normalizer.normalize(term, Normalizer.Form.NFD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
    }

    private void addIf(boolean needed, String term, Object... arguments) {
        if (needed) {
            add(term, arguments);
        }
    }

    private void add(String term, Object... arguments) {
        terms.add(row(term, brief.words().say("guide.term." + term + ".means", arguments)));
    }

    private Map<String, Object> row(String term, String means) {
        return new Rows()
                .put("term", brief.words().say("guide.term." + term))
                .put("means", means)
                .map();
    }

    /** Between which sources it chooses, as the end of a key. */
    private static String changeover(Equipment has) {
        if (!has.shore()) {
            return has.generator() ? ".generator" : ".any";
        }
        return has.generatorFeedsSockets() ? ".any" : "";
    }
}
