package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.record.Edition;
import org.quaybook.render.Code;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.RenderException;
import org.quaybook.render.Sheet;
import org.quaybook.render.TextBlock;
import org.quaybook.text.Words;

/** Labels in two languages. Canada asks English and French on notices at inlets (TP 1332, seen). */
class LabelsBilingualTest {

    private static List<Edition> editions(DemoJob job, String... languages) {
        return Stream.of(languages)
                .map(language -> new Edition(job.assessment(), Words.of(language)))
                .toList();
    }

    private static List<LabelDesign> designs(DemoJob job, String... languages) {
        return Labels.designs(editions(job, languages), job.branding(), job.link());
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

    /** Every sentence of the labels in one language stands on the labels in two; drawn ones keep to the first. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void bothLanguagesAreWhole(String name) {
        DemoJob job = DemoJob.demo(name);
        String both = sized(job, "en-GB", "fr").stream()
                .map(LabelSetter.Sized::label)
                .map(LabelsBilingualTest::text)
                .reduce("", String::concat);
        for (String language : List.of("en-GB", "fr")) {
            for (LabelDesign design : designs(job, language)) {
                if (design.drawn() != null) {
                    continue;
                }
                assertThat(both).contains(design.title());
                for (LabelPart part : design.parts()) {
                    if (part instanceof LabelPart.Text text) {
                        assertThat(both).contains(text.paragraphs());
                    }
                }
            }
        }
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
