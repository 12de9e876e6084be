package org.quaybook.pack.pictures;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.quaybook.checks.Assessment;
import org.quaybook.render.InlineSvg;
import org.quaybook.text.Words;

/** All pictures of a handover pack, each as one SVG that print and web share. */
public final class Pictures {

    /** 165 mm in points of an A5 page: its text without a heading. */
    private static final double TALLEST = 467;

    private Pictures() {}

    /**
     * The pictures of a job by their names; one that the job has no matter for is left out. Each has a title and a
     * description in the reader's language; their ids are unique in a page that shows each picture once.
     *
     * @param assessment the job with its figures
     * @param words the reader's language
     * @param look the colours
     * @throws org.quaybook.render.RenderException if a name in the job has a character that no font can print
     */
    public static Map<String, InlineSvg> of(Assessment assessment, Words words, Look look) {
        Subject subject = new Subject(assessment, words, look);
        Parts parts = new Parts(subject);
        Map<String, InlineSvg> pictures = new TreeMap<>();
        put(pictures, "system", Optional.of(new SystemPicture(subject, parts).svg("picture-system")));
        BatterySide battery = new BatterySide(subject, parts, "picture-battery-side");
        put(pictures, "batterySide", Optional.of(battery.svg()));
        Set<String> symbols = new TreeSet<>(battery.symbols());
        symbols.addAll(mains(subject, parts, pictures));
        put(pictures, "symbols", Optional.of(new SymbolKey(subject, symbols).svg("picture-symbols")));
        List<String> bars = new RunBars(subject).svgs(TALLEST, i -> "picture-" + numbered("run", i));
        for (int i = 0; i < bars.size(); i++) {
            put(pictures, numbered("run", i), Optional.of(bars.get(i)));
        }
        put(pictures, "running", new RunningVolts(subject).svg("picture-running"));
        put(pictures, "rest", Optional.of(new RestVolts(subject).svg("picture-rest")));
        put(pictures, "day", Optional.of(new DayBalance(subject).svg("picture-day")));
        return pictures;
    }

    /** In one picture if a page of A5 has room for it, else in two; gives the symbols. */
    private static Set<String> mains(Subject subject, Parts parts, Map<String, InlineSvg> pictures) {
        MainsSide whole = new MainsSide(subject, parts, "picture-mains-side");
        String svg = whole.svg();
        if (whole.height() <= TALLEST) {
            put(pictures, "mainsSide", Optional.of(svg));
        } else {
            put(pictures, "mainsSide", Optional.of(new MainsSide(subject, parts, "picture-mains-side").sources()));
            put(pictures, "circuits", Optional.of(new MainsSide(subject, parts, "picture-circuits").circuits()));
        }
        return whole.symbols();
    }

    /** The name of one of several pictures of a kind: run, run-2, run-3. */
    private static String numbered(String name, int place) {
        return place == 0 ? name : name + "-" + (place + 1);
    }

    private static void put(Map<String, InlineSvg> pictures, String name, Optional<String> svg) {
        svg.ifPresent(text -> pictures.put(name, InlineSvg.of(text, name)));
    }
}
