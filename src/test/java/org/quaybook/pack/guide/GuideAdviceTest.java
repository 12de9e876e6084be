package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.checks.Alike;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Job;
import org.quaybook.record.FactSheet;
import org.quaybook.record.RcdSources;

/** What the guide tells its owner to do, before it is laid out. Own requirements where no source is named. */
class GuideAdviceTest {

    private static Briefing brief(DemoJob demo) {
        return Briefing.of(demo.assessment(), DemoJob.WORDS);
    }

    @SuppressWarnings("unchecked")
    private static List<String> list(Map<String, Object> facts, String key) {
        return (List<String>) Objects.requireNonNull(facts.get(key));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> rows(Map<String, Object> facts, String key) {
        return (List<Map<String, Object>>) Objects.requireNonNull(facts.get(key));
    }

    private static String text(Map<String, Object> row, String key) {
        return String.valueOf(row.get(key));
    }

    /** Who leaves or flees turns off the battery's switches, not the bilge pump. Common practice, no source. */
    @Test
    void theSwitchOfABranchIsNoBatterySwitch() {
        Briefing brief = brief(DemoJob.changed(
                "lantern-moth",
                Map.of(
                        "fuses:",
                        "\n  - { id: F2, role: branch, feeds: Bilge pump, conductor: 4 mm2, load: 6 A, rating: 10 A }",
                        "isolators:",
                        "\n  - { id: S3, name: Bilge pump switch, where: helm, isolates: [F2] }")));
        assertThat(String.join(" ", new EmergencyOff(brief).steps()))
                .contains("S1")
                .doesNotContain("S3");
        assertThat(String.valueOf(new QuickCard(brief, CardDetail.FULL).facts()))
                .contains("S1")
                .doesNotContain("S3");
    }

    /** A night on the breathing machine is told with the refrigerator that stays on beside it, not as if that were off. */
    @Test
    void theTimeOfWhatMustNotFailCountsWhatStaysOn() {
        String fridge = "\n  - { name: Refrigerator, power: 90 W, average: 45 W, kind: motor, left-on: yes }";
        Briefing brief = brief(DemoJob.changed("long-way-round", Map.of("appliances:", fridge)));
        ApplianceFigures machine = brief.figures().appliances().stream()
                .filter(it -> it.appliance().isReliedOn())
                .findFirst()
                .orElseThrow();
        var beside = brief.figures().withLeftOn(machine).orElseThrow();
        double worn = beside.running().wornTime().value().hours();
        assertThat(worn).isLessThan(machine.wornTime().value().hours());
        // 60 W and 45 W in the mean out of the usable part of an old and cold battery (conservation of energy).
        double usable = brief.figures().bank().capacityWorn().value().ampereHours() * 0.85 * 13.6;
        assertThat(worn).isLessThan(usable / (60 + 45));
        List<String> must = list(new RunChapter(brief).facts(), "mustNotFail");
        assertThat(must.get(0))
                .isEqualTo("Breathing machine: plan on "
                        + brief.say(beside.running().wornTime())
                        + " from full, with what stays on beside it: Refrigerator.");
        assertThat(String.join(" ", must)).doesNotContain("nothing else running");
    }

    /** A bank that is charged or drawn of while it is read shows another voltage than at rest. */
    @Test
    void theBatteryIsReadWithNothingGoingOn() {
        assertThat(list(new VoltsChapter(brief(DemoJob.of("long-way-round"))).facts(), "read"))
                .contains(
                        "Switch off all appliances, all charging and what runs on the battery directly: Living fuse board.",
                        "Panels charge in any light, and no switch for them is on record. Read before sunrise.");
        assertThat(String.join(" ", list(new VoltsChapter(brief(DemoJob.of("hut-seventeen"))).facts(), "read")))
                .contains("Switch off all appliances and all charging.")
                .doesNotContain("sunrise", "wind", "directly");
    }

    /** The time to the reserve is the idle inverter's alone only where nothing runs on the battery beside it. */
    @Test
    void theIdleInverterIsNotAloneWhereSomethingRunsOnTheBattery() {
        Briefing beside = brief(DemoJob.of("long-way-round"));
        assertThat(String.join(" ", list(new RunChapter(beside).facts(), "idle")))
                .contains("With what runs on the battery directly, it reaches the reserve")
                .doesNotContain("all by itself");
        assertThat(new AwayChapter(beside).facts()).containsEntry("counts", true);
        assertThat(list(new AwayChapter(beside).facts(), "before"))
                .contains("Of what runs on the battery directly (Living fuse board), leave on only what must run.");
        Briefing alone = brief(DemoJob.of("persimmon-tug"));
        assertThat(String.join(" ", list(new RunChapter(alone).facts(), "idle")))
                .contains("all by itself");
        assertThat(new AwayChapter(alone).facts()).containsEntry("counts", false);
        assertThat(list(new AwayChapter(alone).facts(), "before")).noneMatch(step -> step.contains("battery directly"));
    }

    /** A measurement that nobody has written down is not said to be done. */
    @Test
    void noMeasurementOfAnRcdIsClaimedThatIsNotRecorded() {
        assertThat(text(new CareChapter(brief(DemoJob.of("long-way-round"))).facts(), "measured"))
                .contains("It was done at handover");
        assertThat(text(new CareChapter(brief(DemoJob.without("long-way-round", "tests"))).facts(), "measured"))
                .contains("None is recorded here")
                .doesNotContain("was done");
    }

    /** A battery that never gets full is filled by what is there: no night on shore power without it, no sun without panels. */
    @Test
    void aBatteryIsFilledByWhatIsThere() {
        String boat = "marmalade-meridian";
        assertThat(DemoJob.of(boat).assessment().job().charging())
                .extracting(Charging::kind)
                .contains(ChargeKind.SHORE_CHARGER, ChargeKind.ALTERNATOR)
                .doesNotContain(ChargeKind.SOLAR);
        assertThat(troubles(DemoJob.of(boat))).contains("Charge a whole night. ");
        assertThat(troubles(DemoJob.changed(
                        boat, Map.of("charging:", "\n  - { kind: solar, peak: 100 W, cold-stop: yes }"))))
                .contains("Charge a whole night or a sunny day");
        assertThat(troubles(DemoJob.changed(boat, "kind: shore-charger", "kind: wind")))
                .contains("It needs many hours of charging at a stretch")
                .doesNotContain("Charge a whole");
    }

    private static String troubles(DemoJob job) {
        return String.valueOf(new TroubleChapter(brief(job)).rows());
    }

    /** The owner who reads more than his chargers are set to must not be told that it is normal. */
    @Test
    void strongChargingEndsWhereTheChargersAreSet() {
        assertThat(String.valueOf(new NormalChapter(brief(DemoJob.of("long-way-round"))).facts())
                        .replace('\u00a0', ' '))
                .contains("Towards the end of strong charging, up to, value=14.0 V");
    }

    /** The barge's water heater hangs on shore power, past the inverter. */
    @Test
    void whatHangsPastTheInverterNeverRunsOnBattery() {
        Briefing brief = brief(DemoJob.of("lantern-moth"));

        assertThat(String.valueOf(new RunChapter(brief).facts()))
                .contains("{name=Water heater, why=Its circuit is fed by shore power only.}", "cannotButOnShore=true");
        assertThat(String.valueOf(new ShoreChapter(brief).facts()))
                .contains("Without shore power this stops: Water heater.");
        assertThat(String.valueOf(new TogetherChapter(brief).facts().get("shore")))
                .contains("name=Water heater");
        assertThat(String.valueOf(new TogetherChapter(brief).facts().get("matrices")))
                .doesNotContain("Water heater");
    }

    /** Panels that go on charging in the cold are not left as they are. */
    @Test
    void panelsWithoutColdStopAreNotLeftOnInFrost() {
        assertThat(list(new AwayChapter(brief(DemoJob.of("long-way-round"))).facts(), "before"))
                .contains("Leave solar charging as it is.");
        assertThat(list(
                        new AwayChapter(brief(DemoJob.changed(
                                        "long-way-round",
                                        "winter-sun: 0.8 h, cold-stop: yes",
                                        "winter-sun: 0.8 h, cold-stop: no")))
                                .facts(),
                        "before"))
                .contains("Solar charging may stay on as long as no frost comes: it does not stop by itself.")
                .doesNotContain("Leave solar charging as it is.");
    }

    /** Behind an isolating transformer neither a tingle nor a trip comes from the earth of the shore. */
    @Test
    void troublesBehindATransformerAreItsOwn() {
        String without = troubles(DemoJob.of("persimmon-tug"));
        assertThat(without)
                .contains("The earth of the lead or the post is broken")
                .doesNotContain("transformer");
        String with = troubles(DemoJob.changed(
                "persimmon-tug",
                "galvanic-isolator: yes",
                "transformer: { neutral-tied: yes, shore-earth-goes-on: no }"));
        assertThat(with)
                .contains("The earth behind the transformer is broken", "The transformer takes a surge")
                .contains("Have the isolating transformer and the earth tested")
                .doesNotContain("The earth of the lead or the post is broken");
    }

    /** Somebody who touches a live part stays in danger until the last source is off. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everySourceGoesOffInAnEmergency(String demo) {
        Briefing brief = brief(DemoJob.of(demo));
        Job job = brief.job();
        for (List<String> steps : List.of(
                list(new SafetyChapter(brief).facts(), "shock"),
                list(new QuickCard(brief, CardDetail.FULL).facts(), "danger"))) {
            String all = String.join(" ", steps).toLowerCase(Locale.ROOT);
            assertThat(all).contains("turn off s1");
            assertThat(all.contains("pull the lead")).isEqualTo(job.shore() != null);
            assertThat(all.contains("generator")).isEqualTo(job.generator() != null);
            assertThat(all.contains("engine"))
                    .isEqualTo(job.charging().stream().anyMatch(it -> it.kind() == ChargeKind.ALTERNATOR));
        }
    }

    /** One order in guide, card, labels and record. Common practice, no source. */
    @Test
    void theBatteryGoesOffLastInAnEmergency() {
        assertThat(new EmergencyOff(brief(DemoJob.of("marmalade-meridian"))).steps())
                .satisfiesExactly(
                        step -> assertThat(step).contains("Pull the lead there"),
                        step -> assertThat(step).isEqualTo("Stop the generator and keep it from starting by itself."),
                        step -> assertThat(step).isEqualTo("Stop the engine."),
                        step -> assertThat(step).startsWith("Turn off S1 "));
        assertThat(new EmergencyOff(brief(DemoJob.of("hut-seventeen"))).steps())
                .satisfiesExactly(
                        step -> assertThat(step).isEqualTo("Stop the generator and keep it from starting by itself."),
                        step -> assertThat(step).startsWith("Turn off S2 "),
                        step -> assertThat(step).startsWith("Turn off S1 "));
    }

    /** Whoever has many switches to turn off has somebody else call first. Common practice, no source. */
    @Test
    void helpIsCalledBeforeManySwitches() {
        String switches = IntStream.rangeClosed(1, 12)
                .mapToObj(i -> "  - { id: SX" + i + ", name: Switch " + i
                        + ", where: step, side: outside, tool-free: yes, isolates: [B1] }\n")
                .collect(Collectors.joining());
        List<String> many = list(
                new SafetyChapter(brief(DemoJob.changed("persimmon-tug", "isolators:\n", "isolators:\n" + switches)))
                        .facts(),
                "shock");
        assertThat(many.get(1)).isEqualTo("Have somebody call for help at once.");
        assertThat(many.get(many.size() - 2)).startsWith("Call for help.");
        assertThat(list(new SafetyChapter(brief(DemoJob.of("persimmon-tug"))).facts(), "shock"))
                .doesNotContain("Have somebody call for help at once.")
                .anyMatch(step -> step.startsWith("Call for help."));
    }

    @Test
    void withoutABatterySwitchTheInverterGoesOff() {
        Briefing brief = brief(DemoJob.without("persimmon-tug", "isolators"));
        assertThat(list(new SafetyChapter(brief).facts(), "shock")).contains("Switch off the inverter.");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theFireServiceIsCalledWhetherOrNotSomethingHelps(String demo) {
        List<Map<String, Object>> dangers = new TroubleChapter(brief(DemoJob.of(demo)))
                .rows().stream()
                        .filter(row -> text(row, "symptom").contains("smokes")
                                || text(row, "symptom").contains("monoxide"))
                        .toList();
        assertThat(dangers).hasSize(2).allSatisfy(row -> {
            assertThat(text(row, "what")).contains("Everybody out", "Call the fire service: 112");
            assertThat(row.get("otherwise")).isEqualTo("");
        });
    }

    /** How long it would hold out on the battery as it is now is no time that anybody should use up. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void whenTheAlarmSoundsTheLargestGoesOffAtOnce(String demo) {
        assertThat(list(new QuickCard(brief(DemoJob.of(demo)), CardDetail.FULL).facts(), "alarm")
                        .get(0))
                .matches("Switch off .* at once\\.");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void cardAndChapterLeaveTheSameThingsOn(String demo) {
        Briefing brief = brief(DemoJob.of(demo));
        String chapter = String.join(" ", list(new AwayChapter(brief).facts(), "before"));
        String card = String.join(" ", list(new QuickCard(brief, CardDetail.FULL).facts(), "leave"));
        boolean leftOn = !brief.figures().absence().leftOn().isEmpty();
        for (String text : List.of(chapter, card)) {
            assertThat(text).contains("Switch off the inverter");
            assertThat(text.contains("unless this must run")).isEqualTo(leftOn);
            assertThat(text.contains("Inverter off? Turn off S1")).isEqualTo(leftOn);
        }
        assertThat(rows(new AwayChapter(brief).facts(), "lasting"))
                .noneMatch(row -> text(row, "what").contains("empty"));
    }

    @Test
    void oneRcdIsNotTalkedOfAsSeveral() {
        assertThat(month("persimmon-tug")).contains("It must trip").doesNotContain("Each must trip");
        assertThat(month("marmalade-meridian")).contains("Each must trip").doesNotContain("It must trip");
    }

    private static String month(String demo) {
        return rows(new CareChapter(brief(DemoJob.of(demo))).facts(), "calendar").stream()
                .flatMap(row -> Stream.ofNullable(row.get("what")))
                .map(Object::toString)
                .reduce("", String::concat);
    }

    /** A sign that does not occur needs no explanation. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    @SuppressWarnings("unchecked")
    void aDashIsExplainedOnlyWhereOneStands(String demo) {
        Map<String, Object> course = (Map<String, Object>) Objects.requireNonNull(
                new RunChapter(brief(DemoJob.of(demo))).facts().get("course"));
        boolean dashes = rows(course, "rows").stream()
                .anyMatch(row -> list(row, "charge").contains(""));
        assertThat(course.get("ends")).isEqualTo(dashes);
    }

    /** An owner who must never change the wiring cannot fit a fuse. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void findingsSpeakToTheOwner(String demo) {
        Briefing brief = brief(DemoJob.of(demo));
        Map<String, Object> sheet = new SheetChapter(brief).facts();
        List<String> points = Stream.concat(list(sheet, "open").stream(), list(sheet, "notes").stream())
                .toList();
        List<Alike> findings = Alike.of(brief.it().findings()).stream()
                .filter(alike -> alike.finding().accepted().isEmpty())
                .toList();
        assertThat(points).hasSameSizeAs(findings);
        assertThat(points).noneMatch(point -> point.toLowerCase(Locale.ROOT).contains("the owner"));
        for (Alike alike : findings) {
            Finding finding = alike.finding();
            String others =
                    alike.others().isEmpty() ? "" : " The same goes for " + DemoJob.WORDS.list(alike.others()) + ".";
            String remedy = DemoJob.WORDS.say(finding.remedy()) + others;
            if (!DemoJob.WORDS.has(finding.check().key() + ".owner")) {
                assertThat(points).anyMatch(point -> point.endsWith("For your installer: " + remedy));
            } else {
                assertThat(points).noneMatch(point -> point.endsWith(remedy));
            }
        }
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyBreakerIsListedOnEverySource(String demo) {
        Briefing brief = brief(DemoJob.of(demo));
        Map<String, Object> map = new SocketsChapter(brief).facts();
        assertThat(rows(map, "circuits").stream().map(row -> text(row, "id")))
                .containsExactlyElementsOf(
                        brief.job().acCircuits().stream().map(AcCircuit::id).toList());
        assertThat(rows(map, "circuits"))
                .allSatisfy(row -> assertThat(rows(row, "feeds")).hasSameSizeAs(list(map, "heads")));
    }

    /** The job says of each outlet that the generator feeds it, of no circuit. */
    @Test
    void theGeneratorFeedsTheCircuitsOfItsOutlets() {
        Map<String, Object> map = new SocketsChapter(brief(DemoJob.of("marmalade-meridian"))).facts();
        int column = list(map, "heads").indexOf("Generator runs");
        assertThat(rows(map, "circuits"))
                .allSatisfy(row ->
                        assertThat(text(rows(row, "feeds").get(column), "mark")).isEqualTo("generator"));
    }

    /** Started with less, a use would end below the reserve, or the alarm would sound. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void aUseIsOnlyBegunWithEnoughForIt(String demo) {
        Briefing brief = brief(DemoJob.of(demo));
        Map<String, Object> facts = new FactSheet(brief.it(), DemoJob.WORDS).all();
        double reserve = brief.figures().bank().reserve().value().fraction();
        for (ApplianceFigures it : brief.figures().appliances()) {
            String told = rows(facts, "appliances").stream()
                    .filter(row -> text(row, "name").equals(it.appliance().name()))
                    .map(row -> text(row, "startAbove"))
                    .findFirst()
                    .orElseThrow();
            double use = it.sharePerUse().map(share -> share.value().fraction()).orElse(0.0);
            double alarm =
                    it.alarmBelow().map(below -> below.value().fraction()).orElse(1.0);
            if (told.isEmpty()) {
                assertThat(Math.max(reserve + use, Math.max(alarm, it.runs() ? 0 : 1)))
                        .as(it.key())
                        .isGreaterThanOrEqualTo(1);
            } else {
                assertThat(Double.parseDouble(told.replaceAll("[^0-9.]", "")) / 100)
                        .as(it.key())
                        .isGreaterThanOrEqualTo(Math.max(reserve + use, alarm) - 1e-9);
            }
        }
    }

    /** 57.2 V and 50 A through 85 % and 0.95 (definition of power), freezer and router beside it, and the pump of 1.1 kW. */
    @Test
    void whatStaysOnIsToldBesideChargingAndTheLargest() {
        String pump = "power: 1.1 kW (plate), kind: motor, start: 5.5";
        assertThat(list(
                        new RechargeChapter(brief(DemoJob.changed(
                                        "hut-seventeen", pump, "power: 1.1 kW (plate), kind: motor, start: 1")))
                                .facts(),
                        "generator"))
                .contains("Charging, Well pump and what stays on need 4.77\u00a0kW together.", "It carries that.");
        assertThat(list(
                        new RechargeChapter(brief(DemoJob.changed(
                                        "hut-seventeen", pump, "power: 1.2 kW (plate), kind: motor, start: 1")))
                                .facts(),
                        "generator"))
                .contains(
                        "Charging, Well pump and what stays on need 4.87\u00a0kW together.",
                        "That is too much at once. Charge first, then run large appliances.");
    }

    @Test
    void theGeneratorIsNotStartedOntoTheShoreLead() {
        assertThat(list(new ShoreChapter(brief(DemoJob.of("marmalade-meridian"))).facts(), "generator"))
                .anyMatch(step -> step.contains("Switch off at the shore post and unplug there"))
                .anyMatch(step -> step.contains("slide the interlock"));
        assertThat(list(
                        new ShoreChapter(brief(DemoJob.changed("marmalade-meridian", "  chosen-by:", "  # "))).facts(),
                        "generator"))
                .anyMatch(step -> step.contains("ask your installer before first use"));
        assertThat(list(new ShoreChapter(brief(DemoJob.of("hut-seventeen"))).facts(), "generator"))
                .noneMatch(step -> step.contains("unplug"));
    }

    /** The inverter alone brings nothing where the changeover still stands at shore. */
    @Test
    void whereTheChangeoverIsTurnedByHandBothAreTold() {
        assertThat(list(new ShoreChapter(brief(DemoJob.of("second-biscuit"))).facts(), "fails"))
                .containsOnlyOnce("The inverter stays off. The sockets go dark until you turn the changeover and"
                        + " switch the inverter on.")
                .noneMatch(line -> line.startsWith("Turn the changeover"));
        assertThat(list(
                        new ShoreChapter(brief(
                                        DemoJob.changed("second-biscuit", "    kind: manual", "    kind: automatic")))
                                .facts(),
                        "fails"))
                .contains("The inverter stays off. The sockets go dark until you switch it on.");
    }

    @Test
    void anRcdProtectsOnEverySourceThatItTrippedOn() {
        Job job = brief(DemoJob.of("marmalade-meridian")).job();
        assertThat(job.rcds().stream().map(new RcdSources(job, DemoJob.WORDS)::of))
                .containsExactly("shore power and generator", "inverter, shore power and generator");
        Job own = brief(DemoJob.changed("hut-seventeen", "  steady: no", "  steady: no\n  rcd: R1"))
                .job();
        assertThat(own.rcds().stream().map(new RcdSources(own, DemoJob.WORDS)::of))
                .containsExactly("inverter and generator");
    }

    /** Off at the inverter, a circuit behind its changeover stays live from whatever that brings. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "second-biscuit | A1 inverter and shore power",
                "hut-seventeen | A1 inverter and generator, A2 inverter and generator, A3 inverter and generator",
                "marmalade-meridian | A1 inverter, shore power and generator, A2 inverter, shore power and generator,"
                        + " A3 shore power and generator"
            })
    void aCircuitTellsAllThatCanFeedIt(String demo, String expected) {
        Assessment it = DemoJob.of(demo).assessment();
        assertThat(rows(new FactSheet(it, DemoJob.WORDS).all(), "circuits").stream()
                        .map(row -> text(row, "id") + " " + text(row, "source"))
                        .collect(Collectors.joining(", ")))
                .isEqualTo(expected);
    }

    @Test
    void aCircuitWithoutAChangeoverHasOneSource() {
        Assessment it = DemoJob.changed("second-biscuit", "    kind: manual", "    kind: none")
                .assessment();
        assertThat(rows(new FactSheet(it, DemoJob.WORDS).all(), "circuits"))
                .singleElement()
                .satisfies(row -> assertThat(text(row, "source")).isEqualTo("inverter"));
    }

    /** Solar and generator charger give 120 A, the cells take 62 A at 2 °C; the generator charger alone gives 50 A. */
    @Test
    void whatChargesTooHardInTheColdIsTurnedOff() {
        assertThat(list(new SeasonsChapter(brief(DemoJob.of("hut-seventeen"))).facts(), "winter"))
                .anyMatch(line -> line.endsWith("keep this off: S2 Solar switch (shed, under the eaves)."))
                .noneMatch(line -> line.contains("62"));
    }

    /** A warning that nothing may run alone would deny what the job leaves on. */
    @Test
    void whatIsMeantToRunAloneIsNamed() {
        assertThat(list(new SafetyChapter(brief(DemoJob.of("lantern-moth"))).facts(), "never"))
                .anyMatch(line -> line.contains("run alone: bilge pumps, fire and burglar alarms,")
                        && line.endsWith("and Dehumidifier."));
    }

    @Test
    void aBatteryThatNobodyMeasuredIsSaidToBeReckonedAsNew() {
        assertThat(text(new RunChapter(brief(DemoJob.of("second-biscuit"))).facts(), "now"))
                .contains("reckoned as new");
        assertThat(text(
                        new RunChapter(brief(DemoJob.changed(
                                        "second-biscuit",
                                        "  temperature:",
                                        "  health: 80 % (measured)\n  temperature:")))
                                .facts(),
                        "now"))
                .doesNotContain("reckoned as new");
    }

    /** A charger that the job hangs on the shore alone is not looked for while the generator runs. */
    @Test
    void aGeneratorThatFeedsNoChargerIsNotSaidToFailAtIt() {
        assertThat(new TroubleChapter(brief(DemoJob.of("marmalade-meridian"))).rows())
                .noneMatch(row -> text(row, "symptom").startsWith("The generator runs"));
        assertThat(new TroubleChapter(brief(DemoJob.of("hut-seventeen"))).rows())
                .anyMatch(row -> text(row, "symptom").startsWith("The generator runs"));
    }
}
