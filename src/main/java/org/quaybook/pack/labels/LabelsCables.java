package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Cable;
import org.quaybook.job.Earth;
import org.quaybook.job.Given;
import org.quaybook.job.Pole;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.RenderException;
import org.quaybook.render.TextBlock;
import org.quaybook.render.Turn;

/** Tags at both ends of every DC cable and of every earth conductor that has insulation of its own. */
final class LabelsCables {

    /** A tag takes so much of the length of a cable: tried from the narrowest up. Common practice, no source. */
    private static final double NARROWEST = 30;

    private static final double WIDER = 5;
    private static final double WIDEST = 190;

    /** A longer flag is hard to fold straight: the tag is then tied on. Common practice, no source. */
    private static final double LONGEST_FLAG = 200;

    private static final double EDGE = 2;
    private static final double BAND = 6;
    private static final double SIGN = 5;
    private static final double HAIR = 0.1;

    /** Hole of a tag to be tied on and its distance from the edge, common practice. */
    private static final double HOLE = 4;

    private static final double HOLE_EDGE = 5;

    /** Letters of the notice at an earth: at least 4.75 mm (BS 7671 514.13.1, from memory). */
    static final double EARTH_CAP = 4.8;

    /** With the yellow of the signs the two colours of protective conductors (IEC 60445, from memory). */
    private static final Colour EARTH_GREEN = Colour.of("#237f52");

    private static final double MILLIMETRES = 1000;

    private static final Pattern POLE_SIGN = Pattern.compile(" ([-+\u2212])(?= |$)");

    private final LabelFacts facts;

    LabelsCables(LabelFacts facts) {
        this.facts = facts;
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        for (RunFigures run : facts.figures().supply().runs()) {
            int parallel = run.rating().conductor().parallel();
            for (int number = 1; number <= parallel; number++) {
                String which = parallel == 1 ? "" : "-" + number;
                List<LabelPart> parts = parts(run, number);
                designs.add(cable(
                        run,
                        "cable-" + run.cable().id() + "-from" + which,
                        run.cable().from(),
                        parts));
                designs.add(cable(
                        run,
                        "cable-" + run.cable().id() + "-to" + which,
                        run.cable().to(),
                        parts));
            }
        }
        for (Earth earth : facts.job().earths()) {
            if (!Given.isYes(earth.inCable())) {
                designs.add(earth(earth, "earth-" + earth.id() + "-from", earth.from()));
                designs.add(earth(earth, "earth-" + earth.id() + "-to", earth.to()));
            }
        }
        return designs;
    }

    private List<LabelPart> parts(RunFigures run, int number) {
        Cable cable = run.cable();
        String pole = facts.say(run.positive() ? "pole.positive" : "pole.negative");
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.strong(facts.say("cable.name", cable.id(), pole)));
        List<String> lines = new ArrayList<>();
        lines.add(facts.say("cable.run", together(cable.from()), together(cable.to())));
        int parallel = run.rating().conductor().parallel();
        String size = run.rating().conductor().size().toString();
        String length = facts.given(cable.length()).orElse("");
        lines.add(
                parallel == 1
                        ? facts.say("cable.size", size, length)
                        : facts.say("cable.size-of", size, length, number, parallel));
        fuses(cable).forEach(lines::add);
        parts.add(LabelPart.plain(String.join("\n", lines)));
        return parts;
    }

    /** The sign of a pole never begins a line. */
    private static String together(String end) {
        return POLE_SIGN.matcher(end).replaceAll("\u00a0$1");
    }

    private List<String> fuses(Cable cable) {
        return facts.figures().fuses().stream()
                .filter(figures ->
                        figures.fuse() != null && figures.fuse().protects().contains(cable.id()))
                .map(this::fuse)
                .toList();
    }

    private String fuse(FuseFigures figures) {
        return facts.say(
                "cable.fuse", figures.id(), figures.rating().map(facts::say).orElse(""));
    }

    /** Outside diameter, millimetres; empty if it is neither known nor usual. */
    private static Optional<Double> diameter(RunFigures run) {
        return run.diameter().map(figure -> figure.value().metres() * MILLIMETRES);
    }

    /** Where the tag goes, and for which diameter it is made: a usual one is said to be no more than that. */
    private String place(RunFigures run, String end) {
        boolean measured = Given.maybe(run.cable().diameter()).isPresent();
        return run.diameter()
                .map(across -> facts.say(measured ? "cable.place" : "cable.place-usual", end, facts.say(across)))
                .orElse(end);
    }

    private LabelDesign cable(RunFigures run, String id, String end, List<LabelPart> parts) {
        LabelDesign design = LabelDesign.of(
                        id,
                        LabelReason.CABLE,
                        LabelSpot.CABLE,
                        place(run, end),
                        LabelReading.HAND,
                        facts.say(
                                "cable.name",
                                run.cable().id(),
                                facts.say(run.positive() ? "pole.positive" : "pole.negative")))
                .with(parts);
        Pole pole = run.positive() ? Pole.POSITIVE : Pole.NEGATIVE;
        CableTag tag = diameter(run).map(CableTag::new).orElse(null);
        return design.drawnBy(words -> around(words.id(), tag, width -> poleFace(words.parts(), pole, width)));
    }

    /** What stands on a tag, at its top left corner. */
    private record Text(List<Mark> marks, double height, LabelBlocks.@Nullable TooWide tooWide) {}

    /** Sets what stands on a tag at a width. */
    private interface Face {
        Text at(double width);
    }

    private Text poleFace(List<LabelPart> parts, Pole pole, double width) {
        List<Mark> marks = new ArrayList<>();
        LabelBlocks blocks = new LabelBlocks(LabelReading.HAND.cap(), Dots.DPI_300, marks);
        double x = EDGE + BAND + EDGE;
        double room = blocks.atLeast(width - x - EDGE);
        double y = blocks.parts(parts, x, EDGE, room);
        y = stamp(blocks, x, y, room);
        marks.add(Panel.filled(new Box(EDGE, EDGE, BAND, y - 2 * EDGE), LabelsTerminals.colour(pole)));
        double signX = EDGE + (BAND - SIGN) / 2;
        LabelsTerminals.sign(pole == Pole.POSITIVE, new Box(signX, EDGE + 0.5, SIGN, SIGN), marks);
        return new Text(marks, y, blocks.tooWide().orElse(null));
    }

    /** The form that fits: a wrap where the text can be read from any side of it, else a flag, else a tag to tie on. */
    private static Label around(String id, @Nullable CableTag tag, Face drawn) {
        Face face = remembered(drawn);
        List<Double> widths = widths(face);
        if (widths.isEmpty()) {
            throw refusal(id, face.at(WIDEST));
        }
        if (tag != null) {
            Optional<Label> wrap = widths.stream()
                    .filter(width -> tag.wraps(face.at(width).height()))
                    .findFirst()
                    .map(width -> wrap(id, tag, face.at(width), width));
            Optional<Label> flag = widths.stream()
                    .filter(width -> tag.flagTotal(face.at(width).height()) <= LONGEST_FLAG)
                    .min(Comparator.comparingDouble(
                            width -> width * tag.flagTotal(face.at(width).height())))
                    .map(width -> flag(id, tag, face.at(width), width));
            Optional<Label> around = wrap.or(() -> flag);
            if (around.isPresent()) {
                return around.get();
            }
        }
        return tied(id, face, widths.get(0));
    }

    /** The same face, set only once at each width: it is asked for again and again while the best is sought. */
    private static Face remembered(Face face) {
        Map<Double, Text> known = new HashMap<>();
        return width -> known.computeIfAbsent(width, face::at);
    }

    /** The widths at which every word has room, the narrowest first. */
    private static List<Double> widths(Face face) {
        return DoubleStream.iterate(NARROWEST, width -> width <= WIDEST, width -> width + WIDER)
                .boxed()
                .filter(width -> face.at(width).tooWide() == null)
                .toList();
    }

    private static RenderException refusal(String id, Text widest) {
        LabelBlocks.TooWide text = widest.tooWide();
        if (text == null) {
            throw new IllegalStateException("nothing too wide on " + id);
        }
        return LabelBlocks.refusal(id, text, widest.height());
    }

    private static Label wrap(String id, CableTag tag, Text text, double width) {
        List<Mark> marks = new ArrayList<>();
        int repeats = tag.repeats(text.height());
        double pitch = tag.wrapZone() / repeats;
        for (int i = 0; i < repeats; i++) {
            double y = i * pitch + (pitch - text.height()) / 2;
            text.marks().forEach(mark -> marks.add(moved(mark, y)));
        }
        marks.add(hair(tag.wrapZone(), width));
        marks.add(hair(tag.wrapOpaque(), width));
        return cut(id, width, tag.wrapTotal(), marks);
    }

    /** Folded around the cable with its text along it: the second half must be upside down to stand upright behind. */
    private static Label flag(String id, CableTag tag, Text text, double width) {
        double total = tag.flagTotal(text.height());
        List<Mark> marks = new ArrayList<>(text.marks());
        text.marks().forEach(mark -> marks.add(upsideDown(mark, width, total)));
        tag.folds(text.height()).forEach(fold -> marks.add(hair(fold, width)));
        return cut(id, width, total, marks);
    }

    private static Label tied(String id, Face face, double width) {
        Text text = face.at(width);
        List<Mark> marks = new ArrayList<>();
        double top = HOLE_EDGE + HOLE;
        marks.add(new Panel(new Box((width - HOLE) / 2, HOLE_EDGE, HOLE, HOLE), null, Colour.BLACK, 0.3, HOLE / 2));
        text.marks().forEach(mark -> marks.add(moved(mark, top)));
        return cut(id, width, top + text.height(), marks);
    }

    /** With a hairline at its edge: a roll may be wider than the tag. */
    private static Label cut(String id, double width, double height, List<Mark> marks) {
        marks.add(Panel.outlined(new Box(0, 0, width, height), LabelBlocks.GREY, HAIR));
        return new Label(id, width, height, marks);
    }

    private static Panel hair(double y, double width) {
        return Panel.filled(new Box(0, y - HAIR / 2, width, HAIR), LabelBlocks.GREY);
    }

    private static Mark moved(Mark mark, double down) {
        Box box = mark.box();
        return boxed(mark, new Box(box.x(), box.y() + down, box.width(), box.height()), Turn.UPRIGHT);
    }

    private static Mark upsideDown(Mark mark, double width, double height) {
        Box box = mark.box();
        double x = width - box.x() - box.width();
        double y = height - box.y() - box.height();
        return boxed(mark, new Box(x, y, box.width(), box.height()), Turn.HALF);
    }

    private static Mark boxed(Mark mark, Box box, Turn turn) {
        if (mark instanceof TextBlock text) {
            return new TextBlock(box, text.paragraphs(), text.style(), turn);
        }
        Panel panel = (Panel) mark;
        return new Panel(box, panel.fill(), panel.stroke(), panel.strokeWidth(), panel.cornerRadius());
    }

    private LabelDesign earth(Earth earth, String id, String end) {
        String notice = facts.say("earth.notice");
        String size = facts.given(earth.fitted()).orElse("");
        return LabelDesign.of(id, LabelReason.EARTH, LabelSpot.EARTH, end, LabelReading.HAND, earth.id() + " " + notice)
                .with(
                        LabelPart.strong(notice),
                        LabelPart.plain(facts.say("cable.name", earth.id(), size) + "\n"
                                + facts.say("cable.run", together(earth.from()), together(earth.to()))))
                .drawnBy(words -> atEarth(words.id(), width -> earthFace(words.parts(), width)));
    }

    private static Label atEarth(String id, Face drawn) {
        Face face = remembered(drawn);
        double width = widths(face).stream()
                .min(Comparator.comparingDouble(one -> one * face.at(one).height()))
                .orElseThrow(() -> refusal(id, face.at(WIDEST)));
        return tied(id, face, width);
    }

    /** Job and revision at the foot of a face; returns where it ends. */
    private double stamp(LabelBlocks blocks, double x, double y, double room) {
        String stamp = facts.say(
                "cable.stamp", facts.job().job().number(), facts.job().job().revision());
        return blocks.stamp(stamp, x, y + 1, room) + EDGE;
    }

    private Text earthFace(List<LabelPart> parts, double width) {
        List<Mark> marks = new ArrayList<>();
        LabelBlocks blocks = new LabelBlocks(LabelReading.HAND.cap(), Dots.DPI_300, marks);
        double x = EDGE + BAND + EDGE;
        double room = blocks.atLeast(width - x - EDGE);
        List<String> notice = ((LabelPart.Text) parts.get(0)).paragraphs();
        double y = blocks.text(notice, LabelBlocks.style(LabelPart.Voice.STRONG, EARTH_CAP), x, EDGE, room);
        y = blocks.parts(parts.subList(1, parts.size()), x, y + EDGE, room);
        y = stamp(blocks, x, y, room);
        double height = y - 2 * EDGE;
        marks.add(Panel.filled(new Box(EDGE, EDGE, BAND, height), EARTH_GREEN));
        marks.add(Panel.filled(new Box(EDGE + BAND / 3, EDGE, BAND / 3, height), SignColours.YELLOW));
        return new Text(marks, y, blocks.tooWide().orElse(null));
    }
}
