package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Source;
import org.quaybook.pack.pictures.Drawing.Anchor;

/** The installation for its owner: a few boxes with their places, and arrows that say which way the power goes. */
final class SystemPicture {

    /** Sources of mains voltage and what only they feed. */
    private static final double LEFT = 1.5;

    private static final double LEFT_WIDTH = 122;

    /** The battery with all that hangs on it. */
    private static final double RIGHT = 150;

    private static final double RIGHT_WIDTH = Drawing.WIDTH - RIGHT - 1.5;

    /** The conductor from the sources of mains voltage downwards. */
    private static final double RAIL = LEFT + 11;

    private static final double CHARGER = LEFT + 36;
    private static final double GAP = 30;
    private static final double INSIDE = 6;
    private static final double APART = 6;

    private final Subject subject;
    private final Parts parts;

    SystemPicture(Subject subject, Parts parts) {
        this.subject = subject;
        this.parts = parts;
    }

    private record Box(String what, double x, double width, Note note) {

        static Box of(String what, double x, double width, String name, String... more) {
            Note.Builder note = Note.within(width - 2 * INSIDE).add(Lettering.NAME, name);
            for (String line : more) {
                note.add(Lettering.SMALL, line);
            }
            return new Box(what, x, width, note.note());
        }

        double height() {
            return note.height() + 2 * INSIDE;
        }

        double middle() {
            return x + width / 2;
        }

        void draw(Drawing drawing, double top, double height) {
            drawing.open("box", what);
            drawing.roundBox(
                    what.equals("battery") ? Pen.HEAVY : Pen.FINE,
                    drawing.look().tint(),
                    x,
                    top,
                    width,
                    height);
            note.write(drawing, Anchor.START, x + INSIDE, top + (height - note.height() + 2) / 2);
            drawing.close();
        }
    }

    String svg(String id) {
        Drawing drawing = new Drawing(id, subject.look());
        List<Box> mains = mains();
        List<Box> chargers = directSources();
        Box battery = Box.of(
                "battery",
                RIGHT,
                RIGHT_WIDTH,
                subject.say("part.battery"),
                subject.say(
                        "system.battery",
                        subject.say(subject.figures().bank().usableEnergy()),
                        subject.say(subject.figures().bank().reserve())),
                Subject.orEmpty(subject.job().bank().where()));
        Box inverter = inverter();
        double sources =
                tallest(Stream.concat(mains.stream(), chargers.stream()).toList());
        double y = 1.5;
        for (Box box : mains) {
            box.draw(drawing, y, sources);
        }
        for (Box box : chargers) {
            box.draw(drawing, y, sources);
        }
        double sourcesFoot = y + sources;
        double second = sourcesFoot + (mains.isEmpty() && chargers.isEmpty() ? 0 : GAP);
        List<Charging> onMains = subject.job().charging().stream()
                .filter(Parts::onMains)
                .filter(charging -> !mains.isEmpty())
                .toList();
        double batteryHeight = battery.height();
        if (!onMains.isEmpty()) {
            Box charger = chargerBox(onMains);
            batteryHeight = Math.max(batteryHeight, charger.height());
            charger.draw(drawing, second, batteryHeight);
            arrow(drawing, true, RAIL, second + batteryHeight / 2, CHARGER, second + batteryHeight / 2);
            arrow(drawing, false, LEFT + LEFT_WIDTH, second + batteryHeight / 2, RIGHT - 1, second + batteryHeight / 2);
        }
        battery.draw(drawing, second, batteryHeight);
        for (Box box : chargers) {
            arrow(drawing, false, box.middle(), sourcesFoot, box.middle(), second - 1);
        }
        double third = second + batteryHeight + GAP;
        inverter.draw(drawing, third, inverter.height());
        arrow(drawing, false, inverter.middle(), second + batteryHeight + 1, inverter.middle(), third);
        double into = third;
        Box fed = inverter;
        if (parts.changesOverOutside()) {
            Box changeover = changeoverBox();
            into = third + inverter.height() + GAP;
            changeover.draw(drawing, into, changeover.height());
            arrow(drawing, true, inverter.middle(), third + inverter.height(), inverter.middle(), into);
            fed = changeover;
        }
        double fourth = into + fed.height() + GAP;
        double foot = outlets(drawing, into + fed.height(), fourth, fed);
        rail(drawing, mains, sourcesFoot, second, into + fed.height() / 2, fourth);
        double height = legend(drawing, foot + 14);
        return drawing.svg(height, subject.say("system.title"), description(mains, chargers, onMains));
    }

    private static double tallest(List<Box> boxes) {
        return boxes.stream().mapToDouble(Box::height).max().orElse(0);
    }

    private List<Box> mains() {
        List<Box> boxes = new ArrayList<>();
        boolean both = parts.shore() && parts.generator();
        double width = both ? (LEFT_WIDTH - APART) / 2 : LEFT_WIDTH;
        if (subject.job().shore() != null) {
            boxes.add(Box.of(
                    "shore",
                    LEFT,
                    width,
                    subject.say("part.shore"),
                    Subject.orEmpty(subject.job().shore().where())));
        }
        if (parts.generator()) {
            boxes.add(Box.of(
                    "generator",
                    both ? LEFT + width + APART : LEFT,
                    width,
                    subject.say("part.generator"),
                    subject.job().generator() == null
                            ? ""
                            : Subject.orEmpty(subject.job().generator().where())));
        }
        return boxes;
    }

    /** Side by side, or in one box where their names would be broken. */
    private List<Box> directSources() {
        List<Charging> direct = subject.job().charging().stream()
                .filter(charging -> !Parts.onMains(charging))
                .toList();
        double width = (RIGHT_WIDTH - APART * (direct.size() - 1)) / Math.max(1, direct.size());
        if (direct.stream()
                .anyMatch(charging -> !Lettering.NAME.wrapsWords(parts.nameOf(charging), width - 2 * INSIDE))) {
            return List.of(new Box("charging", RIGHT, RIGHT_WIDTH, listed(direct, RIGHT_WIDTH)));
        }
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < direct.size(); i++) {
            boxes.add(Box.of(
                    "charging",
                    RIGHT + i * (width + APART),
                    width,
                    parts.nameOf(direct.get(i)),
                    current(direct.get(i))));
        }
        return boxes;
    }

    private String current(Charging charging) {
        return charging.peak() == null ? subject.given(charging.current()) : subject.given(charging.peak());
    }

    /** One charger: its name and, in small letters, what else is to be said. */
    private record Entry(String name, List<String> more) {}

    /** What charges, each with its name; of more than a box has room for, the rest by their number. */
    private Note listed(List<Charging> chargers, double width) {
        List<Entry> entries = chargers.stream()
                .map(charging -> new Entry(parts.nameOf(charging), details(charging)))
                .toList();
        boolean all = entries.size() <= MOST_LISTED;
        Note.Builder note = Note.within(width - 2 * INSIDE);
        for (Entry entry : all ? entries : entries.subList(0, MOST_LISTED - 1)) {
            note.add(Lettering.NAME, entry.name());
            entry.more().forEach(line -> note.add(Lettering.SMALL, line));
        }
        return all
                ? note.note()
                : note.add(Lettering.SMALL, subject.say("system.more", entries.size() - MOST_LISTED + 1))
                        .note();
    }

    /** The picture is for a glance; all of them stand in the guide. */
    private static final int MOST_LISTED = 5;

    private List<String> details(Charging charging) {
        boolean choice = Parts.onMains(charging) && parts.shore() && parts.generator();
        return choice && Parts.fedBy(charging) == Source.SHORE
                ? List.of(current(charging), subject.say("system.charger.shore-only"))
                : List.of(current(charging));
    }

    private Box chargerBox(List<Charging> chargers) {
        double width = LEFT + LEFT_WIDTH - CHARGER;
        return new Box("charger", CHARGER, width, listed(chargers, width));
    }

    private Box inverter() {
        String changes = parts.changesOver() && !parts.changesOverOutside() ? changesOver() : "";
        return Box.of(
                "inverter",
                RIGHT,
                RIGHT_WIDTH,
                inverterName(),
                subject.say(
                        "system.inverter",
                        subject.say(subject.figures().inverter().continuous())),
                changes,
                Subject.orEmpty(subject.job().inverter().where()));
    }

    /** A changeover beside the inverter takes either of two sources. */
    private Box changeoverBox() {
        return Box.of("changeover", RIGHT, RIGHT_WIDTH, subject.say("mains-side.changeover"), changesOver());
    }

    private String changesOver() {
        return subject.say((parts.shore() ? "system.changeover." : "system.changeover.generator.")
                + (parts.changeover().orElseThrow() == ChangeoverKind.MANUAL ? "manual" : "automatic"));
    }

    private String inverterName() {
        String name = subject.job().inverter().name();
        return name == null ? subject.say("part.inverter") : name;
    }

    private List<String> onInverter() {
        List<String> outlets = parts.inverterOutlets();
        return outlets.isEmpty() ? circuits(Source.INVERTER) : outlets;
    }

    private List<String> onShoreOnly() {
        List<String> outlets = parts.shoreOutlets();
        return outlets.isEmpty() ? circuits(Source.SHORE) : outlets;
    }

    private List<String> circuits(Source source) {
        return subject.job().acCircuits().stream()
                .filter(circuit ->
                        circuit.source().known().filter(source::equals).isPresent())
                .map(AcCircuit::name)
                .toList();
    }

    /** The lowest row; gives the lower edge. */
    private double outlets(Drawing drawing, double inverterFoot, double top, Box inverter) {
        List<Box> boxes = new ArrayList<>();
        List<String> fed = onInverter();
        if (!fed.isEmpty()) {
            boxes.add(Box.of("on-inverter", RIGHT, RIGHT_WIDTH, subject.say("system.on-inverter"), subject.some(fed)));
        }
        List<String> only = onShoreOnly();
        if (!only.isEmpty() && (parts.shore() || parts.generatorFeeds())) {
            boxes.add(Box.of(
                    "shore-only",
                    LEFT,
                    LEFT_WIDTH,
                    subject.say(
                            !parts.shore()
                                    ? "system.generator-only"
                                    : parts.generatorFeedsTheRest()
                                            ? "system.shore-or-generator"
                                            : "system.shore-only"),
                    subject.some(only)));
        }
        double height = tallest(boxes);
        boxes.forEach(box -> box.draw(drawing, top, height));
        if (!fed.isEmpty()) {
            arrow(drawing, true, inverter.middle(), inverterFoot, inverter.middle(), top);
        }
        return boxes.isEmpty() ? inverterFoot : top + height;
    }

    /** From the sources of mains voltage down to what they feed. */
    private void rail(Drawing drawing, List<Box> mains, double from, double second, double inverter, double outlets) {
        if (mains.isEmpty()) {
            return;
        }
        boolean only = !onShoreOnly().isEmpty() && (parts.shore() || parts.generatorFeeds());
        double charger = parts.mainsChargers(Source.SHORE).isEmpty()
                        && parts.mainsChargers(Source.GENERATOR).isEmpty()
                ? from
                : second;
        if (parts.changesOver()) {
            arrow(drawing, true, RAIL, inverter, RIGHT, inverter);
        }
        if (only) {
            arrow(drawing, true, RAIL, from, RAIL, outlets);
        } else if (parts.changesOver()) {
            drawing.wire(RAIL, from, RAIL, inverter);
        } else if (charger > from) {
            drawing.wire(RAIL, from, RAIL, charger + CHARGER_DEPTH);
        }
        if (mains.size() > 1) {
            double joint = from + GAP * 0.45;
            drawing.wire(mains.get(1).middle(), from, mains.get(1).middle(), joint, RAIL, joint);
            drawing.joint(RAIL, joint);
        }
    }

    private static final double CHARGER_DEPTH = 14;

    /** Battery current is a thick line; mains voltage a thin one that wears a wave. */
    private void arrow(Drawing drawing, boolean mains, double x, double y, double toX, double toY) {
        boolean down = toY > y;
        double tipX = down ? toX : toX - 4;
        double tipY = down ? toY - 4 : toY;
        drawing.open("arrow", mains ? "mains" : "battery");
        if (mains) {
            drawing.wire(x, y, tipX, tipY);
            Symbols symbols = new Symbols(drawing);
            symbols.tip(toX, toY, down ? 0 : 1, down ? 1 : 0);
            badge(drawing, symbols, down ? x : (x + toX) / 2, down ? toY - GAP / 2 : y);
        } else {
            drawing.line(Pen.HEAVY, drawing.look().main(), x, y, tipX - (down ? 0 : 2), tipY - (down ? 2 : 0));
            double size = 7;
            drawing.shape(
                    Pen.HAIR,
                    drawing.look().main(),
                    toX,
                    toY,
                    down ? toX - size / 2 : toX - size,
                    down ? toY - size : toY - size / 2,
                    down ? toX + size / 2 : toX - size,
                    down ? toY - size : toY + size / 2);
        }
        drawing.close();
    }

    private static void badge(Drawing drawing, Symbols symbols, double x, double y) {
        drawing.circle(Pen.FINE, Look.GROUND, x, y, 5);
        symbols.wave(x, y, 3.2);
    }

    private double legend(Drawing drawing, double top) {
        double middle = top + 4;
        arrow(drawing, false, LEFT, middle, LEFT + 24, middle);
        String battery = subject.say("system.legend.battery");
        drawing.text(Lettering.SMALL, Anchor.START, LEFT + 30, middle + 2.8, battery);
        double next = LEFT + 30 + Lettering.SMALL.width(battery) + 20;
        Note mains = Note.within(Drawing.WIDTH - next - 30)
                .add(
                        Lettering.SMALL,
                        subject.say(
                                "system.legend.mains",
                                subject.given(subject.job().inverter().output().voltage())))
                .note();
        arrow(drawing, true, next, middle, next + 24, middle);
        mains.write(drawing, Anchor.START, next + 30, middle + 2.8 - Lettering.SMALL.capitals());
        return Math.max(middle + 9, middle + 2.8 - Lettering.SMALL.capitals() + mains.height() + 2);
    }

    private List<String> description(List<Box> mains, List<Box> chargers, List<Charging> onMains) {
        List<String> lines = new ArrayList<>();
        if (!chargers.isEmpty()) {
            lines.add(subject.say(
                    "system.desc.charging",
                    subject.job().charging().stream()
                            .filter(charging -> !Parts.onMains(charging))
                            .map(parts::nameOf)
                            .toList()));
        }
        if (!onMains.isEmpty()) {
            lines.add(subject.say(
                    "system.desc.charger", onMains.stream().map(parts::nameOf).toList()));
        }
        lines.add(subject.say(
                "system.desc.inverter",
                subject.say(subject.figures().bank().usableEnergy()),
                inverterName(),
                subject.say(subject.figures().inverter().continuous())));
        if (!onInverter().isEmpty()) {
            lines.add(subject.say("system.desc.on-inverter", onInverter()));
        }
        if (!mains.isEmpty() && parts.changesOver()) {
            lines.add(subject.say(parts.shore() ? "system.desc.through" : "system.desc.through.generator"));
        }
        if (!onShoreOnly().isEmpty() && parts.shore()) {
            lines.add(subject.say(
                    parts.generatorFeedsTheRest() ? "system.desc.shore-or-generator" : "system.desc.shore-only",
                    onShoreOnly()));
        }
        return lines;
    }
}
