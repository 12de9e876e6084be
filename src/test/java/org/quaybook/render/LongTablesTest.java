package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class LongTablesTest {

    private static final DocumentInfo INFO = new DocumentInfo("t", "a", "s", "en", LocalDate.of(2026, 3, 1));

    @Test
    void sharesRowsOutAmongBodiesInTheirOrder() {
        List<Element> bodies = bodies("<tbody id='x' class='y'>" + rows(250, "") + "</tbody>");
        assertThat(bodies).extracting(body -> Xml.children(body).size()).containsExactly(100, 100, 50);
        assertThat(bodies).extracting(body -> body.getAttribute("id")).containsExactly("x", "", "");
        assertThat(bodies).extracting(body -> body.getAttribute("class")).containsOnly("y");
        assertThat(bodies.stream().flatMap(body -> Xml.children(body).stream()).map(Element::getTextContent))
                .containsExactlyElementsOf(
                        IntStream.range(0, 250).mapToObj(i -> "r" + i + "x").toList());
    }

    @Test
    void leavesWholeWhatNeedNotOrMustNotBeParted() {
        assertThat(bodies("<tbody>" + rows(LongTables.MOST_ROWS, "") + "</tbody>"))
                .hasSize(1);
        // HTML standard, 4.9.12 (from memory): a cell does not extend beyond the rows of its row group.
        assertThat(bodies("<tbody>" + rows(250, " rowspan='2'") + "</tbody>")).hasSize(1);
    }

    /** A cell that says it spans one row looks like any other, but its body is left whole. */
    @ParameterizedTest
    @ValueSource(strings = {"collapse", "separate"})
    void looksTheSame(String borders) throws IOException {
        byte[] parted = print(borders, "");
        byte[] whole = print(borders, " rowspan='1'");
        try (PrintedPdf one = new PrintedPdf(parted);
                PrintedPdf other = new PrintedPdf(whole)) {
            assertThat(one.pages()).isGreaterThan(3).isEqualTo(other.pages());
            assertThat(one.text()).isEqualTo(other.text());
            for (int page = 0; page < one.pages(); page++) {
                assertThat(pixels(one, page)).isEqualTo(pixels(other, page));
            }
        }
    }

    private static int[] pixels(PrintedPdf printed, int page) throws IOException {
        var image = printed.image(page + 1, 72);
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static byte[] print(String borders, String last) {
        String page =
                "<html xmlns='http://www.w3.org/1999/xhtml'><head><title>t</title><style>@page { size: 148mm 210mm }"
                        + " table { -fs-table-paginate: paginate; border-collapse: " + borders
                        + "; border: 1pt solid #000000 }"
                        + " tr { page-break-inside: avoid } td { border-bottom: 0.5pt solid #000000; padding: 2pt }"
                        + "</style></head><body><table><thead><tr><th>head</th><th>more</th></tr></thead><tbody>"
                        + rows(250, last) + "</tbody></table><p>end</p></body></html>";
        return new Handbook().toPdf(page, INFO, Resources.none());
    }

    private static String rows(int count, String last) {
        return IntStream.range(0, count)
                .mapToObj(i -> "<tr><td>r" + i + "</td><td" + (i == count - 1 ? last : "") + ">x</td></tr>")
                .collect(Collectors.joining());
    }

    private static List<Element> bodies(String body) {
        Document document = Xml.parse("<table><thead><tr><th>h</th></tr></thead>" + body + "</table>", "t");
        LongTables.part(document);
        return Xml.elements(document.getDocumentElement()).stream()
                .filter(element -> element.getTagName().equals("tbody"))
                .toList();
    }
}
