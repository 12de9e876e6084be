package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.pack.pictures.Drawing.Anchor;

/**
 * A few lines of text that stand together, broken to a width.
 *
 * @param lines each with its lettering
 */
record Note(List<Line> lines) {

    Note {
        lines = List.copyOf(lines);
    }

    record Line(Lettering lettering, String text) {}

    /** A note for a width; texts without content are left out. */
    static Builder within(double width) {
        return new Builder(width);
    }

    /** Gathers the lines of a note. */
    static final class Builder {
        private final double width;
        private final List<Line> lines = new ArrayList<>();

        private Builder(double width) {
            this.width = width;
        }

        Builder add(Lettering lettering, String text) {
            if (!text.isBlank()) {
                lettering.wrap(text, width).forEach(line -> lines.add(new Line(lettering, line)));
            }
            return this;
        }

        /** What is known of a thing: as much on each line as it holds, dots between. */
        Builder add(Lettering lettering, List<String> parts) {
            String line = "";
            for (String part : parts.stream().filter(text -> !text.isBlank()).toList()) {
                String longer = line.isEmpty() ? part : line + " · " + part;
                if (line.isEmpty() || lettering.width(longer) <= width) {
                    line = longer;
                } else {
                    add(lettering, line);
                    line = part;
                }
            }
            return add(lettering, line);
        }

        Note note() {
            return new Note(lines);
        }
    }

    /** From the top of its first capitals to the last baseline, and what hangs below it. */
    double height() {
        double height = 0;
        for (int i = 0; i < lines.size(); i++) {
            Lettering lettering = lines.get(i).lettering();
            height += i == 0 ? lettering.capitals() : lettering.leading();
        }
        return lines.isEmpty() ? 0 : height + Lettering.DESCENT;
    }

    double width() {
        return lines.stream()
                .mapToDouble(line -> line.lettering().width(line.text()))
                .max()
                .orElse(0);
    }

    /** Writes it from a top edge downwards. */
    void write(Drawing drawing, Anchor anchor, double x, double top) {
        if (lines.size() > 1) {
            drawing.hold(top, top + height());
        }
        double y = top;
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            y += i == 0 ? line.lettering().capitals() : line.lettering().leading();
            drawing.text(line.lettering(), anchor, x, y, line.text());
        }
    }

    /** Writes it with its middle at a height. */
    void writeAround(Drawing drawing, Anchor anchor, double x, double middle) {
        write(drawing, anchor, x, middle - (height() - Lettering.DESCENT) / 2);
    }
}
