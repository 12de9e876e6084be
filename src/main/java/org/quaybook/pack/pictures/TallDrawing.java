package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.pack.pictures.Piece.Line;
import org.quaybook.pack.pictures.Piece.Part;
import org.quaybook.pack.pictures.Piece.Seam;
import org.quaybook.pack.pictures.Piece.Span;

/**
 * A diagram that is taller than a page, in as many pictures as it takes. It is cut at a seam where there is one,
 * else between its symbols and notes where the fewest conductors cross; these are drawn on with an arrow, and each picture
 * says which part it is.
 */
final class TallDrawing {

    /** Above and below a cut, for the conductors that cross it and the words beside them. */
    private static final double BAND = 14;

    /** Between a cut and the words. */
    private static final double TO_WORDS = 4;

    /** A picture is cut no higher than that share of the room: better two conductors more than half a page of nothing. */
    private static final double LEAST_FILLED = 0.5;

    /** What a cut needs to be seen as a gap. */
    private static final double LEAST_GAP = 2;

    private final Subject subject;
    private final Drawing drawing;
    private final double height;
    private final List<Line> lines;
    private final List<Span> gaps;
    private final List<Double> seams;

    /**
     * @param drawing a finished one
     * @param height of all of it
     */
    TallDrawing(Subject subject, Drawing drawing, double height) {
        this.subject = subject;
        this.drawing = drawing;
        this.height = height;
        this.lines = drawing.pieces().stream().flatMap(Piece::lines).toList();
        this.gaps = gaps(drawing.pieces(), height);
        this.seams = drawing.pieces().stream()
                .filter(Seam.class::isInstance)
                .map(seam -> ((Seam) seam).y())
                .filter(y -> gaps.stream().anyMatch(gap -> gap.top() <= y && gap.bottom() >= y))
                .toList();
    }

    private static List<Span> gaps(List<Piece> pieces, double height) {
        List<Span> held = pieces.stream()
                .flatMap(Piece::held)
                .sorted(Comparator.comparingDouble(Span::top))
                .toList();
        List<Span> gaps = new ArrayList<>();
        double free = 0;
        for (Span span : held) {
            if (span.top() - free >= LEAST_GAP) {
                gaps.add(new Span(free, span.top()));
            }
            free = Math.max(free, span.bottom());
        }
        if (height - free >= LEAST_GAP) {
            gaps.add(new Span(free, height));
        }
        return gaps;
    }

    /**
     * The pictures, from the top of the drawing down.
     *
     * @param tallest height that a page has room for
     * @param title what it shows, a few words
     * @param description what is to be seen in all of it, told with the first picture
     */
    List<String> svgs(double tallest, String title, List<String> description) {
        List<Double> cuts = cuts(tallest);
        if (cuts.isEmpty()) {
            return List.of(drawing.svg(height, title, description));
        }
        int parts = cuts.size() + 1;
        List<String> svgs = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            double top = i == 0 ? 0 : cuts.get(i - 1);
            double bottom = i == cuts.size() ? height : cuts.get(i);
            Drawing marks = new Drawing("", subject.look());
            if (i > 0) {
                words(marks, top, top - TO_WORDS, subject.say("part.from", i + 1, parts, i));
            }
            if (i < cuts.size()) {
                words(marks, bottom, bottom + BAND - TO_WORDS, subject.say("part.to", i + 1, parts, i + 2));
                crossing(bottom).forEach(x -> new Symbols(marks).tip(x, bottom + BAND, 0, 1));
            }
            svgs.add(drawing.svg(
                    new Part(top, bottom, BAND - 3),
                    marks,
                    i == 0 ? 0 : top - BAND,
                    i == cuts.size() ? bottom : bottom + BAND,
                    i + 1,
                    subject.say("part.title", title, i + 1, parts),
                    i == 0 ? description : List.of(subject.say("part.desc", i + 1, parts))));
        }
        return svgs;
    }

    private Stream<Double> crossing(double y) {
        return lines.stream().flatMap(line -> line.across(y)).distinct();
    }

    /** In the middle of the widest gap between the conductors. */
    private void words(Drawing marks, double cut, double baseline, String text) {
        double[] wires = Stream.concat(crossing(cut), Stream.of(0.0, Drawing.WIDTH))
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        int widest = 1;
        for (int i = 2; i < wires.length; i++) {
            if (wires[i] - wires[i - 1] > wires[widest] - wires[widest - 1]) {
                widest = i;
            }
        }
        marks.text(Lettering.SMALL, Anchor.MIDDLE, (wires[widest - 1] + wires[widest]) / 2, baseline, text);
    }

    private List<Double> cuts(double tallest) {
        List<Double> cuts = new ArrayList<>();
        double top = 0;
        while (height - top > tallest - (cuts.isEmpty() ? 0 : BAND)) {
            double room = tallest - (cuts.isEmpty() ? BAND : 2 * BAND);
            Optional<Double> cut = cut(top, room);
            if (cut.isEmpty()) {
                break;
            }
            cuts.add(cut.get());
            top = cut.get();
        }
        return cuts;
    }

    /** The best place below a height; the next one at all where a page's room has none. */
    private Optional<Double> cut(double top, double room) {
        double least = top + room * LEAST_FILLED;
        double limit = top + room;
        return seams.stream()
                .filter(seam -> seam >= least && seam <= limit)
                .max(Comparator.naturalOrder())
                .or(() -> gaps.stream()
                        .filter(gap -> gap.top() + LEAST_GAP / 2 <= limit)
                        .map(gap -> Math.min(limit, middle(gap)))
                        .filter(cut -> cut >= least)
                        .min(Comparator.<Double>comparingLong(
                                        cut -> crossing(cut).count())
                                .thenComparing(Comparator.reverseOrder())))
                .or(() -> gaps.stream()
                        .map(TallDrawing::middle)
                        .filter(cut -> cut > least && cut < height)
                        .findFirst());
    }

    private static double middle(Span gap) {
        return (gap.top() + gap.bottom()) / 2;
    }
}
