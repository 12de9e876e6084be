package org.quaybook.pack;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.quaybook.checks.Assessment;

/** What was issued: job, revision, date and the SHA-256 of every other file of the pack. */
final class IssueJson {

    private IssueJson() {}

    static byte[] of(Assessment it, Map<String, byte[]> files, String version) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("program", "quaybook " + version)
                .put("number", it.job().job().number())
                .put("record", it.job().job().record().toString())
                .put("revision", it.job().job().revision())
                .put("date", it.job().job().date().toString());
        ObjectNode digests = root.putObject("sha256");
        files.forEach((path, content) -> digests.put(path, Digest.of(content)));
        return JsonText.of(root);
    }
}
