package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The largest type in which a document keeps its pages; expected sizes follow from lines and page by arithmetic. */
class PageFitTest {

    private static final List<String> SIZES = List.of("20", "18", "16", "14", "12", "10", "8", "6");

    private static final DocumentInfo INFO = new DocumentInfo("A page", "", "", "en", LocalDate.of(2026, 3, 14));

    /** Lines of exactly one size each, on a page of 241 points: so many fit as 240 holds the size. */
    private static String lines(int count, String size) {
        return """
                <html xmlns="http://www.w3.org/1999/xhtml" lang="en" xml:lang="en"><head><title>A page</title><style>
                @page { size: 300pt 251pt; margin: 5pt }
                body { margin: 0; font-size: %1$spt; line-height: %1$spt }
                p { margin: 0 }
                </style></head><body>%2$s</body></html>
                """.formatted(size, ("<p>" + size + "</p>").repeat(count));
    }

    /** The size that is printed, which every line tells. */
    private static String size(String usual, int count, List<String> tried) throws IOException {
        byte[] pdf = new PageFit(SIZES)
                .startingAt(usual)
                .toPdf(
                        1,
                        List.of(size -> {
                            tried.add(size);
                            return lines(count, size);
                        }),
                        INFO,
                        Resources.none());
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            assertThat(printed.pages()).isEqualTo(1);
            return printed.text().strip().lines().findFirst().orElseThrow();
        }
    }

    /** 240 / 20 = 12 lines, 240 / 18 = 13.3, 240 / 16 = 15, 240 / 14 = 17.1, 240 / 12 = 20, 240 / 10 = 24, 240 / 6 = 40. */
    @ParameterizedTest
    @CsvSource({"1, 20", "12, 20", "13, 18", "14, 16", "15, 16", "16, 14", "20, 12", "24, 10", "30, 8", "31, 6", "40, 6"
    })
    void findsTheSameWhereverItBegins(int count, String expected) throws IOException {
        for (String usual : SIZES) {
            List<String> tried = new ArrayList<>();
            assertThat(size(usual, count, tried)).isEqualTo(expected);
            assertThat(tried).doesNotHaveDuplicates();
        }
    }

    @Test
    void theUsualSizeTakesTwoLayouts() throws IOException {
        List<String> tried = new ArrayList<>();
        size("12", 20, tried);
        assertThat(tried).containsExactly("12", "14");
    }

    @Test
    void theLargestSizeTakesOne() throws IOException {
        List<String> tried = new ArrayList<>();
        size("20", 12, tried);
        assertThat(tried).containsExactly("20");
    }

    @Test
    void whatFitsInNoSizeIsRefused() {
        for (String usual : SIZES) {
            assertThatExceptionOfType(RenderException.class)
                    .isThrownBy(() -> size(usual, 41, new ArrayList<>()))
                    .satisfies(refused -> assertThat(refused.diagnostics())
                            .extracting(problem -> problem.message().key())
                            .containsExactly(RenderMessage.TOO_MANY_PAGES));
        }
    }

    @Test
    void theUsualSizeIsOneOfThem() {
        assertThatIllegalArgumentException().isThrownBy(() -> new PageFit(SIZES).startingAt("13"));
    }

    /** 40 lines fit at 6 points, 24 at 10, 20 at 12: as above. */
    @ParameterizedTest
    @CsvSource({"20, 12 p.", "24, 10 p.", "41, 10 p."})
    void theFirstWordingThatFitsIsSet(int count, String expected) throws IOException {
        byte[] pdf = new PageFit(SIZES)
                .toPdf(
                        1,
                        List.of(
                                size -> lines(count, size).replace("</p>", " p.</p>"),
                                size -> lines(24, size).replace("</p>", " p.</p>")),
                        INFO,
                        Resources.none());
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            assertThat(printed.pages()).isEqualTo(1);
            assertThat(printed.text().strip().lines())
                    .hasSize(Math.min(count, 24))
                    .containsOnly(expected);
        }
    }

    /** At 12 points 20 lines fill a page: 61 need four. */
    @ParameterizedTest
    @CsvSource({"40, 1, 6", "41, 3, 12", "60, 3, 12", "61, 4, 12"})
    void whatDoesNotFitOnOnePageRunsOn(int count, int pages, String size) throws IOException {
        List<String> asked = new ArrayList<>();
        byte[] pdf = new PageFit(SIZES)
                .toPdf(
                        List.of(any -> lines(count, any)),
                        () -> {
                            asked.add("12");
                            return lines(count, "12");
                        },
                        INFO,
                        Resources.none());
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            assertThat(printed.pages()).isEqualTo(pages);
            assertThat(printed.text().strip().lines()).hasSize(count).containsOnly(size);
        }
        assertThat(asked).hasSize(pages == 1 ? 0 : 1);
    }

    /** Forty pages in the largest size are more than three in the least, whose letters take 0.09 of the room. */
    @ParameterizedTest
    @CsvSource({"480, 1", "41, 4"})
    void triesNoSmallerSizeForWhatIsFarTooLong(int count, int layouts) {
        List<String> tried = new ArrayList<>();
        byte[] pdf = new PageFit(SIZES)
                .toPdf(
                        List.of(size -> {
                            tried.add(size);
                            return lines(count, size);
                        }),
                        () -> lines(count, "12"),
                        INFO,
                        Resources.none());
        assertThat(pdf).isNotEmpty();
        assertThat(tried).hasSize(layouts).startsWith("20");
    }
}
