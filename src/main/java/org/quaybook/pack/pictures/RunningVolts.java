package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.BankFigures.RestRow;
import org.quaybook.figures.Figure;
import org.quaybook.figures.InverterFigures;
import org.quaybook.pack.pictures.Chart.Series;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;

/** Volts against charge, at rest and while heavy appliances run: why the inverter cuts out while the meter reads full. */
final class RunningVolts {

    private static final double TOP = 20;
    private static final double FIELD = 156;

    /** A second appliance takes a part of the first one's power between these: nearer curves would be one. */
    private static final double LEAST_PART = 0.2;

    private static final double MOST_PART = 0.7;

    /** How far below the reserve the picture goes on. */
    private static final double BELOW = 0.10;

    private static final int TICKS = 6;

    private final Subject subject;
    private final BankFigures bank;
    private final InverterFigures inverter;

    RunningVolts(Subject subject) {
        this.subject = subject;
        this.bank = subject.figures().bank();
        this.inverter = subject.figures().inverter();
    }

    /** Empty if no appliance runs. */
    Optional<String> svg(String id) {
        List<ApplianceFigures> loads = loads();
        return loads.isEmpty() ? Optional.empty() : Optional.of(draw(id, loads));
    }

    /** The one that sets off the alarm first, and the heaviest of those light enough to have a curve of its own. */
    private List<ApplianceFigures> loads() {
        List<ApplianceFigures> all = subject.figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .filter(load -> load.runningVoltage().isPresent())
                .sorted(Comparator.comparingDouble((ApplianceFigures load) -> -load.alarmBelow()
                                .map(at -> at.value().fraction())
                                .orElse(2.0))
                        .thenComparing(load -> -load.power().value().watts()))
                .toList();
        List<ApplianceFigures> drawn = new ArrayList<>(all.subList(0, Math.min(1, all.size())));
        all.stream()
                .filter(load -> {
                    double part =
                            load.power().value().ratioTo(drawn.get(0).power().value());
                    return part >= LEAST_PART && part <= MOST_PART;
                })
                .max(Comparator.comparing(load -> load.power().value()))
                .ifPresent(drawn::add);
        return drawn;
    }

    private String draw(String id, List<ApplianceFigures> loads) {
        double last = Math.max(0, bank.reserve().value().fraction() - BELOW);
        List<double[]> rest = new ArrayList<>();
        bank.restTable().stream()
                .filter(row -> row.stateOfCharge().compareTo(bank.reserve().value()) > 0)
                .forEach(row -> rest.add(point(row)));
        rest.add(new double[] {
            bank.reserve().value().fraction(), bank.restAtReserve().value().volts()
        });
        double lowest = Math.min(inverter.cutOut().value().volts(), lowest(loads));
        double highest = bank.restFull().value().volts();
        double step = Scale.step(highest - lowest, TICKS);
        double floor = Math.floor((lowest - step / 4) / step) * step;
        double roof = Math.ceil(highest / step - 1e-9) * step;
        Drawing drawing = new Drawing(id, subject.look());
        Chart chart = new Chart(drawing, TOP, TOP + FIELD, 1, last, floor, roof);
        chart.shadeFrom(bank.reserve().value().fraction(), subject.say("curve.reserve", subject.say(bank.reserve())));
        for (double volts : chart.up().ticks(step)) {
            chart.tickUp(volts, volts(volts, step));
        }
        for (double charge : chart.across().ticks(0.1)) {
            if (Math.round(charge * 10) % 2 == 0) {
                chart.tickAcross(charge, subject.words().word(new Ratio(charge)));
            }
        }
        chart.captionAcross(subject.say("running.across"));
        chart.frame();
        chart.limit(
                Pen.LIMIT_DASHED,
                "alarm",
                inverter.alarm().value().volts(),
                Chart.name()
                        .add(Lettering.SMALL, subject.say("running.alarm", subject.say(inverter.alarm())))
                        .note());
        chart.limit(
                Pen.CURVE,
                "cut-out",
                inverter.cutOut().value().volts(),
                Chart.name()
                        .add(Lettering.SMALL, subject.say("running.cut-out", subject.say(inverter.cutOut())))
                        .note());
        chart.curve(
                Series.FIRST,
                "rest",
                rest,
                Chart.name()
                        .add(Lettering.SMALL_BOLD, subject.say("running.rest"))
                        .note());
        for (int i = 0; i < loads.size(); i++) {
            curve(chart, i == 0 ? Series.SECOND : Series.THIRD, loads.get(i));
        }
        double foot = chart.writeNames(TOP);
        double height = Math.max(foot, TOP + FIELD + Chart.CAPTION_BELOW) + 3;
        return drawing.svg(height, subject.say("running.title"), description(loads));
    }

    private void curve(Chart chart, Series series, ApplianceFigures load) {
        chart.curve(
                series,
                load.key(),
                points(load),
                Chart.name()
                        .add(Lettering.SMALL_BOLD, load.appliance().name())
                        .add(Lettering.SMALL, alarm(load))
                        .note());
        load.alarmBelow()
                .filter(at -> at.value().compareTo(bank.reserve().value()) > 0)
                .ifPresent(at -> chart.ring(
                        at.value().fraction(), inverter.alarm().value().volts()));
    }

    private String alarm(ApplianceFigures load) {
        return load.alarmBelow()
                .map(at -> at.value().compareTo(bank.reserve().value()) > 0
                        ? subject.say("running.alarm-below", subject.say(at))
                        : subject.say("running.alarm-after-reserve"))
                .orElseGet(() -> subject.say("running.alarm-always"));
    }

    private static double[] point(RestRow row) {
        return new double[] {row.stateOfCharge().fraction(), row.rest().value().volts()};
    }

    private static List<double[]> points(ApplianceFigures load) {
        List<double[]> points = new ArrayList<>();
        load.runningVoltage()
                .ifPresent(full -> points.add(new double[] {1, full.value().volts()}));
        load.running()
                .from()
                .forEach(row -> row.voltage()
                        .ifPresent(at -> points.add(new double[] {
                            row.stateOfCharge().fraction(), at.value().volts()
                        })));
        return points;
    }

    private static double lowest(List<ApplianceFigures> loads) {
        return loads.stream()
                .flatMap(load -> points(load).stream())
                .mapToDouble(point -> point[1])
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private String volts(double volts, double step) {
        return subject.words().numbers().fixed(new Voltage(volts), "V", step < 1 ? 1 : 0, Rounding.NEAREST);
    }

    private List<String> description(List<ApplianceFigures> loads) {
        List<String> lines = new ArrayList<>();
        lines.add(subject.say(
                "running.desc",
                subject.say(inverter.alarm()),
                subject.say(inverter.cutOut()),
                subject.say(bank.reserve())));
        lines.add(subject.say("running.desc.rest", two(bank.restFull()), two(bank.restAtReserve())));
        for (ApplianceFigures load : loads) {
            load.runningVoltage()
                    .ifPresent(full -> lines.add(subject.say(
                            "running.desc.load",
                            load.appliance().name(),
                            subject.words().numbers().fixed(full.value(), "V", 2, Rounding.DOWN),
                            alarm(load))));
        }
        return lines;
    }

    private String two(Figure<Voltage> volts) {
        return subject.words().numbers().fixed(volts.value(), "V", 2, Rounding.NEAREST);
    }
}
