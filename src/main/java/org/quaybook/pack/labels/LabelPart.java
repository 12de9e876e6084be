package org.quaybook.pack.labels;

import java.util.List;
import org.quaybook.render.QrCode;
import org.quaybook.render.TextStyle.Listing;

/** One thing on a label; parts stand below each other. */
sealed interface LabelPart {

    /** How loud a text is: its face and its cap height over that of the message. */
    enum Voice {
        /** What must be seen first. */
        LARGE,
        STRONG,
        PLAIN
    }

    /** Paragraphs. */
    record Text(List<String> paragraphs, Voice voice, Listing listing) implements LabelPart {
        public Text {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    /**
     * A table.
     *
     * @param head names of the columns; empty for none
     * @param rows cells of one row each
     * @param wide index of the column that takes the room that the others leave
     * @param firstStrong whether the first column is in bold
     */
    record Grid(List<String> head, List<List<String>> rows, int wide, boolean firstStrong) implements LabelPart {
        public Grid {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Some rows of a table under its head, in columns as wide as those of the whole table.
     *
     * @param from index of the first row
     * @param to index after the last row
     * @param widest width of the widest cell of each column of the whole table, as {@link LabelBlocks#widest} has it
     */
    record Section(Grid whole, int from, int to, List<Double> widest) implements LabelPart {
        public Section {
            widest = List.copyOf(widest);
        }
    }

    /** A line to be written on by hand, with what goes there. */
    record Blank(String caption) implements LabelPart {}

    /** A code at the left with parts beside it. */
    record Scan(QrCode code, List<LabelPart> beside) implements LabelPart {
        public Scan {
            beside = List.copyOf(beside);
        }
    }

    /** A drawing at the left, so large in millimetres. */
    record Drawing(String svg, double width, double height) implements LabelPart {}

    static Text plain(String... paragraphs) {
        return new Text(List.of(paragraphs), Voice.PLAIN, Listing.NONE);
    }

    static Text strong(String... paragraphs) {
        return new Text(List.of(paragraphs), Voice.STRONG, Listing.NONE);
    }

    static Text large(String... paragraphs) {
        return new Text(List.of(paragraphs), Voice.LARGE, Listing.NONE);
    }

    static Text numbered(List<String> steps) {
        return new Text(steps, Voice.PLAIN, Listing.NUMBERS);
    }

    /** Rows of a name in bold and what it is. */
    static Grid facts(List<List<String>> rows) {
        return new Grid(List.of(), rows, 1, true);
    }
}
