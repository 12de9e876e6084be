package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.record.Edition;
import org.quaybook.render.Code;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.RenderException;
import org.quaybook.render.Sheet;
import org.quaybook.render.TextBlock;
import org.quaybook.render.Turn;
import org.quaybook.text.Words;

/** Labels in two languages. Canada asks English and French on notices at inlets (TP 1332, seen). */
class LabelsBilingualTest {

    @TempDir
    Path folder;

    private static List<Edition> editions(DemoJob job, String... languages) {
        return Stream.of(languages)
                .map(language -> new Edition(job.assessment(), Words.of(language)))
                .toList();
    }

    private static List<LabelDesign> designs(DemoJob job, String... languages) {
        return new Labels(editions(job, languages), job.branding(), job.link()).designs();
    }

    private static SignalLetters letters(DemoJob job) {
        return new SignalLetters(List.of(job.words()), false);
    }

    private static String text(Label label) {
        return label.marks().stream()
                .filter(TextBlock.class::isInstance)
                .map(mark -> String.join("\n", ((TextBlock) mark).paragraphs()))
                .reduce("", (all, one) -> all + "\n" + one);
    }

    private static List<LabelSetter.Sized> sized(DemoJob job, String... languages) {
        return new Labels(editions(job, languages), job.branding(), job.link()).sized(Sheet.A4);
    }

    /** Without what languages write otherwise in numbers and dates. */
    private static String bare(String text) {
        return text.replaceAll("[.,\\s\u00a0\u202f]", "");
    }

    /** Every sentence of the labels in one language stands on the labels in two; on tags and strips, every word. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void bothLanguagesAreWhole(String name) {
        DemoJob job = DemoJob.demo(name);
        List<LabelSetter.Sized> sized = sized(job, "en-GB", "fr");
        String both = bare(sized.stream()
                .map(LabelSetter.Sized::label)
                .map(LabelsBilingualTest::text)
                .reduce("", String::concat));
        for (String language : List.of("en-GB", "fr")) {
            for (LabelDesign design : designs(job, language)) {
                if (design.drawn() == null) {
                    assertThat(both).contains(bare(design.title()));
                    assertThat(texts(design))
                            .allSatisfy(text -> assertThat(both).contains(bare(text)));
                } else {
                    String tag = bare(sized.stream()
                            .filter(one -> List.of(design.id(), design.id() + "-" + language)
                                    .contains(one.design().id()))
                            .map(one -> text(one.label()))
                            .findFirst()
                            .orElseThrow());
                    assertThat(texts(design).flatMap(text -> Stream.of(text.split("\\s"))))
                            .isNotEmpty()
                            .allSatisfy(word -> assertThat(tag).as(design.id()).contains(bare(word)));
                }
            }
        }
    }

    private static Stream<String> texts(LabelDesign design) {
        return design.parts().stream().flatMap(part -> {
            if (part instanceof LabelPart.Text text) {
                return text.paragraphs().stream();
            }
            return design.drawn() != null && part instanceof LabelPart.Grid grid
                    ? grid.rows().stream().flatMap(List::stream)
                    : Stream.empty();
        });
    }

    /** Ids, sizes and ratings are no words: on a tag they stand once, however the languages write their numbers. */
    @Test
    void numbersOfATagStandOnce() {
        DemoJob job = DemoJob.demo("long-way-round");
        LabelDesign tag = design(job, "cable-B1-from", "en-GB", "de");
        String front = Objects.requireNonNull(tag.drawn()).marks().stream()
                .filter(mark -> mark instanceof TextBlock text && text.turn() == Turn.UPRIGHT)
                .map(mark -> String.join("\n", ((TextBlock) mark).paragraphs()))
                .reduce("", (all, one) -> all + "\n" + one);
        assertThat(front)
                .contains("B1 POSITIVE / PLUS")
                .contains("fuse / Sicherung F1, 200\u00a0A")
                .containsOnlyOnce("mm²")
                .containsOnlyOnce("1.1")
                .doesNotContain("1,1");
    }

    private static LabelDesign design(DemoJob job, String id, String... languages) {
        return designs(job, languages).stream()
                .filter(design -> design.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A tag whose two languages say the same is that of one language, to the last mark. */
    @Test
    void aTagWithoutWordsToTranslateIsPrintedOnce() {
        DemoJob job = DemoJob.demo("lantern-moth");
        List<LabelDesign> alike = designs(job, "en-GB").stream()
                .filter(one -> one.drawn() != null && one.spot() != LabelSpot.BREAKERS)
                // American English writes lengths in feet.
                .filter(one -> Objects.equals(
                        one.drawn(), design(job, one.id(), "en-US").drawn()))
                .toList();
        assertThat(alike).isNotEmpty();
        for (LabelDesign one : alike) {
            assertThat(design(job, one.id(), "en-GB", "en-US").drawn())
                    .as(one.id())
                    .isEqualTo(one.drawn());
        }
        assertThat(LabelsBilingual.alike("50 mm², 1,1 m", "50 mm², 1.1 m")).isTrue();
        assertThat(LabelsBilingual.alike("F1, 200 A", "F1, 250 A")).isFalse();
    }

    @Test
    void aTagWithoutRoomForBothBecomesTwo() {
        DemoJob job = DemoJob.demo("long-way-round");
        LabelDesign both = design(job, "cable-B1-from", "de", "en-GB");
        double enoughForOne = both.apart().stream()
                .mapToDouble(one -> Objects.requireNonNull(one.drawn()).height())
                .max()
                .orElseThrow();
        LabelRoom low = new LabelRoom("low", List.of(190.0), enoughForOne, Dots.DPI_300, false);
        assertThat(Objects.requireNonNull(both.drawn()).height()).isGreaterThan(low.height());
        SignalLetters letters = new SignalLetters(List.of(Words.of("de"), Words.of("en-GB")), false);
        assertThat(LabelSetter.size(both, id -> id, letters, List.of(low)))
                .extracting(sized -> sized.label().id())
                .containsExactly("cable-B1-from-de", "cable-B1-from-en-GB");
    }

    /** At a pitch where name and rating have room beside each other, two names and a rating have not. */
    @ParameterizedTest
    @CsvSource({"12, breakers-de breakers-en-GB", "17, breakers"})
    void aStripWithoutRoomForBothBecomesTwo(int pitch, String strips) {
        String[] board = {"\nearths:", "\nac-board: { way-pitch: " + pitch + " mm }\n\nearths:"};
        List<LabelDesign> english = designs(DemoJob.changed("long-way-round", folder, board), "en-GB");
        List<LabelDesign> german = designs(
                DemoJob.changed(
                        "long-way-round",
                        folder,
                        board[0],
                        board[1],
                        "name: Living sockets",
                        "name: Steckdosen Wohnraum",
                        "name: Garage sockets",
                        "name: Steckdosen Heckgarage"),
                "de");
        assertThat(LabelsBilingual.of(List.of("de", "en-GB"), german, english))
                .extracting(LabelDesign::id)
                .filteredOn(id -> id.startsWith("breakers"))
                .containsExactly(strips.split(" "));
    }

    @Test
    void signsAndCodesStandOnce() {
        DemoJob job = DemoJob.demo("lantern-moth");
        List<LabelDesign> one = designs(job, "en-GB");
        List<LabelDesign> two = designs(job, "en-GB", "de");
        assertThat(two)
                .extracting(LabelDesign::signs)
                .isEqualTo(one.stream().map(LabelDesign::signs).toList());
        assertThat(sized(job, "en-GB", "de").stream()
                        .filter(sized -> sized.design().id().equals("record"))
                        .flatMap(sized -> sized.label().marks().stream())
                        .filter(Code.class::isInstance))
                .hasSize(1);
    }

    /** What is alike in both languages, such as a voltage, is not said twice. */
    @Test
    void whatIsAlikeStandsOnce() {
        List<LabelPart> parts = designs(DemoJob.demo("lantern-moth"), "en-GB", "en-US").stream()
                .filter(design -> design.id().equals("fuse-F1"))
                .findFirst()
                .orElseThrow()
                .parts();
        assertThat(parts)
                .isEqualTo(DemoJob.demo("lantern-moth").design("fuse-F1").parts());
    }

    /** ISO 3864-2 (seen second-hand): the gravest word rules; here in both languages beside or below each other. */
    @Test
    void signalWordStandsInBothLanguages() {
        assertThat(sized(DemoJob.demo("lantern-moth"), "nl", "en-GB").stream()
                        .filter(sized -> sized.design().id().startsWith("battery-lid"))
                        .map(sized -> text(sized.label()))
                        .reduce("", String::concat))
                .contains("WAARSCHUWING")
                .contains("WARNING");
    }

    @Test
    void twoLanguagesThatFindNoRoomTogetherBecomeTwoLabels() {
        DemoJob job = DemoJob.demo("lantern-moth");
        List<String> ids = sized(job, "de", "en-GB").stream()
                .map(sized -> sized.design().id())
                .toList();
        assertThat(ids).contains("sources-de", "sources-en-GB").doesNotContain("sources");
        assertThat(ids).contains("inlet").doesNotContain("inlet-de");
    }

    @Test
    void stockWithoutRoomIsToldTheLeastThatWouldDo() {
        DemoJob job = DemoJob.demo("lantern-moth");
        LabelDesign fuse = job.design("fuse-F1");
        LabelRoom small = new LabelRoom("small", List.of(38.0), 21, Dots.DPI_300, false);
        assertThatThrownBy(() -> LabelSetter.size(fuse, id -> id, letters(job), List.of(small)))
                .isInstanceOfSatisfying(RenderException.class, refused -> {
                    var message = refused.diagnostics().get(0).message();
                    assertThat(message.key().key()).isEqualTo("render.label-needs-more-room");
                    double width = (double) message.arguments().get(1);
                    double height = (double) message.arguments().get(2);
                    LabelRoom least = new LabelRoom("least", List.of(width), height, Dots.DPI_300, false);
                    assertThat(LabelSetter.size(fuse, id -> id, letters(job), List.of(least)))
                            .hasSize(1);
                });
    }
}
