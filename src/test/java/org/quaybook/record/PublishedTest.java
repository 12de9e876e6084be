package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.job.Deviation;
import org.quaybook.job.Job;
import org.quaybook.job.TestResult;
import org.quaybook.text.Words;

/** Nothing personal is published. The measure is the project's own promise, and GDPR Art. 5(1)(c) (from memory). */
class PublishedTest {

    static final List<String> DEMOS = Demos.NAMES;

    @Test
    void whatIsNotListedStaysOut() {
        Published published = new Published(Map.of(
                "owner",
                Map.of("name", "Somebody"),
                "craft",
                Map.of("name", "Boat", "berth", "Somewhere"),
                "tests",
                List.of(Map.of("test", "polarity", "by", "Somebody")),
                "policyConditions",
                List.of("secret")));

        assertThat(published.facts())
                .isEqualTo(Map.of("craft", Map.of("name", "Boat"), "tests", List.of(Map.of("test", "polarity"))));
    }

    /** Every personal field of the demo job, looked for in every file, in whatever case it stands there. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void noPersonalValueInAnyFile(String name) {
        Demos demo = Demos.of(name);

        List<String> personal =
                personal(demo).map(value -> value.toLowerCase(Locale.ROOT)).toList();

        assertThat(personal).hasSizeGreaterThan(4);
        demo.site()
                .forEach((path, content) -> assertThat(
                                new String(content, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT))
                        .as(path)
                        .doesNotContain(personal));
    }

    private static Stream<String> personal(Demos demo) {
        Job job = demo.job();
        var owner = Objects.requireNonNull(job.owner());
        Stream<String> hands = Stream.concat(
                job.tests().stream().map(TestResult::by),
                job.deviations().stream().map(Deviation::by));
        return Stream.concat(
                        Stream.of(
                                owner.name(),
                                owner.phone(),
                                owner.email(),
                                job.craft().berth(),
                                job.job().fitter(),
                                demo.assessment().installer().contact(),
                                job.rehearsal() == null ? null : job.rehearsal().with()),
                        hands)
                .filter(Objects::nonNull)
                .flatMap(value -> Stream.of(value, lastWord(value)));
    }

    /** A surname gives somebody away as well; words that are no names (harbour, skipper) are left as they are. */
    private static String lastWord(String value) {
        String last = value.substring(value.lastIndexOf(' ') + 1);
        return last.contains("-") || last.equals("Oatcake") ? last : value;
    }

    @Test
    void namesInFreeTextAreBlanked(@TempDir Path folder) throws IOException {
        Demos demo = Demos.changed(
                "lantern-moth",
                folder,
                Map.of(
                        "12 V lighting circuit of the previous owner, not touched",
                        "12 V lighting circuit, see WILHELMINA OATCAKE at Nowhere Basin, berth 7 (07700 900118)",
                        "where: engine room, port side",
                        "where: engine room (key at oatcake@example.org)",
                        "taped inside the board door",
                        "asked J. Fennimore-Quill"));

        String page = demo.page().source().toLowerCase(Locale.ROOT);

        assertThat(page)
                .contains("12 v lighting circuit, see [name left out] at [name left out] ([name left out])")
                .contains("engine room (key at [name left out])")
                .contains("asked [name left out]")
                .doesNotContain("oatcake", "07700", "fennimore", "berth 7");
    }

    /** The net must not cut words that only begin like a name. */
    @Test
    void otherWordsStay(@TempDir Path folder) throws IOException {
        Demos demo = Demos.changed(
                "second-biscuit",
                folder,
                Map.of(
                        "by: O. Larkspur-Dunn",
                        "by: yard",
                        "Engine starting circuit, not touched",
                        "yardarm lamp, yard lamp"));

        assertThat(demo.page().text()).contains("yardarm lamp, [name left out] lamp");
    }

    @Test
    void tradeDetailsOfTheInstallerStay() {
        Demos demo = Demos.of("persimmon-tug");

        assertThat(new FactSheet(demo.assessment(), Words.of("en-GB")).all()).containsKey("installer");
        assertThat(demo.page().text())
                .contains(
                        "Nine Knots Wire & Rope",
                        "01632 960140",
                        "office@nineknots.example.org",
                        "Little Wobbling Harbour");
    }
}
