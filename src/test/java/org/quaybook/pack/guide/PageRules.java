package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.api.Condition;
import org.quaybook.pack.guide.PrintedGuide.Letter;

/** What holds for the pages of every document that is handed over, as PDFBox reads them: common practice, no source. */
public final class PageRules {

    private static final int LEAST_ROWS = 2;

    /** Units as documents write them. Those that a new cell of a table may begin with are left out. */
    private static final Pattern CUT_FROM_UNIT = Pattern.compile(
            "\\d\\n(?:%|°C|[kmMµ]?(?:V|Wh|VA|Ah|Ω)|k?W|[km]A|k?Hz|mm²|cm²|AWG|Nm|m³/h|min|ms)(?![\\p{L}\\p{N}])");

    private PageRules() {}

    /** The structure of a tagged PDF names the pages on which the parts of a row stand. */
    static void assertNoRowStandsAlone(PrintedGuide guide) {
        List<PDStructureElement> tables = elements(guide, "Table");
        assertThat(tables).hasSizeGreaterThan(5);
        for (PDStructureElement table : tables) {
            List<Integer> pages = rows(table).stream()
                    .map(row -> pages(row).stream()
                            .mapToInt(page -> guide.document().getPages().indexOf(page))
                            .min())
                    .filter(page -> page.isPresent())
                    .map(page -> page.getAsInt() + 1)
                    .toList();
            if (!pages.isEmpty() && !pages.get(0).equals(pages.get(pages.size() - 1))) {
                assertThat(pages.stream().filter(pages.get(0)::equals))
                        .as("rows at the foot of page %s", pages.get(0))
                        .hasSizeGreaterThanOrEqualTo(LEAST_ROWS);
                assertThat(pages.stream().filter(pages.get(pages.size() - 1)::equals))
                        .as("rows at the head of page %s", pages.get(pages.size() - 1))
                        .hasSizeGreaterThanOrEqualTo(LEAST_ROWS);
            }
        }
    }

    /** The rows that are no head. */
    private static List<PDStructureElement> rows(PDStructureElement table) {
        List<PDStructureElement> rows = new ArrayList<>();
        for (Object kid : table.getKids()) {
            if (kid instanceof PDStructureElement part) {
                switch (part.getStructureType()) {
                    case "TR" -> rows.add(part);
                    case "TBody" -> rows.addAll(rows(part));
                    default -> {}
                }
            }
        }
        return rows;
    }

    /** @param whole telephone numbers, codes and dates that are never cut by the end of a line */
    public static void assertNothingIsCutByLineEnds(PrintedGuide guide, List<String> whole) {
        String text = asWritten(guide);
        Matcher cut = CUT_FROM_UNIT.matcher(text);
        List<String> found = new ArrayList<>();
        while (cut.find()) {
            found.add(text.substring(Math.max(0, cut.start() - 30), cut.end()));
        }
        assertThat(found).as("numbers cut from their units").isEmpty();
        for (String phrase : whole) {
            String apart = Pattern.quote(phrase.replace('\u00a0', ' '))
                    .replace(" ", "\\E\\s+\\Q")
                    .replace("-", "-\\E\\s*\\Q");
            List<String> places = Pattern.compile(apart)
                    .matcher(text)
                    .results()
                    .map(place -> place.group())
                    .toList();
            assertThat(places)
                    .as(phrase)
                    .isNotEmpty()
                    .doesNotHave(new Condition<>(
                            list -> list.stream().anyMatch(place -> place.contains("\n")), "a line end inside"));
        }
    }

    /** In the order of the file, in which the lines of a cell follow each other. */
    private static String asWritten(PrintedGuide guide) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setLineSeparator("\n");
        stripper.setParagraphEnd("\n");
        try {
            return stripper.getText(guide.document()).replace('\u00a0', ' ').replaceAll(" *\n+ *", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * On the quick card two columns of times stand side by side, the second in bold.
     *
     * @param page from 1
     * @param least millimetres between them
     */
    public static void assertTimesStandApart(PrintedGuide guide, int page, double least) {
        List<Letter> letters = guide.letters(page).stream()
                .filter(letter -> !letter.text().isBlank())
                .sorted(Comparator.comparingDouble((Letter letter) -> Math.round(letter.y() * 10))
                        .thenComparingDouble(Letter::x))
                .toList();
        int seen = 0;
        for (int i = 1; i < letters.size(); i++) {
            Letter left = letters.get(i - 1);
            Letter right = letters.get(i);
            boolean sameLine = Math.abs(left.y() - right.y()) < 0.1;
            if (sameLine && !left.bold() && right.bold() && right.text().matches("[\\d–]")) {
                seen++;
                assertThat(right.x() - left.x() - left.width())
                        .as("between %s and %s", left, right)
                        .isGreaterThanOrEqualTo(least);
            }
        }
        assertThat(seen).isPositive();
    }

    static List<PDStructureElement> elements(PrintedGuide guide, String type) {
        List<PDStructureElement> found = new ArrayList<>();
        search(guide.document().getDocumentCatalog().getStructureTreeRoot(), type, found);
        return found;
    }

    private static void search(PDStructureNode node, String type, List<PDStructureElement> found) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getStructureType().matches(type)) {
                    found.add(element);
                }
                search(element, type, found);
            }
        }
    }

    static Set<PDPage> pages(PDStructureNode node) {
        Set<PDPage> pages = new HashSet<>();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDMarkedContentReference mark) {
                pages.add(mark.getPage());
            } else if (kid instanceof PDStructureElement element) {
                pages.addAll(pages(element));
            }
        }
        return pages;
    }
}
