package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.diag.Diagnostic;
import org.quaybook.text.Words;

/** Stocks of labels, those that come with the program and an installer's own. */
class StockReaderTest {

    private static final String OWN = """
            id: own-3x2
            title: My sheet
            printing: laser
            die-cut:
              paper-width: 100 mm
              paper-height: 150 mm
              columns: 3
              rows: 2
              label-width: 30 mm
              label-height: 60 mm
              left: 3 mm
              top: 15 mm
              gap-across: 2 mm
              edge: 2 mm
            """;

    static List<String> ids() {
        return StockReader.standard();
    }

    private static List<String> said(String text) {
        return StockReader.parse(text, "own.yaml").problems().stream()
                .map(it -> it.place().position() + " " + it.rule() + " "
                        + it.message().arguments())
                .toList();
    }

    @Test
    void theListIsWhatLiesInTheFolder() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("shared/stock"))) {
            assertThat(files.map(file -> Objects.requireNonNull(file.getFileName())
                                    .toString()
                                    .replace(".yaml", ""))
                            .toList())
                    .containsExactlyInAnyOrderElementsOf(ids());
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyStockIsReadable(String id) {
        StockReading reading = StockReader.standard(id);
        assertThat(reading.problems()).isEmpty();
        assertThat(Objects.requireNonNull(reading.stock()).id()).isEqualTo(id);
    }

    /** Paper: ISO 216 A4 and ANSI/ASME Y14.1 size A (8.5 x 11 inch), from memory. */
    @ParameterizedTest
    @MethodSource("ids")
    void labelsMarginsAndGapsAddUpToThePaper(String id) {
        DieCutSheet sheet =
                Objects.requireNonNull(StockReader.standard(id).stock()).dieCut();
        if (sheet != null) {
            boolean letter = id.startsWith("letter");
            assertThat(sheet.paperWidth().metres()).isCloseTo(letter ? 8.5 * 0.0254 : 0.210, within(1e-9));
            assertThat(sheet.paperHeight().metres()).isCloseTo(letter ? 11 * 0.0254 : 0.297, within(1e-9));
            assertThat(sheet.across().metres()).isCloseTo(sheet.paperWidth().metres(), within(5e-6));
            assertThat(sheet.down().metres()).isCloseTo(sheet.paperHeight().metres(), within(1e-9));
        }
    }

    @Test
    void anOwnStockIsReadFromItsFile(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("own.yaml"), OWN);
        StockReading reading = StockReader.read(file);
        assertThat(reading.problems()).isEmpty();
        DieCutSheet sheet =
                Objects.requireNonNull(Objects.requireNonNull(reading.stock()).dieCut());
        assertThat(sheet.rightMargin()).isEqualTo(sheet.left());
        assertThat(sheet.rowGap().metres()).isZero();
        assertThat(StockReader.read(folder.resolve("none.yaml")).problems())
                .extracting(Diagnostic::rule)
                .containsExactly("job.file-missing");
    }

    @Test
    void anotherIdIsToldTheLikeliestOne() {
        StockReading reading = StockReader.standard("a4-2x3");
        assertThat(reading.stock()).isNull();
        Diagnostic only = reading.problems().get(0);
        assertThat(only.rule()).isEqualTo("job.stock-unknown");
        assertThat(only.message().arguments()).containsExactly("a4-2x3");
        assertThat(only.hints().get(0).arguments()).containsExactly("a4-2x4");
        assertThat(only.hints().get(1).arguments()).containsExactly(String.join(", ", ids()));
    }

    /** Every mistake in one run, each where it stands: line and column from 1. */
    @Test
    void saysAllThatIsWrongAtOnce() {
        assertThat(said(OWN.replace("left: 3 mm", "left: 4 mm").replace("rows: 2", "rows: 3")))
                .containsExactly("4:1 job.stock-sum-across [102.0, 100.0]", "4:1 job.stock-sum-down [210.0, 150.0]");
        assertThat(said(OWN + "  right: 3.04 mm\n")).isEmpty();
        assertThat(said(OWN + "  right: 3.06 mm\n")).containsExactly("4:1 job.stock-sum-across [100.06, 100.0]");
        assertThat(said(OWN.replace("edge: 2 mm", "edge: 15 mm")))
                .containsExactly("4:1 job.stock-no-room [15.0, 30.0]");
        assertThat(said(OWN + "  corner-radius: 15 mm\n")).containsExactly("4:1 job.stock-corner [15.0, 30.0]");
        assertThat(said(OWN.replace("laser", "thermal-transfer")))
                .containsExactly("1:1 job.stock-dots-missing [thermal-transfer]");
        assertThat(said("{ id: a, title: A, printing: laser }")).containsExactly("1:1 job.stock-form [0]");
        assertThat(said(OWN + "roll: { width: 12 mm, edge: 6 mm, gap: 0 mm }\n"))
                .containsExactly("1:1 job.stock-form [2]", "15:1 job.stock-no-room [6.0, 12.0]");
        assertThat(said("{ id: a, title: A, printing: laser, plain-sheet: "
                        + "{ width: 120 mm, height: 297 mm, margin: 11 mm, gap: 5 mm } }"))
                .containsExactly("1:37 job.stock-no-room [11.0, 120.0]");
        assertThat(said(OWN.replace("laser", "lasre").replace("columns: 3", "columns: 3,5")))
                .extracting(it -> it.substring(0, it.indexOf('[')).strip())
                .containsExactly("3:11 job.not-allowed", "7:12 job.bad-whole-number");
    }

    /** Each message fills its sentence: a place without an argument throws. */
    @Test
    void everyMessageHasItsSentence() {
        Words words = Words.of("en-GB");
        List<Diagnostic> problems = Stream.of(
                        StockReader.standard("x"),
                        StockReader.parse(OWN.replace("left: 3 mm", "left: 4 mm"), "own.yaml"),
                        StockReader.parse(OWN.replace("rows: 2", "rows: 3"), "own.yaml"),
                        StockReader.parse(OWN.replace("edge: 2 mm", "edge: 15 mm"), "own.yaml"),
                        StockReader.parse(OWN + "  corner-radius: 15 mm\n", "own.yaml"),
                        StockReader.parse(OWN.replace("laser", "direct-thermal"), "own.yaml"),
                        StockReader.parse("{ id: a, title: A, printing: laser }", "own.yaml"))
                .flatMap(reading -> reading.problems().stream())
                .toList();
        assertThat(problems.stream().map(Diagnostic::rule).collect(Collectors.toSet()))
                .isEqualTo(Arrays.stream(JobMessage.values())
                        .filter(message -> message.name().startsWith("STOCK_"))
                        .map(JobMessage::key)
                        .collect(Collectors.toSet()));
        assertThat(problems)
                .allSatisfy(problem -> assertThat(words.say(problem.message())).doesNotContain("{"));
    }

    /** The page for installers names every key, and every stock that comes with the program. */
    @Test
    void thePageNamesEveryKey() throws IOException {
        String page = Files.readString(Path.of("docs/stock.md"));
        Stream.of(LabelStock.class, PlainSheet.class, DieCutSheet.class, LabelRoll.class)
                .flatMap(type -> Field.written(type).stream())
                .forEach(field -> assertThat(page).contains("| `" + field.key() + "` |"));
        Stream.of(StockPrinting.class.getEnumConstants())
                .forEach(kind -> assertThat(page).contains("`" + Names.of(kind) + "`"));
        ids().forEach(id -> assertThat(page).contains("`" + id + "`"));
    }
}
