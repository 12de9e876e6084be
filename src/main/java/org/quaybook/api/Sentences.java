package org.quaybook.api;

import java.util.List;
import java.util.stream.Collectors;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Place;
import org.quaybook.diag.SafeText;
import org.quaybook.text.Words;

/** Problems and findings as lines of English: what exceptions say. */
final class Sentences {

    private Sentences() {}

    static String of(Diagnostic problem) {
        return at(problem.place()) + words().say(problem.message());
    }

    static String of(List<Diagnostic> problems) {
        return problems.stream().map(Sentences::of).collect(Collectors.joining("\n"));
    }

    static String ofFindings(List<Finding> findings) {
        Words words = words();
        return findings.stream()
                .map(finding -> at(finding.place()) + words.say(finding.message()))
                .collect(Collectors.joining("\n"));
    }

    private static String at(Place place) {
        return place.file().isEmpty() ? "" : SafeText.shownOnOneLine(place + ": ");
    }

    private static Words words() {
        return Words.of("en-GB");
    }
}
