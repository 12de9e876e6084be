package org.quaybook.figures;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.quaybook.calc.ChargeIntake;
import org.quaybook.calc.ChargeSource;
import org.quaybook.calc.DayPlan;
import org.quaybook.calc.DayRun;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Limits;
import org.quaybook.calc.SourceBank;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;

/**
 * A usual day on battery, and day after day.
 *
 * @param use energy that leaves the bank in a day, the inverter's own draw included
 * @param summer energy that comes in on a usual summer day
 * @param winter energy that comes in on a usual winter day
 * @param summerDays days until the reserve in summer; empty if it lasts a year or more
 * @param winterDays days until the reserve in winter; empty if it lasts a year or more
 * @param darkDays days until the reserve when nothing charges, a year at most
 * @param summerDaysWorn the first with the bank worn and cold
 * @param winterDaysWorn the second with the bank worn and cold
 * @param darkDaysWorn the third with the bank worn and cold: what to plan on
 * @param courses a day from full: without charging, and in summer and winter if something charges away from shore
 * @param sunSummer time from the reserve to full by the sun alone, usual summer days; empty without panels or if it never is
 * @param sunWinter the same on usual winter days
 */
public record DayFigures(
        Figure<Energy> use,
        Figure<Energy> summer,
        Figure<Energy> winter,
        Optional<Figure<TimeSpan>> summerDays,
        Optional<Figure<TimeSpan>> winterDays,
        Figure<TimeSpan> darkDays,
        Optional<Figure<TimeSpan>> summerDaysWorn,
        Optional<Figure<TimeSpan>> winterDaysWorn,
        Figure<TimeSpan> darkDaysWorn,
        List<Course> courses,
        Optional<Figure<TimeSpan>> sunSummer,
        Optional<Figure<TimeSpan>> sunWinter) {

    public DayFigures {
        courses = List.copyOf(courses);
    }

    /** What comes in on a day. */
    public enum Season {
        SUMMER,
        WINTER,
        /** Nothing charges. */
        DARK;

        String key() {
            return "day." + name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A usual day that begins with a full bank.
     *
     * @param charge state of charge every two hours from {@link DayRun#BEGINS}; shorter if the inverter cuts out
     * @param lowest the lowest state of charge
     * @param lowestAt when, since midnight
     * @param alarm when the alarm first sounds
     * @param cutOut when the inverter cuts out or the bank is empty
     */
    public record Course(
            Season season,
            List<Figure<Ratio>> charge,
            Figure<Ratio> lowest,
            Figure<TimeSpan> lowestAt,
            Optional<Happening> alarm,
            Optional<Happening> cutOut) {
        public Course {
            charge = List.copyOf(charge);
        }
    }

    /**
     * Something that happens on a usual day.
     *
     * @param at since midnight
     * @param running names of the appliances that run then
     */
    public record Happening(Figure<TimeSpan> at, List<String> running) {
        public Happening {
            running = List.copyOf(running);
        }
    }

    private static final TimeSpan MOST = TimeSpan.ofHours(24.0 * DayRun.MOST_DAYS);

    /** When a source runs whose hours nobody wrote down (common practice, no source). */
    private static final LocalTime USUAL_BEGIN = LocalTime.of(10, 0);

    /**
     * What a day is walked with.
     *
     * @param draw what draws on the bank besides the inverter
     */
    record Walked(
            DayPlan plan,
            BankFigures bank,
            BankCharging charging,
            InverterFigures inverter,
            SupplyFigures supply,
            Limits limits,
            SteadyDraw draw,
            FigureBook book) {

        private DayRun run(List<ChargeSource> sources, SourceBank source, ChargeIntake intake, Pauses pauses) {
            return new DayRun(
                    source,
                    supply.resistance().value(),
                    plan,
                    sources,
                    intake,
                    draw.beside(),
                    limits,
                    inverter.alarm().value(),
                    pauses);
        }

        private DayRun asItIs(List<ChargeSource> sources) {
            return run(sources, bank.asItIs(), charging.warm(bank), Pauses.RECOVER);
        }

        private DayRun worn(List<ChargeSource> sources) {
            return run(sources, bank.worn(), charging.worn(bank), Pauses.DO_NOT_RECOVER);
        }

        private List<Input> inputs(Figure<Energy> use, List<Input> sources) {
            return inputs(use, bank.capacityNow(), bank.resistances(), sources);
        }

        private List<Input> wornInputs(Figure<Energy> use, List<Input> sources) {
            return inputs(use, bank.capacityWorn(), bank.resistancesWorn(), sources);
        }

        private List<Input> inputs(
                Figure<Energy> use, Figure<Charge> capacity, List<Input> resistances, List<Input> sources) {
            List<Input> inputs = new ArrayList<>(List.of(Input.of("E_day", use), Input.of("C", capacity)));
            inputs.addAll(resistances);
            inputs.addAll(List.of(
                    Input.of("R", supply.resistance()),
                    Input.of("s", bank.reserve()),
                    Input.of("U", inverter.cutOut())));
            inputs.addAll(sources);
            return inputs;
        }
    }

    /** What a season's sources are made of, and what the working says of them. */
    private record Sources(List<ChargeSource> sources, List<Input> inputs) {

        static final Sources NONE = new Sources(List.of(), List.of());

        static Sources of(List<ChargeFigures> chargers, Season season, BankCharging charging, boolean sunOnly) {
            List<ChargeSource> sources = new ArrayList<>();
            List<Input> inputs = new ArrayList<>();
            for (ChargeFigures charger : chargers) {
                boolean solar = charger.charging().kind() == ChargeKind.SOLAR;
                Optional<Figure<Energy>> day = season == Season.SUMMER ? charger.summerDay() : charger.winterDay();
                if (day.isPresent() && (solar || !sunOnly)) {
                    sources.add(solar ? sun(charger.charging(), season, charging) : steady(charger));
                    inputs.add(Input.of("E", day.get()));
                }
            }
            return new Sources(sources, inputs);
        }

        private static ChargeSource sun(Charging charging, Season season, BankCharging bank) {
            TimeSpan hours = Given.maybe(season == Season.SUMMER ? charging.summerSun() : charging.winterSun())
                    .orElseThrow();
            Power peak = Given.maybe(charging.peak()).orElseThrow();
            return ChargeSource.Sun.around(
                    peak.times(ChargeFigures.SOLAR_YIELD),
                    Given.maybe(charging.current()).orElse(bank.limit().value()),
                    hours);
        }

        private static ChargeSource steady(ChargeFigures charger) {
            LocalTime begins = Optional.ofNullable(charger.charging().begins()).orElse(USUAL_BEGIN);
            return new ChargeSource.Steady(
                    charger.recharge().orElseThrow().current().value(),
                    begins.toSecondOfDay() / 3600.0,
                    Given.maybe(charger.charging().perDay()).orElseThrow());
        }
    }

    /** A usual day without charging, which recharging begins from. */
    record Dark(Figure<Energy> use, Course course, Figure<Ratio> end) {}

    static Dark dark(Walked it, List<ApplianceFigures> appliances) {
        Figure<Energy> use = use(it, appliances);
        DayRun.Course walked = it.asItIs(List.of()).course(Ratio.WHOLE);
        Figure<Ratio> end = it.book()
                .enter("day.dark-end", walked.end(), Rounding.DOWN, Formula.DAY_COURSE, it.inputs(use, List.of()));
        return new Dark(use, course(Season.DARK, walked, it, use, Sources.NONE), end);
    }

    static DayFigures of(Walked it, Dark dark, List<ChargeFigures> chargers) {
        Figure<Energy> use = dark.use();
        FigureBook book = it.book();
        Figure<Energy> summer = broughtIn("day.summer-yield", chargers, ChargeFigures::summerDay, book);
        Figure<Energy> winter = broughtIn("day.winter-yield", chargers, ChargeFigures::winterDay, book);
        Sources inSummer = Sources.of(chargers, Season.SUMMER, it.charging(), false);
        Sources inWinter = Sources.of(chargers, Season.WINTER, it.charging(), false);
        List<Course> courses = new ArrayList<>();
        if (!inSummer.sources().isEmpty() || !inWinter.sources().isEmpty()) {
            courses.add(course(Season.SUMMER, it.asItIs(inSummer.sources()).course(Ratio.WHOLE), it, use, inSummer));
            courses.add(course(Season.WINTER, it.asItIs(inWinter.sources()).course(Ratio.WHOLE), it, use, inWinter));
        }
        courses.add(dark.course());
        return new DayFigures(
                use,
                summer,
                winter,
                days("day.summer-days", it.asItIs(inSummer.sources()), it.inputs(use, inSummer.inputs()), book),
                days("day.winter-days", it.asItIs(inWinter.sources()), it.inputs(use, inWinter.inputs()), book),
                atMostAYear("day.dark-days", it.asItIs(List.of()), it.inputs(use, List.of()), book),
                days("day.summer-days-worn", it.worn(inSummer.sources()), it.wornInputs(use, inSummer.inputs()), book),
                days("day.winter-days-worn", it.worn(inWinter.sources()), it.wornInputs(use, inWinter.inputs()), book),
                atMostAYear("day.dark-days-worn", it.worn(List.of()), it.wornInputs(use, List.of()), book),
                courses,
                sun("day.summer-sun-to-full", chargers, Season.SUMMER, it, use),
                sun("day.winter-sun-to-full", chargers, Season.WINTER, it, use));
    }

    private static Figure<Energy> use(Walked it, List<ApplianceFigures> appliances) {
        double standing =
                it.draw().current().amperes() * it.bank().nominal().value().volts() * 24;
        List<Input> inputs = new ArrayList<>();
        appliances.stream()
                .filter(ApplianceFigures::runs)
                .forEach(appliance -> inputs.add(Input.of("P_mean", appliance.average())));
        inputs.add(Input.of("P₀", it.inverter().idle()));
        inputs.addAll(it.draw().currentInputs());
        return it.book()
                .enter("day.use", new Energy(it.plan().wattHours() + standing), Rounding.UP, Formula.DAY_USE, inputs);
    }

    private static Figure<Energy> broughtIn(
            String key,
            List<ChargeFigures> chargers,
            Function<ChargeFigures, Optional<Figure<Energy>>> day,
            FigureBook book) {
        List<Figure<Energy>> parts = chargers.stream()
                .flatMap(charger -> day.apply(charger).stream())
                .toList();
        return book.enter(
                key,
                parts.stream().map(Figure::value).reduce(new Energy(0), Energy::plus),
                Rounding.DOWN,
                Formula.SUM_OF_ENERGIES,
                parts.stream().map(part -> Input.of("E", part)).toList());
    }

    private static Course course(Season season, DayRun.Course walked, Walked it, Figure<Energy> use, Sources sources) {
        List<Input> inputs = it.inputs(use, sources.inputs());
        List<Figure<Ratio>> charge = new ArrayList<>();
        for (int i = 0; i < walked.charge().size(); i++) {
            int hour = DayRun.BEGINS + i * DayRun.EVERY;
            charge.add(it.book()
                    .enter(
                            String.format(Locale.ROOT, "%s-charge-at-%02d", season.key(), hour),
                            walked.charge().get(i),
                            Rounding.DOWN,
                            Formula.DAY_COURSE,
                            inputs));
        }
        return new Course(
                season,
                charge,
                it.book().enter(season.key() + "-lowest", walked.lowest(), Rounding.DOWN, Formula.DAY_COURSE, inputs),
                time(season.key() + "-lowest-at", walked.lowestAt(), inputs, it.book()),
                walked.alarm().map(event -> happening(season.key() + "-alarm-at", event, inputs, it.book())),
                walked.cutOut().map(event -> happening(season.key() + "-cut-out-at", event, inputs, it.book())));
    }

    private static Happening happening(String key, DayRun.Event event, List<Input> inputs, FigureBook book) {
        return new Happening(time(key, event.hour(), inputs, book), event.running());
    }

    private static Figure<TimeSpan> time(String key, double hour, List<Input> inputs, FigureBook book) {
        return book.enter(key, TimeSpan.ofHours(hour), Rounding.DOWN, Formula.DAY_COURSE, inputs);
    }

    private static Optional<Figure<TimeSpan>> days(String key, DayRun run, List<Input> inputs, FigureBook book) {
        return run.lasts(Ratio.WHOLE)
                .map(lasting -> book.enter(key, lasting.time(), Rounding.DOWN, Formula.DAYS, inputs));
    }

    private static Figure<TimeSpan> atMostAYear(String key, DayRun run, List<Input> inputs, FigureBook book) {
        TimeSpan time = run.lasts(Ratio.WHOLE).map(DayRun.Lasting::time).orElse(MOST);
        return book.enter(key, time, Rounding.DOWN, Formula.DAYS, inputs);
    }

    private static Optional<Figure<TimeSpan>> sun(
            String key, List<ChargeFigures> chargers, Season season, Walked it, Figure<Energy> use) {
        Sources sun = Sources.of(chargers, season, it.charging(), true);
        return sun.sources().isEmpty()
                ? Optional.empty()
                : it.asItIs(sun.sources())
                        .fills(it.bank().reserve().value())
                        .map(time -> it.book()
                                .enter(key, time, Rounding.UP, Formula.DAYS_TO_FULL, it.inputs(use, sun.inputs())));
    }
}
