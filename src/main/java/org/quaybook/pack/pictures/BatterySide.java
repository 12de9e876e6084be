package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.TakeOff;
import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.pack.pictures.Symbols.Current;
import org.quaybook.pack.pictures.Symbols.Way;

/**
 * How the battery side is wired: the strings of the bank with the ends that its load hangs on, the way to the inverter
 * with both poles, and what charges. Chargers and branches are joined to the bank by a single line; of one whose current
 * passes a part of the inverter's feed that stands beside it.
 */
final class BatterySide {

    private static final double PLUS = 12;
    private static final double FIRST_STRING = 36;
    private static final double PITCH = 27;

    /** Strings that are all drawn; of more, the first three and the last. */
    private static final int MOST_STRINGS = 5;

    /** Blocks of a string that are all drawn; of more, the first and the last. */
    private static final int MOST_BLOCKS = 4;

    private static final double BLOCK = 2 * Symbols.REACH;
    private static final double LEAD = 7;
    private static final double STRING_FUSE = 2 * Symbols.REACH;
    private static final double BAR_APART = 8;

    /** From a conductor to the text beside it. */
    private static final double BESIDE = 12;

    private static final double LEAST_WIDTH = 158;
    private static final double INVERTER = 18;
    private static final double RUNG_APART = 8;

    private final Subject subject;
    private final Parts parts;
    private final Drawing drawing;
    private final Symbols symbols;
    private final int strings;
    private final int blocks;
    private final double right;
    private final List<FuseFigures> stringFuses;

    BatterySide(Subject subject, Parts parts, String id) {
        this.subject = subject;
        this.parts = parts;
        this.drawing = new Drawing(id, subject.look());
        this.symbols = new Symbols(drawing);
        this.strings = subject.job().bank().parallel().known().orElse(1);
        this.blocks = subject.job().bank().series().known().orElse(1);
        this.right = Math.max(LEAST_WIDTH, FIRST_STRING + (drawnStrings() - 1) * PITCH + 40);
        this.stringFuses = parts.fuses(FuseRole.STRING);
    }

    private int drawnStrings() {
        return Math.min(strings, MOST_STRINGS);
    }

    /** The names of the symbols that it uses, once it is drawn. */
    Set<String> symbols() {
        return drawing.symbols();
    }

    /**
     * The diagram, in as many pictures as it takes.
     *
     * @param tallest height that a page has room for
     */
    List<String> svgs(double tallest) {
        double top = heading();
        double bankFoot = bank(top);
        double left = way(bankFoot);
        double chargers = chargers(top);
        double both = Math.max(left, chargers);
        drawing.seam(both + 5);
        double foot = new Earths(subject, drawing, symbols).draw(both + 10);
        return new TallDrawing(subject, drawing, foot + 2)
                .svgs(tallest, subject.say("battery-side.title"), description());
    }

    private double heading() {
        Note note = Note.within(Drawing.WIDTH)
                .add(Lettering.NAME, subject.say("part.bank"))
                .add(
                        Lettering.SMALL,
                        List.of(
                                subject.say(layoutKey(), blocks, strings),
                                subject.words()
                                        .say(
                                                "facts.block",
                                                subject.given(
                                                        bankOfJob().block().voltage()),
                                                subject.given(
                                                        bankOfJob().block().capacity())),
                                subject.given(bankOfJob().chemistry()),
                                Subject.orEmpty(bankOfJob().where())))
                .note();
        note.write(drawing, Anchor.START, 0, 0);
        return note.height() + 8;
    }

    private Bank bankOfJob() {
        return subject.job().bank();
    }

    private String layoutKey() {
        return "layout."
                + (blocks > 1 && strings > 1 ? "both" : blocks > 1 ? "series" : strings > 1 ? "parallel" : "one");
    }

    private double xOf(int drawn) {
        return FIRST_STRING + drawn * PITCH;
    }

    private TakeOff takeOff() {
        return Given.maybe(bankOfJob().takeOff()).orElse(TakeOff.BUSBAR);
    }

    /** The bank in its frame; gives the height at which its two conductors leave. */
    private double bank(double top) {
        boolean bars = takeOff() == TakeOff.BUSBAR && strings > 1;
        double plusBar = top + 12;
        double fuses = stringFuses.isEmpty() ? 0 : STRING_FUSE;
        double first = plusBar + (bars ? BAR_APART : LEAD) + fuses;
        double length = (blocks > MOST_BLOCKS ? 3 : blocks) * BLOCK;
        double minusBar = first + length + (bars ? BAR_APART : LEAD);
        double foot = minusBar + 9 + (stringFuses.isEmpty() ? 0 : Lettering.SMALL.leading());
        for (int i = 0; i < drawnStrings(); i++) {
            if (strings > MOST_STRINGS && i == MOST_STRINGS - 2) {
                drawing.line(
                        Pen.LINK, Look.INK, xOf(i) - 8, (first + minusBar) / 2, xOf(i) + 8, (first + minusBar) / 2);
                continue;
            }
            string(i, plusBar, first, minusBar);
        }
        double last = xOf(drawnStrings() - 1);
        Pen pen = bars ? Pen.HEAVY : Pen.WIRE;
        if (strings > 1) {
            drawing.line(pen, Look.INK, xOf(0) - (bars ? 8 : 0), plusBar, last + (bars ? 8 : 0), plusBar);
            drawing.line(pen, Look.INK, xOf(0) - (bars ? 8 : 0), minusBar, last + (bars ? 8 : 0), minusBar);
        }
        drawing.line(Pen.CHAIN, Look.INK, 0.5, top, right, top, right, foot, 0.5, foot, 0.5, top);
        drawing.text(Lettering.NAME, Anchor.END, PLUS - 4, plusBar + 10, "+");
        double minus = minus();
        double minusFrom = takeOff() == TakeOff.SAME_END && strings > 1 ? xOf(0) : last;
        drawing.open("take-off", takeOff().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        drawing.wire(xOf(0), plusBar, PLUS, plusBar, PLUS, foot);
        double turn = minusBar + 5;
        if (minusFrom == last && minus >= last) {
            drawing.wire(last, minusBar, minus, minusBar, minus, foot);
        } else {
            drawing.wire(minusFrom, minusBar, minusFrom, turn, minus, turn, minus, foot);
        }
        drawing.joint(xOf(0), plusBar);
        drawing.joint(minusFrom, minusBar);
        drawing.close();
        drawing.text(Lettering.NAME, Anchor.START, minus + 5, foot - 4, "−");
        return foot;
    }

    /** Where the minus conductor runs downwards. */
    private double minus() {
        return right - 26;
    }

    private void string(int drawn, double plusBar, double first, double minusBar) {
        double x = xOf(drawn);
        int number = strings > MOST_STRINGS && drawn == MOST_STRINGS - 1 ? strings : drawn + 1;
        double y = plusBar;
        if (!stringFuses.isEmpty()) {
            FuseFigures fuse = stringFuses.get(Math.min(number - 1, stringFuses.size() - 1));
            drawing.wire(x, y, x, first - LEAD - STRING_FUSE + 2);
            symbols.fuse(x, first - LEAD - STRING_FUSE / 2 + 2, Way.DOWN, fuse.id());
            y = first - LEAD + 2;
        }
        drawing.wire(x, y, x, first);
        if (blocks > MOST_BLOCKS) {
            symbols.battery(x, first + BLOCK / 2, block(number, 1));
            drawing.line(Pen.LINK, Look.INK, x, first + BLOCK, x, first + 2 * BLOCK);
            symbols.battery(x, first + 2.5 * BLOCK, block(number, blocks));
        } else {
            for (int i = 0; i < blocks; i++) {
                symbols.battery(x, first + (i + 0.5) * BLOCK, block(number, i + 1));
            }
        }
        drawing.wire(x, first + (blocks > MOST_BLOCKS ? 3 : blocks) * BLOCK, x, minusBar);
    }

    private static String block(int string, int block) {
        return string + "/" + block;
    }

    /** The two conductors from the bank to the inverter; gives the lower edge. */
    private double way(double top) {
        double width = minus() - PLUS - BESIDE - 8;
        Ladder plus = new Ladder(drawing, symbols, PLUS, top, PLUS + BESIDE, Anchor.START);
        if (!stringFuses.isEmpty()) {
            plus.tag("strings", fuseNote(stringFuses, width));
        }
        for (FuseFigures fuse : parts.looseFuses()) {
            plus.fuse(fuse.id(), fuseNote(List.of(fuse), width));
        }
        pole(plus, parts.plus(), true, width);
        Ladder minus = new Ladder(drawing, symbols, minus(), top, minus() - BESIDE, Anchor.END);
        minus.runTo(plus.y() + 2);
        pole(minus, parts.minus(), false, width);
        double end = Math.max(plus.y(), minus.y()) + 2;
        plus.runTo(end);
        minus.runTo(end);
        return others(inverter(end));
    }

    private void pole(Ladder pole, List<RunFigures> runs, boolean first, double width) {
        Set<Isolator> drawn = new HashSet<>();
        for (int i = 0; i < runs.size(); i++) {
            RunFigures run = runs.get(i);
            Set<String> dead = new HashSet<>(Set.of(run.cable().id()));
            for (FuseFigures fuse : parts.fusesOf(run)) {
                pole.fuse(fuse.id(), fuseNote(List.of(fuse), width));
                dead.add(fuse.id());
            }
            if (first && i == 0) {
                dead.add("bank");
            }
            if (first && i == runs.size() - 1) {
                dead.add("inverter");
            }
            for (Isolator isolator : parts.isolatorsOf(dead)) {
                if (drawn.add(isolator)) {
                    pole.isolator(isolator.id(), isolatorNote(isolator, width));
                }
            }
            pole.tag(run.cable().id(), cableNote(run, width));
            if (i < runs.size() - 1) {
                drawing.joint(pole.x(), pole.y());
                pole.tag(
                        "node",
                        Note.within(width)
                                .add(Lettering.SMALL, run.cable().to())
                                .note());
            }
        }
    }

    private Note fuseNote(List<FuseFigures> fuses, double width) {
        Note.Builder note = Note.within(width);
        for (FuseFigures fuse : fuses) {
            String rating = fuse.rating().map(subject::say).orElse("");
            String family = fuse.family().map(subject.words()::term).orElse("");
            note.add(Lettering.SMALL_BOLD, List.of(fuse.fuse() == null ? "" : fuse.id(), rating));
            note.add(
                    Lettering.SMALL,
                    List.of(
                            family,
                            fuse.ratingFitted() ? "" : subject.say("proposed"),
                            fuse.fuse() == null
                                    ? ""
                                    : Subject.orEmpty(fuse.fuse().where())));
        }
        return note.note();
    }

    private Note isolatorNote(Isolator isolator, double width) {
        return Note.within(width)
                .add(Lettering.SMALL_BOLD, List.of(isolator.id(), isolator.name()))
                .add(Lettering.SMALL, isolator.where())
                .note();
    }

    private Note cableNote(RunFigures run, double width) {
        return Note.within(width)
                .add(
                        Lettering.SMALL_BOLD,
                        List.of(run.cable().id(), run.rating().conductor().toString()))
                .add(
                        Lettering.SMALL,
                        List.of(subject.given(run.cable().length()), run.fitted() ? "" : subject.say("proposed")))
                .note();
    }

    private double inverter(double top) {
        double side = INVERTER;
        double x = PLUS + side;
        drawing.wire(PLUS, top, PLUS, top + 6, x - side / 2, top + 6, x - side / 2, top + 12);
        drawing.wire(minus(), top, minus(), top + 6, x + side / 2, top + 6, x + side / 2, top + 12);
        double centre = top + 12 + side;
        symbols.converter(x, centre, side, Current.DC, Current.AC, "inverter", "inverter");
        Note note = Note.within(right - x - side - BESIDE)
                .add(Lettering.SMALL_BOLD, inverterName(subject))
                .add(
                        Lettering.SMALL,
                        List.of(
                                subject.say(subject.figures().inverter().continuous()),
                                Subject.orEmpty(subject.job().inverter().where())))
                .note();
        double text = Math.max(top + 10, centre + 2 - note.height() / 2);
        note.write(drawing, Anchor.START, x + side + BESIDE - 4, text);
        double foot = centre + side;
        double end = Math.max(foot + 10, text + note.height() + 4);
        drawing.wire(x, foot, x, end);
        symbols.tip(x, end + 3, 0, 1);
        drawing.text(Lettering.SMALL, Anchor.START, x + BESIDE, end + 2, subject.say("battery-side.on"));
        return end + 5;
    }

    static String inverterName(Subject subject) {
        String name = subject.job().inverter().name();
        return name == null ? subject.say("part.inverter") : name;
    }

    /** Cables that lie on neither way, each as a stretch of its own. */
    private double others(double top) {
        double y = top;
        drawing.seam(y + RUNG_APART / 2);
        for (RunFigures run : parts.others()) {
            Note note = Note.within(Drawing.WIDTH - 60)
                    .add(
                            Lettering.SMALL_BOLD,
                            List.of(run.cable().id(), run.rating().conductor().toString()))
                    .add(
                            Lettering.SMALL,
                            subject.say(
                                    "from-to", run.cable().from(), run.cable().to()))
                    .note();
            y += RUNG_APART;
            double middle = y + note.height() / 2;
            drawing.open("cable", run.cable().id());
            drawing.wire(PLUS, middle, 50, middle);
            drawing.joint(PLUS, middle);
            drawing.joint(50, middle);
            drawing.close();
            note.write(drawing, Anchor.START, 60, y);
            y += note.height();
        }
        return y;
    }

    /** What charges and what branches off, on a line from the bank; gives the lower edge. */
    private double chargers(double top) {
        double bus = right + 10;
        double from = top + 16;
        double y = from - RUNG_APART;
        double last = from;
        List<Charging> charging = subject.job().charging();
        List<FuseFigures> branches = parts.branches();
        if (charging.isEmpty() && branches.isEmpty()) {
            return top;
        }
        for (Charging charger : charging) {
            double notes = bus
                    + 16
                    + Symbols.HALF
                    + 6
                    + 24.0 * (charger.kind() == ChargeKind.SOLAR ? 1 : 0)
                    + 24.0 * (isolators(charger).isEmpty() ? 0 : 1)
                    + 24.0 * (ownFuse(charger).isPresent() ? 1 : 0);
            double room = charger.kind() == ChargeKind.SOLAR ? notes + 8 : notes;
            Note note = chargerNote(charger, Drawing.WIDTH - room);
            double half = Math.max(Symbols.HALF + 2, note.height() / 2);
            last = y + RUNG_APART + half;
            charger(charger, bus, last);
            note.writeAround(drawing, Anchor.START, room, last);
            y = last + half;
        }
        for (FuseFigures branch : branches) {
            Note note = branchNote(branch, Drawing.WIDTH - bus - 42);
            double half = Math.max(Symbols.HALF, note.height() / 2);
            last = y + RUNG_APART + half;
            drawing.wire(bus, last, bus + 6, last);
            symbols.fuse(bus + 6 + Symbols.REACH, last, Way.RIGHT, branch.id());
            drawing.wire(bus + 26, last, bus + 32, last);
            symbols.tip(bus + 36, last, 1, 0);
            drawing.joint(bus, last);
            note.writeAround(drawing, Anchor.START, bus + 42, last);
            y = last + half;
        }
        drawing.wire(right, from, bus, from, bus, last);
        drawing.joint(right, from);
        return y;
    }

    private List<Isolator> isolators(Charging charger) {
        return switch (charger.kind()) {
            case ALTERNATOR -> parts.isolatorsOf(Set.of("alternator"));
            case SOLAR -> parts.isolatorsOf(Set.of("solar"));
            case WIND -> parts.isolatorsOf(Set.of("wind"));
            case SHORE_CHARGER, GENERATOR -> List.of();
        };
    }

    private void charger(Charging charger, double bus, double y) {
        String of = parts.nameOf(charger);
        double x = bus + 16;
        drawing.joint(bus, y);
        drawing.wire(bus, y, x - Symbols.HALF, y);
        if (ownFuse(charger).isPresent()) {
            drawing.wire(x - Symbols.HALF, y, x - Symbols.REACH, y);
            symbols.fuse(x, y, Way.RIGHT, ownFuse(charger).get().id());
            drawing.wire(x + Symbols.REACH, y, x + 14, y);
            x += 24;
        }
        for (Isolator isolator : isolators(charger).stream().limit(1).toList()) {
            drawing.wire(x - Symbols.HALF, y, x - Symbols.REACH, y);
            symbols.isolator(x, y, Way.RIGHT, isolator.id());
            drawing.wire(x + Symbols.REACH, y, x + 14, y);
            x += 24;
        }
        switch (charger.kind()) {
            case SHORE_CHARGER, GENERATOR ->
                symbols.converter(x, y, Symbols.HALF, Current.AC, Current.DC, "charger", of);
            case ALTERNATOR -> symbols.machine(x, y, Current.DC, "alternator", of);
            case WIND -> symbols.machine(x, y, Current.AC, "wind", of);
            case SOLAR -> {
                symbols.converter(x, y, Symbols.HALF, Current.DC, Current.DC, "charger", of);
                drawing.wire(x + Symbols.HALF, y, x + 14, y);
                symbols.panels(x + 24, y, of);
            }
        }
    }

    /** The fuse drawn in its line; of several chargers on one fuse it is drawn in the first one's. */
    private Optional<FuseFigures> ownFuse(Charging charger) {
        return parts.fuseOf(charger).filter(fuse -> parts.chargers(fuse).get(0).equals(charger));
    }

    private Note chargerNote(Charging charger, double width) {
        Note.Builder note = Note.within(width).add(Lettering.SMALL_BOLD, parts.nameOf(charger));
        ownFuse(charger)
                .ifPresent(fuse -> note.add(
                        Lettering.SMALL,
                        List.of(
                                fuse.id(),
                                fuse.rating().map(subject::say).orElse(""),
                                fuse.family().map(subject.words()::term).orElse(""))));
        parts.fuseOf(charger)
                .filter(fuse -> ownFuse(charger).isEmpty())
                .ifPresent(fuse -> note.add(Lettering.SMALL, subject.say("through", fuse.id())));
        for (Isolator isolator : isolators(charger)) {
            note.add(Lettering.SMALL, List.of(isolator.id(), isolator.name()));
        }
        return note.add(
                        Lettering.SMALL,
                        List.of(
                                charger.peak() == null ? "" : subject.given(charger.peak()),
                                subject.given(charger.current()),
                                charger.cable() == null ? "" : subject.given(charger.cable())))
                .add(
                        Lettering.SMALL,
                        Parts.onMains(charger)
                                ? subject.say("from", subject.words().term(Parts.fedBy(charger)))
                                : "")
                .add(Lettering.SMALL, behind(charger.through()))
                .note();
    }

    private Note branchNote(FuseFigures branch, double width) {
        return Note.within(width)
                .add(
                        Lettering.SMALL_BOLD,
                        List.of(branch.id(), branch.rating().map(subject::say).orElse("")))
                .add(
                        Lettering.SMALL,
                        List.of(
                                branch.family().map(subject.words()::term).orElse(""),
                                branch.fuse() == null
                                        ? ""
                                        : subject.given(branch.fuse().conductor()),
                                branch.fuse() == null
                                        ? ""
                                        : subject.words().list(branch.fuse().protects())))
                .add(Lettering.SMALL, fed(branch))
                .add(
                        Lettering.SMALL,
                        branch.fuse() == null ? "" : behind(branch.fuse().through()))
                .note();
    }

    /** Which parts of the drawing carry its current too, for it is drawn at the bank; nothing where it is there. */
    private String behind(List<String> through) {
        List<String> named = Fuse.parts(through);
        return named.isEmpty() ? "" : subject.say("through", subject.words().list(named));
    }

    private String fed(FuseFigures branch) {
        return branch.fuse() == null || branch.fuse().feeds() == null
                ? subject.say("branch")
                : branch.fuse().feeds();
    }

    private List<String> description() {
        List<String> lines = new ArrayList<>();
        lines.add(subject.say(
                "battery-side.desc.bank",
                subject.say(layoutKey(), blocks, strings),
                subject.given(bankOfJob().block().voltage()),
                subject.given(bankOfJob().block().capacity())));
        if (strings > 1) {
            lines.add(subject.say("battery-side.desc.take-off", subject.words().term(takeOff())));
        }
        for (FuseFigures fuse : subject.figures().fuses()) {
            lines.add(subject.say(
                    "battery-side.desc.fuse",
                    fuse.fuse() == null ? subject.words().term(fuse.role()) : fuse.id(),
                    fuse.rating().map(subject::say).orElse("–")));
        }
        for (Isolator isolator : subject.job().isolators()) {
            if (drawnHere(isolator)) {
                lines.add(subject.say("battery-side.desc.isolator", isolator.id(), isolator.name()));
            }
        }
        List<RunFigures> runs = new ArrayList<>(parts.plus());
        runs.addAll(parts.minus());
        for (RunFigures run : runs) {
            lines.add(subject.say(
                    "battery-side.desc.cable",
                    run.cable().id(),
                    run.rating().conductor().toString(),
                    run.cable().from(),
                    run.cable().to()));
        }
        if (!subject.job().charging().isEmpty()) {
            lines.add(subject.say(
                    "battery-side.desc.chargers",
                    subject.job().charging().stream().map(parts::nameOf).toList()));
        }
        return lines;
    }

    private boolean drawnHere(Isolator isolator) {
        Set<String> here = new HashSet<>(Set.of("bank", "inverter", "alternator", "solar", "wind"));
        subject.job().cables().forEach(cable -> here.add(cable.id()));
        subject.job().fuses().forEach(fuse -> here.add(fuse.id()));
        return isolator.isolates().stream().anyMatch(here::contains);
    }
}
