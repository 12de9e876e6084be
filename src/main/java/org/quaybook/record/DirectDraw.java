package org.quaybook.record;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.quaybook.figures.SteadyDraw;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.text.Words;

/** Says of what runs on the battery without the inverter whether the running times count it. */
public final class DirectDraw {

    private final SteadyDraw draw;
    private final Words words;

    public DirectDraw(SteadyDraw draw, Words words) {
        this.draw = draw;
        this.words = words;
    }

    /** Whether every running time counts something that runs on the battery directly. */
    public boolean counts() {
        return !drawing().isEmpty();
    }

    /** What is counted, if it draws at all, then what is not; no line where there is nothing of the kind. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        List<String> drawing = drawing();
        if (!drawing.isEmpty()) {
            String key = draw.standing()
                            .filter(standing -> standing.value().amperes() > 0)
                            .isPresent()
                    ? "record.direct.counted-too"
                    : "record.direct.counted";
            draw.whole().ifPresent(whole -> lines.add(words.say(key, words.word(whole.stated()), drawing)));
        }
        if (!draw.uncounted().isEmpty()) {
            lines.add(words.say("record.direct.uncounted", uncounted()));
        }
        return List.copyOf(lines);
    }

    /** The names of what draws on average. */
    public List<String> drawing() {
        return names(draw.counted().stream().filter(DirectDraw::draws).toList());
    }

    /** The names of what draws on average, and of what may. */
    public List<String> running() {
        return Stream.concat(drawing().stream(), uncounted().stream()).toList();
    }

    /** The names of what is counted as if it never drew, because it does for moments only. */
    public List<String> resting() {
        return names(draw.counted().stream().filter(fuse -> !draws(fuse)).toList());
    }

    private static boolean draws(Fuse fuse) {
        return Given.maybe(fuse.average())
                .filter(average -> average.amperes() > 0)
                .isPresent();
    }

    /** The names of what no running time counts. */
    public List<String> uncounted() {
        return names(draw.uncounted());
    }

    private static List<String> names(List<Fuse> branches) {
        return branches.stream().map(Fuse::feedsOrId).toList();
    }
}
