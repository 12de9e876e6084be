package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.quaybook.figures.Figure;
import org.quaybook.figures.RoomFigures;
import org.quaybook.pack.guide.PrintedGuide.Letter;

/**
 * A guide of more than 300 pages, as PDFBox reads it. Long names make it long with fewer appliances; a few of them
 * are so large that no two of these go together.
 */
class ManyAppliancesTest {

    private static final int MANY = 480;

    private static final DemoJob JOB = DemoJob.changed(
            "persimmon-tug",
            "appliances:\n",
            "appliances:\n"
                    + IntStream.rangeClosed(1, MANY)
                            .mapToObj(i -> "  - { name: " + name(i) + ", power: " + (i % 50 == 0 ? 1100 : 20 + i)
                                    + " W (plate), duty: 40 %, per-use: 20 min, uses-per-day: 0.01 }\n")
                            .collect(Collectors.joining()));

    private static final PrintedGuide GUIDE = new PrintedGuide(JOB.guide());

    private static String name(int number) {
        return "Work light over bench " + number + " of the long hall below";
    }

    @AfterAll
    static void close() throws IOException {
        GUIDE.close();
    }

    private static String chapter(String from, String to) {
        String text = GUIDE.flowing();
        int begin = text.lastIndexOf(from);
        return text.substring(begin, text.indexOf(to, begin));
    }

    @Test
    void hasMoreThanThreeHundredPages() {
        assertThat(GUIDE.pages()).isGreaterThan(300);
        assertThat(GUIDE.document().getDocumentCatalog().getMarkInfo().isMarked())
                .isTrue();
    }

    /** What is cut at the end of a page would be missing or stand on two. */
    @Test
    void tellsOfEachApplianceAsOftenAsOfTheOthers() {
        Map<Integer, Integer> told = new TreeMap<>();
        Matcher found =
                Pattern.compile("bench (\\d+)\\b").matcher(chapter("3 What you can run", "5 The battery by voltage"));
        while (found.find()) {
            told.merge(Integer.parseInt(found.group(1)), 1, Integer::sum);
        }
        assertThat(told.keySet())
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, MANY).boxed().toList());
        // Bars, times, times from less charge, uses, what it leaves, amperes from shore.
        assertThat(told.values()).allMatch(times -> times == 6);
    }

    /** 2 kW without the appliance's own power are left, by hand, rounded down to three digits. */
    @Test
    void tellsWhatEachLeavesForAnother() {
        String chapter = chapter("4 What can run together", "5 The battery by voltage");
        assertThat(chapter)
                .contains("They may run together if each takes no more than the other leaves.")
                .contains("bench 50 of the long hall below switches itself on 1.1 kW 900 W")
                .contains("bench 321 of the long hall below switches itself 341 W 1.65 kW");
        RoomFigures room = JOB.assessment().figures().room().orElseThrow();
        for (RoomFigures.Left it : room.appliances()) {
            assertThat(chapter).contains(word(it.appliance().power()) + " " + word(it.left()));
        }
    }

    private static String word(Figure<?> figure) {
        return DemoJob.WORDS.word(figure.stated()).replace('\u00a0', ' ');
    }

    /**
     * At least two rows of a table stand on each of its pages: common practice, no source. A table goes on over the page where
     * the first row of a page is of the appliance after that of the last row before it.
     */
    @Test
    void leavesNoRowAlone() {
        int breaks = 0;
        List<Integer> before = List.of();
        for (int page = 1; page <= GUIDE.pages(); page++) {
            List<Integer> rows = Pattern.compile("\\b(\\d+)\\s+of\\s+the\\s+long\\b")
                    .matcher(GUIDE.text(page))
                    .results()
                    .map(row -> Integer.valueOf(row.group(1)))
                    .toList();
            if (!before.isEmpty() && !rows.isEmpty() && rows.get(0) == before.get(before.size() - 1) + 1) {
                breaks++;
                assertThat(before.size())
                        .as("rows at the end of page " + (page - 1))
                        .isGreaterThan(1);
                assertThat(before.get(before.size() - 2))
                        .as("row before the last of page " + (page - 1))
                        .isEqualTo(before.get(before.size() - 1) - 1);
                // The demo's own appliances follow the last of the many.
                if (rows.get(0) < MANY) {
                    assertThat(rows.size())
                            .as("rows at the head of page " + page)
                            .isGreaterThan(1);
                    assertThat(rows.get(1)).as("second row of page " + page).isEqualTo(rows.get(0) + 1);
                }
            }
            before = rows;
        }
        assertThat(breaks).isGreaterThan(100);
    }

    /** ISO 216: A5 is 148 x 210 mm. Margins are this project's own. */
    @Test
    void keepsWithinItsMargins() {
        for (int page = 2; page <= GUIDE.pages(); page++) {
            for (Letter letter : GUIDE.letters(page)) {
                assertThat(letter.x()).as("page " + page).isBetween(10.0, 138.0);
                assertThat(letter.y()).as("page " + page).isBetween(8.0, 205.0);
            }
        }
    }

    /** The contents lead to pages of three digits. */
    @Test
    void itsContentsLeadToTheChapters() {
        Matcher entry =
                Pattern.compile("(\\d+) (\\p{L}[\\p{L} ,:]+?)[ .]+(\\d+)\n").matcher(GUIDE.text(2) + "\n");
        int last = 0;
        while (entry.find()) {
            int page = Integer.parseInt(entry.group(3));
            assertThat(GUIDE.text(page))
                    .containsPattern("(?m)^" + entry.group(1) + "\\s+" + Pattern.quote(entry.group(2)));
            last = Math.max(last, page);
        }
        assertThat(last).isGreaterThan(300);
    }
}
