package org.quaybook.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/**
 * A bank over a day, and day after day: the inverter and a standing draw take, sources give.
 *
 * <p>At each moment Kirchhoff's laws hold for the bank (rest voltage and inner resistance), the sources at its terminals
 * and the inverter behind its cables, which takes constant power. What leaves the bank counts by Peukert's law, what goes
 * in by {@link ChargeIntake}; a source gives no more than loads and bank take. The hours are walked by the midpoint rule.
 *
 * @param bank the bank
 * @param supply resistance of cables and joints between the bank and the inverter, both ways
 * @param plan what the inverter feeds
 * @param sources what charges
 * @param intake what the bank takes
 * @param standing what else draws all the time
 * @param limits the reserve, the inverter's cut-out and the battery's own
 * @param alarm voltage at the inverter below which its alarm sounds
 * @param pauses how pauses of a pulsing load count for Peukert's law
 */
public record DayRun(
        SourceBank bank,
        Resistance supply,
        DayPlan plan,
        List<ChargeSource> sources,
        ChargeIntake intake,
        Beside standing,
        Limits limits,
        Voltage alarm,
        Pauses pauses) {

    /** Hour at which a day begins here: before the first usual use. */
    public static final int BEGINS = 6;

    /** Hours between the states of charge that a course tells. */
    public static final int EVERY = 2;

    /** Days after which nobody asks for more. */
    public static final int MOST_DAYS = 365;

    public DayRun {
        sources = List.copyOf(sources);
    }

    /**
     * Something that happens in a day.
     *
     * @param hour hour of the day, from midnight
     * @param running what runs then
     */
    public record Event(double hour, List<String> running) {
        public Event {
            running = List.copyOf(running);
        }
    }

    /**
     * Energies of a course: cells + sources = load + standing + losses.
     *
     * @param cells out of the cells, net; negative when more went in
     * @param sources out of the sources, at the bank's terminals
     * @param load into the inverter
     * @param standing into the standing draw, at the bank's terminals
     * @param losses in the bank's resistance and in the supply, there by the inverter's current
     */
    public record Balance(Energy cells, Energy sources, Energy load, Energy standing, Energy losses) {}

    /**
     * One day from {@link #BEGINS} to {@link #BEGINS}.
     *
     * @param charge state of charge every {@link #EVERY} hours, the beginning first; shorter if the inverter cut out
     * @param end state of charge when it ends
     * @param lowest the lowest state of charge
     * @param lowestAt when, hour of the day
     * @param alarm when the alarm first sounds; empty if it stays quiet
     * @param cutOut when the inverter cuts out, or the bank is empty; empty if neither happens
     * @param ending which of these
     * @param balance energies until the end
     */
    public record Course(
            List<Ratio> charge,
            Ratio end,
            Ratio lowest,
            double lowestAt,
            Optional<Event> alarm,
            Optional<Event> cutOut,
            Optional<Ending> ending,
            Balance balance) {
        public Course {
            charge = List.copyOf(charge);
        }
    }

    /**
     * How long it lasts.
     *
     * @param time from the beginning of the first day
     * @param ending what ends it
     */
    public record Lasting(TimeSpan time, Ending ending) {}

    /** One day, its reserve not minded: nothing switches off there. */
    public Course course(Ratio from) {
        Walk walk = new Walk();
        walk.day(from.fraction(), 0, false);
        return walk.course();
    }

    /**
     * Days until the reserve, the cut-out or the battery's own protection.
     *
     * <p>Day after day, until a day brings back what it takes. A day that changes little stands for as many like it as
     * take a fiftieth of the charge, so that some hundred days are walked at most.
     *
     * @return empty if it lasts {@link #MOST_DAYS} days or more
     */
    public Optional<Lasting> lasts(Ratio from) {
        double reserve = limits.reserve().fraction();
        double soc = from.fraction();
        if (soc <= reserve) {
            return Optional.of(new Lasting(new TimeSpan(0), Ending.RESERVE));
        }
        Walk walk = new Walk();
        int day = 0;
        int skipped = 0;
        double most = SKIP;
        double unskipped = soc;
        double last = Double.NaN;
        double lastLoss = Double.NaN;
        while (day < MOST_DAYS) {
            walk.day(soc, reserve, false);
            if (walk.ending != null && skipped == 0) {
                return Optional.of(new Lasting(TimeSpan.ofHours(day * DAY + walk.hours), walk.ending));
            }
            if (walk.ending != null) {
                // The end may lie within the days that were skipped: back to them, and skip fewer.
                day -= skipped;
                skipped = 0;
                soc = unskipped;
                most /= 4;
                continue;
            }
            double loss = soc - walk.soc;
            if (loss <= SETTLED) {
                return Optional.empty();
            }
            // The first day is unlike the others, and from two more it is known how the loss changes as the bank
            // empties.
            boolean known = day > 1 && last > soc;
            skipped = known ? (int) Math.max(0, Math.min(most, walk.lowest - reserve - loss) / loss) : 0;
            double change = known ? (lastLoss - loss) / (last - soc) : 0;
            last = soc;
            lastLoss = loss;
            unskipped = walk.soc;
            soc = walk.soc - skipped * loss * (1 - change * (skipped + 1) / 2);
            day += 1 + skipped;
        }
        return Optional.empty();
    }

    /**
     * Time until the bank is full, the day's loads going on.
     *
     * @return empty if it is not within {@link #FILL_DAYS} days, or if the inverter cuts out before
     */
    public Optional<TimeSpan> fills(Ratio from) {
        double soc = from.fraction();
        Walk walk = new Walk();
        for (int day = 0; day < FILL_DAYS; day++) {
            walk.day(soc, 0, true);
            if (walk.full) {
                return Optional.of(TimeSpan.ofHours(day * DAY + walk.hours));
            }
            if (walk.ending != null || Math.abs(walk.soc - soc) < SETTLED) {
                return Optional.empty();
            }
            soc = walk.soc;
        }
        return Optional.empty();
    }

    /** Days after which a bank that is not full will hardly be. */
    public static final int FILL_DAYS = 60;

    private static final double DAY = 24;
    private static final double SETTLED = 1e-6;
    private static final double SKIP = 0.02;

    /** Longest step in hours while nothing charges, and while something does. */
    private static final double STEP = 0.5;

    private static final double STEP_CHARGING = 1.0 / 12;

    /** Largest change of the state of charge in a step. */
    private static final double STEP_CHARGE = 0.01;

    /** Longest step in the tail of charging, in its time constants: the tail of lithium is over in minutes. */
    private static final double STEP_OF_TAIL = 0.25;

    /** A current this much larger than the one that flows would be more than the bank takes. */
    private static final double NEARLY = 1.1;

    private static final double LEAST_STEP = 1e-6;

    private static final int HALVINGS = 40;

    /** A part of the day in which neither a load nor a source begins or ends; hours since the day began. */
    private record Part(double from, double to, DayPlan.Stretch stretch, List<ChargeSource> sources) {}

    private List<Part> parts() {
        TreeSet<Double> marks = new TreeSet<>(List.of(0.0, DAY));
        NavigableMap<Double, DayPlan.Stretch> stretches = new TreeMap<>();
        for (DayPlan.Stretch stretch : plan.stretches()) {
            stretches.put(stretch.from(), stretch);
            marks.add(sinceBegin(stretch.from()));
        }
        for (ChargeSource source : sources) {
            marks.add(sinceBegin(source.from()));
            marks.add(sinceBegin(source.from() + source.lasts().hours()));
        }
        List<Part> parts = new ArrayList<>();
        double from = 0;
        for (double to : marks.tailSet(0.0, false)) {
            double hour = clock((from + to) / 2);
            parts.add(new Part(
                    from,
                    to,
                    stretches.floorEntry(hour).getValue(),
                    sources.stream()
                            .filter(it -> it.hoursIn(hour) < it.lasts().hours())
                            .toList()));
            from = to;
        }
        return parts;
    }

    private static double sinceBegin(double hour) {
        double since = (hour - BEGINS) % DAY;
        return since < 0 ? since + DAY : since;
    }

    private static double clock(double sinceBegin) {
        return (sinceBegin + BEGINS) % DAY;
    }

    /** Currents and voltages at a moment; out of the bank is positive. */
    private record Flow(double bank, double load, double source, double inverterVolts, double bankVolts) {}

    /** Walks one day. Plain numbers in volts, amperes, ohms and hours: this is the innermost loop. */
    private final class Walk {

        private final List<Part> parts = parts();
        private final double[] bends;
        private final double[] volts;
        private final List<Ratio> told = new ArrayList<>();

        private double floor;
        private boolean stopWhenFull;
        private double soc;
        private double hours;
        private double lowest;
        private double lowestAt;
        private boolean full;
        private @Nullable Event alarmEvent;
        private @Nullable Event ended;
        private @Nullable Ending ending;
        private double cellsWh;
        private double sourcesWh;
        private double loadWh;
        private double standingWh;
        private double lossesWh;

        Walk() {
            var rows = bank.rest().cell().rows();
            bends = rows.stream()
                    .mapToDouble(row -> row.stateOfCharge().fraction())
                    .toArray();
            volts = rows.stream()
                    .mapToDouble(row -> row.perCell().volts() * bank.rest().cells())
                    .toArray();
        }

        void day(double from, double lowestAllowed, boolean untilFull) {
            soc = from;
            lowest = from;
            lowestAt = 0;
            floor = lowestAllowed;
            stopWhenFull = untilFull;
            full = untilFull && from >= 1;
            hours = 0;
            alarmEvent = null;
            ended = null;
            ending = null;
            cellsWh = 0;
            sourcesWh = 0;
            loadWh = 0;
            standingWh = 0;
            lossesWh = 0;
            told.clear();
            tell();
            for (Part part : parts) {
                part(part);
                if (ending != null || full) {
                    return;
                }
            }
        }

        private void tell() {
            if (hours + LEAST_STEP >= told.size() * (double) EVERY) {
                told.add(new Ratio(soc));
            }
        }

        private void part(Part part) {
            while (hours < part.to && ending == null && !full) {
                judge(part);
                if (ending == null) {
                    step(part);
                }
            }
        }

        /** The events at the beginning of a step: what is switched on takes effect at once. */
        private void judge(Part part) {
            Flow working =
                    flow(part, soc, hours, part.stretch.demand().working().watts());
            if (alarmEvent == null && working.inverterVolts < alarm.volts()) {
                alarmEvent = new Event(clock(hours), part.stretch.running());
            }
            end(part, ending(working));
        }

        private @Nullable Ending ending(Flow working) {
            Voltage protection = limits.protection();
            if (working.inverterVolts < limits.cutOut().volts()) {
                return Ending.CUT_OUT;
            }
            return protection != null && working.bankVolts < protection.volts() ? Ending.PROTECTION : null;
        }

        private void end(Part part, @Nullable Ending reason) {
            if (reason != null) {
                ending = reason;
                ended = new Event(clock(hours), part.stretch.running());
            }
        }

        private void step(Part part) {
            double rate = rate(part, soc, hours);
            double most = part.sources.isEmpty() ? STEP : STEP_CHARGING;
            if (rate > 0
                    && soc
                            >= intake.tailsFrom(
                                    rate * NEARLY * intake.capacity().ampereHours() / intake.efficiencyAt(soc))) {
                most = Math.min(
                        most,
                        STEP_OF_TAIL
                                * intake.capacity().ampereHours()
                                / (intake.efficiencyAt(soc) * intake.slopeAmperes()));
            }
            double nextTold = told.size() * (double) EVERY;
            double length = Math.min(Math.min(part.to, nextTold) - hours, most);
            if (Math.abs(rate) * length > STEP_CHARGE) {
                length = Math.max(LEAST_STEP, STEP_CHARGE / Math.abs(rate));
            }
            double middleSoc = within(soc + rate * length / 2);
            if (middleSoc == 1 && rate > 0) {
                // Into a full bank nothing goes: looking there, it would stay for ever short of full by less than half
                // a step.
                middleSoc = soc;
            }
            double middle = hours + length / 2;
            double middleRate = rate(part, middleSoc, middle);
            double next = soc + middleRate * length;
            double share = 1;
            if (next < floor && middleRate < 0) {
                share = (soc - floor) / (soc - next);
            } else if (next > 1) {
                share = stopWhenFull ? (1 - soc) / (next - soc) : 1;
            }
            Ending reason = next < floor && middleRate < 0 ? Ending.RESERVE : null;
            double reached = within(Math.max(floor, soc + middleRate * length * share));
            // Where the voltage ends it within the step, the state of charge at which it does so is searched.
            Ending byVoltage = ending(flow(
                    part,
                    reached,
                    hours + length * share,
                    part.stretch.demand().working().watts()));
            if (byVoltage != null && reached < soc) {
                double holds = 0;
                double fails = share;
                for (int i = 0; i < HALVINGS; i++) {
                    double half = (holds + fails) / 2;
                    Ending there = ending(flow(
                            part,
                            within(soc + middleRate * length * half),
                            hours + length * half,
                            part.stretch.demand().working().watts()));
                    if (there == null) {
                        holds = half;
                    } else {
                        fails = half;
                        byVoltage = there;
                    }
                }
                share = fails;
                reason = byVoltage;
                reached = within(soc + middleRate * length * share);
            }
            account(part, middleSoc, middle, length * share);
            full = stopWhenFull && next >= 1;
            soc = full ? 1 : reached;
            hours = share < 1
                    ? hours + length * share
                    : Math.abs(hours + length - part.to) < LEAST_STEP ? part.to : hours + length;
            if (soc < lowest) {
                lowest = soc;
                lowestAt = hours;
            }
            end(part, reason);
            tell();
        }

        private void account(Part part, double at, double hour, double length) {
            Demand demand = part.stretch.demand();
            double duty = demand.duty().fraction();
            account(
                    flow(part, at, hour, demand.working().watts()),
                    demand.working().watts(),
                    at,
                    duty * length);
            if (duty < 1) {
                account(
                        flow(part, at, hour, demand.pausing().watts()),
                        demand.pausing().watts(),
                        at,
                        (1 - duty) * length);
            }
        }

        private void account(Flow flow, double watts, double at, double length) {
            cellsWh += rest(at) * flow.bank * length;
            sourcesWh += flow.bankVolts * flow.source * length;
            loadWh += watts * length;
            standingWh += flow.bankVolts * standing.current().amperes() * length;
            double inSupply = flow.load * supply.ohms() + standing.lost().volts();
            lossesWh += (flow.bank * flow.bank * inner(at) + flow.load * inSupply) * length;
        }

        /** Change of the state of charge in an hour. */
        private double rate(Part part, double at, double hour) {
            Demand demand = part.stretch.demand();
            double duty = demand.duty().fraction();
            double working = flow(part, at, hour, demand.working().watts()).bank;
            if (duty == 1) {
                return change(working, at);
            }
            double pausing = flow(part, at, hour, demand.pausing().watts()).bank;
            return pauses == Pauses.RECOVER
                    ? change(duty * working + (1 - duty) * pausing, at)
                    : duty * change(working, at) + (1 - duty) * change(pausing, at);
        }

        private double change(double amperes, double at) {
            double capacity = bank.capacity().ampereHours();
            return amperes > 0
                    ? -bank.equivalent(new Current(amperes)).amperes() / capacity
                    : -amperes * intake.efficiencyAt(at) / capacity;
        }

        /** Sources give all they have, unless loads and bank together take less. */
        private Flow flow(Part part, double at, double hour, double watts) {
            double rest = rest(at);
            double inner = inner(at);
            double offered = 0;
            for (ChargeSource source : part.sources) {
                offered += source.amperesAt(clock(hour), rest, inner);
            }
            double drawn = standing.current().amperes();
            double lost = standing.lost().volts();
            double net = offered - drawn;
            double way = supply.ohms();
            double load = load(rest + net * inner - lost, inner + way, watts);
            double taken = intake.amperesAt(at);
            if (load - net >= -taken) {
                double bankVolts = rest - (load - net) * inner;
                return new Flow(load - net, load, offered, bankVolts - lost - load * way, bankVolts);
            }
            double bankVolts = rest + taken * inner;
            double alone = load(bankVolts - lost, way, watts);
            return new Flow(-taken, alone, alone + drawn + taken, bankVolts - lost - alone * way, bankVolts);
        }

        /** Current of a constant power behind a resistance; where the voltage collapses, that at the most power; 0 without voltage. */
        private static double load(double volts, double ohms, double watts) {
            if (volts <= 0) {
                return 0;
            }
            double under = volts * volts - 4 * ohms * watts;
            return under < 0 ? volts / (2 * ohms) : 2 * watts / (volts + Math.sqrt(under));
        }

        private double inner(double at) {
            return bank.resistance().ohms() * (at < bank.lowBelow().fraction() ? bank.riseWhenLow() : 1);
        }

        private double rest(double at) {
            int row = 1;
            while (row < bends.length - 1 && at > bends[row]) {
                row++;
            }
            double share = (at - bends[row - 1]) / (bends[row] - bends[row - 1]);
            return volts[row - 1] + share * (volts[row] - volts[row - 1]);
        }

        private static double within(double at) {
            return Math.min(1, Math.max(0, at));
        }

        Course course() {
            return new Course(
                    told,
                    new Ratio(soc),
                    new Ratio(lowest),
                    clock(lowestAt),
                    Optional.ofNullable(alarmEvent),
                    Optional.ofNullable(ended),
                    Optional.ofNullable(ending),
                    new Balance(
                            new Energy(cellsWh),
                            new Energy(sourcesWh),
                            new Energy(loadWh),
                            new Energy(standingWh),
                            new Energy(lossesWh)));
        }
    }
}
