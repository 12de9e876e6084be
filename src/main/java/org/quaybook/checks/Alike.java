package org.quaybook.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;
import org.quaybook.job.Deviation;

/**
 * Findings that say the same of several things with the same figures, to be told once: a board of twelve equal circuits is
 * no reason to read a sentence twelve times.
 *
 * @param finding the first of them
 * @param others the names of the other things, in the order of their findings; empty if there are none
 */
public record Alike(Finding finding, List<String> others) {

    public Alike {
        others = List.copyOf(others);
    }

    /** What is said but for the name of the thing that it is said of. */
    private record Said(
            Check check,
            Severity severity,
            Optional<Deviation> accepted,
            String subjectless,
            List<Object> message,
            List<Object> remedy) {

        static Said of(Finding finding, String subject) {
            return new Said(
                    finding.check(),
                    finding.severity(),
                    finding.accepted(),
                    subject.isEmpty() ? finding.place().toString() : "",
                    without(finding.message(), subject),
                    without(finding.remedy(), subject));
        }

        private static List<Object> without(Message message, String subject) {
            return Stream.concat(
                            Stream.of(message.key().key()),
                            message.arguments().stream().map(argument -> argument.equals(subject) ? "" : argument))
                    .toList();
        }
    }

    /** All findings, those that are alike in the place of the first of them. */
    public static List<Alike> of(List<Finding> findings) {
        Map<Said, List<Finding>> said = new LinkedHashMap<>();
        for (Finding finding : findings) {
            said.computeIfAbsent(Said.of(finding, subject(finding)), first -> new ArrayList<>())
                    .add(finding);
        }
        return said.values().stream()
                .map(alike -> new Alike(
                        alike.get(0), alike.stream().skip(1).map(Alike::subject).toList()))
                .toList();
    }

    /** The id or name that comes first in the sentence; empty if it names none. */
    private static String subject(Finding finding) {
        return finding.message().arguments().stream()
                .filter(String.class::isInstance)
                .map(String.class::cast)
                .findFirst()
                .orElse("");
    }
}
