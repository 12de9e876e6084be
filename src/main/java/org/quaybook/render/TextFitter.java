package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.diag.Place;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.Listing;

/** Sets text into a box at the greatest size that fits, by the measures of the font that will print it. */
public final class TextFitter {

    /** Cap heights are tried in steps of so many millimetres. */
    private static final double STEP = 0.1;
    /** Common practice, no source: space between paragraphs, in lines. */
    private static final double PARAGRAPH_GAP = 0.35;
    /** Common practice, no source: space after a bullet or number, in cap heights. */
    private static final double MARKER_GAP = 0.7;

    private static final double SLACK = 1e-6;

    private final TextBlock block;
    private final double capHeight;
    private final LineBreaker breaker;
    private final double indent;

    private TextFitter(TextBlock block, double capHeight) {
        this.block = block;
        this.capHeight = capHeight;
        Face face = block.style().face();
        this.breaker = new LineBreaker(face.typeface(), face.sizeFor(capHeight));
        this.indent = block.style().listing() == Listing.NONE
                ? 0
                : breaker.width(marker(block.paragraphs().size() - 1)) + MARKER_GAP * capHeight;
    }

    /**
     * Fits a text.
     *
     * @throws RenderException if no font has one of its characters
     */
    public static Fitting fit(TextBlock block) {
        missing(block).ifPresent(codePoint -> {
            throw RenderException.of(
                    Place.NOWHERE,
                    null,
                    RenderMessage.GLYPH_MISSING,
                    Typeface.describeMissing(codePoint, block.text()));
        });
        Box upright = block.turn().upright(block.box());
        Fitting fitting = fitUpright(new TextBlock(upright, block.paragraphs(), block.style()));
        if (fitting instanceof Fitting.Fits fits) {
            return new Fitting.Fits(
                    fits.capHeight(),
                    fits.lines().stream()
                            .map(line -> block.turn().place(line, block.box()))
                            .toList());
        }
        Fitting.DoesNotFit needs = (Fitting.DoesNotFit) fitting;
        return block.turn() == Turn.QUARTER
                ? new Fitting.DoesNotFit(/* leastWidth= */ needs.leastHeight(), /* leastHeight= */ needs.leastWidth())
                : needs;
    }

    private static Fitting fitUpright(TextBlock block) {
        TextStyle style = block.style();
        double range = style.greatestCapHeight() - style.leastCapHeight();
        for (int step = 0; step * STEP < range - SLACK; step++) {
            double height = style.greatestCapHeight() - step * STEP;
            TextFitter attempt = new TextFitter(block, height);
            Layout layout = attempt.layout(block.box().width());
            if (layout.fits(block.box())) {
                return attempt.placed(layout);
            }
        }
        TextFitter last = new TextFitter(block, style.leastCapHeight());
        Layout layout = last.layout(block.box().width());
        return layout.fits(block.box()) ? last.placed(layout) : last.doesNotFit(layout);
    }

    /** The first character of a text that no font has. */
    static Optional<Integer> missing(TextBlock block) {
        String printed = block.text().replace("\n", " ").replace("\u00ad", "");
        return block.style().face().typeface().firstMissing(printed);
    }

    /** A line before it has a place. */
    private record Row(double indent, double drop, String text, double width) {}

    /**
     * Lines and how far they reach, millimetres.
     *
     * @param above from the first baseline up to the top of the tallest letter of that line, at least the cap height
     * @param below from the last baseline down to the foot of the lowest letter of that line
     */
    private record Layout(List<Row> rows, double width, double above, double below) {

        /** From the first baseline to the last. */
        double span() {
            return rows.get(rows.size() - 1).drop();
        }

        double height() {
            return above + span() + below;
        }

        boolean fits(Box box) {
            return width <= box.width() + SLACK && height() <= box.height() + SLACK;
        }
    }

    private Layout layout(double width) {
        List<Row> rows = new ArrayList<>();
        double lineHeight = block.style().face().lineHeight(capHeight);
        double drop = 0;
        double widest = 0;
        for (int i = 0; i < block.paragraphs().size(); i++) {
            if (indent > 0) {
                rows.add(new Row(0, drop, marker(i), 0));
            }
            for (String line : breaker.lines(block.paragraphs().get(i), width - indent)) {
                Row row = new Row(indent, drop, line, breaker.width(line));
                rows.add(row);
                widest = Math.max(widest, indent + row.width());
                drop += lineHeight;
            }
            drop += PARAGRAPH_GAP * lineHeight;
        }
        double last = rows.get(rows.size() - 1).drop();
        double above =
                runs(rows, 0).mapToDouble(run -> run.above(breaker.size())).reduce(capHeight, Math::max);
        double below =
                runs(rows, last).mapToDouble(run -> run.below(breaker.size())).reduce(0, Math::max);
        return new Layout(List.copyOf(rows), widest, above, below);
    }

    /** What stands on one line. */
    private Stream<Typeface.Run> runs(List<Row> rows, double drop) {
        Typeface typeface = block.style().face().typeface();
        return rows.stream()
                .filter(row -> row.drop() == drop)
                .flatMap(row -> typeface.runs(row.text()).stream().flatMap(List::stream));
    }

    private String marker(int paragraph) {
        return block.style().listing() == Listing.BULLETS ? "•" : (paragraph + 1) + ".";
    }

    /** @param tried lines as wide as the box */
    private Fitting.DoesNotFit doesNotFit(Layout tried) {
        double width = block.paragraphs().stream()
                        .mapToDouble(breaker::leastWidth)
                        .max()
                        .orElse(0)
                + indent;
        Box box = block.box();
        Layout enough = width <= box.width() ? tried : layout(width);
        return new Fitting.DoesNotFit(Math.max(width, box.width()), Math.max(enough.height(), box.height()));
    }

    private Fitting.Fits placed(Layout layout) {
        double first = firstBaseline(layout);
        List<Fitting.Line> lines = new ArrayList<>();
        for (Row row : layout.rows()) {
            lines.add(new Fitting.Line(start(row), first + row.drop(), row.text()));
        }
        return new Fitting.Fits(capHeight, lines);
    }

    private double start(Row row) {
        Box box = block.box();
        double spare = box.width() - row.indent() - row.width();
        Align align = block.style().align();
        return box.x() + row.indent() + (align == Align.LEFT ? 0 : align == Align.RIGHT ? spare : spare / 2);
    }

    private double firstBaseline(Layout layout) {
        Box box = block.box();
        double top = box.y() + layout.above();
        double bottom = box.y() + box.height() - layout.below() - layout.span();
        // Capitals look centred when what hangs below the last baseline is left out of account.
        double middle = box.y() + (box.height() - layout.span() + capHeight) / 2;
        return switch (block.style().vertical()) {
            case TOP -> top;
            case BOTTOM -> bottom;
            case MIDDLE -> Math.min(Math.max(middle, top), Math.max(bottom, top));
        };
    }
}
