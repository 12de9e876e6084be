package org.quaybook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.quaybook.KeptFile;
import org.quaybook.text.Words;

/** The page of all checks says what the code says, each with the sentence that a failing job of the tests draws. */
class ChecksPageTest {

    private static final Path PAGE = Path.of("docs/checks.md");
    private static final String GENERATED = "<!-- Made from the checks from here on: mvn test -Drenew=checks -->\n";
    private static final Words WORDS = Words.of("en-GB");

    @Test
    void pageFitsTheChecks() throws IOException {
        String page = Files.readString(PAGE);
        String written = page.substring(0, page.indexOf(GENERATED) + GENERATED.length());
        KeptFile.assertSame(PAGE, written + "\n" + list(), "checks");
    }

    /** The promise of the README. */
    @Test
    void thereAreSixtyAtLeast() {
        assertThat(Check.values()).hasSizeGreaterThanOrEqualTo(60);
    }

    private static String list() {
        Map<Check, List<FindingsTest.Case>> cases = FindingsTest.cases()
                .collect(Collectors.groupingBy(FindingsTest.Case::check, TreeMap::new, Collectors.toList()));
        StringBuilder page = new StringBuilder();
        cases.forEach((check, failing) -> page.append(entry(check, failing)));
        return page.toString();
    }

    private static String entry(Check check, List<FindingsTest.Case> failing) {
        Finding example = FindingsTest.findings(failing.get(0).fails()).stream()
                .filter(finding -> finding.check() == check)
                .findFirst()
                .orElseThrow();
        String severities = failing.stream()
                .map(FindingsTest.Case::severity)
                .distinct()
                .sorted()
                .map(WORDS::term)
                .collect(Collectors.joining(", or "));
        return "### " + check.id() + "\n\n"
                + severities + ".\n\n"
                + "> " + WORDS.say(example.message()) + "\n"
                + "> → " + WORDS.say(example.remedy()) + "\n\n"
                + "Source: " + check.citation().source() + " ("
                + WORDS.term(check.citation().standing()) + ").\n\n";
    }
}
