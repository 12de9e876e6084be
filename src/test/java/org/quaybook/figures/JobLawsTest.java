package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.quaybook.figures.Families.ALLOWED;
import static org.quaybook.figures.Families.AWAY;
import static org.quaybook.figures.Families.CHARGE_OF_DAY;
import static org.quaybook.figures.Families.DAYS;
import static org.quaybook.figures.Families.DROPS;
import static org.quaybook.figures.Families.ENERGY;
import static org.quaybook.figures.Families.FILLING;
import static org.quaybook.figures.Families.HOLDING;
import static org.quaybook.figures.Families.LASTING;
import static org.quaybook.figures.Families.LOAD;
import static org.quaybook.figures.Families.OFF;
import static org.quaybook.figures.Families.OHM;
import static org.quaybook.figures.Families.SAFE;
import static org.quaybook.figures.Families.VOLTS;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.calc.Beside;
import org.quaybook.calc.ChargeSource;
import org.quaybook.calc.DayPlan;
import org.quaybook.calc.DayRun;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Limits;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Source;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.text.Words;

/**
 * Laws within one job, and between a job and the same job told in another way: figures agree with each other, whatever the
 * job says.
 */
class JobLawsTest {

    /**
     * Two figures of one job.
     *
     * @param less pattern of the names of the one
     * @param more name of the other, {@code $1} being what the first group of the pattern found
     */
    private record Ordered(String less, String more, String because) {
        @Override
        public String toString() {
            return less + " <= " + more;
        }
    }

    static Stream<Ordered> ordered() {
        return Stream.of(
                new Ordered("(" + LOAD + ")time-least", "$1time", "a range holds its value"),
                new Ordered("(" + LOAD + ")time", "$1time-most", "a range holds its value"),
                new Ordered("(" + LOAD + ")time-worn", "$1time", SAFE),
                new Ordered("(" + LOAD + ")uses-worn", "$1uses", SAFE),
                new Ordered("(" + LOAD + ")time-from-90", "$1time", ENERGY),
                new Ordered("(" + LOAD + ")time-from-80", "$1time-from-90", ENERGY),
                new Ordered("(" + LOAD + ")time-from-60", "$1time-from-80", ENERGY),
                new Ordered("(" + LOAD + ")time-from-30", "$1time-from-60", ENERGY),
                new Ordered("(" + LOAD + ")voltage-at-90", "$1running-voltage", OHM),
                new Ordered("(" + LOAD + ")voltage-at-60", "$1voltage-at-90", OHM),
                new Ordered("(" + LOAD + ")voltage-at-30", "$1voltage-at-60", OHM),
                new Ordered("(" + LOAD + ")cut-out-below", "$1alarm-below", OHM),
                new Ordered("(" + LOAD + ")average", "$1power", "a mean is no more than the most"),
                new Ordered("(" + LOAD + ")power", "$1start-power", "a start takes no less than running"),
                new Ordered("(" + LOAD + ")load", "$1start-load", ENERGY),
                new Ordered("(" + LOAD + ")power", "$1load", ENERGY),
                new Ordered("absence\\.(.*)-worn", "absence.$1", SAFE),
                new Ordered("absence\\.(|idle-|off-)to-reserve", "absence.$1to-empty", ENERGY),
                new Ordered("absence\\.to-(reserve|empty)", "absence.idle-to-$1", ENERGY),
                new Ordered("absence\\.idle-to-(reserve|empty)", "absence.off-to-$1", ENERGY),
                new Ordered("day\\.(summer|winter|dark)-days-worn", "day.$1-days", SAFE),
                new Ordered("day\\.dark-days(-worn|)", "day.winter-days$1", ENERGY),
                new Ordered("day\\.winter-days(-worn|)", "day.summer-days$1", "a summer's day has no less sun"),
                new Ordered("day\\.dark-days(-worn|)", "day.summer-days$1", ENERGY),
                new Ordered("day\\.dark-(charge-at-\\d+|lowest)", "day.winter-$1", ENERGY),
                new Ordered("day\\.winter-(charge-at-\\d+|lowest)", "day.summer-$1", "a summer's day has no less sun"),
                new Ordered("day\\.summer(-sun-to-full)", "day.winter$1", "a summer's day has no less sun"),
                new Ordered("(charging\\..*)\\.winter-day", "$1.summer-day", "a summer's day has no less sun"),
                new Ordered("day\\.winter-(yield)", "day.summer-$1", "a summer's day has no less sun"),
                new Ordered("(charging\\..*)\\.left-for-bank", "$1.current", ENERGY),
                new Ordered("(charging\\..*)\\.to-knee", "$1.to-full", ENERGY),
                new Ordered("(charging\\..*)\\.to-full", "$1.to-full-cold", SAFE),
                new Ordered("bank\\.(charge-limit)-cold", "bank.$1", SAFE),
                new Ordered("bank\\.(capacity)-worn", "bank.$1-now", SAFE),
                new Ordered("bank\\.(capacity)-now", "bank.$1", ENERGY),
                new Ordered("bank\\.usable-(charge)", "bank.capacity-now", ENERGY),
                new Ordered("bank\\.(resistance)", "bank.$1-worn", SAFE),
                new Ordered("supply\\.(drop)-at-20", "supply.$1", "physics: copper resists more when warm"),
                new Ordered("supply\\.(drop|drop-by-rule)", "supply.deciding-drop", SAFE),
                new Ordered("fuse\\.(.*)\\.must-interrupt", "bank.short-circuit", OHM),
                new Ordered("(inverter\\..*)-hot", "$1", "a derated output is no more than the rated"),
                new Ordered("inverter\\.(nominal)-current", "inverter.worst-current", "physics: P = U I"),
                new Ordered("together\\.appliance-(.*)-and-left-on\\.time", "appliance.$1.time", ENERGY),
                new Ordered("together\\.appliance-(.*)-and-left-on\\.time-worn", "appliance.$1.time-worn", ENERGY),
                new Ordered("together\\.together-(.*)-and-left-on\\.time", "together.$1.time", ENERGY),
                new Ordered("together\\.together-(.*)-and-left-on\\.time-worn", "together.$1.time-worn", ENERGY));
    }

    @ParameterizedTest
    @MethodSource("ordered")
    void whatIsLessIsNeverMore(Ordered law) {
        List<String> broken = new ArrayList<>();
        int seen = ordered(law, broken);
        assertThat(broken).isEmpty();
        assertThat(seen).as("figures that differ").isPositive();
    }

    private static int ordered(Ordered law, List<String> broken) {
        Pattern pattern = Pattern.compile(law.less());
        int seen = 0;
        for (Observed job : VariedJobs.calculated()) {
            for (String key : job.keys()) {
                Matcher found = pattern.matcher(key);
                if (found.matches()) {
                    String other = found.replaceFirst(law.more());
                    double less = job.value(key);
                    double more = job.value(other);
                    seen += Double.isNaN(more) || less == more ? 0 : 1;
                    if (!Double.isNaN(more) && !Way.NEVER_LESS.allows(key, less, more, Way.NOISE)) {
                        broken.add(job.tree() + ": " + key + " " + less + " > " + other + " " + more);
                    }
                }
            }
        }
        return seen;
    }

    /**
     * A job told in another way.
     *
     * @param figures pattern of the names of the figures that it must not change
     * @param but pattern of those among them that it may, for a reason that stands beside
     * @param within how far they may be off, against the value: a job holds six digits of what was reckoned for it
     */
    private record Alike(String change, UnaryOperator<JobTree> how, String figures, String but, double within) {

        /** A state of charge near 0 is right to so much of the whole, not of itself. */
        boolean allows(String key, double was, double is) {
            return Way.SAME.allows(key, was, is, within) || (key.matches(HOLDING) && Math.abs(is - was) <= within);
        }

        @Override
        public String toString() {
            return change;
        }
    }

    private static final String NONE = "";

    /** Uses are spread over the day, each appliance against the one before it in the list: the day knows their order. */
    private static final String KNOWS_ORDER = "day\\..*|pair\\.\\d+\\.power|.*\\.after-day";

    static Stream<Alike> alike() {
        return Stream.of(
                new Alike("other units", RetoldJobs::inOtherUnits, ".*", NONE, 1e-9),
                new Alike("appliances in another order", it -> it.reversed("appliances"), ".*", KNOWS_ORDER, Way.NOISE),
                new Alike("cables in another order", it -> it.reversed("cables"), ".*", NONE, Way.NOISE),
                new Alike("fuses in another order", it -> it.reversed("fuses"), ".*", NONE, Way.NOISE),
                new Alike(
                        "protected cables in another order",
                        it -> it.reversed("fuses.*.protects"),
                        ".*",
                        NONE,
                        Way.NOISE),
                new Alike("chargers in another order", it -> it.reversed("charging"), ".*", NONE, Way.NOISE),
                new Alike("circuits in another order", it -> it.reversed("ac-circuits"), ".*", NONE, Way.NOISE),
                new Alike("RCDs in another order", it -> it.reversed("rcds"), ".*", NONE, Way.NOISE),
                new Alike("earths in another order", it -> it.reversed("earths"), ".*", NONE, Way.NOISE),
                new Alike("tests in another order", it -> it.reversed("tests"), ".*", NONE, Way.NOISE),
                new Alike(
                        "members in another order", it -> it.reversed("together.*.appliances"), ".*", NONE, Way.NOISE),
                new Alike("blocks of half the voltage", RetoldJobs::inSeries, OF_THE_BANK, NONE, 1e-4),
                new Alike("blocks of half the capacity", RetoldJobs::inParallel, OF_THE_BANK, NONE, 1e-4),
                // The one may be off in its mean, the other in its share: their ranges differ.
                new Alike(
                        "a mean written as a share of the time",
                        RetoldJobs::dutyForAverage,
                        ".*",
                        LOAD + "time-(least|most)",
                        1e-4));
    }

    private static final String OF_THE_BANK =
            LASTING + "|" + HOLDING + "|" + VOLTS + "|" + AWAY + "|" + OFF + "|" + DAYS + "|"
                    + CHARGE_OF_DAY + "|" + FILLING
                    + "|bank\\.(capacity|capacity-now|capacity-worn|usable-charge|usable-energy|resistance"
                    + "|resistance-worn|nominal-voltage|system-voltage|charge-limit|charge-limit-cold|rest-at-\\d+)|supply\\..*|fuse\\.F1\\.(load|least|most)";

    @ParameterizedTest
    @MethodSource("alike")
    void whatIsTheSameComesOutTheSame(Alike law) {
        List<String> broken = new ArrayList<>();
        int seen = alike(law, broken);
        assertThat(broken).isEmpty();
        assertThat(seen).as("figures compared").isPositive();
    }

    private static int alike(Alike law, List<String> broken) {
        Pattern pattern = Pattern.compile(law.figures());
        Pattern but = Pattern.compile(law.but());
        int seen = 0;
        for (Observed job : VariedJobs.calculated()) {
            JobTree retold = law.how().apply(job.tree());
            if (retold.equals(job.tree())) {
                continue;
            }
            Optional<Observed> other = Observed.of(retold);
            if (other.isEmpty()) {
                broken.add(job.tree() + ": cannot be calculated "
                        + retold.reading().problems());
                continue;
            }
            for (String key : job.keys()) {
                if (pattern.matcher(key).matches() && !but.matcher(key).matches()) {
                    seen++;
                    double was = job.value(key);
                    double is = other.get().value(key);
                    if (Double.isNaN(is) || !law.allows(key, was, is)) {
                        broken.add(job.tree() + ": " + key + " " + was + " or " + is);
                    }
                }
            }
        }
        return seen;
    }

    /** Physics: what takes as much as the first does as the first. */
    @Test
    void aSecondApplianceOfTheSameKindBehavesAsTheFirst() {
        for (Observed job : VariedJobs.calculated()) {
            Observed two = Observed.of(job.tree().withTwin("appliances", 0, "name", "Its twin"))
                    .orElseThrow();
            String first = job.figures().appliances().get(0).key();
            String own = Pattern.quote(first) + "\\.(.*)";
            for (String key : two.keys()) {
                if (key.matches(own) && !key.endsWith(".left")) {
                    assertThat(two.value("appliance.its-twin" + key.substring(first.length())))
                            .as(job.tree() + ": " + key)
                            .isEqualTo(two.value(key))
                            .isEqualTo(job.value(key));
                }
            }
        }
    }

    /** Physics: conservation of energy. A group lasts no longer than each of its members alone, the worn bank included. */
    @Test
    void aGroupLastsNoLongerThanAnyOfIt() {
        int seen = 0;
        for (Observed job : VariedJobs.calculated()) {
            List<GroupFigures> groups = new ArrayList<>(job.figures().groups());
            groups.addAll(job.figures().withLeftOn());
            for (GroupFigures group : groups) {
                for (ApplianceFigures member : group.members()) {
                    RunningFigures all = group.running();
                    RunningFigures one = member.running();
                    String of = job.tree() + ": " + group.key() + " and " + member.key();
                    assertThat(all.time().value())
                            .as(of)
                            .isLessThanOrEqualTo(one.time().value());
                    assertThat(all.wornTime().value())
                            .as(of)
                            .isLessThanOrEqualTo(one.wornTime().value());
                    if (group.runs()) {
                        assertThat(member.runs()).as(of).isTrue();
                    }
                    seen++;
                }
            }
        }
        assertThat(seen).isPositive();
    }

    /** Physics: no supply gives more than it has. What is left for the bank, and what stays on, are no more than its limit. */
    @Test
    void noChargerAsksForMoreThanItsSupplyLetsThrough() {
        int seen = 0;
        for (Observed job : VariedJobs.calculated()) {
            for (ChargeFigures charger : job.figures().charging()) {
                seen += letThrough(job, List.of(charger), charger.recharge());
            }
            for (ChargeFigures.Together together : job.figures().chargingTogether()) {
                seen += letThrough(
                        job,
                        job.figures().charging().stream()
                                .filter(it -> together.way().has(it.charging())
                                        && it.recharge().isPresent())
                                .toList(),
                        Optional.of(together.recharge()));
            }
        }
        assertThat(seen).isPositive();
    }

    private static int letThrough(Observed job, List<ChargeFigures> chargers, Optional<RechargeFigures> recharge) {
        Optional<Power> supply = supply(job, chargers.get(0).charging());
        if (supply.isEmpty() || recharge.isEmpty()) {
            return 0;
        }
        double least = chargers.stream()
                .mapToDouble(it -> MainsCharger.of(it.charging()).inputPerWatt())
                .min()
                .orElseThrow();
        double volts = job.figures().bankCharging().voltage().value().volts();
        boolean carries = job.tree().has("inverter.changeover.kind")
                && !job.tree().at("inverter.changeover.kind").equals("none");
        double beside = carries ? job.figures().absence().power().value().watts() : 0;
        double input = recharge.get().left().value().amperes() * volts * least;
        if (input > 0) {
            assertThat(input + beside)
                    .as(job.tree() + ": " + recharge.get().left().key())
                    .isLessThanOrEqualTo(Math.max(beside, supply.get().watts()) * (1 + Way.NOISE));
        }
        return 1;
    }

    private static Optional<Power> supply(Observed job, Charging charging) {
        if (MainsCharger.fedBy(charging, Source.GENERATOR)) {
            return job.figures().generator().map(it -> it.power().value());
        }
        Optional<Current> limit = Given.maybe(job.job().inverter().inputLimit());
        return MainsCharger.fedBy(charging, Source.SHORE)
                ? limit.flatMap(amperes -> MainsCharger.shoreVoltage(job.job())
                        .map(volts -> new Power(
                                amperes.amperes() * BankFigures.seen(volts).volts())))
                : Optional.empty();
    }

    /** Of so many appliances that there are no pairs, what is left beside each says what the pairs of a few of them say. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void whatIsLeftBesideEachAgreesWithThePairs(String demo) {
        Random random = new Random(demo.hashCode());
        JobTree few = JobTree.demo(demo);
        double most = Observed.of(few).orElseThrow().value("inverter.continuous");
        for (int i = 0; i < 10; i++) {
            few = few.withMore(
                    "appliances",
                    String.format(
                            Locale.ROOT,
                            "{ name: Thing %d, power: %.0f W, duty: %d %%, start: %.1f }",
                            i,
                            most * random.nextDouble(0.05, 0.95),
                            random.nextBoolean() ? 100 : 50,
                            random.nextDouble(1, 3)));
        }
        JobTree many = few;
        for (int i = 0; i < TogetherFigures.MOST_APPLIANCES; i++) {
            many = many.withMore("appliances", "{ name: Lamp " + i + ", power: 5 W }");
        }
        List<TogetherFigures> pairs = Observed.of(few).orElseThrow().figures().pairs();
        RoomFigures room = Observed.of(many).orElseThrow().figures().room().orElseThrow();
        assertThat(pairs).hasSizeGreaterThan(20);
        for (TogetherFigures pair : pairs) {
            RoomFigures.Left a = left(room, pair.first());
            RoomFigures.Left b = left(room, pair.second());
            boolean any = a.admits(b) && b.admits(a);
            assertThat(any)
                    .as(demo + ": " + pair.first().key() + " and "
                            + pair.second().key() + " " + pair.order())
                    .isEqualTo(pair.order() == TogetherFigures.Order.ANY);
            if (!a.admits(b) && !b.admits(a)) {
                assertThat(pair.order()).isEqualTo(TogetherFigures.Order.NEVER);
            }
        }
    }

    private static RoomFigures.Left left(RoomFigures room, ApplianceFigures appliance) {
        return room.appliances().stream()
                .filter(it -> it.appliance().key().equals(appliance.key()))
                .findFirst()
                .orElseThrow();
    }

    /** Each figure as a reader sees it lies on the safe side of what was reckoned, in every language. */
    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "en-US", "de", "nl"})
    void whatIsPrintedLiesOnTheSafeSide(String language) {
        Words words = Words.of(language);
        for (Observed job : VariedJobs.calculated()) {
            for (Figure<?> figure : job.figures().all()) {
                String printed = words.word(figure.stated());
                List<Double> values = Printed.canonical(printed, figure.value(), language);
                assertThat(values.isEmpty()).as(printed).isEqualTo(figure.value() instanceof Count);
                for (double read : values) {
                    double value = figure.value().canonical();
                    double slack = 1e-9 * Math.abs(value);
                    assertThat(
                                    switch (figure.rounding()) {
                                        case DOWN -> read <= value + slack;
                                        case UP -> read >= value - slack;
                                        case NEAREST ->
                                            Math.abs(read - value) <= Printed.COARSEST * Math.abs(value) + slack;
                                    })
                            .as("%s: %s %s is printed as %s, read %s", job.tree(), figure.key(), value, printed, read)
                            .isTrue();
                }
            }
        }
    }

    /** Figures of which less is safe are rounded down, those of which more is safe up. */
    @Test
    void everyFigureIsRoundedToItsSafeSide() {
        String down = LASTING + "|" + AWAY + "|" + DAYS + "|" + CHARGE_OF_DAY + "|" + VOLTS + "|"
                + ALLOWED + "|" + OFF
                + "|fuse\\..*\\.(most|margin|most-distance)|(circuit\\..*|shore)\\.(allowed|most-breaker)"
                + "|bank\\.(capacity|capacity-now|capacity-worn|usable-.*|energy|charge-limit|charge-limit-cold|protection-peak)"
                + "|charging\\..*\\.left-for-bank|charging\\..*\\.(summer|winter)-day|rcd\\..*\\.most-loop|generator\\.fits|return\\.(spare|fits)"
                + "|inverter\\..*-hot|supply\\.allowed-drop|bank\\.(fault-resistance|block-resistance-least)|.*\\.warning-time.*";
        String up = HOLDING + "|" + FILLING + "|back\\..*|" + DROPS
                + "|fuse\\..*\\.(least|must-interrupt|loading)|bank\\.(short-circuit|resistance-worn|resistance|worst-share)"
                + "|cable\\..*\\.(temperature|drop)|" + LOAD
                + "(load|start-load|start-power|start-current|share-per-use|average)"
                + "|inverter\\.(worst-current|full-input|nominal-current)|earth\\..*|absence\\.(load|power|idle-per-day)|day\\.use"
                + "|vent\\..*|circuit\\..*\\.trip|generator\\.(charger|left-on|needed|start)|return\\.(charger|left-on|heating|by-itself|total)";
        for (Observed job : VariedJobs.calculated()) {
            for (Figure<?> figure : job.figures().all()) {
                if (figure.working().formula() != Formula.AS_STATED) {
                    Optional<Rounding> wanted = figure.key().matches(down)
                            ? Optional.of(Rounding.DOWN)
                            : figure.key().matches(up) ? Optional.of(Rounding.UP) : Optional.empty();
                    wanted.ifPresent(safe ->
                            assertThat(figure.rounding()).as(figure.key()).isEqualTo(safe));
                }
            }
        }
    }

    /** Physics: conservation of energy. What cells and sources give over a day is what loads and losses take. */
    @Test
    void theEnergyOfADayIsAccountedFor() {
        for (Observed job : VariedJobs.calculated()) {
            Figures figures = job.figures();
            for (double share : new double[] {0, 0.05, 0.5}) {
                double amperes = share * figures.bank().capacity().value().ampereHours();
                List<ChargeSource> sources = amperes == 0
                        ? List.of()
                        : List.of(
                                new ChargeSource.Steady(new Current(amperes), 10, TimeSpan.ofHours(3)),
                                ChargeSource.Sun.around(
                                        new Power(amperes * 20), new Current(amperes), TimeSpan.ofHours(4)));
                DayRun.Balance balance = new DayRun(
                                figures.bank().asItIs(),
                                figures.supply().resistance().value(),
                                DayPlan.of(
                                        DayUses.of(figures.appliances()),
                                        figures.inverter().losses()),
                                sources,
                                figures.bankCharging().warm(figures.bank()),
                                new Beside(new Current(0.3), new Resistance(2e-3)),
                                new Limits(
                                        new Ratio(0),
                                        figures.inverter().cutOut().value(),
                                        null),
                                figures.inverter().alarm().value(),
                                Discharge.Pauses.RECOVER)
                        .course(new Ratio(0.9))
                        .balance();
                double in = balance.cells().wattHours() + balance.sources().wattHours();
                double out = balance.load().wattHours()
                        + balance.standing().wattHours()
                        + balance.losses().wattHours();
                double whole =
                        balance.load().wattHours() + Math.abs(balance.sources().wattHours());
                assertThat(in).as(job.tree() + " at " + share).isCloseTo(out, within(1e-6 * whole + 1e-9));
            }
        }
    }
}
