package org.quaybook.pack;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.proof.Digest;

/**
 * The labels of an earlier issue.
 *
 * @param digests what each said, by its id
 */
record IssuedLabels(Map<String, String> digests) {

    IssuedLabels {
        digests = Map.copyOf(digests);
    }

    /**
     * Reads them from the figures.json of a pack.
     *
     * @param figures its text
     * @param at where the pack is, for messages
     * @param number of the job whose labels are to be compared
     * @throws NotPrinted if the file says no labels or is of another job
     */
    static IssuedLabels read(String figures, String at, String number) throws NotPrinted {
        JsonNode root;
        try {
            root = new ObjectMapper().readTree(figures);
        } catch (IOException e) {
            throw refused(at, Message.of(PackMessage.ISSUE_UNREADABLE, at));
        }
        String of = root.path("job").path("number").asText();
        if (!root.path("labels").isArray() || of.isEmpty()) {
            throw refused(at, Message.of(PackMessage.ISSUE_UNREADABLE, at));
        }
        if (!of.equals(number)) {
            throw refused(at, Message.of(PackMessage.ISSUE_OF_OTHER_JOB, of, number));
        }
        Map<String, String> digests = new LinkedHashMap<>();
        root.path("labels")
                .forEach(label -> digests.put(
                        label.path("label").asText(), label.path("sha256").asText()));
        return new IssuedLabels(digests);
    }

    private static NotPrinted refused(String at, Message message) {
        return new NotPrinted(List.of(new Diagnostic(
                Severity.ERROR, message.key().key(), new Place(at, "", Position.START), "", message, List.of())));
    }

    boolean says(LabelNote note) {
        return Digest.of(note.content()).equals(digests.get(note.id()));
    }

    /** Labels of the earlier issue that the job asks for no more. */
    List<String> gone(List<LabelNote> now) {
        List<String> ids = now.stream().map(LabelNote::id).toList();
        return digests.keySet().stream()
                .filter(id -> !ids.contains(id))
                .sorted()
                .toList();
    }
}
