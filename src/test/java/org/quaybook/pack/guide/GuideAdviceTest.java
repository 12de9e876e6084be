package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Job;

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

    /** Somebody who touches a live part stays in danger until the last source is off. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everySourceGoesOffInAnEmergency(String demo) {
        Briefing brief = brief(DemoJob.of(demo));
        Job job = brief.job();
        for (List<String> steps : List.of(
                list(new SafetyChapter(brief).facts(), "shock"), list(new QuickCard(brief).facts(), "danger"))) {
            String all = String.join(" ", steps).toLowerCase(Locale.ROOT);
            assertThat(all).contains("turn off s1");
            assertThat(all.contains("pull the lead")).isEqualTo(job.shore() != null);
            assertThat(all.contains("generator")).isEqualTo(job.generator() != null);
            assertThat(all.contains("engine"))
                    .isEqualTo(job.charging().stream().anyMatch(it -> it.kind() == ChargeKind.ALTERNATOR));
        }
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
        assertThat(list(new QuickCard(brief(DemoJob.of(demo))).facts(), "alarm").get(0))
                .matches("Switch off .* at once\\.");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void cardAndChapterLeaveTheSameThingsOn(String demo) {
        Briefing brief = brief(DemoJob.of(demo));
        String chapter = String.join(" ", list(new AwayChapter(brief).facts(), "before"));
        String card = String.join(" ", list(new QuickCard(brief).facts(), "leave"));
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
}
