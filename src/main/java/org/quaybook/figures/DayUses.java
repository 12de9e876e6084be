package org.quaybook.figures;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.calc.DayPlan.Use;
import org.quaybook.job.Appliance;
import org.quaybook.job.Given;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;

/**
 * When the appliances of a job run on a usual day.
 *
 * <p>What stays on, or has no time for a use, runs all day. A use begins when the job says so; the others are spread evenly
 * from 07:00 to 22:00, or over the whole day if they need more (common practice, no source), each appliance shifted
 * against the one before it. A part of a use, as in one use every third day, is a shorter use. Uses too many to tell
 * apart are a pulsing load.
 */
final class DayUses {

    private static final double DAY = 24;
    private static final double MORNING = 7;
    private static final double NIGHT = 22;

    /** More uses than this in a day count as one pulsing load. */
    private static final int MOST_USES = 24;

    private DayUses() {}

    static List<Use> of(List<ApplianceFigures> appliances) {
        List<Use> uses = new ArrayList<>();
        for (int i = 0; i < appliances.size(); i++) {
            ApplianceFigures figures = appliances.get(i);
            // What cannot run on battery takes nothing from it.
            if (figures.runs()) {
                uses.addAll(of(figures, (i + 0.5) / appliances.size()));
            }
        }
        return uses;
    }

    /** @param shift where in its part of the day a use stands, 0 to 1 */
    private static List<Use> of(ApplianceFigures figures, double shift) {
        Appliance appliance = figures.appliance();
        Ratio duty = new Ratio(
                Math.min(1, figures.average().value().ratioTo(figures.power().value())));
        if (Given.isYes(appliance.leftOn()) || appliance.perUse() == null) {
            return List.of(use(figures, duty, 0, DAY));
        }
        Optional<TimeSpan> perUse = Given.maybe(appliance.perUse());
        double number = Given.maybe(appliance.usesPerDay())
                .orElse((double) appliance.at().size());
        if (perUse.isEmpty() || number == 0) {
            return List.of();
        }
        double hours = Math.min(DAY, perUse.get().hours() * number);
        boolean allDay = hours > NIGHT - MORNING;
        double from = allDay ? 0 : MORNING;
        double window = allDay ? DAY : NIGHT - MORNING;
        int whole = Math.max((int) Math.ceil(number), appliance.at().size());
        if (whole > MOST_USES) {
            return List.of(use(figures, new Ratio(duty.fraction() * hours / window), from, window));
        }
        double length = hours / whole;
        List<Use> uses = new ArrayList<>();
        for (LocalTime at : appliance.at()) {
            uses.add(use(figures, duty, at.toSecondOfDay() / 3600.0, length));
        }
        int unwritten = whole - appliance.at().size();
        for (int i = 0; i < unwritten; i++) {
            double slot = window / unwritten;
            uses.add(use(figures, duty, from + slot * i + shift * Math.max(0, slot - length), length));
        }
        return uses;
    }

    private static Use use(ApplianceFigures figures, Ratio duty, double from, double hours) {
        return new Use(figures.appliance().name(), figures.power().value(), duty, from % DAY, TimeSpan.ofHours(hours));
    }
}
