package org.quaybook.proof;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.quaybook.diag.Message;

/**
 * What was issued: {@code issue.json}.
 *
 * @param program that made the pack, with its version
 * @param number of the job
 * @param record code of the record, in groups of four
 * @param revision from 1
 * @param date of the revision
 * @param previous the revision before; empty if none was issued
 * @param sha256 digest of each file by its path inside the pack, slashes between folders
 */
public record Manifest(
        String program,
        String number,
        String record,
        int revision,
        LocalDate date,
        Optional<Previous> previous,
        NavigableMap<String, String> sha256) {

    /** Name of the manifest in a pack and in a published record. */
    public static final String FILE = "issue.json";

    /** Name of its signature, beside it. */
    public static final String SIGNATURE_FILE = "issue.sig";

    /** Lies in the place of a record that was taken off; a web server that knows it answers 410. */
    public static final String WITHDRAWN_FILE = "withdrawn";

    /** Bytes; a manifest has some hundred files. */
    static final int LARGEST = 4 << 20;

    private static final String HEX = "[0-9a-f]{64}";
    private static final String RECORD = "[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{4}){4}-[0-9A-HJKMNP-TV-Z]";
    private static final String NUMBER = "[A-Za-z0-9][A-Za-z0-9._-]{0,31}";
    private static final Set<String> KEYS =
            Set.of("program", "number", "record", "revision", "date", "previous", "sha256");

    /** Windows leaves a dot or blank at the end out and has these devices in every folder (Naming Files, from memory). */
    private static final String NAME = "(?!(?i:CON|PRN|AUX|NUL|(?:COM|LPT)[0-9¹²³])(?:[./]|$))"
            + "[\\p{L}\\p{N}_](?:[\\p{L}\\p{N}._ -]*[\\p{L}\\p{N}_-])?";

    /** No way out of the folder, nothing hidden, and no name that a file system or an address reads otherwise. */
    private static final Pattern PATH = Pattern.compile("(?=.{1,255}$)" + NAME + "(?:/" + NAME + ")*");

    private static final Pattern RESERVED = Pattern.compile("issue\\.(json|sig)|revision-[^/]*(/.*)?");

    /**
     * The link of the chain.
     *
     * @param revision its number
     * @param sha256 of the bytes of its manifest
     */
    public record Previous(int revision, String sha256) {

        /**
         * The link to a manifest.
         *
         * @param content the manifest's bytes as they were issued
         * @throws Refused as {@link Manifest#read}
         */
        public static Previous to(byte[] content) throws Refused {
            return new Previous(Manifest.read(content).revision(), Digest.of(content));
        }
    }

    public Manifest {
        sha256 = Collections.unmodifiableNavigableMap(new TreeMap<>(sha256));
    }

    /**
     * Reads a manifest strictly: every key, no other, none twice, no path that leads out of the folder.
     *
     * @throws Refused saying what is wrong with it
     */
    public static Manifest read(byte[] content) throws Refused {
        JsonNode root = JsonText.read(content);
        JsonText.holdsExactly(root, KEYS);
        String record = text(root, "record", RECORD);
        return new Manifest(
                text(root, "program", "[^\\p{Cntrl}]{1,200}"),
                text(root, "number", NUMBER),
                record,
                revision(root),
                date(root),
                previous(root.path("previous")),
                digests(root.path("sha256"), record.replace("-", "")));
    }

    private static String text(JsonNode node, String key, String form) throws Refused {
        return JsonText.text(node, key, form)
                .orElseThrow(() -> new Refused(
                        Message.of(ProofMessage.VALUE, key, node.path(key).toString())));
    }

    private static int revision(JsonNode node) throws Refused {
        JsonNode value = node.path("revision");
        if (!value.isInt() || value.intValue() < 1 || value.intValue() > 999) {
            throw new Refused(Message.of(ProofMessage.VALUE, "revision", value.toString()));
        }
        return value.intValue();
    }

    private static LocalDate date(JsonNode root) throws Refused {
        try {
            return LocalDate.parse(text(root, "date", "[0-9]{4}-[0-9]{2}-[0-9]{2}"));
        } catch (DateTimeParseException e) {
            throw new Refused(
                    Message.of(ProofMessage.VALUE, "date", root.path("date").toString()));
        }
    }

    private static Optional<Previous> previous(JsonNode node) throws Refused {
        if (node.isNull()) {
            return Optional.empty();
        }
        JsonText.holdsExactly(node, Set.of("revision", "sha256"));
        return Optional.of(new Previous(revision(node), text(node, "sha256", HEX)));
    }

    private static NavigableMap<String, String> digests(JsonNode node, String folder) throws Refused {
        if (!node.isObject() || node.isEmpty()) {
            throw new Refused(
                    Message.of(ProofMessage.VALUE, "sha256", node.getNodeType().name()));
        }
        NavigableMap<String, String> digests = new TreeMap<>();
        for (Map.Entry<String, JsonNode> file : node.properties()) {
            String path = file.getKey();
            if (!isPath(path, folder)) {
                throw new Refused(Message.of(ProofMessage.PATH, path));
            }
            digests.put(
                    path,
                    JsonText.text(node, path, HEX)
                            .orElseThrow(() -> new Refused(Message.of(
                                    ProofMessage.NO_DIGEST,
                                    path,
                                    file.getValue().toString()))));
        }
        return digests;
    }

    private static boolean isPath(String path, String folder) {
        String beside = "record/" + folder + "/";
        String name = path.startsWith(beside) ? path.substring(beside.length()) : path;
        return PATH.matcher(path).matches()
                && !RESERVED.matcher(name).matches()
                && (path.startsWith(beside) || path.equals("record/404.html") || !path.startsWith("record/"));
    }

    /** The text of issue.json; the same manifest gives the same bytes. */
    public byte[] json() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("program", program)
                .put("number", number)
                .put("record", record)
                .put("revision", revision)
                .put("date", date.toString());
        previous.ifPresentOrElse(
                before -> root.putObject("previous")
                        .put("revision", before.revision())
                        .put("sha256", before.sha256()),
                () -> root.putNull("previous"));
        ObjectNode digests = root.putObject("sha256");
        sha256.forEach(digests::put);
        return JsonText.of(root);
    }

    /** The record's folder on a site: its code without hyphens. */
    public String folder() {
        return record.replace("-", "");
    }

    /** The digests of the published files, by their path beside the published manifest. */
    public NavigableMap<String, String> published() {
        String beside = "record/" + folder() + "/";
        NavigableMap<String, String> published = new TreeMap<>();
        sha256.forEach((path, digest) -> {
            if (path.startsWith(beside)) {
                published.put(path.substring(beside.length()), digest);
            }
        });
        return published;
    }
}
