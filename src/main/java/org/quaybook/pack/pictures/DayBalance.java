package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.quaybook.calc.DayRun;
import org.quaybook.figures.DayFigures;
import org.quaybook.figures.DayFigures.Course;
import org.quaybook.figures.DayFigures.Season;
import org.quaybook.figures.Figure;
import org.quaybook.pack.pictures.Chart.Series;
import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.quantity.ClockTime;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;

/** The usual day: charge hour by hour for each season, and what goes out and comes in. */
final class DayBalance {

    private static final double TOP = 8;
    private static final double FIELD = 130;
    private static final double BARS_FROM = 134;
    private static final double BARS_TO = 272;
    private static final double BAR = 8;
    private static final double ROW = 15;

    private final Subject subject;
    private final DayFigures day;

    DayBalance(Subject subject) {
        this.subject = subject;
        this.day = subject.figures().day();
    }

    String svg(String id) {
        Drawing drawing = new Drawing(id, subject.look());
        Chart chart = new Chart(drawing, TOP, TOP + FIELD, DayRun.BEGINS, DayRun.BEGINS + 24.0, 0, 1);
        for (double charge : chart.up().ticks(0.2)) {
            chart.tickUp(charge, subject.words().word(new Ratio(charge)));
        }
        for (double hour : chart.across().ticks(2)) {
            if (Math.round(hour - DayRun.BEGINS) % 6 == 0) {
                chart.tickAcross(hour, subject.words().word(new ClockTime(TimeSpan.ofHours(hour % 24))));
            }
        }
        chart.captionAcross(subject.say("day.across"));
        chart.frame();
        Figure<Ratio> reserve = subject.figures().bank().reserve();
        chart.limit(
                Pen.LIMIT_DASHED,
                "reserve",
                reserve.value().fraction(),
                Chart.name()
                        .add(Lettering.SMALL, subject.say("curve.reserve", subject.say(reserve)))
                        .note());
        for (Course course : day.courses()) {
            if (course.season() != Season.WINTER || !alike()) {
                curve(chart, course);
            }
        }
        double foot = Math.max(chart.writeNames(TOP), TOP + FIELD + Chart.CAPTION_BELOW) + 10;
        double height = bars(drawing, foot);
        return drawing.svg(height, subject.say("day.title"), description());
    }

    private void curve(Chart chart, Course course) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < course.charge().size(); i++) {
            points.add(new double[] {
                DayRun.BEGINS + i * (double) DayRun.EVERY,
                course.charge().get(i).value().fraction()
            });
        }
        Note.Builder name =
                Chart.name().add(Lettering.SMALL_BOLD, name(course.season())).add(Lettering.SMALL, lowest(course));
        course.cutOut().ifPresent(end -> name.add(Lettering.SMALL, subject.say("day.ends", clock(end.at()))));
        chart.curve(series(course.season()), course.season().name().toLowerCase(Locale.ROOT), points, name.note());
    }

    /** Whether summer and winter bring the same: then one curve stands for both. */
    private boolean alike() {
        List<List<Ratio>> courses = day.courses().stream()
                .filter(course -> course.season() != Season.DARK)
                .map(course -> course.charge().stream().map(Figure::value).toList())
                .distinct()
                .toList();
        return courses.size() == 1;
    }

    private String name(Season season) {
        return season == Season.SUMMER && alike()
                ? subject.words()
                        .list(List.of(
                                subject.words().term(season), subject.words().term(Season.WINTER)))
                : subject.words().term(season);
    }

    private static Series series(Season season) {
        return switch (season) {
            case SUMMER -> Series.FIRST;
            case WINTER -> Series.SECOND;
            case DARK -> Series.THIRD;
        };
    }

    private String lowest(Course course) {
        return subject.say("day.lowest", subject.say(course.lowest()), clock(course.lowestAt()));
    }

    private String clock(Figure<TimeSpan> time) {
        return subject.words().word(new ClockTime(TimeSpan.ofHours(time.value().hours() % 24)));
    }

    private record Bar(String what, String name, Figure<Energy> energy) {}

    private List<Bar> barsOfDay() {
        List<Bar> bars = new ArrayList<>();
        bars.add(new Bar("use", subject.say("day.out"), day.use()));
        if (day.summer().value().wattHours() > 0 || day.winter().value().wattHours() > 0) {
            bars.add(new Bar("summer", subject.say("day.in.summer"), day.summer()));
            bars.add(new Bar("winter", subject.say("day.in.winter"), day.winter()));
        }
        return bars;
    }

    /** What goes out is filled, what comes in is open. */
    private double bars(Drawing drawing, double top) {
        List<Bar> bars = barsOfDay();
        double most = bars.stream()
                .mapToDouble(bar -> bar.energy().value().wattHours())
                .max()
                .orElse(1);
        Scale scale = new Scale(0, Math.max(most, 1), BARS_FROM, BARS_TO);
        double y = top;
        for (Bar bar : bars) {
            double end = scale.at(bar.energy().value().wattHours());
            drawing.text(Lettering.SMALL, Anchor.END, BARS_FROM - 5, y + BAR - 1, bar.name());
            drawing.open("bar", bar.what());
            if (bar.what().equals("use")) {
                drawing.fill(drawing.look().main(), BARS_FROM, y, Math.max(0.6, end - BARS_FROM), BAR);
            } else {
                drawing.box(Pen.FINE, drawing.look().tint(), BARS_FROM, y, Math.max(0.6, end - BARS_FROM), BAR);
            }
            drawing.close();
            drawing.text(Lettering.SMALL_BOLD, Anchor.START, end + 5, y + BAR - 1, subject.say(bar.energy()));
            y += ROW;
        }
        drawing.line(Pen.FINE, BARS_FROM, top - 3, BARS_FROM, y - ROW + BAR + 3);
        return y;
    }

    private List<String> description() {
        List<String> lines = new ArrayList<>();
        lines.add(subject.say(
                "day.desc",
                subject.words().word(new ClockTime(TimeSpan.ofHours(DayRun.BEGINS))),
                subject.say(subject.figures().bank().reserve())));
        for (Course course : day.courses()) {
            lines.add(subject.say("day.desc.course", subject.words().term(course.season()), lowest(course)));
            course.cutOut().ifPresent(end -> lines.add(subject.say("day.desc.ends", clock(end.at()))));
        }
        for (Bar bar : barsOfDay()) {
            lines.add(subject.say("day.desc.bar", bar.name(), subject.say(bar.energy())));
        }
        return lines;
    }
}
