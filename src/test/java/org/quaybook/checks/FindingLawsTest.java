package org.quaybook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.DemoJobs;
import org.quaybook.figures.JobTree;
import org.quaybook.figures.Observed;
import org.quaybook.figures.VariedJobs;
import org.quaybook.figures.WorseJobs;

/** Laws that findings obey whatever the job: what is made worse is never judged better. */
class FindingLawsTest {

    /**
     * A thing made worse.
     *
     * @param but checks whose reason may go away with it, which stands beside
     */
    private record Worse(String change, UnaryOperator<JobTree> how, Set<Check> but) {
        @Override
        public String toString() {
            return change;
        }
    }

    private static Worse worse(String change, UnaryOperator<JobTree> how, Check... but) {
        return new Worse(change, how, Set.of(but));
    }

    static Stream<Worse> worse() {
        return Stream.of(
                // A thinner conductor lets less through in a short.
                // The conductor to the inverter's case may be thinner with it, too.
                worse("thinner cables", WorseJobs::thinner, Check.FUSE_INTERRUPTING, Check.EARTH_THIN),
                worse("thinner cables of the circuits", WorseJobs::thinnerCircuits),
                worse("thinner earths", WorseJobs::thinnerEarths),
                worse("longer cables", it -> it.times("cables.*.length", 2)),
                worse("larger fuses", it -> it.times("fuses.*.rating", 2)),
                // Farther away less flows in a short.
                worse("fuses farther away", it -> it.times("fuses.*.distance", 4), Check.FUSE_INTERRUPTING),
                worse(
                        "no fuse",
                        it -> it.without("fuses.0"),
                        Check.FUSE_INTERRUPTING,
                        Check.FUSE_OVER_CABLE,
                        Check.FUSE_DISTANCE),
                // What is stated counts whatever the family is made for.
                worse(
                        "fuses that interrupt less",
                        it -> it.with("fuses.*.interrupting", "500 A"),
                        Check.FUSE_VOLTAGE,
                        Check.FUSE_VOLTAGE_UNWRITTEN),
                worse(
                        "branches that share the feed",
                        it -> it.withMore(
                                "fuses",
                                "{ id: F9, role: branch, conductor: 16 mm2, load: 60 A, average: 5 A, rating: 80 A, family: class-t, through: [F1, B1, B2] }")),
                worse("hotter air", it -> it.with("cables.*.ambient", "62 °C")),
                worse("a larger bundle", it -> it.with("cables.*.bundled", "12")),
                worse("insulation that bears less", it -> it.with("cables.*.insulation", "60 °C")),
                worse("smaller vents", it -> it.times("bank.vent.inlet", 0.3).times("bank.vent.outlet", 0.3)),
                // Of one that nobody has measured it is asked.
                worse("no vent", it -> it.without("bank.vent"), Check.VENTILATION),
                worse("a larger bank", it -> it.times("bank.block.capacity", 1.5)),
                worse(
                        "no RCD",
                        it -> it.without("tests")
                                .without("rcds")
                                .without("ac-circuits.*.rcd")
                                .without("shore.rcd")
                                .without("generator.rcd"),
                        Check.INSULATION_LOW,
                        Check.RCD_SLOW,
                        Check.INLET_LIVE,
                        Check.TEST_FAILED),
                worse("RCDs of a higher rating", it -> it.with("rcds.*.rating", "300 mA")),
                worse("larger breakers", it -> it.with("ac-circuits.*.breaker", "40 A")),
                worse("a larger breaker of the shore", it -> it.times("shore.breaker", 2)),
                worse("a breaker farther from the inlet", it -> it.times("shore.breaker-distance", 5)),
                worse("no isolators", it -> it.without("isolators")),
                worse("smaller isolators", it -> it.times("isolators.*.rating", 0.5)),
                worse("no bond", it -> it.with("inverter.neutral-bond", "none")),
                worse("a bond that stays", it -> it.with("inverter.neutral-bond", "always")),
                worse("no interlock", it -> it.with("inverter.changeover.interlocked", "no")),
                worse("a colder bank", it -> it.plus("bank.temperature", -20)),
                worse("chargers of more current", it -> it.times("charging.*.current", 2)),
                worse("appliances of more power", it -> it.times("appliances.*.power", 1.5)),
                worse("everything left on", it -> it.with("appliances.*.left-on", "yes")),
                worse("petrol aboard", it -> it.with("craft.petrol-aboard", "yes")),
                worse("a metal hull", it -> it.with("craft.metal-hull", "yes")),
                worse("wing nuts", it -> it.with("bank.wing-nuts", "yes")),
                worse("unlike blocks", it -> it.with("bank.blocks-alike", "no")),
                worse("insulation that leaks", it -> WorseJobs.result(it, "insulation", "0.1 MΩ")),
                worse("RCDs that trip late", it -> WorseJobs.result(it, "rcd-trip", "900 ms")),
                worse("a live inlet", it -> WorseJobs.result(it, "inlet-dead", "110 V")),
                worse("a high drop", it -> WorseJobs.result(it, "voltage-drop", "2 V")),
                worse("no earth through", it -> WorseJobs.result(it, "earth-continuity", "40 Ω")),
                worse(
                        "no tests",
                        it -> it.without("tests"),
                        Check.INSULATION_LOW,
                        Check.RCD_SLOW,
                        Check.INLET_LIVE,
                        Check.TEST_FAILED));
    }

    @ParameterizedTest
    @MethodSource("worse")
    void whatIsMadeWorseIsNeverNoLongerForbidden(Worse law) {
        List<String> broken = new ArrayList<>();
        int seen = forbidden(law, broken);
        assertThat(broken).isEmpty();
        assertThat(seen).as("jobs that it changes").isPositive();
    }

    private static int forbidden(Worse law, List<String> broken) {
        int seen = 0;
        for (Observed before : VariedJobs.someFor(law.change())) {
            JobTree changed = law.how().apply(before.tree());
            Optional<Observed> after = changed.equals(before.tree()) ? Optional.empty() : Observed.of(changed);
            if (after.isPresent()) {
                seen++;
                Map<Check, Long> was = forbidding(before);
                Map<Check, Long> is = forbidding(after.get());
                was.forEach((check, number) -> {
                    if (!law.but().contains(check) && is.getOrDefault(check, 0L) < number) {
                        broken.add(before.tree() + ": " + check + " " + number + " -> " + is.getOrDefault(check, 0L));
                    }
                });
            }
        }
        return seen;
    }

    private static List<Finding> findings(Observed it) {
        return Findings.of(it.job(), it.figures(), it.tables());
    }

    private static Map<Check, Long> forbidding(Observed it) {
        return numbers(findings(it).stream().filter(Finding::forbids));
    }

    private static Map<Check, Long> asking(Observed it) {
        return numbers(findings(it).stream());
    }

    private static Map<Check, Long> numbers(Stream<Finding> findings) {
        Map<Check, Long> numbers = new HashMap<>();
        findings.forEach(finding -> numbers.merge(finding.check(), 1L, Long::sum));
        return numbers;
    }

    /** The order of a list is nobody's fault. */
    static Stream<String> lists() {
        return Stream.of(
                "appliances",
                "cables",
                "fuses",
                "charging",
                "ac-circuits",
                "rcds",
                "earths",
                "isolators",
                "sockets",
                "tests",
                "together",
                "together.*.appliances",
                "fuses.*.protects",
                "isolators.*.isolates",
                "tests.*.of",
                "deviations");
    }

    @ParameterizedTest
    @MethodSource("lists")
    void theOrderOfAListChangesNoFinding(String list) {
        List<String> broken = new ArrayList<>();
        turned(list, broken);
        assertThat(broken).isEmpty();
    }

    private static void turned(String list, List<String> broken) {
        for (Observed job : VariedJobs.someFor(list)) {
            JobTree turned = job.tree().reversed(list);
            if (!turned.equals(job.tree())) {
                Set<String> was = said(job);
                Set<String> is = said(Observed.of(turned).orElseThrow());
                Set<String> gone = new TreeSet<>(was);
                gone.removeAll(is);
                Set<String> come = new TreeSet<>(is);
                come.removeAll(was);
                if (!gone.isEmpty() || !come.isEmpty()) {
                    broken.add(job.tree() + ": " + gone + " -> " + come);
                }
            }
        }
    }

    private static Set<String> said(Observed job) {
        Set<String> said = new TreeSet<>();
        for (Finding it : findings(job)) {
            // Uses are spread over the day in the order of the appliances.
            if (it.check() != Check.DAY_CUT_OUT) {
                List<String> words = new ArrayList<>(
                        List.of(it.message().arguments().toString().split("[\\[\\], ]+", -1)));
                Collections.sort(words);
                said.add(it.severity() + " " + it.check() + " " + words);
            }
        }
        return said;
    }

    /** A job of which much is wrong, so that there is something to ask. */
    private static JobTree spoilt(String demo) {
        JobTree job = WorseJobs.thinnerEarths(WorseJobs.thinnerCircuits(JobTree.demo(demo)))
                .times("fuses.*.rating", 3)
                .times("fuses.*.distance", 4)
                .with("fuses.*.interrupting", "500 A")
                .times("bank.vent.inlet", 0.3)
                .times("bank.vent.outlet", 0.3)
                .with("rcds.*.rating", "300 mA")
                .with("rcds.*.type", "AC")
                .with("ac-circuits.*.breaker", "40 A")
                .times("shore.breaker", 3)
                .times("shore.breaker-distance", 9)
                .times("isolators.*.rating", 0.3)
                .with("inverter.neutral-bond", "always")
                .with("inverter.changeover.interlocked", "no")
                .times("charging.*.current", 4)
                .times("appliances.*.power", 1.4)
                .with("appliances.*.left-on", "yes")
                .with("craft.petrol-aboard", "yes")
                .with("inverter.ignition-protected", "no")
                .with("bank.wing-nuts", "yes")
                .with("bank.blocks-alike", "no");
        return WorseJobs.result(
                WorseJobs.result(WorseJobs.result(job, "insulation", "0.1 MΩ"), "rcd-trip", "900 ms"),
                "inlet-dead",
                "110 V");
    }

    /** What a job may say that findings hang on. */
    private static final String TOLD =
            "(craft|bank|inverter|cables|fuses|isolators|shore|generator|rcds|ac-circuits|earths|charging|appliances)\\..*"
                    + "|tests\\..*\\.(result|of.*|source)";

    /** What nobody need say: what comes in its place is known to be enough, or is asked on the survey's sheet. */
    private static final String NEED_NOT_BE_TOLD = "bank\\.(wing-nuts|blocks-alike)" // only a fault that somebody saw
            + "|(fuses\\..*\\.rating|cables\\..*\\.fitted)" // then one that fits is proposed
            + "|fuses\\..*\\.interrupting" // then what its family interrupts counts
            + "|appliances\\..*\\.kind" // nothing tells then that it heats
            + "|appliances\\..*\\.left-on"; // the survey's sheet asks

    static List<String> askedOf() {
        return "all".equals(System.getProperty("laws")) ? DemoJobs.ALL : List.of("lantern-moth", "marmalade-meridian");
    }

    /** What is not written is not proved: whatever it gave rise to is asked again, if in other words. */
    @ParameterizedTest
    @MethodSource("askedOf")
    void whatIsUnwrittenIsAskedInAnotherWay(String demo) {
        Observed before = Observed.of(spoilt(demo)).orElseThrow();
        Map<Check, Long> forbade = forbidding(before);
        Map<Check, Long> asked = asking(before);
        List<String> broken = new ArrayList<>();
        for (String leaf : before.tree().leaves()) {
            Optional<Observed> after =
                    leaf.matches(TOLD) ? Observed.of(before.tree().without(leaf)) : Optional.empty();
            if (after.isPresent()) {
                Map<Check, Long> forbids = forbidding(after.get());
                Set<Check> gone = new TreeSet<>(forbade.keySet());
                gone.removeIf(check -> forbids.getOrDefault(check, 0L) >= forbade.getOrDefault(check, 0L));
                Map<Check, Long> asks = asking(after.get());
                boolean asksAnew =
                        asks.entrySet().stream().anyMatch(it -> it.getValue() > asked.getOrDefault(it.getKey(), 0L));
                if (!gone.isEmpty() && !asksAnew && !leaf.matches(NEED_NOT_BE_TOLD)) {
                    broken.add(leaf + ": " + gone);
                }
            }
        }
        assertThat(forbade).hasSizeGreaterThan(10);
        assertThat(broken).isEmpty();
    }
}
