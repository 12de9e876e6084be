package org.quaybook.pack.pictures;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
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
        put(pictures, "batterySide", battery.svgs(TALLEST));
        MainsSide mains = new MainsSide(subject, parts, "picture-mains-side");
        put(pictures, "mainsSide", mains.svgs(TALLEST));
        Set<String> symbols = new TreeSet<>(battery.symbols());
        symbols.addAll(mains.symbols());
        put(pictures, "symbols", Optional.of(new SymbolKey(subject, symbols).svg("picture-symbols")));
        put(pictures, "run", new RunBars(subject).svgs(TALLEST, i -> "picture-" + numbered("run", i)));
        put(pictures, "running", new RunningVolts(subject).svg("picture-running"));
        put(pictures, "rest", Optional.of(new RestVolts(subject).svg("picture-rest")));
        put(pictures, "day", Optional.of(new DayBalance(subject).svg("picture-day")));
        return pictures;
    }

    /**
     * One of a kind of picture with all that go on from it, in their order.
     *
     * @param pictures of a job
     * @param name of the kind
     * @return none if the job has no matter for it
     */
    public static List<InlineSvg> all(Map<String, InlineSvg> pictures, String name) {
        return IntStream.iterate(0, i -> pictures.containsKey(numbered(name, i)), i -> i + 1)
                .mapToObj(i -> Objects.requireNonNull(pictures.get(numbered(name, i))))
                .toList();
    }

    /** The name of one of several pictures of a kind: run, run-2, run-3. */
    private static String numbered(String name, int place) {
        return place == 0 ? name : name + "-" + (place + 1);
    }

    private static void put(Map<String, InlineSvg> pictures, String name, List<String> svgs) {
        for (int i = 0; i < svgs.size(); i++) {
            put(pictures, numbered(name, i), Optional.of(svgs.get(i)));
        }
    }

    private static void put(Map<String, InlineSvg> pictures, String name, Optional<String> svg) {
        svg.ifPresent(text -> pictures.put(name, InlineSvg.of(text, name)));
    }
}
