package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.quaybook.render.Face;

/**
 * Gives the widest column of a table up for one that needs the room: its lines become two each. A table that finds no room
 * otherwise, as that of the circuits where the words for three sources in a row are long, is then higher and not so wide.
 */
final class LabelFolding {

    private LabelFolding() {}

    /** A label whose tables are folded; empty if there is nothing to fold. */
    static Optional<LabelDesign> of(LabelDesign design) {
        if (design.form() != null) {
            return Optional.empty();
        }
        List<LabelPart> parts =
                design.parts().stream().map(LabelFolding::folded).toList();
        List<LabelDesign> apart =
                design.apart().stream().map(alone -> of(alone).orElse(alone)).toList();
        LabelDesign folded = design.showing(parts, apart);
        return folded.equals(design) ? Optional.empty() : Optional.of(folded);
    }

    private static LabelPart folded(LabelPart part) {
        if (!(part instanceof LabelPart.Grid grid)) {
            return part;
        }
        return IntStream.range(0, grid.rows().get(0).size())
                .filter(column -> column != grid.wide())
                .boxed()
                .map(column -> folded(grid, column))
                .min(Comparator.comparingDouble(LabelFolding::besideTheWide))
                .orElse(grid);
    }

    private static LabelPart.Grid folded(LabelPart.Grid grid, int column) {
        List<List<String>> rows = grid.rows().stream()
                .map(row -> {
                    List<String> cells = new ArrayList<>(row);
                    cells.set(
                            column,
                            row.get(column).lines().map(LabelFolding::line).collect(Collectors.joining("\n")));
                    return cells;
                })
                .map(List::copyOf)
                .toList();
        return new LabelPart.Grid(grid.head(), rows, grid.wide(), grid.firstStrong());
    }

    /** A line broken where its two halves differ least; as it is if it is one word. */
    private static String line(String text) {
        return IntStream.range(0, text.length())
                .filter(i -> text.charAt(i) == ' ')
                .boxed()
                .min(Comparator.comparingDouble(
                        i -> Math.max(width(text.substring(0, i)), width(text.substring(i + 1)))))
                .map(i -> text.substring(0, i) + "\n" + text.substring(i + 1))
                .orElse(text);
    }

    /** What the columns take that do not take what is left, in cap heights. */
    private static double besideTheWide(LabelPart.Grid grid) {
        return IntStream.range(0, grid.rows().get(0).size())
                .filter(column -> column != grid.wide())
                .mapToDouble(column -> column(grid, column))
                .sum();
    }

    private static double column(LabelPart.Grid grid, int column) {
        double head = grid.head().isEmpty() ? 0 : width(grid.head().get(column));
        return grid.rows().stream().mapToDouble(row -> width(row.get(column))).reduce(head, Math::max);
    }

    private static double width(String text) {
        return text.lines()
                .mapToDouble(line -> Face.REGULAR.widthOf(line, 1))
                .max()
                .orElse(0);
    }
}
