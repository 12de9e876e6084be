package org.quaybook.pack;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.quaybook.checks.Check;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.proof.JsonText;
import org.quaybook.text.Words;

/** Findings of jobs in SARIF 2.1.0, the open format (OASIS) that editors and build servers show beside the text. */
public final class FindingsSarif {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Words words;

    private FindingsSarif(Words words) {
        this.words = words;
    }

    /**
     * One run over all jobs, UTF-8. Problems of the input and findings are both results; an accepted finding is
     * suppressed with its reason.
     *
     * @param version of the program
     */
    public static byte[] of(List<CheckedJob> jobs, Words words, String version) {
        FindingsSarif sarif = new FindingsSarif(words);
        ObjectNode root = NODES.objectNode()
                .put("$schema", "https://json.schemastore.org/sarif-2.1.0.json")
                .put("version", "2.1.0");
        ObjectNode run = root.putArray("runs").addObject();
        ObjectNode driver = run.putObject("tool").putObject("driver");
        driver.put("name", "quaybook").put("version", version);
        ArrayNode rules = driver.putArray("rules");
        for (Check check : Check.values()) {
            rules.add(rule(check));
        }
        run.put("columnKind", "unicodeCodePoints");
        ArrayNode results = run.putArray("results");
        for (CheckedJob job : jobs) {
            job.problems().forEach(problem -> results.add(sarif.result(problem)));
            job.findings().forEach(finding -> results.add(sarif.result(finding)));
        }
        return JsonText.of(root);
    }

    private static ObjectNode rule(Check check) {
        ObjectNode node = NODES.objectNode().put("id", check.id());
        ObjectNode properties = node.putObject("properties");
        FindingsJson.citation(properties, check.citation());
        return node;
    }

    private ObjectNode result(Diagnostic problem) {
        return result(problem.rule(), problem.severity(), words.say(problem.message()), problem.place());
    }

    private ObjectNode result(Finding finding) {
        ObjectNode node = result(
                finding.check().id(),
                finding.severity(),
                words.say(finding.message()) + " " + words.say(finding.remedy()),
                finding.place());
        finding.accepted()
                .ifPresent(deviation -> node.putArray("suppressions")
                        .addObject()
                        .put("kind", "inSource")
                        .put("justification", deviation.why()));
        return node;
    }

    private static ObjectNode result(String rule, Severity severity, String text, Place place) {
        ObjectNode node = NODES.objectNode().put("ruleId", rule).put("level", level(severity));
        node.putObject("message").put("text", text);
        if (!place.file().isEmpty()) {
            ObjectNode at = node.putArray("locations").addObject().putObject("physicalLocation");
            at.putObject("artifactLocation").put("uri", place.file().replace('\\', '/'));
            at.putObject("region")
                    .put("startLine", place.position().line() + 1)
                    .put("startColumn", place.position().column() + 1);
        }
        return node;
    }

    private static String level(Severity severity) {
        return switch (severity) {
            case ERROR, FORBIDS -> "error";
            case DECIDE -> "warning";
            case NOTE -> "note";
        };
    }
}
