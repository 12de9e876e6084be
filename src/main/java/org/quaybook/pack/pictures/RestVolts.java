package org.quaybook.pack.pictures;

import java.util.List;
import org.quaybook.figures.BankFigures;
import org.quaybook.pack.pictures.Chart.Series;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;

/** Rest voltage against charge: what the owner's meter can tell of the battery. */
final class RestVolts {

    private static final double TOP = 20;
    private static final double FIELD = 110;
    private static final int TICKS = 5;

    private final Subject subject;
    private final BankFigures bank;

    RestVolts(Subject subject) {
        this.subject = subject;
        this.bank = subject.figures().bank();
    }

    String svg(String id) {
        List<double[]> points = bank.restTable().stream()
                .map(row -> new double[] {
                    row.stateOfCharge().fraction(), row.rest().value().volts()
                })
                .toList();
        double lowest = points.get(points.size() - 1)[1];
        double highest = points.get(0)[1];
        double step = Scale.step(highest - lowest, TICKS);
        Drawing drawing = new Drawing(id, subject.look());
        Chart chart = new Chart(
                drawing,
                TOP,
                TOP + FIELD,
                1,
                0,
                Math.floor(lowest / step + 1e-9) * step,
                Math.ceil(highest / step - 1e-9) * step);
        chart.shadeFrom(bank.reserve().value().fraction(), subject.say("curve.reserve", subject.say(bank.reserve())));
        for (double volts : chart.up().ticks(step)) {
            chart.tickUp(
                    volts,
                    subject.words().numbers().fixed(new Voltage(volts), "V", step < 1 ? 1 : 0, Rounding.NEAREST));
        }
        for (double charge : chart.across().ticks(0.2)) {
            chart.tickAcross(charge, subject.words().word(new Ratio(charge)));
        }
        chart.captionAcross(subject.say("rest.across"));
        chart.frame();
        double reserve = bank.restAtReserve().value().volts();
        chart.ring(bank.reserve().value().fraction(), reserve);
        chart.curve(
                Series.FIRST,
                "rest",
                points,
                Chart.name()
                        .add(Lettering.SMALL_BOLD, subject.say("running.rest"))
                        .add(
                                Lettering.SMALL,
                                subject.say("rest.full", volts(bank.restFull().value())))
                        .add(
                                Lettering.SMALL,
                                subject.say(
                                        "rest.reserve",
                                        volts(bank.restAtReserve().value())))
                        .note());
        double foot = chart.writeNames(TOP);
        double height = Math.max(foot, TOP + FIELD + Chart.CAPTION_BELOW) + 3;
        return drawing.svg(
                height,
                subject.say("rest.title"),
                List.of(subject.say(
                        "rest.desc",
                        volts(bank.restFull().value()),
                        subject.say(bank.reserve()),
                        volts(bank.restAtReserve().value()),
                        volts(new Voltage(lowest)))));
    }

    private String volts(Voltage volts) {
        return subject.words().numbers().fixed(volts, "V", 2, Rounding.NEAREST);
    }
}
