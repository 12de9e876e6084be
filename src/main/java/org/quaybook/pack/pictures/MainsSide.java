package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Bypass;
import org.quaybook.job.Changeover;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.NeutralBond;
import org.quaybook.job.Rcd;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.pack.pictures.Parts.Group;
import org.quaybook.pack.pictures.Symbols.Current;
import org.quaybook.pack.pictures.Symbols.Way;
import org.quaybook.record.TransformerWords;

/**
 * How the mains-voltage side is wired, as a single-line diagram: the inverter at the left, what comes from outside at the
 * right, the changeover where they meet, and below it the circuits behind their RCDs and breakers.
 *
 * <p>A breaker and a switch that both cut the shore inlet are drawn as one symbol with both names: the job does not say
 * whether they are one device. Where shore power and a generator both feed, the job does not say what chooses between
 * them; the picture says so.
 */
final class MainsSide {

    private static final double FEEDER = 24;
    private static final double RAIL = 316;
    private static final double BESIDE = 13;
    private static final double SIDE_WIDTH = 122;
    private static final double INVERTER = 18;
    private static final double BUS = 72;
    private static final double BREAKER = BUS + 8 + Symbols.REACH;
    private static final double CIRCUIT = BREAKER + Symbols.REACH + 14;
    private static final double ROW_APART = 6;
    private static final double LEAST_ROW = 13;
    private static final double CIRCUITS_APART = 6;

    /** Of more circuits than these, each has one line only. */
    private static final int MOST_WITH_TWO_LINES = 7;

    private final Subject subject;
    private final Parts parts;
    private final Drawing drawing;
    private final Symbols symbols;
    private final boolean railBeside;

    MainsSide(Subject subject, Parts parts, String id) {
        this.subject = subject;
        this.parts = parts;
        this.drawing = new Drawing(id, subject.look());
        this.symbols = new Symbols(drawing);
        this.railBeside = !parts.groups(Source.SHORE).isEmpty();
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
        double left = inverter();
        double rail = outside();
        double foot = Math.max(rail, circuits(meeting(left, rail), rail));
        return new TallDrawing(subject, drawing, foot + 2)
                .svgs(tallest, subject.say("mains-side.title"), description());
    }

    private double meeting(double left, double rail) {
        return parts.changesOver() ? changeover(left, rail) : left;
    }

    private double circuits(double feeder, double rail) {
        double y = groups(parts.groups(Source.INVERTER), FEEDER, feeder, feeder + 4, parts.inverterOutlets());
        List<Group> shore = parts.groups(Source.SHORE);
        if (!shore.isEmpty()) {
            double turn = Math.max(y + 14, rail + 6);
            drawing.wire(RAIL, rail, RAIL, turn, feeder(shore), turn);
            drawing.text(
                    Lettering.SMALL,
                    Anchor.END,
                    RAIL - 6,
                    turn - 3,
                    subject.say(
                            !parts.shore()
                                    ? "mains-side.generator-only"
                                    : parts.generatorFeedsTheRest()
                                            ? "mains-side.shore-or-generator"
                                            : "mains-side.shore-only"));
            y = groups(shore, feeder(shore), turn, turn + 2, parts.shoreOutlets());
        }
        List<Group> generator = parts.groups(Source.GENERATOR);
        if (!generator.isEmpty()) {
            double top = y + 14;
            symbols.machine(FEEDER, top + Symbols.HALF, Current.AC, "generator", "generator");
            y = groups(generator, FEEDER, top + 2 * Symbols.HALF, top + 2 + 2 * Symbols.HALF, List.of());
        }
        return y;
    }

    /** The inverter with its bond; gives where its conductor ends. */
    private double inverter() {
        drawing.text(
                Lettering.SMALL,
                Anchor.START,
                FEEDER + BESIDE,
                Lettering.SMALL.capitals(),
                subject.say("mains-side.from"));
        drawing.wire(FEEDER, 0, FEEDER, 8);
        symbols.tip(FEEDER, 11, 0, 1);
        double centre = 12 + INVERTER;
        symbols.converter(FEEDER, centre, INVERTER, Current.DC, Current.AC, "inverter", "inverter");
        Note.within(SIDE_WIDTH - 20)
                .add(Lettering.SMALL_BOLD, BatterySide.inverterName(subject))
                .add(
                        Lettering.SMALL,
                        List.of(
                                subject.say(subject.figures().inverter().continuous()),
                                subject.given(subject.job().inverter().output().voltage()),
                                subject.given(subject.job().inverter().output().frequency())))
                .note()
                .writeAround(drawing, Anchor.START, FEEDER + INVERTER + 8, centre + 2);
        double y = centre + INVERTER;
        return bond(subject.job().inverter().neutralBond(), FEEDER, y, "inverter", "bond.");
    }

    /** Where neutral and earth are tied: a link from the conductor to earth, open or closed. */
    private double bond(@Nullable Given<NeutralBond> given, double x, double y, String of, String key) {
        Optional<NeutralBond> bond = Given.maybe(given);
        String words = bond.map(kind ->
                        subject.say(key + kind.name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .orElseGet(() -> subject.say("bond.unknown"));
        Note note = Note.within(SIDE_WIDTH - 14).add(Lettering.SMALL, words).note();
        double middle = y + 12;
        double next = y + Math.max(26, note.height() + 10);
        drawing.wire(x, y, x, next);
        double notes = x + 14;
        if (bond.isPresent() && bond.get() != NeutralBond.NONE) {
            drawing.open("bond", of);
            drawing.joint(x, middle);
            if (bond.get() == NeutralBond.INVERTER_ONLY) {
                drawing.line(Pen.EARTH, x, middle, x + 8, middle);
                drawing.line(Pen.WIRE, x + 16, middle, x + 8, middle - 5);
                drawing.line(Pen.EARTH, x + 17, middle, x + 24, middle, x + 24, middle + 5);
            } else {
                drawing.line(Pen.EARTH, x, middle, x + 24, middle, x + 24, middle + 5);
            }
            symbols.earth(x + 24, middle + 5, of);
            drawing.close();
            notes = x + 36;
        }
        note.write(drawing, Anchor.START, notes, middle - 5);
        return next;
    }

    /** What comes from outside, down the right edge; gives where its conductor ends. */
    private double outside() {
        if (!parts.shore() && !parts.generator()) {
            return 0;
        }
        Shore shore = subject.job().shore();
        boolean both = shore != null && parts.generator();
        Ladder rail = new Ladder(drawing, symbols, RAIL, 0, RAIL - BESIDE, Anchor.END);
        if (shore != null) {
            shore(rail, shore);
            chargers(rail, Source.SHORE);
            if (both) {
                second(rail);
            }
        } else {
            generator(rail, SIDE_WIDTH);
            chargers(rail, Source.GENERATOR);
        }
        boolean goesOn = parts.changesOver() || !parts.groups(Source.SHORE).isEmpty();
        if (goesOn) {
            rail.run(4);
        }
        return rail.y();
    }

    private void shore(Ladder rail, Shore shore) {
        rail.symbol(
                (x, y) -> symbols.inlet(x, y, "shore"),
                Note.within(SIDE_WIDTH)
                        .add(
                                Lettering.SMALL_BOLD,
                                List.of(subject.say("mains-side.inlet"), subject.given(shore.inlet())))
                        .add(
                                Lettering.SMALL,
                                List.of(
                                        subject.given(shore.cable()),
                                        Subject.orEmpty(shore.where()),
                                        Given.isYes(shore.galvanicIsolator())
                                                ? subject.say("mains-side.galvanic")
                                                : ""))
                        .note());
        List<Isolator> isolators = parts.isolatorsOf(Set.of("shore"));
        String names = String.join(
                " · ",
                isolators.stream()
                        .map(isolator -> isolator.id() + " · " + isolator.name())
                        .toList());
        if (shore.breaker() != null) {
            rail.breaker(
                    isolators.isEmpty() ? "shore" : isolators.get(0).id(),
                    Note.within(SIDE_WIDTH)
                            .add(
                                    Lettering.SMALL_BOLD,
                                    List.of(
                                            names.isEmpty() ? subject.say("mains-side.breaker") : names,
                                            subject.given(shore.breaker())))
                            .note());
        } else {
            for (Isolator isolator : isolators) {
                rail.isolator(isolator.id(), isolatorNote(isolator, SIDE_WIDTH));
            }
        }
        if (shore.transformer() != null) {
            rail.symbol(
                    (x, y) -> symbols.transformer(x, y, "shore"),
                    Note.within(SIDE_WIDTH)
                            .add(Lettering.SMALL_BOLD, subject.say("mains-side.transformer"))
                            .add(Lettering.SMALL, TransformerWords.neutral(shore, subject.words()))
                            .note());
        }
        parts.shoreRcd().ifPresent(rcd -> rail.rcd(rcd.id(), rcdNote(rcd, SIDE_WIDTH)));
    }

    private Note isolatorNote(Isolator isolator, double width) {
        return Note.within(width)
                .add(Lettering.SMALL_BOLD, List.of(isolator.id(), isolator.name()))
                .add(Lettering.SMALL, isolator.where())
                .note();
    }

    private Note rcdNote(Rcd rcd, double width) {
        return Note.within(width)
                .add(
                        Lettering.SMALL_BOLD,
                        List.of(
                                rcd.id(),
                                subject.given(rcd.rating()),
                                subject.say("mains-side.type", subject.given(rcd.type()))))
                .add(Lettering.SMALL, Subject.orEmpty(rcd.where()))
                .note();
    }

    private void generator(Ladder ladder, double width) {
        Generator generator = subject.job().generator();
        Note.Builder note = Note.within(width).add(Lettering.SMALL_BOLD, subject.say("part.generator"));
        if (generator != null) {
            note.add(Lettering.SMALL, List.of(subject.given(generator.power()), Subject.orEmpty(generator.where())));
            note.add(Lettering.SMALL, generatorBond(generator));
        }
        ladder.begin((x, y) -> symbols.machine(x, y, Current.AC, "generator", "generator"), note.note());
        for (Isolator isolator : parts.isolatorsOf(Set.of("generator"))) {
            ladder.isolator(isolator.id(), isolatorNote(isolator, width));
        }
    }

    private String generatorBond(Generator generator) {
        return Given.maybe(generator.neutralBond())
                .map(bond -> subject.say(bond == NeutralBond.ALWAYS ? "bond.generator.always" : "bond.generator.none"))
                .orElse("");
    }

    /** The generator beside the shore power, and where one of them is chosen. */
    private void second(Ladder rail) {
        double x = 196;
        Ladder generator = new Ladder(drawing, symbols, x, rail.y() + 6, x - BESIDE, Anchor.END);
        generator(generator, SIDE_WIDTH);
        chargers(generator, Source.GENERATOR);
        boolean feeds = parts.generatorFeeds();
        if (!feeds) {
            rail.runTo(generator.y());
            return;
        }
        double choice = generator.y() + 12 + Symbols.REACH;
        rail.runTo(choice - Symbols.REACH);
        drawing.wire(
                x,
                generator.y(),
                x,
                choice - Symbols.REACH - 4,
                RAIL - 9,
                choice - Symbols.REACH - 4,
                RAIL - 9,
                choice - Symbols.REACH);
        symbols.choice(RAIL, choice, RAIL - 9, "shore generator");
        Note.within(SIDE_WIDTH + 30)
                .add(
                        Lettering.SMALL,
                        subject.say(parts.generatorChoiceKnown() ? "mains-side.choice-known" : "mains-side.choice"))
                .note()
                .write(drawing, Anchor.END, RAIL - 2 * BESIDE, choice - 8);
        rail.skipTo(choice + Symbols.REACH);
        rail.run(8);
    }

    private void chargers(Ladder ladder, Source source) {
        for (Charging charging : parts.mainsChargers(source)) {
            double x = ladder.x() - 30;
            Note note = Note.within(SIDE_WIDTH - 20)
                    .add(Lettering.SMALL_BOLD, List.of(parts.nameOf(charging), subject.given(charging.current())))
                    .add(Lettering.SMALL, subject.say("mains-side.to-bank"))
                    .note();
            double half = Math.max(Symbols.HALF + 2, note.height() / 2) + 4;
            double y = ladder.y() + half;
            ladder.run(half);
            drawing.joint(ladder.x(), y);
            drawing.wire(ladder.x(), y, x + Symbols.HALF, y);
            symbols.converter(x, y, Symbols.HALF, Current.AC, Current.DC, "charger", parts.nameOf(charging));
            drawing.wire(x - Symbols.HALF, y, x - Symbols.HALF - 5, y);
            symbols.tip(x - Symbols.HALF - 9, y, -1, 0);
            note.writeAround(drawing, Anchor.END, x - Symbols.HALF - 13, y);
            ladder.run(half);
        }
    }

    /** Where inverter and outside meet; gives where the conductor to the circuits begins. */
    private double changeover(double left, double rail) {
        double y = Math.max(left, rail) + Symbols.REACH + 6;
        Changeover changeover = subject.job().inverter().changeover();
        boolean byHand =
                parts.changeover().filter(ChangeoverKind.MANUAL::equals).isPresent();
        double feed = y - Symbols.REACH;
        drawing.wire(FEEDER, left, FEEDER, feed);
        drawing.wire(RAIL, rail, RAIL, feed, FEEDER + 9, feed);
        if (!parts.groups(Source.SHORE).isEmpty()) {
            drawing.joint(RAIL, feed);
        }
        symbols.changeover(FEEDER, y, FEEDER + 9, byHand, "changeover");
        Note note = Note.within(SIDE_WIDTH + 20)
                .add(
                        Lettering.SMALL_BOLD,
                        List.of(
                                subject.say("mains-side.changeover"),
                                parts.changeover().map(subject.words()::term).orElse("")))
                .add(
                        Lettering.SMALL,
                        List.of(
                                changeover == null ? "" : subject.given(changeover.time()),
                                subject.job().inverter().passThrough() == null
                                        ? ""
                                        : subject.say(
                                                "mains-side.carries",
                                                subject.given(
                                                        subject.job().inverter().passThrough()))))
                .note();
        note.write(drawing, Anchor.START, FEEDER + 20, y - 4);
        double next = y + Math.max(Symbols.REACH, note.height() + 2);
        drawing.wire(FEEDER, y + Symbols.REACH, FEEDER, next);
        return bypass(feed, next);
    }

    private double bypass(double feed, double y) {
        Bypass bypass = subject.job().inverter().bypass();
        if (bypass == null) {
            return y;
        }
        double x = FEEDER + SIDE_WIDTH + 50;
        double middle = feed + 8 + Symbols.REACH;
        double joined = Math.max(y, middle + Symbols.REACH) + 5;
        drawing.joint(x, feed);
        drawing.wire(x, feed, x, middle - Symbols.REACH);
        symbols.isolator(x, middle, Way.DOWN, "bypass");
        drawing.wire(x, middle + Symbols.REACH, x, joined, FEEDER, joined);
        drawing.joint(FEEDER, joined);
        drawing.wire(FEEDER, y, FEEDER, joined);
        Note.within(RAIL - x - 2 * BESIDE)
                .add(Lettering.SMALL_BOLD, subject.say("mains-side.bypass"))
                .add(Lettering.SMALL, bypass.where())
                .note()
                .writeAround(drawing, Anchor.START, x + BESIDE, middle + 2);
        return joined;
    }

    /** Without an RCD of their own, circuits need no conductor before their bus. */
    private static double feeder(List<Group> groups) {
        return groups.stream().anyMatch(group -> group.rcd().isPresent()) ? FEEDER : BUS;
    }

    /** Groups of circuits on a feeder; gives the lower edge. */
    private double groups(List<Group> groups, double feeder, double from, double top, List<String> outlets) {
        double y = top;
        double last = from;
        for (Group group : groups) {
            drawing.seam(y + ROW_APART / 2);
            Note head = group.rcd()
                    .map(rcd -> rcdNote(rcd, labelWidth(BUS + 8)))
                    .orElseGet(() -> Note.within(labelWidth(BUS + 8)).note());
            double row = y + ROW_APART + Math.max(Symbols.REACH, head.height() / 2);
            last = row;
            if (group.rcd().isPresent()) {
                drawing.wire(feeder, row, feeder + 8, row);
                symbols.rcd(
                        feeder + 8 + Symbols.REACH,
                        row,
                        Way.RIGHT,
                        group.rcd().get().id());
                drawing.wire(feeder + 8 + 2 * Symbols.REACH + 6, row, BUS, row);
                head.writeAround(drawing, Anchor.START, BUS + 8, row);
                y = row + Math.max(Symbols.REACH, head.height() / 2) + 3;
            } else {
                drawing.wire(feeder, row, BUS, row);
                y = row - 6;
            }
            y = circuits(group, row, y);
        }
        if (last > from) {
            drawing.wire(feeder, from, feeder, last);
        }
        return outlets.isEmpty() || groups.isEmpty() ? y : outlets(outlets, y);
    }

    private double labelWidth(double from) {
        return (railBeside ? RAIL - 8 : Drawing.WIDTH) - from;
    }

    private double circuits(Group group, double busFrom, double top) {
        double y = top;
        double last = busFrom;
        for (AcCircuit circuit : group.circuits()) {
            List<Isolator> isolators = parts.isolatorsOf(Set.of(circuit.id()));
            double notes = CIRCUIT + (isolators.isEmpty() ? 0 : 2 * Symbols.REACH + 2);
            Note note = circuitNote(circuit, isolators, labelWidth(notes));
            double half = Math.max(LEAST_ROW / 2, note.height() / 2);
            double row = y + CIRCUITS_APART + half;
            drawing.wire(BUS, row, BREAKER - Symbols.REACH, row);
            symbols.breaker(BREAKER, row, Way.RIGHT, circuit.id());
            double x = BREAKER + Symbols.REACH;
            for (Isolator isolator : isolators.stream().limit(1).toList()) {
                symbols.isolator(x + 2 + Symbols.REACH, row, Way.RIGHT, isolator.id());
                drawing.wire(x, row, x + 2, row);
                x += 2 + 2 * Symbols.REACH;
            }
            drawing.wire(x, row, x + 5, row);
            symbols.tip(x + 9, row, 1, 0);
            note.writeAround(drawing, Anchor.START, notes, row);
            last = row;
            y = row + half;
        }
        drawing.wire(BUS, busFrom, BUS, last);
        return y;
    }

    private Note circuitNote(AcCircuit circuit, List<Isolator> isolators, double width) {
        List<String> details = List.of(
                subject.given(circuit.breaker()),
                circuit.curve() == null ? "" : subject.say("mains-side.curve", subject.given(circuit.curve())),
                circuit.cable() == null ? "" : subject.given(circuit.cable()));
        Note.Builder note = Note.within(width);
        String name = circuit.id() + " · " + circuit.name();
        if (subject.job().acCircuits().size() > MOST_WITH_TWO_LINES) {
            List<String> line = new ArrayList<>(List.of(name));
            isolators.forEach(isolator -> line.add(isolator.id()));
            line.addAll(details);
            return note.add(Lettering.SMALL, line).note();
        }
        note.add(Lettering.SMALL_BOLD, name);
        for (Isolator isolator : isolators) {
            note.add(Lettering.SMALL, List.of(isolator.id(), isolator.name()));
        }
        return note.add(Lettering.SMALL, details).note();
    }

    /** Outlets that hang on the circuits above; on which of them, the job does not say. */
    private double outlets(List<String> outlets, double top) {
        Note note = Note.within(labelWidth(CIRCUIT))
                .add(Lettering.SMALL, subject.say("mains-side.outlets", subject.some(outlets)))
                .note();
        double half = Math.max(8, note.height() / 2);
        double row = top + 5 + half;
        drawing.line(Pen.LINK, Look.INK, BUS, top, BUS, row, BREAKER + 2, row);
        symbols.outlet(BREAKER + 4, row, "outlets");
        note.writeAround(drawing, Anchor.START, CIRCUIT, row);
        return row + half;
    }

    private List<String> description() {
        List<String> lines = new ArrayList<>();
        lines.add(subject.say(
                "mains-side.desc",
                BatterySide.inverterName(subject),
                subject.say(subject.figures().inverter().continuous())));
        Shore shore = subject.job().shore();
        if (shore != null) {
            lines.add(subject.say("mains-side.desc.shore", subject.given(shore.inlet())));
            if (shore.transformer() != null) {
                lines.add(subject.say("mains-side.desc.transformer", TransformerWords.neutral(shore, subject.words())));
            }
        }
        if (parts.generator()) {
            lines.add(subject.say("mains-side.desc.generator"));
        }
        if (parts.changesOver()) {
            lines.add(subject.say(
                    "mains-side.desc.changeover",
                    parts.changeover().map(subject.words()::term).orElse("")));
        }
        Set<Isolator> named = new HashSet<>();
        for (Isolator isolator : isolators()) {
            if (named.add(isolator)) {
                lines.add(subject.say("battery-side.desc.isolator", isolator.id(), isolator.name()));
            }
        }
        for (Rcd rcd : subject.job().rcds()) {
            lines.add(subject.say("mains-side.desc.rcd", rcd.id(), subject.given(rcd.rating())));
        }
        for (AcCircuit circuit : subject.job().acCircuits()) {
            lines.add(subject.say(
                    "mains-side.desc.circuit",
                    circuit.id(),
                    circuit.name(),
                    subject.given(circuit.breaker()),
                    subject.given(circuit.source())));
        }
        return lines;
    }

    private List<Isolator> isolators() {
        Set<String> here = new HashSet<>(Set.of("shore", "generator"));
        subject.job().acCircuits().forEach(circuit -> here.add(circuit.id()));
        return parts.isolatorsOf(here);
    }
}
