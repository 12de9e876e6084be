package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Templates;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The English guide is read by whoever left school early, or is tired: grade 8 at most by Flesch and Kincaid. */
class ReadingGradeTest {

    /** The guide as a whole. */
    private static final double MOST = 8;

    /** A chapter alone may be somewhat harder: that of the figures' workings names things by their full names. */
    private static final double MOST_OF_A_CHAPTER = 9;

    /** A shorter text says little about itself: the formula was made from passages of some 150 words (from memory). */
    private static final int ENOUGH_WORDS = 75;

    private static final Set<String> BLOCKS = Set.of("p", "li", "td");

    /** Computed by hand from both formulas. */
    @ParameterizedTest
    @CsvSource({"100, 5, 150, 59.6, 9.91", "100, 10, 130, 86.7, 3.65", "6, 1, 6, 116.1, -1.45"})
    void theFormulasAreFleschsAndKincaids(int words, int sentences, int syllables, double ease, double grade) {
        ReadingGrade it = new ReadingGrade(words, sentences, syllables);
        assertThat(it.ease()).isCloseTo(ease, within(0.05));
        assertThat(it.grade()).isCloseTo(grade, within(0.005));
    }

    /** Counts of the CMU Pronouncing Dictionary 0.7a (seen). */
    @Test
    void syllablesAreThoseOfADictionary() throws IOException {
        List<String> wrong = new ArrayList<>();
        int words = 0;
        for (String line :
                Files.readAllLines(Path.of("src/test/resources/words/syllables.txt"), StandardCharsets.UTF_8)) {
            if (line.startsWith("#")) {
                continue;
            }
            List<String> cells = List.of(line.split(" ", -1));
            int counted = ReadingGrade.syllables(cells.get(0));
            words++;
            if (counted < Integer.parseInt(cells.get(1)) || counted > Integer.parseInt(cells.get(cells.size() - 1))) {
                wrong.add(line + ", counted " + counted);
            }
        }
        assertThat(words).isGreaterThan(700);
        assertThat(wrong).isEmpty();
    }

    @Test
    void countsWordsAndWholeSentencesOnly() {
        List<String> sentences = ReadingGrade.sentences("The alarm sounds at 23.0\u00a0V. Switch it off! A heading");
        assertThat(sentences).hasSize(2);
        assertThat(ReadingGrade.of(sentences)).isEqualTo(new ReadingGrade(7, 2, 8));
    }

    /** The test itself must be able to fail. */
    @Test
    void officialProseIsTooHard() {
        ReadingGrade official = ReadingGrade.of(ReadingGrade.sentences(
                "Notwithstanding the aforementioned considerations, personnel responsible for electrical installations"
                        + " are required to ascertain the availability of appropriate documentation prior to commencing"
                        + " operational activities."));
        assertThat(official.grade()).isGreaterThan(15);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theGuideIsReadWithEightYearsOfSchool(String demo) throws IOException {
        Map<String, List<String>> chapters = chapters(demo);
        List<String> all = chapters.values().stream().flatMap(List::stream).toList();
        ReadingGrade whole = ReadingGrade.of(all);
        List<String> report = new ArrayList<>(
                List.of(String.format(Locale.ROOT, "%s: %.1f, %d words", demo, whole.grade(), whole.words())));
        assertThat(whole.words()).isGreaterThan(1500);
        assertThat(whole.grade()).isLessThanOrEqualTo(MOST);
        chapters.forEach((chapter, sentences) -> {
            ReadingGrade grade = ReadingGrade.of(sentences);
            if (grade.words() >= ENOUGH_WORDS) {
                report.add(String.format(Locale.ROOT, "  %s: %.1f, %d words", chapter, grade.grade(), grade.words()));
                assertThat(grade.grade()).as(chapter).isLessThanOrEqualTo(MOST_OF_A_CHAPTER);
            }
        });
        assertThat(report).hasSizeGreaterThan(8);
        Path folder = Files.createDirectories(Path.of("target", "reading-grade"));
        Files.write(folder.resolve(demo + ".txt"), report);
    }

    private static Map<String, List<String>> chapters(String demo) {
        DemoJob job = DemoJob.of(demo);
        Document guide = parse(Templates.builtIn()
                .fill(
                        "guide/guide.ftlx",
                        new GuideModel(job.assessment(), DemoJob.WORDS, job.branding())
                                .printed(PageFormat.A5, new CardSetting(CardDetail.FULL, "10"), Set.of())));
        Map<String, List<String>> chapters = new LinkedHashMap<>();
        NodeList divisions = guide.getElementsByTagName("div");
        for (int i = 0; i < divisions.getLength(); i++) {
            Element division = (Element) divisions.item(i);
            if (division.getAttribute("class").startsWith("chapter chapter-")) {
                List<String> sentences = new ArrayList<>();
                collect(division, sentences);
                chapters.put(division.getAttribute("class").substring("chapter chapter-".length()), sentences);
            }
        }
        return chapters;
    }

    private static void collect(Node node, List<String> sentences) {
        if (node instanceof Element element && BLOCKS.contains(element.getTagName()) && !holdsBlocks(element)) {
            sentences.addAll(ReadingGrade.sentences(element.getTextContent()));
            return;
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            collect(child, sentences);
        }
    }

    private static boolean holdsBlocks(Element element) {
        return BLOCKS.stream()
                .anyMatch(block -> element.getElementsByTagName(block).getLength() > 0);
    }

    private static Document parse(String xhtml) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xhtml)));
        } catch (javax.xml.parsers.ParserConfigurationException | org.xml.sax.SAXException | IOException e) {
            throw new AssertionError(e);
        }
    }
}
