package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.TimeSpan;

/**
 * How long each appliance runs, as bars: open as the battery is now, filled for the time to plan on. The scale is that of
 * the square root, so that minutes and days are seen beside each other; its ticks say so.
 */
final class RunBars {

    private static final double BARS_FROM = 108;
    private static final double BARS_TO = 238;
    private static final double NOW = 286;
    private static final double BAR = 11;
    private static final double APART = 6;
    private static final double TICKS_APART = 27;
    private static final double CAPITALS = Lettering.SMALL.capitals();

    /** From the upper edge to the first row. */
    private static final double HEAD = CAPITALS + 7;

    /** From the last row to the words below the ticks. */
    private static final double TO_SCALE = 5 + CAPITALS + 7;

    /** Share of a page that the first of several pictures may take: the chapter begins above it. */
    private static final double BELOW_TEXT = 0.65;

    /** Times that people know, in minutes. */
    private static final List<Integer> TICKS = List.of(
            5,
            10,
            15,
            30,
            60,
            2 * 60,
            4 * 60,
            8 * 60,
            12 * 60,
            24 * 60,
            2 * 24 * 60,
            4 * 24 * 60,
            7 * 24 * 60,
            14 * 24 * 60,
            30 * 24 * 60,
            60 * 24 * 60,
            120 * 24 * 60,
            240 * 24 * 60);

    private final Subject subject;

    RunBars(Subject subject) {
        this.subject = subject;
    }

    /**
     * All of them in one picture if a page has room for it, else in as many as it takes, on the same scale.
     *
     * @param tallest height that a page has room for, as far as rows can be shared out
     * @param id gives the id of a picture by its place, from 0
     * @return none if no appliance runs
     */
    List<String> svgs(double tallest, IntFunction<String> id) {
        List<ApplianceFigures> able = subject.figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .sorted(Comparator.comparing(appliance -> appliance.time().value()))
                .toList();
        double longest = able.stream()
                .mapToDouble(appliance -> Math.max(
                        appliance.time().value().hours(),
                        appliance.wornTime().value().hours()))
                .max()
                .orElse(1);
        List<List<ApplianceFigures>> shared = shared(able, tallest - HEAD - foot());
        return IntStream.range(0, shared.size())
                .mapToObj(i -> draw(id.apply(i), shared.get(i), longest))
                .toList();
    }

    private List<List<ApplianceFigures>> shared(List<ApplianceFigures> able, double room) {
        List<List<ApplianceFigures>> shared = new ArrayList<>();
        double all = able.stream().mapToDouble(this::height).sum();
        double left = 0;
        for (ApplianceFigures appliance : able) {
            double height = height(appliance);
            if (shared.isEmpty() || height > left) {
                left = shared.isEmpty() && all > room ? room * BELOW_TEXT : room;
                shared.add(new ArrayList<>());
            }
            shared.get(shared.size() - 1).add(appliance);
            left -= height;
        }
        return shared;
    }

    private String draw(String id, List<ApplianceFigures> able, double longest) {
        Scale roots = new Scale(0, Math.sqrt(longest), BARS_FROM, BARS_TO);
        Drawing drawing = new Drawing(id, subject.look());
        drawing.text(Lettering.SMALL, Anchor.END, NOW, CAPITALS, subject.say("run.now"));
        drawing.text(Lettering.SMALL_BOLD, Anchor.END, Drawing.WIDTH, CAPITALS, subject.say("run.plan"));
        List<Integer> ticks = ticks(roots, longest);
        double rows = 0;
        for (ApplianceFigures appliance : able) {
            rows += height(appliance);
        }
        double top = HEAD;
        for (int minutes : ticks) {
            double x = roots.at(Math.sqrt(minutes / 60.0));
            drawing.line(Pen.HAIR, x, top, x, top + rows);
        }
        double y = top;
        for (ApplianceFigures appliance : able) {
            row(drawing, roots, appliance, y);
            y += height(appliance);
        }
        drawing.line(Pen.FINE, BARS_FROM, top, BARS_FROM, y, BARS_TO, y);
        for (int minutes : ticks) {
            double x = roots.at(Math.sqrt(minutes / 60.0));
            drawing.line(Pen.FINE, x, y, x, y + 3);
            drawing.text(
                    Lettering.SMALL,
                    Anchor.MIDDLE,
                    x,
                    y + 5 + CAPITALS,
                    subject.words().word(Stated.asGiven(new TimeSpan(minutes * 60.0))));
        }
        scale().write(drawing, Anchor.START, 0, y + TO_SCALE);
        return drawing.svg(y + foot(), subject.say("run.title"), description(able));
    }

    private Note scale() {
        return Note.within(Drawing.WIDTH)
                .add(Lettering.SMALL, subject.say("run.scale"))
                .note();
    }

    /** From the last row to the lower edge. */
    private double foot() {
        return TO_SCALE + scale().height() + 2;
    }

    private Note name(ApplianceFigures appliance) {
        return Note.within(BARS_FROM - 8)
                .add(Lettering.PLAIN, appliance.appliance().name())
                .note();
    }

    private double height(ApplianceFigures appliance) {
        return Math.max(BAR, name(appliance).height()) + APART;
    }

    private void row(Drawing drawing, Scale roots, ApplianceFigures appliance, double top) {
        double middle = top + height(appliance) / 2;
        name(appliance).writeAround(drawing, Anchor.START, 0, middle);
        drawing.open("bar", appliance.key());
        double now = roots.at(Math.sqrt(appliance.time().value().hours()));
        drawing.box(Pen.FINE, drawing.look().tint(), BARS_FROM, middle - BAR / 2, Math.max(0.6, now - BARS_FROM), BAR);
        boolean worn = appliance.verdict() == Verdict.RUNS;
        if (worn) {
            double plan = roots.at(Math.sqrt(appliance.wornTime().value().hours()));
            drawing.fill(
                    drawing.look().main(), BARS_FROM, middle - BAR / 2 + 2.5, Math.max(0.6, plan - BARS_FROM), BAR - 5);
        }
        drawing.close();
        double baseline = middle + Lettering.SMALL.capitals() / 2;
        drawing.text(Lettering.SMALL, Anchor.END, NOW, baseline, subject.say(appliance.time()));
        drawing.text(Lettering.SMALL_BOLD, Anchor.END, Drawing.WIDTH, baseline, plan(appliance));
    }

    private String plan(ApplianceFigures appliance) {
        return appliance.verdict() == Verdict.RUNS ? subject.say(appliance.wornTime()) : subject.say("run.not");
    }

    /** As many as fit beside each other: the longest first, it says what the scale is. */
    private List<Integer> ticks(Scale roots, double longest) {
        List<Integer> ticks = new ArrayList<>();
        double free = Double.MAX_VALUE;
        for (int i = TICKS.size() - 1; i >= 0; i--) {
            double x = roots.at(Math.sqrt(TICKS.get(i) / 60.0));
            if (TICKS.get(i) <= longest * 60 && x <= free && x >= BARS_FROM + TICKS_APART / 2) {
                ticks.add(TICKS.get(i));
                free = x - TICKS_APART;
            }
        }
        return ticks;
    }

    private List<String> description(List<ApplianceFigures> able) {
        List<String> lines = new ArrayList<>();
        lines.add(subject.say("run.desc"));
        for (ApplianceFigures appliance : able) {
            lines.add(
                    appliance.verdict() == Verdict.RUNS
                            ? subject.say(
                                    "run.desc.row",
                                    appliance.appliance().name(),
                                    subject.say(appliance.time()),
                                    subject.say(appliance.wornTime()))
                            : subject.say(
                                    "run.desc.row.not", appliance.appliance().name(), subject.say(appliance.time())));
        }
        return lines;
    }
}
