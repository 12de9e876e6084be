package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.quaybook.diag.Message;
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
import org.quaybook.render.TextStyle.VerticalAlign;

/**
 * Gives a label its size: letters, signs and codes have the size that the reading distance asks for, and the label
 * grows until all of it fits.
 */
final class LabelSetter {

    static final double SLACK = 1e-6;

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
    private final SignalLetters letters;
    private final double width;
    private final LabelBlocks blocks;
    private final List<Mark> marks = new ArrayList<>();

    private LabelSetter(LabelDesign design, String stamp, SignalLetters letters, LabelRoom room, double width) {
        this.design = design;
        this.stamp = stamp;
        this.letters = letters;
        this.width = width;
        this.blocks = new LabelBlocks(design.reading().cap(), room.dots(), marks);
    }

    /**
     * A label with the design that it was set from.
     *
     * @param turned whether it lies turned by a quarter on its stock
     */
    record Sized(LabelDesign design, Label label, boolean turned) {

        /** Height with the strip under it. */
        double heightOnSheet() {
            return label.height() + LabelsPlacing.STRIP;
        }
    }

    /**
     * Sets a label at the width that takes the least area of the stock. One in two languages becomes two labels where
     * both together find no room.
     *
     * @param stamp small line at its foot that tells job and label
     * @param letters how the signal word is set
     * @param rooms the ways in which it may lie, the best first; at least one
     * @throws RenderException if there is no room for it at a size that can be read; it names the least that would do
     */
    static List<Sized> size(
            LabelDesign design, UnaryOperator<String> stamp, SignalLetters letters, List<LabelRoom> rooms) {
        Label drawn = design.drawn();
        if (drawn != null) {
            return drawn(design, drawn, rooms);
        }
        List<LabelDesign> apart = design.apart();
        Optional<Sized> together = best(design, stamp, letters, rooms);
        if (together.isPresent() || apart.isEmpty()) {
            return List.of(together.orElseThrow(() -> refusal(design, stamp, letters, rooms)));
        }
        List<Sized> sized = new ArrayList<>();
        for (int i = 0; i < apart.size(); i++) {
            LabelDesign one = apart.get(i);
            SignalLetters own = letters.only(i);
            sized.add(best(one, stamp, own, rooms).orElseThrow(() -> refusal(one, stamp, own, rooms)));
        }
        return sized;
    }

    /** The label in one piece; empty if it finds no room. */
    static Optional<Sized> best(
            LabelDesign design, UnaryOperator<String> stamp, SignalLetters letters, List<LabelRoom> rooms) {
        return rooms.stream()
                .flatMap(room -> best(design, stamp.apply(design.id()), letters, room).stream())
                .findFirst();
    }

    /** A label of this width, however high; empty if a word is wider. */
    static Optional<Label> at(double width, LabelDesign design, String stamp, SignalLetters letters, LabelRoom room) {
        LabelSetter setter = new LabelSetter(design, stamp, letters, room, width);
        double height = setter.draw();
        return setter.blocks.tooWide().isEmpty()
                ? Optional.of(new Label(design.id(), width, height, setter.marks))
                : Optional.empty();
    }

    private static Optional<Sized> best(LabelDesign design, String stamp, SignalLetters letters, LabelRoom room) {
        List<Label> possible = new ArrayList<>();
        Optional<Label> last = Optional.empty();
        for (double width : room.widths()) {
            Optional<Label> label = at(width, design, stamp, letters, room).filter(it -> room.bears(it.height()));
            if (label.isPresent()) {
                last = label;
                label.filter(it -> room.suits(width, it.height())).ifPresent(possible::add);
            }
        }
        return possible.stream()
                .min(Comparator.comparingDouble(label -> label.width() * label.height()))
                .or(lastOf(last))
                .map(label -> new Sized(design, label, room.turned()));
    }

    private static Supplier<Optional<Label>> lastOf(Optional<Label> last) {
        return () -> last;
    }

    /** Says what is too wide at the greatest width, else the least label that can be read. */
    private static RenderException refusal(
            LabelDesign design, UnaryOperator<String> stamp, SignalLetters letters, List<LabelRoom> rooms) {
        LabelRoom room = widest(rooms);
        LabelRoom free = LabelRoom.free(room.dots());
        String foot = stamp.apply(design.id());
        LabelSetter widest = new LabelSetter(design, foot, letters, free, free.widest());
        double height = widest.draw();
        if (widest.blocks.tooWide().isPresent()) {
            return LabelBlocks.refusal(design.id(), widest.blocks.tooWide().get(), height);
        }
        Label least = best(design, foot, letters, free).orElseThrow().label();
        return needsMoreRoom(least, room);
    }

    private static List<Sized> drawn(LabelDesign design, Label label, List<LabelRoom> rooms) {
        Optional<LabelRoom> room = rooms.stream()
                .filter(one -> one.bears(label.height()) && label.width() <= one.widest() + SLACK)
                .findFirst();
        if (room.isPresent()) {
            return List.of(new Sized(design, label, room.get().turned()));
        }
        if (design.apart().isEmpty()) {
            throw needsMoreRoom(label, widest(rooms));
        }
        return design.apart().stream()
                .flatMap(one -> drawn(one, Objects.requireNonNull(one.drawn()), rooms).stream())
                .toList();
    }

    /** The way to lie in which the stock is known: what is wider than high, as it is called, or the length of a tape. */
    private static LabelRoom widest(List<LabelRoom> rooms) {
        return rooms.stream().max(Comparator.comparingDouble(LabelRoom::widest)).orElseThrow();
    }

    private static RenderException needsMoreRoom(Label least, LabelRoom room) {
        return LabelBlocks.refusal(Message.of(
                RenderMessage.LABEL_NEEDS_MORE_ROOM,
                least.id(),
                LabelLegibility.upToTenth(least.width()),
                LabelLegibility.upToTenth(least.height()),
                room.stock(),
                room.widest(),
                room.height()));
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

    private static double left() {
        return EDGE + BORDER + PADDING;
    }

    /** Room inside the frame of a label so wide. */
    static double inside(double width) {
        return width - 2 * left();
    }

    private double room() {
        return blocks.atLeast(inside(width));
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
        List<String> lines = signalLines(word, cap);
        double height = cap * 2 * lines.size();
        marks.add(Panel.filled(new Box(EDGE, y, width - 2 * EDGE, height), word.panel()));
        double x = left();
        double inset = cap * 0.24;
        if (word.alert().isPresent()) {
            double side = cap * 2 - 2 * inset;
            double across = side * SignGeometry.triangleWidth() / SignGeometry.TRIANGLE_HEIGHT;
            marks.add(new Picture(
                    new Box(x, y + inset, across, side), word.alert().get()));
            x += across + GAP;
        }
        TextStyle style = TextStyle.of(word.face(letters.noticeInItalics()), cap, cap)
                .in(word.letters())
                .aligned(Align.LEFT, VerticalAlign.MIDDLE);
        double room = blocks.atLeast(width - left() - x);
        List<String> shown = List.of(String.join("\n", lines));
        blocks.measure(shown, style, room);
        marks.add(new TextBlock(new Box(x, y, room, height), shown, style));
        return y + height;
    }

    /** The word in each language of the label, side by side if there is room. */
    private List<String> signalLines(SignalWord word, double cap) {
        List<String> all = letters.words().stream()
                .map(each -> each.sentence(word.key()))
                .distinct()
                .toList();
        String beside = String.join(" / ", all);
        return word.face(letters.noticeInItalics()).widthOf(beside, cap) < room() - 2 * cap - GAP
                ? List.of(beside)
                : all;
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
        String says = letters.words().get(0).sentence(sign.key());
        marks.add(new Picture(new Box(x + (room - across) / 2, y, across, height), sign.svg(), says));
        return y + height;
    }

    private double stamp(double y) {
        return blocks.stamp(stamp, left(), y + GAP, room());
    }
}
