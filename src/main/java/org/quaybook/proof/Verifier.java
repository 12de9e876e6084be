package org.quaybook.proof;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.quaybook.diag.Message;
import org.quaybook.proof.Copy.Kind;
import org.quaybook.proof.Verification.Issue;

/** Holds a copy against its manifests, their signatures and the chain of revisions, and names whatever does not fit. */
public final class Verifier {

    private static final String FIGURES = "figures.json";
    private static final String UNKNOWN_CODE_PAGE = "404.html";

    private final Copy copy;
    private final List<Issue> issues = new ArrayList<>();
    private final List<Alteration> alterations = new ArrayList<>();
    private final List<Message> notes = new ArrayList<>();
    private boolean isPack;

    /** A manifest as it was found, with the digest of its bytes. */
    private record Found(String where, Manifest manifest, String digest) {}

    private Verifier(Copy copy) {
        this.copy = copy;
    }

    /**
     * Verifies a pack, a site, or the record of one code.
     *
     * @param keys whose signature counts; of none, that of whoever signed, as long as all is signed by the same
     * @throws Refused if there is nothing of ours, or it cannot be reached at all
     */
    public static Verification verify(Copy copy, Set<VerifyingKey> keys) throws Refused {
        Verifier verifier = new Verifier(copy);
        verifier.all();
        verifier.signers(keys);
        return new Verification(verifier.issues, verifier.alterations, verifier.notes);
    }

    private void all() throws Refused {
        Optional<NavigableMap<String, Kind>> listed = copy.inside("");
        if (listed.isEmpty()) {
            // Somebody who cannot get through has not found anything altered.
            copy.read(Manifest.FILE);
            record("", copy.lastName());
            notes.add(Message.of(ProofMessage.ADDED_UNSEEN));
            return;
        }
        NavigableMap<String, Kind> top = listed.get();
        Set<String> records = top.keySet().stream()
                .filter(name -> IssuedFolders.CODE.matcher(name).matches())
                .collect(Collectors.toCollection(TreeSet::new));
        if (top.get("record") == Kind.FOLDER) {
            pack();
        } else if (top.containsKey(Manifest.FILE)
                || top.containsKey(Manifest.SIGNATURE_FILE)
                || top.keySet().stream()
                        .anyMatch(name -> IssuedFolders.REVISION.matcher(name).matches())
                || IssuedFolders.CODE.matcher(copy.lastName()).matches()) {
            record("", copy.lastName());
        } else if (!records.isEmpty()) {
            site(top, records);
        } else {
            throw new Refused(Message.of(ProofMessage.NOTHING_ISSUED, copy.name()));
        }
    }

    private void pack() throws Refused {
        isPack = true;
        Optional<Found> found = issue("");
        if (found.isPresent()) {
            Manifest manifest = found.get().manifest();
            files(found.get(), manifest.sha256(), Map.of());
            manifest.previous()
                    .ifPresent(before -> notes.add(
                            Message.of(ProofMessage.CHAIN_ELSEWHERE, manifest.revision(), before.revision())));
        }
    }

    private void site(NavigableMap<String, Kind> top, Set<String> records) throws Refused {
        Set<String> pages = new TreeSet<>();
        boolean known = true;
        for (String code : records) {
            if (isWithdrawn(code)) {
                notes.add(Message.of(ProofMessage.WITHDRAWN, code));
                known = false;
            } else if (top.get(code) == Kind.FOLDER) {
                Optional<Found> newest = record(code + "/", code);
                newest.map(found -> found.manifest().sha256().get("record/" + UNKNOWN_CODE_PAGE))
                        .ifPresent(pages::add);
                known &= newest.isPresent();
            } else {
                altered(code, ProofMessage.NOT_PLAIN);
            }
        }
        // The page for unknown codes is one for all records: it came with any of them, perhaps with one that says no
        // more.
        if (!pages.isEmpty()) {
            boolean judged = known;
            due(UNKNOWN_CODE_PAGE, ProofMessage.MISSING)
                    .filter(page -> judged && !pages.contains(Digest.of(page)))
                    .ifPresent(page -> altered(UNKNOWN_CODE_PAGE, ProofMessage.ALTERED));
        }
        String others = top.keySet().stream()
                .filter(name -> !records.contains(name) && !name.equals(UNKNOWN_CODE_PAGE))
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            notes.add(Message.of(ProofMessage.NOT_JUDGED, others));
        }
    }

    /** A record that was taken off leaves its mark and a page, and nothing that is signed. */
    private boolean isWithdrawn(String code) throws Refused {
        return copy.inside(code)
                .filter(files -> files.keySet().equals(Set.of(Manifest.WITHDRAWN_FILE, "index.html")))
                .isPresent();
    }

    /** One published record with all its revisions; gives its newest. */
    private Optional<Found> record(String where, String folder) throws Refused {
        Optional<Found> newest = issue(where);
        NavigableMap<Integer, Found> earlier = new TreeMap<>(Comparator.reverseOrder());
        Set<Integer> numbers = revisions(where, newest);
        for (int number : numbers) {
            issue(where + IssuedFolders.revision(number) + "/").ifPresent(found -> earlier.put(number, found));
        }
        newest.ifPresent(found -> {
            if (IssuedFolders.CODE.matcher(folder).matches()
                    && !folder.equals(found.manifest().folder())) {
                altered(
                        where,
                        ProofMessage.OTHER_FOLDER,
                        folder,
                        found.manifest().record());
            }
            chain(found, earlier, numbers);
        });
        Map<String, Integer> held = new HashMap<>();
        earlier.forEach((number, found) ->
                found.manifest().published().values().forEach(digest -> held.putIfAbsent(digest, number)));
        if (newest.isPresent()) {
            files(newest.get(), newest.get().manifest().published(), held);
        }
        for (Found found : earlier.values()) {
            files(found, found.manifest().published(), Map.of());
        }
        return newest;
    }

    /** The numbers of the earlier revisions that lie there; at an address, those that the chain names. */
    private Set<Integer> revisions(String where, Optional<Found> newest) throws Refused {
        Set<Integer> numbers = new TreeSet<>(Comparator.reverseOrder());
        Optional<NavigableMap<String, Kind>> inside = copy.inside(where);
        if (inside.isPresent()) {
            inside.get().forEach((name, kind) -> {
                Matcher revision = IssuedFolders.REVISION.matcher(name);
                if (revision.matches() && kind == Kind.FOLDER) {
                    numbers.add(Integer.valueOf(revision.group(1)));
                }
            });
            return numbers;
        }
        Optional<Manifest> at = newest.map(Found::manifest);
        while (at.isPresent() && at.get().previous().isPresent()) {
            int number = at.get().previous().get().revision();
            if (number >= at.get().revision() || !numbers.add(number)) {
                break;
            }
            at = manifest(where + IssuedFolders.revision(number) + "/");
        }
        return numbers;
    }

    private Optional<Manifest> manifest(String where) {
        try {
            Optional<byte[]> bytes = copy.read(where + Manifest.FILE);
            return bytes.isEmpty() ? Optional.empty() : Optional.of(Manifest.read(bytes.get()));
        } catch (Refused e) {
            // Told when the revision itself is looked at.
            return Optional.empty();
        }
    }

    private void chain(Found newest, NavigableMap<Integer, Found> earlier, Collection<Integer> numbers) {
        Set<Integer> outside = new TreeSet<>(numbers);
        Found at = newest;
        while (at.manifest().previous().isPresent()) {
            Manifest.Previous before = at.manifest().previous().get();
            if (before.revision() != at.manifest().revision() - 1) {
                altered(
                        at.where() + Manifest.FILE,
                        ProofMessage.CHAIN_NUMBERS,
                        at.manifest().revision(),
                        before.revision());
            }
            String folder = newest.where() + IssuedFolders.revision(before.revision());
            Found next = earlier.get(before.revision());
            if (!numbers.contains(before.revision())) {
                altered(folder, ProofMessage.REVISION_MISSING, at.manifest().revision());
            }
            // A forged chain may lead back to where it was.
            if (!outside.remove(before.revision()) || next == null) {
                break;
            }
            if (!next.digest().equals(before.sha256())) {
                altered(
                        next.where() + Manifest.FILE,
                        ProofMessage.CHAIN_BROKEN,
                        at.manifest().revision());
            }
            at = next;
        }
        earlier.forEach((number, found) -> same(newest.manifest(), number, found));
        outside.stream()
                .filter(earlier::containsKey)
                .forEach(number -> altered(newest.where() + IssuedFolders.revision(number), ProofMessage.NOT_IN_CHAIN));
        if (at.manifest().previous().isEmpty() && at.manifest().revision() > 1) {
            notes.add(Message.of(
                    ProofMessage.CHAIN_BEGINS,
                    at.manifest().record(),
                    at.manifest().revision()));
        }
    }

    /** What no revision changes, and what its folder says of it. */
    private void same(Manifest newest, int number, Found found) {
        String where = found.where() + Manifest.FILE;
        if (found.manifest().revision() != number) {
            altered(
                    where,
                    ProofMessage.REVISION_NUMBER,
                    number,
                    found.manifest().revision());
        }
        if (!found.manifest().record().equals(newest.record())) {
            altered(where, ProofMessage.OTHER_RECORD, found.manifest().record(), newest.record());
        }
        if (!found.manifest().number().equals(newest.number())) {
            altered(where, ProofMessage.OTHER_JOB, found.manifest().number(), newest.number());
        }
    }

    /** Manifest and signature of one revision; what is wrong with them is told. */
    private Optional<Found> issue(String where) {
        Optional<byte[]> bytes = due(where + Manifest.FILE, ProofMessage.NO_MANIFEST);
        if (bytes.isEmpty()) {
            return Optional.empty();
        }
        Optional<VerifyingKey> signer = signer(where, bytes.get());
        try {
            if (bytes.get().length > Manifest.LARGEST) {
                throw new Refused(Message.of(ProofMessage.TOO_LARGE, Manifest.LARGEST >> 20));
            }
            Manifest manifest = Manifest.read(bytes.get());
            issues.add(new Issue(where, manifest, signer));
            return Optional.of(new Found(where, manifest, Digest.of(bytes.get())));
        } catch (Refused e) {
            altered(where + Manifest.FILE, ProofMessage.BAD_MANIFEST, e.reason());
            return Optional.empty();
        }
    }

    private Optional<VerifyingKey> signer(String where, byte[] manifest) {
        Optional<byte[]> bytes = due(where + Manifest.SIGNATURE_FILE, ProofMessage.UNSIGNED);
        if (bytes.isEmpty()) {
            return Optional.empty();
        }
        try {
            Signing signing = Signing.read(bytes.get());
            if (signing.isOf(manifest)) {
                return Optional.of(signing.key());
            }
            altered(
                    where + Manifest.FILE,
                    ProofMessage.WRONG_SIGNATURE,
                    signing.key().toString());
        } catch (Refused e) {
            altered(where + Manifest.SIGNATURE_FILE, ProofMessage.BAD_SIGNATURE, e.reason());
        }
        return Optional.empty();
    }

    /** Holds files against their digests, and finds those that nobody issued. */
    private void files(Found found, NavigableMap<String, String> due, Map<String, Integer> earlier) throws Refused {
        Map<String, String> issuedAs = new HashMap<>();
        due.forEach((path, digest) -> issuedAs.putIfAbsent(digest, path));
        due.forEach((path, digest) -> due(found.where() + path, ProofMessage.MISSING)
                .map(Digest::of)
                .filter(is -> !is.equals(digest))
                .ifPresent(is -> {
                    if (earlier.containsKey(is)) {
                        altered(found.where() + path, ProofMessage.OLDER, earlier.get(is));
                    } else if (issuedAs.containsKey(is)) {
                        altered(found.where() + path, ProofMessage.SWAPPED, issuedAs.get(is));
                    } else {
                        altered(found.where() + path, ProofMessage.ALTERED);
                    }
                }));
        added(found, "", due, issuedAs);
        if (due.containsKey(FIGURES)) {
            figures(found);
        }
    }

    private void added(Found found, String folder, NavigableMap<String, String> due, Map<String, String> issuedAs)
            throws Refused {
        Optional<NavigableMap<String, Kind>> inside = copy.inside(found.where() + folder);
        if (inside.isEmpty()) {
            return;
        }
        for (Map.Entry<String, Kind> each : inside.get().entrySet()) {
            String path = folder + each.getKey();
            switch (each.getValue()) {
                case FOLDER -> {
                    if (due.keySet().stream().anyMatch(known -> known.startsWith(path + "/"))) {
                        added(found, path + "/", due, issuedAs);
                    } else if (!isRevision(found, path)) {
                        altered(found.where() + path + "/", ProofMessage.ADDED);
                    }
                }
                case FILE -> {
                    if (!isDue(path, due)) {
                        addedFile(found.where() + path, issuedAs);
                    }
                }
                case OTHER -> {
                    if (!isDue(path, due)) {
                        altered(found.where() + path, ProofMessage.NOT_PLAIN);
                    }
                }
            }
        }
    }

    private static boolean isDue(String path, NavigableMap<String, String> due) {
        return due.containsKey(path) || path.equals(Manifest.FILE) || path.equals(Manifest.SIGNATURE_FILE);
    }

    /** Revisions lie in the record itself, not in another revision, and not in a pack. */
    private boolean isRevision(Found found, String path) {
        return !isPack
                && IssuedFolders.REVISION.matcher(path).matches()
                && !found.where().contains("revision-");
    }

    private void addedFile(String path, Map<String, String> issuedAs) {
        Optional<String> same =
                content(path).map(Digest::of).filter(issuedAs::containsKey).map(issuedAs::get);
        same.ifPresentOrElse(
                name -> altered(path, ProofMessage.ADDED_COPY, name), () -> altered(path, ProofMessage.ADDED));
    }

    /** Job, revision and date stand in figures.json too, and the key that the documents name. */
    private void figures(Found found) {
        Manifest manifest = found.manifest();
        String where = found.where() + FIGURES;
        Optional<JsonNode> job = content(where).flatMap(Verifier::parsed).map(root -> root.path("job"));
        if (job.isEmpty()) {
            // Told already as missing, altered or not readable.
            return;
        }
        Map<String, String> due = new LinkedHashMap<>();
        due.put("number", manifest.number());
        due.put("record", manifest.record());
        due.put("revision", Integer.toString(manifest.revision()));
        due.put("date", manifest.date().toString());
        due.forEach((key, value) -> {
            String says = job.get().path(key).asText();
            if (!says.equals(value)) {
                altered(where, ProofMessage.CONTRADICTS, key, says, value);
            }
        });
        String named = job.get().path("key").asText();
        issues.stream()
                .filter(issue -> issue.where().equals(found.where()) && !named.isEmpty())
                .flatMap(issue -> issue.signer().stream())
                .map(VerifyingKey::toString)
                .filter(signer -> !signer.equals(named))
                .forEach(signer -> altered(
                        found.where() + Manifest.SIGNATURE_FILE, ProofMessage.NOT_THE_NAMED_KEY, signer, named));
    }

    private static Optional<JsonNode> parsed(byte[] content) {
        try {
            return Optional.of(JsonText.read(content));
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    /** Tells who signed with another key than given, or, if none was given, than most of the copy. */
    private void signers(Set<VerifyingKey> keys) {
        Map<VerifyingKey, Long> counts = issues.stream()
                .flatMap(issue -> issue.signer().stream())
                .collect(Collectors.groupingBy(key -> key, LinkedHashMap::new, Collectors.counting()));
        Optional<VerifyingKey> usual = counts.entrySet().stream()
                .reduce((a, b) -> b.getValue() > a.getValue() ? b : a)
                .map(Map.Entry::getKey);
        for (Issue issue : issues) {
            issue.signer().ifPresent(signer -> {
                if (!keys.isEmpty() && !keys.contains(signer)) {
                    altered(issue.where() + Manifest.SIGNATURE_FILE, ProofMessage.OTHER_KEY, signer.toString());
                } else if (keys.isEmpty() && !Optional.of(signer).equals(usual)) {
                    altered(
                            issue.where() + Manifest.SIGNATURE_FILE,
                            ProofMessage.KEYS_DIFFER,
                            signer.toString(),
                            usual.map(VerifyingKey::toString).orElse(""));
                }
            });
        }
    }

    /** The content of a file that has to be there; tells what is wrong with it otherwise. */
    private Optional<byte[]> due(String path, ProofMessage missing) {
        try {
            Optional<byte[]> content = copy.read(path);
            if (content.isEmpty()) {
                altered(path, missing);
            }
            return content;
        } catch (Refused e) {
            alterations.add(new Alteration(path, e.reason()));
            return Optional.empty();
        }
    }

    /** The content of a file about which all is told elsewhere. */
    private Optional<byte[]> content(String path) {
        try {
            return copy.read(path);
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    private void altered(String where, ProofMessage message, Object... arguments) {
        alterations.add(new Alteration(where, Message.of(message, arguments)));
    }
}
