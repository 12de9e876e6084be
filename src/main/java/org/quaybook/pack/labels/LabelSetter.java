package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.Label;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.Picture;
import org.quaybook.render.RenderException;
import org.quaybook.render.RenderMessage;
import org.quaybook.render.TextBlock;
import org.quaybook.render.TextStyle;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.Listing;
import org.quaybook.render.TextStyle.VerticalAlign;
import org.quaybook.text.Words;

/**
 * Gives a label its size: letters, signs and codes have the size that the reading distance asks for, and the label
 * grows until all of it fits.
 */
final class LabelSetter {

    /** Widths that share an A4 sheet without waste: a third, a half, two thirds and the whole, less the gaps. */
    static final List<Double> WIDTHS = List.of(60.0, 92.5, 125.0, 190.0);

    /** No label is taller than this, of its width, unless it is of the greatest width. Common practice, no source. */
    private static final double TALLEST = 1.1;

    /** Nothing is printed so near to the cut (common practice: 2 mm). */
    private static final double EDGE = 2;

    private static final double BORDER = 0.5;
    private static final double PADDING = 3;
    private static final double GAP = 3;
    private static final int SIGNS_BESIDE = 2;

    /** Diameter of a tag's hole and its least distance from the edge, common practice. */
    private static final double HOLE = 4;

    private static final double HOLE_EDGE = 5;

    private final LabelDesign design;
    private final String stamp;
    private final Words words;
    private final double width;
    private final LabelBlocks blocks;
    private final List<Mark> marks = new ArrayList<>();

    private LabelSetter(LabelDesign design, String stamp, Words words, double width) {
        this.design = design;
        this.stamp = stamp;
        this.words = words;
        this.width = width;
        this.blocks = new LabelBlocks(design.reading().cap(), marks);
    }

    /** A label with the design that it was set from. */
    record Sized(LabelDesign design, Label label) {

        /** Height with the strip under it. */
        double heightOnSheet() {
            return label.height() + LabelsPlacing.STRIP;
        }
    }

    /**
     * Sets a label at the width that takes the least area of the stock.
     *
     * @param stamp small line at its foot that tells job and label
     * @param words where the signal word comes from
     * @throws RenderException if even the widest label is too narrow for one of its words
     */
    static Sized size(LabelDesign design, String stamp, Words words) {
        List<Label> possible = new ArrayList<>();
        for (double width : WIDTHS) {
            LabelSetter setter = new LabelSetter(design, stamp, words, width);
            double height = setter.draw();
            boolean widest = width == WIDTHS.get(WIDTHS.size() - 1);
            if (widest && possible.isEmpty() && setter.blocks.tooWide().isPresent()) {
                throw setter.refusal(height);
            }
            if (setter.blocks.tooWide().isEmpty() && (height <= TALLEST * width || (widest && possible.isEmpty()))) {
                possible.add(new Label(design.id(), width, height, setter.marks));
            }
        }
        return possible.stream()
                .min(Comparator.comparingDouble(label -> label.width() * label.height()))
                .map(label -> new Sized(design, label))
                .orElseThrow();
    }

    private RenderException refusal(double height) {
        LabelBlocks.TooWide text = blocks.tooWide().orElseThrow();
        return new RenderException(List.of(new Diagnostic(
                Severity.ERROR,
                RenderMessage.LABEL_TEXT_DOES_NOT_FIT.key(),
                Place.NOWHERE,
                "",
                Message.of(
                        RenderMessage.LABEL_TEXT_DOES_NOT_FIT,
                        design.id(),
                        text.text(),
                        text.room(),
                        height,
                        text.least(),
                        height),
                List.of())));
    }

    /** Draws everything from top to bottom; returns the height. */
    private double draw() {
        double y = design.spot() == LabelSpot.LEAD ? EDGE + 2 * HOLE_EDGE + HOLE : EDGE;
        double top = y;
        y = design.word() == null ? titleBar(y) : signalPanel(design.word(), y);
        y = body(y + PADDING);
        y = stamp(y) + PADDING;
        if (design.spot() == LabelSpot.LEAD) {
            marks.add(new Panel(
                    new Box((width - HOLE) / 2, EDGE + HOLE_EDGE, HOLE, HOLE), null, Colour.BLACK, 0.3, HOLE / 2));
        }
        marks.add(Panel.outlined(new Box(EDGE, top, width - 2 * EDGE, y - top), SignColours.BLACK, BORDER));
        return y + EDGE;
    }

    private double left() {
        return EDGE + BORDER + PADDING;
    }

    private double room() {
        return width - 2 * left();
    }

    private TextStyle titleStyle() {
        return LabelBlocks.style(
                LabelPart.Voice.STRONG, LabelBlocks.titleCap(design.reading().cap()));
    }

    private double titleBar(double y) {
        List<String> title = List.of(design.title());
        TextStyle style = titleStyle().in(Colour.WHITE).aligned(Align.LEFT, VerticalAlign.MIDDLE);
        double height = blocks.even(title, style, room()) + 2 * style.leastCapHeight() * 0.8;
        marks.add(Panel.filled(new Box(EDGE, y, width - 2 * EDGE, height), SignColours.BLACK));
        marks.add(new TextBlock(new Box(left(), y, room(), height), title, style));
        return y + height;
    }

    private double signalPanel(SignalWord word, double y) {
        double cap =
                LabelLegibility.signalCap(LabelBlocks.titleCap(design.reading().cap()));
        double height = cap * 2;
        marks.add(Panel.filled(new Box(EDGE, y, width - 2 * EDGE, height), word.panel()));
        double x = left();
        double inset = height * 0.12;
        if (word.alert().isPresent()) {
            double side = height - 2 * inset;
            double across = side * SignGeometry.triangleWidth() / SignGeometry.TRIANGLE_HEIGHT;
            marks.add(new Picture(
                    new Box(x, y + inset, across, side), word.alert().get()));
            x += across + GAP;
        }
        TextStyle style = LabelBlocks.style(LabelPart.Voice.STRONG, cap)
                .in(word.letters())
                .aligned(Align.LEFT, VerticalAlign.MIDDLE);
        marks.add(TextBlock.of(new Box(x, y, width - left() - x, height), words.sentence(word.key()), style));
        return y + height;
    }

    private double body(double y) {
        double text = left();
        double top = y;
        double signsEnd = y;
        if (design.signs().size() > SIGNS_BESIDE) {
            top = signsAcross(y) + GAP;
        } else if (!design.signs().isEmpty()) {
            text += signsDown(y) + GAP;
            signsEnd = marks.get(marks.size() - 1).box().y()
                    + marks.get(marks.size() - 1).box().height();
        }
        double room = blocks.atLeast(width - left() - text);
        if (design.word() != null) {
            top = blocks.text(List.of(design.title()), titleStyle(), text, top, room) + GAP;
        }
        return Math.max(signsEnd, blocks.parts(design.parts(), text, top, room));
    }

    private double signHeight() {
        return LabelLegibility.signHeight(design.reading().metres());
    }

    private double signsDown(double y) {
        double widest = design.signs().stream()
                .mapToDouble(sign -> sign.boxWidth(signHeight()))
                .max()
                .orElse(0);
        double at = y;
        for (Sign sign : design.signs()) {
            at = sign(sign, left(), at, widest) + GAP;
        }
        return widest;
    }

    private double signsAcross(double y) {
        double x = left();
        double end = y;
        for (Sign sign : design.signs()) {
            double across = sign.boxWidth(signHeight());
            if (x + across > width - left() + 1e-6) {
                x = left();
                y = end + GAP;
            }
            end = Math.max(end, sign(sign, x, y, across));
            x += across + GAP;
        }
        return end;
    }

    private double sign(Sign sign, double x, double y, double room) {
        double across = sign.boxWidth(signHeight());
        double height = sign.boxHeight(signHeight());
        marks.add(new Picture(new Box(x + (room - across) / 2, y, across, height), sign.svg()));
        return y + height;
    }

    private double stamp(double y) {
        TextStyle style = LabelBlocks.style(LabelPart.Voice.PLAIN, LabelReading.HAND.cap())
                .in(LabelBlocks.GREY)
                .aligned(Align.RIGHT, VerticalAlign.TOP)
                .listed(Listing.NONE);
        return blocks.text(List.of(stamp), style, left(), y + GAP, room());
    }
}
