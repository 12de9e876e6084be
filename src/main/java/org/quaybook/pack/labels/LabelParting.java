package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.quaybook.pack.labels.LabelSetter.Sized;
import org.quaybook.render.Label;
import org.quaybook.render.Lazy;

/**
 * Makes several labels of a list that finds no room on one: numbered, all of one width, each with the head of the table
 * over its columns, rows shared evenly and none broken. Only a label that is a list ({@link LabelDesign#bundles}) is
 * parted: what must be read whole is refused rather than cut in two.
 */
final class LabelParting {

    /** More labels than this of one list are no help at a board: larger stock is. Common practice, no source. */
    static final int MOST = 20;

    /** Rows on each that a list of still more labels is worth reading with: that of a whole sheet. Common practice, no source. */
    static final int FULL = 20;

    /** Rows that a label of a list has at least, taken over all of them: fewer are no list. Common practice, no source. */
    static final int LEAST_ROWS = 5;

    private final LabelDesign design;
    private final UnaryOperator<String> stamp;
    private final SignalLetters letters;
    private final Lazy<List<Double>> widest;

    private LabelParting(LabelDesign design, UnaryOperator<String> stamp, SignalLetters letters) {
        this.design = design;
        this.stamp = stamp;
        this.letters = letters;
        this.widest =
                new Lazy<>(() -> LabelBlocks.widest(grid(), design.reading().cap()));
    }

    /**
     * The labels of a list, in as few parts as there is room for; one in two languages has its parts in the first
     * language, then in the second, and is parted only in the one that finds no room otherwise.
     *
     * @param stamp small line at the foot that tells job and label
     * @param letters with the words of each language
     * @param rooms the ways in which a label may lie
     * @return empty if it must be read whole, or would need too many parts
     */
    static Optional<List<Sized>> of(
            LabelDesign design, UnaryOperator<String> stamp, SignalLetters letters, List<LabelRoom> rooms) {
        if (design.apart().isEmpty()) {
            return new LabelParting(design, stamp, letters).parts(rooms);
        }
        List<Sized> all = new ArrayList<>();
        for (int i = 0; i < design.apart().size(); i++) {
            LabelDesign alone = design.apart().get(i);
            SignalLetters own = letters.only(i);
            Optional<List<Sized>> one = LabelSetter.best(alone, stamp, own, rooms)
                    .map(List::of)
                    .or(() -> new LabelParting(alone, stamp, own).parts(rooms));
            if (one.isEmpty()) {
                return Optional.empty();
            }
            all.addAll(one.get());
        }
        return Optional.of(all);
    }

    private Optional<List<Sized>> parts(List<LabelRoom> rooms) {
        if (design.bundles().isEmpty()) {
            return Optional.empty();
        }
        List<Integer> rowByRow = Collections.nCopies(grid().rows().size(), 1);
        return fewest(rooms, design.bundles()).or(() -> fewest(rooms, rowByRow));
    }

    private Optional<List<Sized>> fewest(List<LabelRoom> rooms, List<Integer> bundles) {
        return rooms.stream()
                .flatMap(room -> room.widths().stream().flatMap(width -> parts(room, width, bundles).stream()))
                .min(Comparator.<List<Sized>>comparingInt(List::size).thenComparing(LabelParting::area));
    }

    private static double area(List<Sized> parts) {
        return parts.stream()
                .map(Sized::label)
                .mapToDouble(label -> label.width() * label.height())
                .sum();
    }

    /** In so few parts as there is room for at a width. */
    private Optional<List<Sized>> parts(LabelRoom room, double width, List<Integer> bundles) {
        List<Double> heights =
                LabelBlocks.rowHeights(grid(), widest.get(), design.reading().cap(), LabelSetter.inside(width));
        double between = LabelBlocks.betweenRows(design.reading().cap());
        for (int count = 2; count <= heights.size() / (count <= MOST ? LEAST_ROWS : FULL); count++) {
            List<Double> left = new ArrayList<>();
            for (int number = 1; number <= count; number++) {
                Optional<Label> oneRow = label(part(number, count, 0, 1), room, width);
                if (oneRow.isEmpty()) {
                    return Optional.empty();
                }
                left.add(room.height() - oneRow.get().height() + heights.get(0));
            }
            List<Integer> ends = EvenShares.ends(heights, between, bundles, left);
            List<Sized> parts = ends.isEmpty() ? List.of() : set(ends, room, width);
            if (!parts.isEmpty()) {
                return Optional.of(parts);
            }
        }
        return Optional.empty();
    }

    /** All parts; none if one of them is too high. */
    private List<Sized> set(List<Integer> ends, LabelRoom room, double width) {
        List<Sized> parts = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            LabelDesign part = part(i + 1, ends.size(), i == 0 ? 0 : ends.get(i - 1), ends.get(i));
            Optional<Label> label = label(part, room, width)
                    .filter(it -> room.bears(it.height()))
                    .filter(it -> width == room.widest() || room.suits(width, it.height()));
            if (label.isEmpty()) {
                return List.of();
            }
            parts.add(new Sized(part, label.get(), room.turned()));
        }
        return parts;
    }

    private Optional<Label> label(LabelDesign part, LabelRoom room, double width) {
        return LabelSetter.at(width, part, stamp.apply(part.id()), letters, room);
    }

    /** Rows of the list; what stands over it on the first label, what stands under it on the last. */
    private LabelDesign part(int number, int count, int from, int to) {
        List<LabelPart> parts = new ArrayList<>();
        boolean before = true;
        for (LabelPart part : design.parts()) {
            if (part instanceof LabelPart.Grid grid) {
                before = false;
                parts.add(new LabelPart.Section(grid, from, to, widest.get()));
            } else if (before ? number == 1 : number == count) {
                parts.add(part);
            }
        }
        String title = letters.words().get(0).say("labels.part", design.title(), number, count);
        return design.part(number, title, parts);
    }

    private LabelPart.Grid grid() {
        return design.parts().stream()
                .filter(LabelPart.Grid.class::isInstance)
                .map(LabelPart.Grid.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
