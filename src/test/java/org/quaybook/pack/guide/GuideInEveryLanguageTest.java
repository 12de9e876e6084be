package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.DemoJobs;
import org.quaybook.pack.guide.PrintedGuide.Letter;
import org.quaybook.record.Edition;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/**
 * Longer words make no page worse: every demo's guide in every language on A5. A character that no font has would stop
 * the printing. Limits are this project's own.
 */
class GuideInEveryLanguageTest {

    private static final PageFormat PAGE = PageFormat.A5;
    private static final double EDGE = 8;
    private static final double LEAST_SIZE = 7;
    private static final double HEADING = 12.9;

    /** A chapter that ends higher than this on a page of its own looks like a mistake. */
    private static final double LEAST_FILLED = 0.12;

    static Stream<Arguments> guides() {
        return DemoJobs.ALL.stream()
                .flatMap(demo -> Words.languages().stream()
                        .filter(language -> !language.equals("en-GB"))
                        .map(language -> Arguments.of(demo, language)));
    }

    private static List<Letter> body(PrintedGuide guide, int page) {
        return guide.letters(page).stream()
                .filter(letter -> !letter.text().isBlank())
                .filter(letter -> letter.y() > PAGE.top() - 5)
                .filter(letter -> letter.y() < PAGE.height() - PAGE.bottom())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("guides")
    void fitsItsPages(String demo, String language) throws IOException {
        DemoJob job = DemoJob.of(demo);
        Words words = Words.of(language);
        byte[] pdf = new Guide(new Edition(job.assessment(), words), job.branding(), Templates.builtIn())
                .on(PAGE)
                .pdf(List.of());
        try (PrintedGuide guide = new PrintedGuide(pdf)) {
            for (int page = 1; page <= guide.pages(); page++) {
                assertThat(guide.letters(page)).as("page %s", page).allMatch(letter -> letter.size() >= LEAST_SIZE);
                assertThat(guide.letters(page).stream()
                                .filter(letter -> !letter.text().isBlank()))
                        .as("page %s", page)
                        .allMatch(letter -> letter.x() > EDGE
                                && letter.x() + letter.width() < PAGE.width() - EDGE
                                && letter.y() < PAGE.height() - 5);
            }
            for (int page = 2; page < guide.pages(); page++) {
                List<Letter> body = body(guide, page);
                assertThat(body).as("page %s is empty", page).hasSizeGreaterThan(4);
                assertThat(body.stream()
                                .max(Comparator.comparingDouble(Letter::y))
                                .orElseThrow()
                                .size())
                        .as("page %s ends with a heading", page)
                        .isLessThan(HEADING);
                double end = body.stream().mapToDouble(Letter::y).max().orElseThrow();
                assertThat((end - PAGE.top()) / (PAGE.height() - PAGE.top() - PAGE.bottom()))
                        .as("share of page %s that is filled", page)
                        .isGreaterThan(LEAST_FILLED);
            }
            PageRules.assertNoRowStandsAlone(guide);
            PageRules.assertNothingIsCutByLineEnds(guide, job.neverCut(words));
            PageRules.assertTimesStandApart(guide, pageOf(guide, words.say("guide.chapter.card")), 2);
            assertThat(pageOf(guide, words.say("guide.chapter.safety"))
                            - pageOf(guide, words.say("guide.chapter.card")))
                    .as("pages of the quick card")
                    .isEqualTo(1);
        }
    }

    /** The page on which a chapter begins: where its title stands in the type of chapters. */
    private static int pageOf(PrintedGuide guide, String title) {
        String plain = title.replaceAll("\\s", "");
        return IntStream.rangeClosed(1, guide.pages())
                .filter(page -> guide.letters(page).stream()
                        .filter(letter -> letter.size() > 16)
                        .map(Letter::text)
                        .reduce("", String::concat)
                        .replaceAll("[\\s\\u00a0]", "")
                        .contains(plain))
                .findFirst()
                .orElseThrow();
    }
}
