package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BookletTest {

    private static final DocumentInfo INFO = new DocumentInfo("Book", "", "", "en", LocalDate.of(2026, 3, 1));

    /** The usual order of saddle-stitched signatures, worked out by folding numbered sheets (common practice, no source). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4|(4,1)(2,3)",
                "8|(8,1)(2,7)(6,3)(4,5)",
                "12|(12,1)(2,11)(10,3)(4,9)(8,5)(6,7)",
                "16|(16,1)(2,15)(14,3)(4,13)(12,5)(6,11)(10,7)(8,9)",
                "20|(20,1)(2,19)(18,3)(4,17)(16,5)(6,15)(14,7)(8,13)(12,9)(10,11)",
            })
    void sidesAreThoseOfAFoldedStack(int pages, String order) {
        assertThat(Booklet.sides(pages).stream()
                        .map(side -> "(" + side.left() + "," + side.right() + ")")
                        .collect(Collectors.joining()))
                .isEqualTo(order);
        assertThat(Booklet.sides(pages)).allMatch(side -> side.left() + side.right() == pages + 1);
    }

    @ParameterizedTest
    @CsvSource({"1,3", "5,3", "10,2", "18,2", "27,1", "28,0"})
    void sheetsAreFilledUp(int pages, int missing) {
        assertThat(Booklet.missing(pages)).isEqualTo(missing);
        if (missing > 0) {
            assertThatIllegalArgumentException().isThrownBy(() -> Booklet.sides(pages));
        }
    }

    /** On paper: ISO 216 A4 on its side carries two A5 pages, each in its half. */
    @ParameterizedTest
    @CsvSource({"297, 210, a5", "279.4, 215.9, half-letter"})
    void pagesStandSideBySide(double width, double height, String name) throws IOException {
        PageFormat page = name.equals("a5") ? PageFormat.A5 : PageFormat.HALF_LETTER;
        String body = IntStream.rangeClosed(1, 8)
                .mapToObj(number -> "<h1>page " + number + "</h1>")
                .collect(Collectors.joining());
        String xhtml = "<html xmlns='http://www.w3.org/1999/xhtml'><head><title>t</title><style>@page { size: "
                + page.lengths().get("width") + " " + page.lengths().get("height") + "; margin: 20mm }"
                + " h1 { page-break-after: always; font-family: 'Source Sans Pro'; font-size: 12pt }"
                + " h1:last-child { page-break-after: auto }</style></head><body>" + body + "</body></html>";
        byte[] pages = new Handbook().toPdf(xhtml, INFO, Resources.none(), page.scale(), List.of());
        List<Booklet.Part> whole = List.of(new Booklet.Part(pages, 0));
        byte[] booklet = Booklet.toPdf(whole, page, width, height, "turn on the short edge", INFO);
        assertThat(Booklet.toPdf(whole, page, width, height, "turn on the short edge", INFO))
                .isEqualTo(booklet);
        try (PrintedPdf printed = new PrintedPdf(booklet)) {
            PDDocument document = printed.document();
            assertThat(printed.pages()).isEqualTo(4);
            assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(width, within(0.05));
            assertThat(document.getPage(0).getMediaBox().getHeight() / 72 * 25.4)
                    .isCloseTo(height, within(0.05));
            assertThat(text(document, 1))
                    .containsSubsequence("page 8", "page 1")
                    .contains("turn on the short edge");
            assertThat(text(document, 2))
                    .containsSubsequence("page 2", "page 7")
                    .doesNotContain("turn");
            assertThat(text(document, 4)).containsSubsequence("page 4", "page 5");
            assertThat(document.getDocumentCatalog()
                            .getViewerPreferences()
                            .getCOSObject()
                            .getNameAsString(COSName.DUPLEX))
                    .isEqualTo("DuplexFlipShortEdge");
            assertThat(printed.fonts().values()).containsOnly(true);
        }
    }

    /** Six pages, then two of another file whose first page is skipped and counted: the order of eight, from above. */
    @Test
    void pagesOfASecondFileFollowWithTheirNumbers() throws IOException {
        byte[] book = numbered(6, 1);
        byte[] more = numbered(3, 6);
        List<Booklet.Part> parts = List.of(new Booklet.Part(book, 0), new Booklet.Part(more, 1));
        byte[] booklet = Booklet.toPdf(parts, PageFormat.A5, 297, 210, "fold", INFO);
        assertThat(Booklet.toPdf(parts, PageFormat.A5, 297, 210, "fold", INFO)).isEqualTo(booklet);
        try (PrintedPdf printed = new PrintedPdf(booklet)) {
            List<String> sides = new ArrayList<>();
            for (int side = 1; side <= printed.pages(); side++) {
                sides.add(text(printed.document(), side)
                        .replaceAll("[^0-9]+", " ")
                        .strip());
            }
            assertThat(sides).containsExactly("8 1", "2 7", "6 3", "4 5");
        }
    }

    /** Pages that show nothing but their numbers, in the middle. */
    private static byte[] numbered(int pages, int first) {
        String xhtml =
                "<html xmlns='http://www.w3.org/1999/xhtml'><head><title>t</title><style>@page { size: 148mm 210mm;"
                        + " margin: 20mm } p { page-break-after: always; font-family: 'Source Sans Pro' } p:last-child { page-break-after: auto }"
                        + " p:before { content: counter(page) }</style></head><body>" + "<p></p>".repeat(pages)
                        + "</body></html>";
        return new Handbook().layOut(xhtml, INFO, Resources.none(), 1).pdf(List.of(), first);
    }

    private static String text(PDDocument document, int side) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(side);
        stripper.setEndPage(side);
        return stripper.getText(document);
    }
}
