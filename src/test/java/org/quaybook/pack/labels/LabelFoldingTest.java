package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.job.Source;
import org.quaybook.record.Edition;
import org.quaybook.render.Sheet;
import org.quaybook.render.TextBlock;
import org.quaybook.text.Words;

/** Tables whose longest column gives way. That each circuit stands on the board's list is asked by 46 CFR 111.30-15 (seen). */
class LabelFoldingTest {

    @TempDir
    Path folder;

    /** Every text of the board's list of circuits, each on one line. */
    private List<String> circuits(String name, String... languages) {
        DemoJob job = DemoJob.changed("marmalade-meridian", folder, "name: Galley outlets", "name: " + name);
        List<Edition> editions = Stream.of(languages)
                .map(language -> new Edition(job.assessment(), Words.of(language)))
                .toList();
        return new Labels(editions, job.branding(), job.link())
                .sized(Sheet.A4).stream()
                        .filter(one -> one.design().id().matches("circuits(-.*)?"))
                        .flatMap(one -> one.label().marks().stream())
                        .filter(TextBlock.class::isInstance)
                        .flatMap(text -> ((TextBlock) text).paragraphs().stream())
                        .map(text -> text.replace('\n', ' '))
                        .toList();
    }

    private static String sources(String language) {
        Words words = Words.of(language);
        return words.list(Stream.of(Source.INVERTER, Source.SHORE, Source.GENERATOR)
                .map(words::term)
                .toList());
    }

    /** Own requirement: the words of a language for what feeds a circuit keep no board from its label. */
    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "en-US", "de", "fr", "nl", "es"})
    void threeSourcesAndALongNameFindRoom(String language) {
        String name = "Sockets of the galley and of the workbench below the bridge";
        assertThat(circuits(name, language)).contains(name, sources(language));
    }

    @ParameterizedTest
    @CsvSource({"es, fr", "fr, de"})
    void inTwoLanguagesToo(String first, String second) {
        String name = "Sockets of the galley and of the workbench below the bridge";
        List<String> texts = circuits(name, first, second);
        assertThat(String.join("|", texts)).contains(sources(first)).contains(sources(second));
    }

    /** What finds room as it is stays as it is. */
    @Test
    void nothingIsFoldedWithoutNeed() {
        assertThat(DemoJob.demo("marmalade-meridian").sized())
                .filteredOn(one -> one.design().id().equals("circuits"))
                .singleElement()
                .satisfies(one -> assertThat(one.design())
                        .isEqualTo(DemoJob.demo("marmalade-meridian").design("circuits")));
    }

    @Test
    void theColumnThatGivesMostIsBrokenInTheMiddle() {
        LabelDesign design = LabelDesign.of(
                        "a", LabelReason.CIRCUITS, LabelSpot.BOARD, "board", LabelReading.HAND, "Title")
                .with(new LabelPart.Grid(
                        List.of("No.", "Name", "From"),
                        List.of(List.of("A 1", "Long name of a socket", "shore power or inverter")),
                        1,
                        true));
        LabelPart.Grid folded =
                (LabelPart.Grid) LabelFolding.of(design).orElseThrow().parts().get(0);
        assertThat(folded.rows())
                .isEqualTo(List.of(Arrays.asList("A 1", "Long name of a socket", "shore power\nor inverter")));
    }

    @Test
    void aTableOfSingleWordsHasNothingToFold() {
        LabelDesign design = LabelDesign.of(
                        "a", LabelReason.CIRCUITS, LabelSpot.BOARD, "board", LabelReading.HAND, "Title")
                .with(new LabelPart.Grid(List.of(), List.of(List.of("A1", "Name of it", "shore")), 1, true));
        assertThat(LabelFolding.of(design)).isEmpty();
    }
}
