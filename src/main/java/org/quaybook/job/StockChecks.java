package org.quaybook.job;

import java.util.Objects;
import java.util.stream.Stream;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Length;

/** What cannot be true between the measures of a stock of labels. */
final class StockChecks {

    /** How far sums of lengths given in inches and thousandths may lie from the paper's. */
    private static final double TOLERANCE_METRES = 0.05e-3;

    /** Length of the rule that is printed on every sheet to be cut apart, with the lines above and below the labels. */
    private static final Length RULE = new Length(0.1);

    private static final Length LINES = new Length(0.021);

    private final Found found;
    private final Problems problems;

    StockChecks(Found found, Problems problems) {
        this.found = found;
        this.problems = problems;
    }

    void check() {
        found.all(LabelStock.class).forEach(this::stock);
        found.all(DieCutSheet.class).forEach(this::dieCut);
        found.all(PlainSheet.class).forEach(this::plainSheet);
        found.all(LabelRoll.class).forEach(this::roll);
    }

    private void stock(LabelStock stock) {
        long forms = Stream.of(stock.plainSheet(), stock.dieCut(), stock.roll())
                .filter(Objects::nonNull)
                .count();
        if (forms != 1) {
            problems.add(stock.place(), Message.of(JobMessage.STOCK_FORM, forms));
        }
        boolean dotted =
                stock.printing() == StockPrinting.THERMAL_TRANSFER || stock.printing() == StockPrinting.DIRECT_THERMAL;
        if (dotted && stock.dotsPerMm() == null) {
            problems.add(
                    stock.place(),
                    Message.of(JobMessage.STOCK_DOTS_MISSING, Names.of(stock.printing())),
                    Message.of(JobMessage.EXAMPLE, "dots-per-mm: 8"));
        }
    }

    private void dieCut(DieCutSheet sheet) {
        sum(sheet.across(), sheet.paperWidth(), JobMessage.STOCK_SUM_ACROSS, sheet.place());
        sum(sheet.down(), sheet.paperHeight(), JobMessage.STOCK_SUM_DOWN, sheet.place());
        Length shorter = shorter(sheet.labelWidth(), sheet.labelHeight());
        room(sheet.edge(), shorter, sheet.place());
        Length radius = sheet.radius();
        if (radius.times(2).compareTo(shorter) >= 0) {
            problems.add(sheet.place(), Message.of(JobMessage.STOCK_CORNER, millimetres(radius), millimetres(shorter)));
        }
    }

    private void sum(Length parts, Length paper, JobMessage message, Place place) {
        if (Math.abs(parts.metres() - paper.metres()) > TOLERANCE_METRES) {
            problems.add(place, Message.of(message, millimetres(parts), millimetres(paper)));
        }
    }

    private void plainSheet(PlainSheet sheet) {
        Length white = sheet.margin().times(2);
        if (sheet.width().compareTo(white.plus(RULE)) < 0 || sheet.height().compareTo(white.plus(LINES)) <= 0) {
            problems.add(
                    sheet.place(),
                    Message.of(
                            JobMessage.STOCK_NO_ROOM,
                            millimetres(sheet.margin()),
                            millimetres(shorter(sheet.width(), sheet.height()))));
        }
    }

    private void roll(LabelRoll roll) {
        Length length = roll.length();
        room(roll.edge(), length == null ? roll.width() : shorter(roll.width(), length), roll.place());
    }

    private void room(Length edge, Length side, Place place) {
        if (edge.times(2).compareTo(side) >= 0) {
            problems.add(place, Message.of(JobMessage.STOCK_NO_ROOM, millimetres(edge), millimetres(side)));
        }
    }

    private static Length shorter(Length one, Length other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    /** To a thousandth. */
    private static double millimetres(Length length) {
        return Math.round(length.metres() * 1e6) / 1e3;
    }
}
