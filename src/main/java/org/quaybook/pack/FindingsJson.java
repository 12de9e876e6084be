package org.quaybook.pack;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Place;
import org.quaybook.proof.JsonText;
import org.quaybook.reference.Citation;
import org.quaybook.text.Words;

/** Findings of jobs as JSON: what {@code check} tells, for programs. */
public final class FindingsJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Words words;

    private FindingsJson(Words words) {
        this.words = words;
    }

    /**
     * The findings of jobs, UTF-8.
     *
     * @param version of the program
     */
    public static byte[] of(List<CheckedJob> jobs, Words words, String version) {
        FindingsJson json = new FindingsJson(words);
        ObjectNode root = NODES.objectNode().put("program", "quaybook " + version);
        ArrayNode list = root.putArray("jobs");
        jobs.forEach(job -> list.add(json.job(job)));
        return JsonText.of(root);
    }

    private ObjectNode job(CheckedJob checked) {
        ObjectNode node = NODES.objectNode().put("job", checked.job());
        node.put("calculated", checked.calculated()).put("hand-over", checked.handOver());
        ArrayNode problems = node.putArray("problems");
        checked.problems().forEach(problem -> problems.add(problem(problem)));
        ArrayNode findings = node.putArray("findings");
        checked.findings()
                .forEach(
                        finding -> findings.add(finding(finding, finding.place().file(), words)));
        return node;
    }

    private ObjectNode problem(Diagnostic problem) {
        ObjectNode node = NODES.objectNode()
                .put("rule", problem.rule())
                .put("severity", problem.severity().name().toLowerCase(Locale.ROOT));
        place(node, problem.place(), problem.place().file());
        node.put("message", words.say(problem.message()));
        ArrayNode hints = node.putArray("hints");
        problem.hints().forEach(hint -> hints.add(words.say(hint)));
        return node;
    }

    private static void place(ObjectNode node, Place place, String file) {
        node.put("file", file)
                .put("line", place.position().line() + 1)
                .put("column", place.position().column() + 1)
                .put("key", place.path());
    }

    /**
     * One finding with its numbers, remedy and source.
     *
     * @param file what the job file is called
     */
    static ObjectNode finding(Finding finding, String file, Words words) {
        ObjectNode node = NODES.objectNode()
                .put("check", finding.check().id())
                .put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
        place(node, finding.place(), file);
        node.put("message", words.say(finding.message()))
                .put("remedy", words.say(finding.remedy()))
                .put("accepted", finding.accepted().isPresent());
        citation(node, finding.check().citation());
        return node;
    }

    /** Where a rule or a number comes from and how far that can be trusted. */
    static void citation(ObjectNode node, Citation citation) {
        citation(node, citation.source(), citation.standing());
    }

    static void citation(ObjectNode node, String source, Citation.Standing standing) {
        node.put("source", source)
                .put("standing", standing.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
