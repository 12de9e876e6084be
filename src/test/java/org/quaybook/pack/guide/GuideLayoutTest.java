package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.DemoJobs;
import org.quaybook.pack.guide.PrintedGuide.Letter;
import org.quaybook.render.PageFormat;

/** The pages of the guide on every paper, as PDFBox reads them. Limits without a named source are this project's own. */
class GuideLayoutTest {

    private static final Map<String, PrintedGuide> PRINTED = new ConcurrentHashMap<>();

    /** Sizes on A5 in points: headings of sections and of chapters. */
    private static final double SECTION = 12.9;

    private static final double CHAPTER = 17;
    private static final double ROUNDING = 0.4;

    private static final double LEAST_SIZE = 7;

    /** A page that ends higher than this, as a share of its body, wastes paper unless a chapter begins after it. */
    private static final double LEAST_FILLED = 0.4;

    static Stream<Arguments> guides() {
        return DemoJobs.ALL.stream()
                .flatMap(demo -> Stream.of(PageFormat.A5, PageFormat.HALF_LETTER, PageFormat.A4, PageFormat.LETTER)
                        .map(format -> Arguments.of(demo, format)));
    }

    private static PrintedGuide printed(String demo, PageFormat format) {
        return PRINTED.computeIfAbsent(
                demo + format.name(), name -> new PrintedGuide(DemoJob.of(demo).guide(format)));
    }

    @AfterAll
    static void close() throws IOException {
        for (PrintedGuide guide : PRINTED.values()) {
            guide.close();
        }
        PRINTED.clear();
    }

    /** ISO 216 and ANSI/ASME Y14.1 give the sizes. */
    @ParameterizedTest
    @MethodSource("guides")
    void everyPageHasTheSizeOfThePaper(String demo, PageFormat format) {
        for (PDPage page : printed(demo, format).document().getPages()) {
            assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isCloseTo(format.width(), within(0.1));
            assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isCloseTo(format.height(), within(0.1));
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void nothingStandsInTheMargins(String demo, PageFormat format) {
        PrintedGuide guide = printed(demo, format);
        for (int page = 2; page <= guide.pages(); page++) {
            boolean wide = head(guide, format, page).isEmpty();
            double side = (format.inner() + format.outer()) / 2 - 4 * format.scale();
            double left = wide ? side : page % 2 == 1 ? format.inner() : format.outer();
            double right = wide ? side : page % 2 == 1 ? format.outer() : format.inner();
            for (Letter letter : guide.letters(page)) {
                if (!letter.text().isBlank()) {
                    assertThat(letter.x()).as("page %s: %s", page, letter).isGreaterThan(left - ROUNDING);
                    assertThat(letter.x() + letter.width())
                            .as("page %s: %s", page, letter)
                            .isLessThan(format.width() - right + ROUNDING);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void noLetterIsSmallerThanSevenPoints(String demo, PageFormat format) {
        PrintedGuide guide = printed(demo, format);
        for (int page = 1; page <= guide.pages(); page++) {
            assertThat(guide.letters(page)).allMatch(letter -> letter.size() >= LEAST_SIZE);
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void everyPageButTheCoverHasItsNumberAndAllButTheCardAHead(String demo, PageFormat format) {
        PrintedGuide guide = printed(demo, format);
        int headless = 0;
        for (int page = 2; page <= guide.pages(); page++) {
            String foot = text(guide, page, format.height() - format.bottom(), format.height());
            assertThat(foot.startsWith("" + page) || foot.endsWith("" + page))
                    .as("foot of page %s: %s", page, foot)
                    .isTrue();
            headless += head(guide, format, page).isEmpty() ? 1 : 0;
        }
        assertThat(headless).isEqualTo(1);
    }

    private static String head(PrintedGuide guide, PageFormat format, int page) {
        return text(guide, page, 0, format.top() - 5 * format.scale());
    }

    private static String text(PrintedGuide guide, int page, double top, double bottom) {
        return guide.letters(page).stream()
                .filter(letter -> letter.y() > top && letter.y() < bottom)
                .sorted(Comparator.comparingDouble(Letter::x))
                .map(Letter::text)
                .reduce("", String::concat)
                .replaceAll("[\\s\u00a0]", "");
    }

    private static List<Letter> body(PrintedGuide guide, PageFormat format, int page) {
        return guide.letters(page).stream()
                .filter(letter -> !letter.text().isBlank())
                .filter(letter -> letter.y() > format.top() - 5 * format.scale())
                .filter(letter -> letter.y() < format.height() - format.bottom())
                .toList();
    }

    /** Whoever leafs looks for the chapter that a page begins with, also where the next one begins further down. */
    @ParameterizedTest
    @MethodSource("guides")
    void headsNameTheChapterThatThePageBeginsWith(String demo, PageFormat format) throws IOException {
        PrintedGuide guide = printed(demo, format);
        String chapter = "";
        int midway = 0;
        List<PDOutlineItem> chapters = new ArrayList<>();
        guide.document().getDocumentCatalog().getDocumentOutline().children().forEach(chapters::add);
        for (int page = 1; page <= guide.pages(); page++) {
            PDPage sheet = guide.document().getPage(page - 1);
            List<String> begun = new ArrayList<>();
            for (PDOutlineItem item : chapters) {
                if (sheet.equals(item.findDestinationPage(guide.document()))) {
                    begun.add(plain(item.getTitle()).replaceFirst("^\\d+", ""));
                }
            }
            boolean atTop = body(guide, format, page).stream()
                    .min(Comparator.comparingDouble(Letter::y))
                    .filter(first -> first.size() > CHAPTER * format.scale())
                    .isPresent();
            String head = head(guide, format, page);
            String expected = atTop && !begun.isEmpty() ? begun.get(0) : chapter;
            midway += !atTop && !begun.isEmpty() && !chapter.isEmpty() ? 1 : 0;
            if (!head.isEmpty() && !expected.isEmpty()) {
                assertThat(plain(head)).as("head of page %s", page).contains(expected);
            }
            chapter = begun.isEmpty() ? chapter : begun.get(begun.size() - 1);
        }
        assertThat(midway).as("pages on which a chapter begins further down").isPositive();
    }

    @ParameterizedTest
    @MethodSource("guides")
    void noPageIsEmptyAndNoneEndsWithAHeading(String demo, PageFormat format) {
        PrintedGuide guide = printed(demo, format);
        for (int page = 2; page <= guide.pages(); page++) {
            List<Letter> body = body(guide, format, page);
            assertThat(body).as("page %s", page).hasSizeGreaterThan(4);
            Letter last =
                    body.stream().max(Comparator.comparingDouble(Letter::y)).orElseThrow();
            // Below the last heading of all there are lines to write on.
            assertThat(last.size() < SECTION * format.scale() || page == guide.pages())
                    .as("page %s ends with %s", page, last)
                    .isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void noPageIsHalfEmptyUnlessAChapterBeginsAfterIt(String demo, PageFormat format) throws IOException {
        PrintedGuide guide = printed(demo, format);
        List<String> wasted = new ArrayList<>();
        for (int page = 2; page < guide.pages(); page++) {
            double end = body(guide, format, page).stream()
                    .mapToDouble(Letter::y)
                    .max()
                    .orElse(0);
            double filled = filled(format, end);
            if (filled < LEAST_FILLED) {
                // Pictures and lines to write on count too.
                filled = filled(format, lowestInk(guide, format, page));
            }
            boolean chapterFollows = body(guide, format, page + 1).stream()
                    .min(Comparator.comparingDouble(Letter::y))
                    .filter(first -> first.size() > CHAPTER * format.scale())
                    .isPresent();
            if (filled < LEAST_FILLED && !chapterFollows) {
                wasted.add("page %d is filled to %.0f %%".formatted(page, filled * 100));
            }
        }
        assertThat(wasted).isEmpty();
    }

    private static double filled(PageFormat format, double end) {
        return (end - format.top()) / (format.height() - format.top() - format.bottom());
    }

    /** How far down a page anything is printed above its foot, millimetres. */
    private static double lowestInk(PrintedGuide guide, PageFormat format, int page) throws IOException {
        BufferedImage image = guide.image(page, 50.8f);
        int row = (int) ((format.height() - format.bottom()) * 2) - 1;
        while (row > 0 && isWhite(image, row)) {
            row--;
        }
        return row / 2.0;
    }

    private static boolean isWhite(BufferedImage image, int row) {
        return IntStream.range(0, image.getWidth())
                .allMatch(x -> image.getRaster().getSample(x, row, 0) > 240);
    }

    /** The structure of a tagged PDF names the pages on which the parts of a row stand. */
    @ParameterizedTest
    @MethodSource("guides")
    void noRowIsSplitOverTwoPages(String demo, PageFormat format) {
        List<PDStructureElement> rows = PageRules.elements(printed(demo, format), "TR");
        assertThat(rows).hasSizeGreaterThan(20);
        for (PDStructureElement row : rows) {
            assertThat(PageRules.pages(row)).as("pages of a row").hasSizeLessThan(2);
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void noRowStandsAlone(String demo, PageFormat format) {
        PageRules.assertNoRowStandsAlone(printed(demo, format));
    }

    @ParameterizedTest
    @MethodSource("guides")
    void nothingIsCutByLineEnds(String demo, PageFormat format) {
        PageRules.assertNothingIsCutByLineEnds(
                printed(demo, format), DemoJob.of(demo).neverCut(DemoJob.WORDS));
    }

    @ParameterizedTest
    @MethodSource("guides")
    void bookmarksAreTheHeadingsOnTheirPages(String demo, PageFormat format) throws IOException {
        PrintedGuide guide = printed(demo, format);
        List<String> bookmarks = new ArrayList<>();
        gather(guide, guide.document().getDocumentCatalog().getDocumentOutline(), bookmarks);
        List<Integer> headings = PageRules.elements(guide, "H[1-6]").stream()
                .map(heading -> guide.document()
                        .getPages()
                        .indexOf(PageRules.pages(heading).iterator().next()))
                .toList();
        assertThat(bookmarks).hasSameSizeAs(headings).hasSizeGreaterThan(40);
        for (int i = 0; i < bookmarks.size(); i++) {
            int page = Integer.parseInt(bookmarks.get(i).replaceFirst(" .*", ""));
            assertThat(page).as(bookmarks.get(i)).isEqualTo(headings.get(i));
            assertThat(plain(guide.text(page + 1)))
                    .contains(plain(bookmarks.get(i).replaceFirst("\\d+ ", "")));
        }
    }

    private static void gather(PrintedGuide guide, PDOutlineNode node, List<String> bookmarks) throws IOException {
        for (PDOutlineItem item : node.children()) {
            PDPage page = item.findDestinationPage(guide.document());
            bookmarks.add(guide.document().getPages().indexOf(page) + " " + item.getTitle());
            gather(guide, item, bookmarks);
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void linksLeadToThePlacesThatTheyName(String demo, PageFormat format) throws IOException {
        PrintedGuide guide = printed(demo, format);
        int links = 0;
        for (PDPage page : guide.document().getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                PDActionGoTo action = (PDActionGoTo) ((PDAnnotationLink) annotation).getAction();
                int target = ((PDPageDestination) action.getDestination()).retrievePageNumber();
                assertThat(plain(guide.text(target + 1))).contains(plain(annotation.getContents()));
                links++;
            }
        }
        assertThat(links).isGreaterThan(13);
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0]", "");
    }
}
