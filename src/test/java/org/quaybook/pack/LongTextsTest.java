package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.render.RenderMessage;

/** Whatever length the format allows, cards, labels and lists hold it: all names and places at once. */
class LongTextsTest {

    private static final int NAME = 60;
    private static final int PLACE = 120;
    private static final String WORDS =
            "wordy berries linger quietly under seven copper kettles while gulls argue about ";

    /** German needs the most room. */
    private static final String LANGUAGES = "languages: [de]";

    private final AtomicInteger number = new AtomicInteger(10);

    /** A text of so many characters that there is once. */
    private String filler(int length) {
        return ("x" + number.getAndIncrement() + " " + WORDS.repeat(2)).substring(0, length - 1) + "x";
    }

    private String grown(String text) {
        String names = Pattern.compile("(?<=\\b(?:name|firm|feeds): )[^,}\\n]+")
                .matcher(text)
                .replaceAll(found -> filler(NAME));
        String phone = names.replace("phone: 01632 960118", "phone: +44 1632 960118 extension 1234");
        return Pattern.compile("(?<=\\bwhere: )[^,}\\n]+(?:, port side)?")
                .matcher(phone)
                .replaceAll(found -> filler(PLACE));
    }

    @Test
    void haveAWholePack(@TempDir Path folder) throws IOException, NotPrinted {
        Path demo = Path.of("demo-jobs", "lantern-moth");
        String job = Files.readString(demo.resolve("job.yaml"));
        String alone = job.substring(0, job.indexOf("\ntranslations:"))
                .replace("languages: [en-GB, nl]", LANGUAGES)
                .replace("  - { appliances: [Washing machine, Dehumidifier] }\n", "")
                .replace("together:\n", "");
        Files.writeString(folder.resolve("job.yaml"), grown(alone));
        Files.writeString(folder.resolve("installer.yaml"), grown(Files.readString(demo.resolve("installer.yaml"))));
        Files.copy(demo.resolve("logo.svg"), folder.resolve("logo.svg"));

        Road.Judged judged = Road.judge(folder);
        assertThat(judged.problems()).isEmpty();
        Map<String, byte[]> files = Road.documents(judged, null, "test");

        assertThat(files).containsKeys("guide.pdf", "quick-card.pdf", "labels.pdf", "worksheet.pdf");
        try (PDDocument card = Loader.loadPDF(files.get("quick-card.pdf"))) {
            assertThat(card.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(card).replaceAll("[\\s\u00a0]+", " "))
                    .contains("S1", "extension 1234");
        }
    }

    /** Nothing in the format makes a card that long; a template of one's own may. */
    @ParameterizedTest
    @CsvSource({"guide/card.ftlx, guide.pdf", "sheets/quick-card.ftlx, quick-card.pdf"})
    void aPageThatDoesNotFitIsToldByItsFile(String template, String file, @TempDir Path own) throws IOException {
        Path longer = own.resolve(template);
        Files.createDirectories(longer.getParent());
        String card = Files.readString(Path.of("templates", template));
        int end = card.lastIndexOf("</table>") + "</table>".length();
        Files.writeString(longer, card.substring(0, end) + "<p>More.</p>".repeat(200) + card.substring(end));

        Road.Judged judged = Road.judge(Path.of("demo-jobs", "hut-seventeen"));
        assertThatExceptionOfType(NotPrinted.class)
                .isThrownBy(() -> Road.documents(judged, own, "test"))
                .satisfies(refused -> assertThat(refused.diagnostics())
                        .singleElement()
                        .satisfies(problem -> {
                            assertThat(problem.message().key()).isEqualTo(RenderMessage.TOO_MANY_PAGES);
                            assertThat(problem.place().file()).isEqualTo(file);
                        }));
    }
}
