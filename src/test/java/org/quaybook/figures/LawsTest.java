package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.quaybook.figures.Families.ALLOWED;
import static org.quaybook.figures.Families.AWAY;
import static org.quaybook.figures.Families.CHARGE_OF_DAY;
import static org.quaybook.figures.Families.DAYS;
import static org.quaybook.figures.Families.DROPS;
import static org.quaybook.figures.Families.ENERGY;
import static org.quaybook.figures.Families.FILLING;
import static org.quaybook.figures.Families.HOLDING;
import static org.quaybook.figures.Families.JOULE;
import static org.quaybook.figures.Families.KIRCHHOFF;
import static org.quaybook.figures.Families.LASTING;
import static org.quaybook.figures.Families.LASTING_AS_IT_IS;
import static org.quaybook.figures.Families.LEAST;
import static org.quaybook.figures.Families.LOAD;
import static org.quaybook.figures.Families.OFF;
import static org.quaybook.figures.Families.OHM;
import static org.quaybook.figures.Families.SAFE;
import static org.quaybook.figures.Families.VOLTS;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Laws that figures obey whatever the job: one thing of a job is made worse, and no figure may come out better. Single
 * figures are compared with published ones elsewhere; these laws look where nobody has worked an example. Each law sees
 * some of the jobs, {@code -Dlaws=all} shows it all of them.
 */
class LawsTest {

    /**
     * What becomes of some figures.
     *
     * @param figures pattern of their names
     * @param because the law of nature or the source
     * @param slack how far they may go the other way nevertheless, against the value
     */
    private record Then(String figures, Way way, String because, double slack) {}

    /** A change and what must follow from it. */
    private record Law(String change, UnaryOperator<JobTree> how, List<Then> then) {
        @Override
        public String toString() {
            return change;
        }
    }

    private static Then more(String figures, String because) {
        return new Then(figures, Way.NEVER_LESS, because, Way.NOISE);
    }

    private static Then less(String figures, String because) {
        return new Then(figures, Way.NEVER_MORE, because, Way.NOISE);
    }

    private static Then within(double slack, Then then) {
        return new Then(then.figures(), then.way(), then.because(), slack);
    }

    private static Then same(String figures, String because) {
        return new Then(figures, Way.SAME, because, Way.NOISE);
    }

    /**
     * With a higher cut-out the largest current is lower, and the cables are reckoned cooler: what ends at the reserve lasts
     * longer by the little that they then resist less.
     */
    private static final double COOLER = 1e-3;

    /** Blocks that resist more share more evenly, which lets a little more charge in. */
    private static final double EVENER = 1e-3;

    private static JobTree branch(JobTree job, String keys) {
        return job.withMore("fuses", "{ id: F9, role: branch, feeds: Fuse board, conductor: 16 mm2, " + keys + " }");
    }

    private static Law law(String change, UnaryOperator<JobTree> how, Then... then) {
        return new Law(change, how, List.of(then));
    }

    static Stream<Law> running() {
        // A higher idle draw alone is no law for loads: with the efficiencies stated, it leaves less for the other
        // losses.
        return Stream.of(
                law(
                        "a smaller bank",
                        job -> job.times("bank.block.capacity", 0.8),
                        less(LASTING, ENERGY),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        less(AWAY, ENERGY),
                        less(OFF, ENERGY),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        less("bank\\.(usable-charge|capacity-worn)", SAFE)),
                law(
                        "a colder bank",
                        job -> job.plus("bank.temperature", -9),
                        less(LASTING, OHM),
                        same(LASTING_AS_IT_IS, "only the worn bank is reckoned cold"),
                        less(AWAY, ENERGY),
                        less(DAYS, ENERGY),
                        less("bank\\.(charge-limit-cold|capacity-worn)", SAFE),
                        more("bank\\.resistance-worn", SAFE),
                        more(FILLING, SAFE)),
                law(
                        "an older bank",
                        job -> job.has("bank.health")
                                ? job.times("bank.health", 0.9)
                                : job.with("bank.health", "85 % (measured)"),
                        less(LASTING, ENERGY),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        less(AWAY, ENERGY),
                        less(OFF, ENERGY),
                        within(EVENER, less(DAYS, ENERGY)),
                        less(CHARGE_OF_DAY, ENERGY),
                        less("bank\\.(usable-charge|capacity-now|capacity-worn)", ENERGY),
                        more("bank\\.(resistance|resistance-worn)", SAFE)),
                law(
                        "a bank of more inner resistance",
                        job -> job.times("bank.block.resistance", 1.3),
                        less(LASTING, OHM),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        less(AWAY, OHM),
                        less(DAYS, OHM),
                        less(CHARGE_OF_DAY, OHM),
                        less("branch\\..*\\.most-(quiet|holding)", OHM),
                        less("bank\\.short-circuit|fuse\\..*\\.must-interrupt", OHM)),
                law(
                        "something that always draws",
                        job -> job.has("bank.standing-draw")
                                ? job.times("bank.standing-draw", 2)
                                : job.with("bank.standing-draw", "300 mA (measured)"),
                        less(LASTING, ENERGY),
                        less(AWAY, ENERGY),
                        less(OFF, ENERGY),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        more(HOLDING, OHM),
                        more("day\\.use|absence\\.load", ENERGY)),
                law(
                        "a branch that shares the feed of the inverter",
                        job -> branch(job, "load: 20 A, average: 3 A, through: [F1, B1, B2]"),
                        less(LASTING, ENERGY),
                        less(AWAY, ENERGY),
                        less(OFF, ENERGY),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        more("fuse\\.F1\\.(load|least)", KIRCHHOFF),
                        less("cable\\.B[12]\\.margin", KIRCHHOFF),
                        more(DROPS, OHM)),
                law(
                        "a branch at the bank",
                        job -> branch(job, "load: 20 A, average: 3 A, through: [bank]"),
                        less(LASTING, ENERGY),
                        less(AWAY, ENERGY),
                        less(OFF, ENERGY),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        same("fuse\\.F1\\.(load|least)|cable\\.B[12]\\.margin", KIRCHHOFF)),
                law(
                        "branches that draw more",
                        job -> job.times("fuses.*.load", 1.4).times("fuses.*.average", 1.4),
                        less(LASTING, ENERGY),
                        less(AWAY, ENERGY),
                        less(DAYS, ENERGY),
                        more(HOLDING, OHM),
                        more("branch\\..*\\.(alarm-below|cut-out-below)", OHM)),
                law(
                        "one more appliance left on",
                        job -> job.with("appliances.0.left-on", "yes"),
                        less(LASTING, ENERGY),
                        same("appliance\\.[^.]+\\.time.*", "alone is alone"),
                        less("absence\\.(to-reserve|to-reserve-worn|to-empty)", ENERGY),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        more(FILLING, ENERGY),
                        less("charging\\..*\\.left-for-bank", ENERGY),
                        less("return\\.(spare|fits)|generator\\.fits", ENERGY),
                        more("generator\\.(left-on|needed|start)|return\\.(left-on|by-itself|total)", ENERGY)),
                law(
                        "a higher idle draw",
                        job -> job.times("inverter.idle", 1.5),
                        less("absence\\.idle-to-.*", ENERGY),
                        more("absence\\.idle-per-day", ENERGY)),
                law(
                        "a less efficient inverter",
                        job -> job.times("inverter.efficiency.best", 0.97).times("inverter.efficiency.full", 0.97),
                        less(LASTING, ENERGY),
                        more(HOLDING, OHM),
                        less(AWAY, ENERGY),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        more("inverter\\.(worst-current|full-input)|fuse\\..*\\.(load|least)", ENERGY)),
                law(
                        "a lower best efficiency",
                        job -> job.times("inverter.efficiency.best", 0.985),
                        less(LASTING, ENERGY),
                        less(DAYS, ENERGY)),
                law(
                        "a higher cut-out voltage",
                        job -> job.times("inverter.cut-out", 1.01),
                        within(COOLER, less(LASTING, SAFE)),
                        within(COOLER, less(AWAY, SAFE)),
                        within(COOLER, less(DAYS, SAFE)),
                        more(LOAD + "cut-out-below", SAFE),
                        within(COOLER, less(LOAD + "warning-time", SAFE))),
                law(
                        "a higher alarm voltage",
                        job -> job.times("inverter.alarm", 1.01),
                        same(LASTING, "an alarm switches nothing off"),
                        more(LOAD + "(alarm-below|alarm-rest)", SAFE),
                        more(LOAD + "warning-time", SAFE)),
                law(
                        "a higher reserve",
                        job -> job.plus("bank.reserve", 10),
                        less(LASTING, SAFE),
                        less("absence\\.(to-reserve|idle-to-reserve|off-to-reserve)(-worn)?", SAFE),
                        same("absence\\.(to-empty|idle-to-empty|off-to-empty)", SAFE),
                        less(DAYS, SAFE),
                        less("bank\\.usable-(charge|energy)", SAFE)),
                law(
                        "a higher voltage at which the battery switches off",
                        job -> job.times("bank.protection.cut-out", 1.2),
                        less(LASTING, SAFE),
                        less(AWAY, SAFE)),
                law(
                        "an appliance of more power",
                        job -> job.times("appliances.0.power", 1.15),
                        less(LASTING, ENERGY),
                        more(HOLDING, OHM),
                        less("return\\.(spare|fits)|generator\\.fits", ENERGY),
                        more("generator\\.(left-on|needed|start)|return\\.(left-on|heating|by-itself|total)", ENERGY)),
                law(
                        "an appliance that draws more of the time",
                        job -> job.times("appliances.*.average", 1.1).times("appliances.*.duty", 1.1),
                        less(LASTING, ENERGY),
                        less(AWAY, ENERGY),
                        less(DAYS, ENERGY)),
                law(
                        "an appliance that starts harder",
                        job -> job.with(
                                "appliances.0.start",
                                job.has("appliances.0.start")
                                        ? Double.toString(Double.parseDouble(job.at("appliances.0.start")) * 2)
                                        : "3"),
                        more(LOAD + "(starts-down-to|start-power|start-load|start-current)", OHM),
                        less("pair\\..*\\.(together|in-any-order)", SAFE),
                        more("generator\\.start", ENERGY)),
                law(
                        "longer uses",
                        job -> job.times("appliances.*.per-use", 1.15),
                        less(LOAD + "uses(-worn)?", ENERGY),
                        more(LOAD + "share-per-use", ENERGY),
                        more("back\\..*", ENERGY),
                        more("day\\.use", ENERGY),
                        less(DAYS, ENERGY)));
    }

    static Stream<Law> cables() {
        return Stream.of(
                law(
                        "longer cables",
                        job -> job.times("cables.*.length", 1.25),
                        less(LASTING, OHM),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        less(AWAY, OHM),
                        less(DAYS, OHM),
                        more(DROPS, OHM),
                        more(LEAST, OHM),
                        more("cable\\..*\\.drop|supply\\.resistance", OHM)),
                law(
                        "one longer cable",
                        job -> job.times("cables.0.length", 1.25),
                        less(LASTING, OHM),
                        more(HOLDING, OHM),
                        more(DROPS, OHM)),
                law(
                        "thinner cables",
                        WorseJobs::thinner,
                        less(LASTING, OHM),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        less(AWAY, OHM),
                        less(DAYS, OHM),
                        more(DROPS, OHM),
                        less(ALLOWED, JOULE),
                        more("cable\\..*\\.temperature", JOULE),
                        less("fuse\\..*\\.(most|margin)", "ISO 13297:2020 13.1.5"),
                        less("fuse\\..*\\.must-interrupt", OHM)),
                law(
                        "one conductor where there were two",
                        job -> job.rewritten("cables.*.fitted", text -> text.replaceFirst("^2 x ", "")),
                        less(LASTING, OHM),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        less(AWAY, OHM),
                        less(DAYS, OHM),
                        more(DROPS, OHM),
                        less(ALLOWED, JOULE),
                        less("fuse\\..*\\.(most|margin)", "ISO 13297:2020 13.1.5")),
                law(
                        "more joints",
                        job -> job.with("cables.*.joints", "9"),
                        less(LASTING, OHM),
                        more(HOLDING, OHM),
                        less(VOLTS, OHM),
                        less(AWAY, OHM),
                        less(DAYS, OHM),
                        more("supply\\.(joint-drop|resistance)", OHM)),
                law(
                        "hotter air along the cables",
                        job -> job.with("cables.*.ambient", "58 °C"),
                        less(ALLOWED, JOULE),
                        more(LEAST, JOULE),
                        less("fuse\\..*\\.(most|margin)", JOULE),
                        more("cable\\..*\\.(temperature|drop)", JOULE),
                        less(LASTING, OHM)),
                law(
                        "cool air stated in an engine space",
                        job -> job.has("cables.*.ambient")
                                ? job
                                : job.with("cables.*.route", "engine-space").with("cables.*.ambient", "20 °C"),
                        less(ALLOWED, "33 CFR 183.425: the factor of the engine space holds at least")),
                law(
                        "through an engine space",
                        job -> job.with("cables.*.route", "engine-space"),
                        less(ALLOWED, JOULE),
                        more(LEAST, JOULE),
                        more("cable\\..*\\.(temperature|drop)", JOULE),
                        less("fuse\\..*\\.(most|margin)", JOULE)),
                law(
                        "in a larger bundle",
                        job -> job.has("cables.*.bundled")
                                ? job.plus("cables.*.bundled", 3)
                                : job.with("cables.*.bundled", "4"),
                        less(ALLOWED, JOULE),
                        more(LEAST, JOULE),
                        more("cable\\..*\\.(temperature|drop)", JOULE),
                        less("fuse\\..*\\.(most|margin)", JOULE),
                        less(LASTING, OHM)),
                law(
                        "insulation that bears less heat",
                        job -> job.rewritten("cables.*.insulation", text -> "75 °C"),
                        less(ALLOWED, JOULE),
                        less("fuse\\..*\\.(most|margin)", JOULE)),
                law(
                        "a larger inverter",
                        job -> job.times("inverter.continuous", 1.1),
                        more("inverter\\.(full-input|worst-current|nominal-current)", ENERGY),
                        less("cable\\..*\\.margin", ENERGY),
                        more(DROPS, OHM),
                        more(LEAST, OHM),
                        more("fuse\\..*\\.(load|least)", ENERGY),
                        more("cable\\..*\\.temperature", JOULE)));
    }

    static Stream<Law> fuses() {
        return Stream.of(
                law(
                        "a fuse nearer to the battery",
                        job -> job.times("fuses.*.distance", 0.5),
                        more("fuse\\..*\\.must-interrupt", OHM)),
                law(
                        "a fuse whose distance nobody has measured",
                        job -> job.without("fuses.*.distance"),
                        more("fuse\\..*\\.must-interrupt", SAFE)),
                law(
                        "one string more",
                        job -> job.plus("bank.parallel", 1),
                        more("bank\\.short-circuit|fuse\\..*\\.must-interrupt", OHM),
                        less("bank\\.fault-resistance", OHM)),
                law(
                        "a higher short-circuit current of the maker",
                        job -> job.times("bank.block.short-circuit", 1.5),
                        more("bank\\.short-circuit|fuse\\..*\\.must-interrupt", SAFE)),
                law(
                        "a larger fuse",
                        job -> job.times("fuses.*.rating", 1.4),
                        less("fuse\\..*\\.(margin|loading)", SAFE)),
                law(
                        "links that nobody has measured",
                        job -> job.without("bank.links"),
                        more("fuse\\..*\\.must-interrupt", SAFE)));
    }

    static Stream<Law> charging() {
        return Stream.of(
                law(
                        "chargers of less current",
                        job -> job.times("charging.*.current", 0.75),
                        more(FILLING, ENERGY),
                        more("back\\..*", ENERGY),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        less("charging\\..*\\.(current|left-for-bank|summer-day|winter-day)", ENERGY),
                        less("return\\.(charger|by-itself|total)|generator\\.(charger|needed|start)", ENERGY)),
                law(
                        "a larger bank to fill",
                        job -> job.times("bank.block.capacity", 1.3),
                        // After a usual day the larger bank is fuller.
                        more("charging\\..*\\.to-full", ENERGY)),
                law(
                        "a lower charge limit",
                        job -> job.has("bank.charge-limit")
                                ? job.times("bank.charge-limit", 0.7)
                                : job.with("bank.charge-limit", "15 A (plate)"),
                        less("bank\\.charge-limit(-cold)?", SAFE),
                        more(FILLING, ENERGY)),
                law(
                        "a lower input limit",
                        job -> job.has("inverter.input-limit")
                                ? job.times("inverter.input-limit", 0.6)
                                : job.with("inverter.input-limit", "3 A"),
                        less("charging\\..*\\.(current|left-for-bank)", ENERGY),
                        more(FILLING, ENERGY)),
                law(
                        "a smaller generator",
                        job -> job.times("generator.power", 0.5),
                        less("charging\\..*\\.(current|left-for-bank)", ENERGY),
                        more(FILLING, ENERGY),
                        less("generator\\.fits", ENERGY)),
                law(
                        "chargers that waste more",
                        job -> job.with("charging.*.efficiency", "70 %"),
                        less("charging\\..*\\.(current|left-for-bank)", ENERGY),
                        more(FILLING, ENERGY),
                        less("return\\.(spare|fits)|generator\\.fits", ENERGY)),
                law(
                        "less sun",
                        job -> job.times("charging.*.summer-sun", 0.7).times("charging.*.winter-sun", 0.7),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        more("day\\..*-sun-to-full", ENERGY),
                        less("charging\\..*-day", ENERGY)),
                law(
                        "fewer panels",
                        job -> job.times("charging.*.peak", 0.7),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY),
                        more("day\\..*-sun-to-full", ENERGY)),
                law(
                        "fewer hours of charging a day",
                        job -> job.times("charging.*.per-day", 0.6),
                        less(DAYS, ENERGY),
                        less(CHARGE_OF_DAY, ENERGY)));
    }

    static Stream<Law> mains() {
        return Stream.of(
                law(
                        "thinner cables of the circuits",
                        WorseJobs::thinnerCircuits,
                        less("(circuit\\..*|shore)\\.(allowed|most-breaker)", JOULE)),
                law(
                        "circuits in insulation",
                        job -> job.has("ac-circuits.*.laid") ? job : job.with("ac-circuits.*.laid", "in-insulation"),
                        same("circuit\\..*\\.(allowed|most-breaker)", "unknown counts as the worst")),
                law(
                        "a slower breaker",
                        job -> job.with("ac-circuits.*.curve", "D"),
                        more("circuit\\..*\\.trip", "IEC 60898-1: bands of B, C and D")),
                law(
                        "RCDs of a higher rating",
                        job -> job.with("rcds.*.rating", "100 mA"),
                        less("rcd\\..*\\.most-loop", OHM),
                        more("rcd\\..*\\.leakage-budget", SAFE)),
                law(
                        "longer earth conductors",
                        job -> job.times("earths.*.length", 2),
                        more("earth\\..*\\.resistance", OHM)));
    }

    static Stream<Law> bank() {
        String uneven = "bank\\.(worst-share|unevenness)|fuse\\.F7\\.(load|least)";
        return Stream.of(
                law(
                        "plus and minus taken off at one end",
                        job -> job.with("bank.take-off", "same-end"),
                        more(uneven, OHM),
                        less("bank\\.(charge-limit|charge-limit-cold|protection-peak)", SAFE)),
                law(
                        "a take-off that nobody has seen",
                        job -> job.with("bank.take-off", "not seen"),
                        more(uneven, "the worst counts"),
                        more("fuse\\..*\\.must-interrupt", "the worst counts"),
                        less("bank\\.(charge-limit|charge-limit-cold|protection-peak)", "the worst counts")),
                law(
                        "longer links",
                        job -> job.times("bank.links.length", 2),
                        more(uneven, OHM),
                        less(LASTING, OHM),
                        less("fuse\\..*\\.must-interrupt", OHM)),
                law(
                        "more cells that gas",
                        job -> job.times("bank.block.capacity", 1.4),
                        more("vent\\..*", "IEC 62485-2: the air needed goes with cells and capacity")),
                law(
                        "a hotter locker",
                        job -> job.has("inverter.locker")
                                ? job.plus("inverter.locker", 10)
                                : job.with("inverter.locker", "52 °C"),
                        less("inverter\\.(continuous|short-time)-hot", SAFE),
                        less("pair\\..*\\.(together|in-any-order)", SAFE)),
                law(
                        "a longer wish",
                        job -> job.times("appliances.*.wished-time", 1.5).times("together.*.wished-time", 1.5),
                        more(LOAD + "wished-(capacity|strings|blocks)", ENERGY)),
                law(
                        "blocks that resist less",
                        job -> job.times("bank.block.resistance", 0.7),
                        more("earth\\..*\\.heat", "IEC 60364-5-54 543.1.2: S = I √t / k"),
                        more("bank\\.short-circuit|fuse\\..*\\.must-interrupt", OHM)),
                law(
                        "appliances of more power",
                        job -> job.times("appliances.*.power", 1.3),
                        less("pair\\..*\\.(together|in-any-order)", SAFE),
                        more("rcd\\..*\\.leakage", SAFE)));
    }

    static Stream<Law> laws() {
        return Stream.of(running(), bank(), cables(), fuses(), charging(), mains())
                .flatMap(all -> all);
    }

    @ParameterizedTest
    @MethodSource("laws")
    void nothingComesOutBetterForBeingMadeWorse(Law law) {
        List<String> broken = new ArrayList<>();
        Set<Then> unmoved = new LinkedHashSet<>(law.then());
        for (Observed before : VariedJobs.someFor(law.change())) {
            JobTree changed = law.how().apply(before.tree());
            Optional<Observed> after = changed.equals(before.tree()) ? Optional.empty() : Observed.of(changed);
            after.ifPresent(it -> law.then().forEach(then -> compare(then, before, it, unmoved, broken)));
        }
        assertThat(broken).isEmpty();
        assertThat(unmoved)
                .as("what nothing moves: a figure that does not know of the change")
                .isEmpty();
    }

    private static void compare(Then then, Observed before, Observed after, Set<Then> unmoved, List<String> broken) {
        TreeSet<String> keys = new TreeSet<>(before.keys());
        keys.addAll(after.keys());
        boolean sameDay = before.running().equals(after.running());
        Pattern pattern = Pattern.compile(then.figures());
        for (String key : keys) {
            if (pattern.matcher(key).matches() && (sameDay || !hangsOnTheDay(key))) {
                double was = before.value(key);
                double is = after.value(key);
                if (!Double.isNaN(was) && !Double.isNaN(is)) {
                    if (was != is || then.way() == Way.SAME) {
                        unmoved.remove(then);
                    }
                    if (!then.way().allows(key, was, is, then.slack())) {
                        broken.add(before.tree() + ": " + key + " " + was + " -> " + is + ", " + then.way() + ", "
                                + then.because());
                    }
                }
            }
        }
    }

    /** What can no longer run at all takes nothing from the bank: such days are not compared. */
    private static boolean hangsOnTheDay(String key) {
        return key.startsWith("day.") || key.endsWith(".after-day");
    }
}
