package org.quaybook.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A site with two revisions of a demo's record and a second record: a clean copy passes, every alteration is named. */
class VerifierTest {

    private static final PrivateKeyFile FORGER = PrivateKeyFile.draw(new SecureRandom());
    private static final Set<VerifyingKey> KEYS = Set.of(IssuedDemo.KEY.verifyingKey());

    @TempDir
    static Path made;

    private static IssuedDemo first;
    private static IssuedDemo second;
    private static IssuedDemo other;

    @TempDir
    Path folder;

    @BeforeAll
    static void issue() throws Exception {
        first = IssuedDemo.of("lantern-moth", made.resolve("first"), Map.of(), Optional.empty());
        second = IssuedDemo.of(
                "lantern-moth",
                made.resolve("second"),
                Map.of("revision: 1", "revision: 2", "date: 2026-05-14", "date: 2026-06-20"),
                Optional.of(first.link()));
        other = IssuedDemo.of("second-biscuit", made.resolve("other"), Map.of(), Optional.empty());
    }

    @BeforeEach
    void publish() throws IOException {
        second.writeRecord(record());
        first.writeRecord(record().resolve("revision-1"));
        other.writeRecord(folder.resolve(other.manifest().folder()));
        Files.write(
                folder.resolve("404.html"),
                Objects.requireNonNull(second.files().get("record/404.html")));
    }

    private Path record() {
        return folder.resolve(second.manifest().folder());
    }

    private Verification verified(Path copy, Set<VerifyingKey> keys) throws Refused {
        return Verifier.verify(FolderCopy.of(copy), keys);
    }

    /** Each alteration as {@code path MESSAGE}. */
    private static List<String> told(Verification verification) {
        return verification.alterations().stream()
                .map(alteration -> alteration.where() + " " + alteration.what().key())
                .toList();
    }

    @Test
    void aCleanSitePasses() throws Refused {
        Verification site = verified(folder, KEYS);
        assertThat(told(site)).isEmpty();
        assertThat(site.isAsIssued()).isTrue();
        assertThat(site.notes()).isEmpty();
        assertThat(site.issues()).hasSize(3);
        assertThat(site.signers()).containsExactly(IssuedDemo.KEY.verifyingKey());
        assertThat(told(verified(folder, Set.of()))).isEmpty();
    }

    @Test
    void aCleanRecordPassesAloneAndUnderAnyName() throws Exception {
        assertThat(told(verified(record(), KEYS))).isEmpty();
        assertThat(told(verified(record().resolve("revision-1"), KEYS))).isEmpty();
        Path stick = folder.resolve("copy on a stick");
        second.writeRecord(stick);
        first.writeRecord(stick.resolve("revision-1"));
        Verification copy = verified(stick, KEYS);
        assertThat(told(copy)).isEmpty();
        assertThat(copy.issues())
                .extracting(issue -> issue.where() + issue.manifest().revision())
                .containsExactly("2", "revision-1/1");
    }

    /** What somebody does to a copy of the record. */
    private interface Act {
        void on(Path record) throws IOException;
    }

    /** An alteration, and all that must be told of it, {@code path MESSAGE}, paths inside the record. */
    private record Case(String name, Act act, List<String> told) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Case alters(String name, Act act, String... told) {
        return new Case(name, act, List.of(told));
    }

    private static void flip(Path file) throws IOException {
        byte[] content = Files.readAllBytes(file);
        content[content.length / 2] ^= 1;
        Files.write(file, content);
    }

    private static void edit(Path file, String find, String put) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(find);
        Files.writeString(file, text.replace(find, put));
    }

    private static void exchange(Path a, Path b) throws IOException {
        byte[] kept = Files.readAllBytes(a);
        Files.write(a, Files.readAllBytes(b));
        Files.write(b, kept);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private static IssuedDemo forged(IssuedDemo issued) {
        return issued.signedWith(FORGER);
    }

    static List<Case> alterations() {
        return List.of(
                alters("a file removed", record -> Files.delete(record.resolve("guide.html")), "guide.html MISSING"),
                alters(
                        "a file added",
                        record -> Files.writeString(record.resolve("extra.html"), "x"),
                        "extra.html ADDED"),
                alters(
                        "a hidden file added",
                        record -> Files.writeString(record.resolve(".htaccess"), "x"),
                        ".htaccess ADDED"),
                alters("an empty folder added", record -> Files.createDirectory(record.resolve("new")), "new/ ADDED"),
                alters(
                        "a file emptied",
                        record -> Files.write(record.resolve("index.html"), new byte[0]),
                        "index.html ALTERED"),
                alters(
                        "a byte added behind a file",
                        record -> Files.writeString(
                                record.resolve("index.html"), "\n", java.nio.file.StandardOpenOption.APPEND),
                        "index.html ALTERED"),
                alters(
                        "two files exchanged",
                        record -> exchange(record.resolve("index.html"), record.resolve("guide.html")),
                        "guide.html SWAPPED",
                        "index.html SWAPPED"),
                alters(
                        "a file renamed",
                        record -> Files.move(record.resolve("guide.html"), record.resolve("guide.htm")),
                        "guide.html MISSING",
                        "guide.htm ADDED_COPY"),
                alters(
                        "an older page put back",
                        record -> Files.write(
                                record.resolve("index.html"),
                                Files.readAllBytes(record.resolve("revision-1/index.html"))),
                        "index.html OLDER"),
                alters(
                        "older figures put back",
                        record -> Files.write(
                                record.resolve("figures.json"),
                                Files.readAllBytes(record.resolve("revision-1/figures.json"))),
                        "figures.json OLDER",
                        "figures.json CONTRADICTS",
                        "figures.json CONTRADICTS"),
                alters(
                        "a file made a link to the same content",
                        record -> {
                            Path elsewhere = Files.createTempFile(made, "elsewhere", ".html");
                            Files.write(elsewhere, Files.readAllBytes(record.resolve("index.html")));
                            Files.delete(record.resolve("index.html"));
                            Files.createSymbolicLink(record.resolve("index.html"), elsewhere);
                        },
                        "index.html NOT_PLAIN"),
                alters(
                        "a file made a folder",
                        record -> {
                            Files.delete(record.resolve("index.html"));
                            Files.createDirectory(record.resolve("index.html"));
                        },
                        "index.html NOT_PLAIN",
                        "index.html/ ADDED"),
                alters(
                        "a link added that leads out",
                        record -> Files.createSymbolicLink(record.resolve("out"), Path.of("..")),
                        "out NOT_PLAIN"),
                alters(
                        "the signature taken away",
                        record -> Files.delete(record.resolve("issue.sig")),
                        "issue.sig UNSIGNED"),
                alters(
                        "the signature of the revision before",
                        record -> Files.write(
                                record.resolve("issue.sig"),
                                Files.readAllBytes(record.resolve("revision-1/issue.sig"))),
                        "issue.json WRONG_SIGNATURE"),
                alters(
                        "the signature cut short",
                        record -> Files.write(
                                record.resolve("issue.sig"),
                                java.util.Arrays.copyOf(Files.readAllBytes(record.resolve("issue.sig")), 60)),
                        "issue.sig BAD_SIGNATURE"),
                alters(
                        "another algorithm named",
                        record -> edit(record.resolve("issue.sig"), "\"Ed25519\"", "\"none\""),
                        "issue.sig BAD_SIGNATURE"),
                alters(
                        "something added to the signature",
                        record -> edit(record.resolve("issue.sig"), "{", "{ \"note\" : 1,"),
                        "issue.sig BAD_SIGNATURE"),
                alters(
                        "another key named in the signature",
                        record -> edit(
                                record.resolve("issue.sig"),
                                IssuedDemo.KEY.verifyingKey().base64(),
                                FORGER.verifyingKey().base64()),
                        "issue.json WRONG_SIGNATURE"),
                alters(
                        "signed by somebody else",
                        record -> Files.write(
                                record.resolve("issue.sig"),
                                Signing.sign(second.manifest().json(), FORGER)),
                        "issue.sig NOT_THE_NAMED_KEY",
                        "issue.sig OTHER_KEY"),
                alters(
                        "the manifest removed",
                        record -> Files.delete(record.resolve("issue.json")),
                        "issue.json NO_MANIFEST"),
                alters(
                        "a blank behind the manifest",
                        record -> Files.writeString(
                                record.resolve("issue.json"), " ", java.nio.file.StandardOpenOption.APPEND),
                        "issue.json WRONG_SIGNATURE"),
                alters(
                        "a date in the manifest",
                        record -> edit(record.resolve("issue.json"), "2026-06-20", "2026-06-21"),
                        "issue.json WRONG_SIGNATURE",
                        "figures.json CONTRADICTS"),
                alters(
                        "a key twice in the manifest",
                        record -> edit(
                                record.resolve("issue.json"), "\"date\" :", "\"date\" : \"2026-06-20\",\n\"date\" :"),
                        "issue.json WRONG_SIGNATURE",
                        "issue.json BAD_MANIFEST"),
                alters(
                        "a path out of the folder in the manifest",
                        record -> edit(record.resolve("issue.json"), "\"guide.pdf\"", "\"../guide.pdf\""),
                        "issue.json WRONG_SIGNATURE",
                        "issue.json BAD_MANIFEST"),
                alters(
                        "a file and its digest",
                        record -> {
                            String before = Digest.of(Files.readAllBytes(record.resolve("index.html")));
                            flip(record.resolve("index.html"));
                            edit(
                                    record.resolve("issue.json"),
                                    before,
                                    Digest.of(Files.readAllBytes(record.resolve("index.html"))));
                        },
                        "issue.json WRONG_SIGNATURE"),
                alters(
                        "a file taken out of folder and manifest",
                        record -> {
                            Files.delete(record.resolve("guide.html"));
                            String text = Files.readString(record.resolve("issue.json"));
                            Files.writeString(
                                    record.resolve("issue.json"),
                                    text.replaceAll("\"record/[0-9A-Z]*/guide.html\" : \"[0-9a-f]*\",", ""));
                        },
                        "issue.json WRONG_SIGNATURE"),
                alters(
                        "all forged and signed by somebody else",
                        record -> {
                            delete(record);
                            IssuedDemo before = forged(first.holding(page(first), bytes("forged")));
                            before.writeRecord(record.resolve("revision-1"));
                            forged(second.holding(page(second), bytes("forged")))
                                    .after(Optional.of(before.link()))
                                    .writeRecord(record);
                        },
                        "issue.sig NOT_THE_NAMED_KEY",
                        "revision-1/issue.sig NOT_THE_NAMED_KEY",
                        "issue.sig OTHER_KEY",
                        "revision-1/issue.sig OTHER_KEY"),
                alters(
                        "the revision before rewritten by the holder of the key",
                        record -> {
                            delete(record.resolve("revision-1"));
                            first.holding(page(first), bytes("another past")).writeRecord(record.resolve("revision-1"));
                        },
                        "revision-1/issue.json CHAIN_BROKEN"),
                alters(
                        "the chain cut",
                        record -> {
                            delete(record);
                            second.after(Optional.empty()).writeRecord(record);
                            first.writeRecord(record.resolve("revision-1"));
                        },
                        "revision-1 NOT_IN_CHAIN"),
                alters(
                        "a revision left out",
                        record -> {
                            delete(record);
                            IssuedDemo third = new IssuedDemo(
                                    new Manifest(
                                            "quaybook test",
                                            second.manifest().number(),
                                            second.manifest().record(),
                                            3,
                                            second.manifest().date(),
                                            Optional.of(first.link()),
                                            new java.util.TreeMap<>(
                                                    second.manifest().sha256())),
                                    second.files(),
                                    IssuedDemo.KEY);
                            third.writeRecord(record);
                            first.writeRecord(record.resolve("revision-1"));
                        },
                        "issue.json CHAIN_NUMBERS",
                        "figures.json CONTRADICTS"),
                alters(
                        "the revision before removed",
                        record -> delete(record.resolve("revision-1")),
                        "revision-1 REVISION_MISSING"),
                alters(
                        "the revision before renamed",
                        record -> Files.move(record.resolve("revision-1"), record.resolve("revision-7")),
                        "revision-1 REVISION_MISSING",
                        "revision-7/issue.json REVISION_NUMBER",
                        "revision-7 NOT_IN_CHAIN"),
                alters(
                        "the revision before made a link",
                        record -> {
                            Path elsewhere = Files.createTempDirectory(made, "elsewhere");
                            Files.move(record.resolve("revision-1"), elsewhere.resolve("revision-1"));
                            Files.createSymbolicLink(record.resolve("revision-1"), elsewhere.resolve("revision-1"));
                        },
                        "revision-1 REVISION_MISSING",
                        "revision-1 NOT_PLAIN"),
                alters(
                        "the revision before exchanged for that of another record",
                        record -> {
                            delete(record.resolve("revision-1"));
                            other.writeRecord(record.resolve("revision-1"));
                        },
                        "revision-1/issue.json CHAIN_BROKEN",
                        "revision-1/issue.json OTHER_RECORD",
                        "revision-1/issue.json OTHER_JOB"),
                alters(
                        "the revision before exchanged for the newest",
                        record -> {
                            delete(record.resolve("revision-1"));
                            second.writeRecord(record.resolve("revision-1"));
                        },
                        "revision-1/issue.json CHAIN_BROKEN",
                        "revision-1/issue.json REVISION_NUMBER"),
                alters(
                        "a page of the revision before",
                        record -> flip(record.resolve("revision-1/index.html")),
                        "revision-1/index.html ALTERED"),
                alters(
                        "the manifest of the revision before",
                        record -> edit(record.resolve("revision-1/issue.json"), "\"quaybook test\"", "\"quaybook\""),
                        "revision-1/issue.json WRONG_SIGNATURE",
                        "revision-1/issue.json CHAIN_BROKEN"),
                alters(
                        "the manifest of the revision before removed",
                        record -> Files.delete(record.resolve("revision-1/issue.json")),
                        "revision-1/issue.json NO_MANIFEST"),
                alters(
                        "the signature of the revision before removed",
                        record -> Files.delete(record.resolve("revision-1/issue.sig")),
                        "revision-1/issue.sig UNSIGNED"),
                alters(
                        "a revision hidden in a revision",
                        record -> first.writeRecord(record.resolve("revision-1/revision-1")),
                        "revision-1/revision-1/ ADDED"),
                alters(
                        "a folder that is nearly one of a revision",
                        record -> first.writeRecord(record.resolve("revision-01")),
                        "revision-01/ ADDED"));
    }

    private static String page(IssuedDemo issued) {
        return "record/" + issued.manifest().folder() + "/index.html";
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void namesWhatWasAltered(Case alteration) throws Exception {
        alteration.act().on(record());
        String code = second.manifest().folder() + "/";
        assertThat(told(verified(folder, KEYS)))
                .containsExactlyInAnyOrderElementsOf(
                        alteration.told().stream().map(each -> code + each).toList());
        assertThat(told(verified(record(), KEYS))).containsExactlyInAnyOrderElementsOf(alteration.told());
    }

    /** One bit of each file of a record, whatever it holds. */
    @Test
    void aBitOfAnyFileIsEnough() throws Exception {
        List<Path> files;
        try (Stream<Path> all = Files.walk(record())) {
            files = all.filter(Files::isRegularFile).toList();
        }
        assertThat(files.stream().map(file -> file.toString().replaceAll(".*\\.", "")))
                .contains("html", "pdf", "json", "sig");
        for (Path file : files) {
            byte[] before = Files.readAllBytes(file);
            flip(file);
            assertThat(told(verified(record(), KEYS))).as(file.toString()).isNotEmpty();
            Files.write(file, before);
        }
        assertThat(told(verified(record(), KEYS))).isEmpty();
    }

    /** Somebody puts back the whole of an earlier revision, as if the later one had never been. */
    @Test
    void anEarlierRevisionAsTheNewestIsNotInItsOwnChain() throws Exception {
        first.writeRecord(record());
        assertThat(told(verified(record(), KEYS))).containsExactly("revision-1 NOT_IN_CHAIN");
        delete(record());
        first.writeRecord(record());
        Verification alone = verified(record(), KEYS);
        assertThat(told(alone))
                .as("a whole older copy is still what was issued")
                .isEmpty();
        assertThat(alone.issues())
                .extracting(issue -> issue.manifest().revision())
                .containsExactly(1);
    }

    @Test
    void withoutAKeyOneKeyMustHaveSignedAll() throws Exception {
        Files.write(
                record().resolve("revision-1/issue.sig"),
                Signing.sign(first.manifest().json(), FORGER));
        String sig = "/revision-1/issue.sig ";
        assertThat(told(verified(folder, Set.of())))
                .containsExactlyInAnyOrder(
                        second.manifest().folder() + sig + "NOT_THE_NAMED_KEY",
                        second.manifest().folder() + sig + "KEYS_DIFFER");
        assertThat(told(verified(folder, Set.of(IssuedDemo.KEY.verifyingKey(), FORGER.verifyingKey()))))
                .containsExactly(second.manifest().folder() + sig + "NOT_THE_NAMED_KEY");
    }

    @Test
    void aRecordThatBeginsLateIsNoted() throws Exception {
        delete(record());
        second.after(Optional.empty()).writeRecord(record());
        Verification late = verified(record(), KEYS);
        assertThat(told(late)).isEmpty();
        assertThat(late.notes()).extracting(note -> note.key()).containsExactly(ProofMessage.CHAIN_BEGINS);
    }

    @Test
    void whatBelongsToASiteIsJudgedAndTheRestNamed() throws Exception {
        flip(folder.resolve("404.html"));
        Files.writeString(folder.resolve("robots.txt"), "");
        Files.move(record(), folder.resolve("00000000000000000000A"));
        Files.createSymbolicLink(folder.resolve("00000000000000000000B"), folder.resolve("00000000000000000000A"));
        Verification site = verified(folder, KEYS);
        assertThat(told(site))
                .containsExactlyInAnyOrder(
                        "404.html ALTERED", "00000000000000000000A/ OTHER_FOLDER", "00000000000000000000B NOT_PLAIN");
        assertThat(site.notes()).extracting(note -> note.key()).containsExactly(ProofMessage.NOT_JUDGED);
        Files.delete(folder.resolve("404.html"));
        assertThat(told(verified(folder, KEYS))).contains("404.html MISSING");
    }

    @Test
    void aPackPassesAndEachOfItsFilesIsHeldAgainstItsManifest() throws Exception {
        Path pack = folder.resolve("26-118");
        second.writePack(pack);
        Verification clean = verified(pack, KEYS);
        assertThat(told(clean)).isEmpty();
        assertThat(clean.notes()).extracting(note -> note.key()).containsExactly(ProofMessage.CHAIN_ELSEWHERE);
        List<String> due = new ArrayList<>();
        for (String file : second.files().keySet()) {
            flip(pack.resolve(file));
            due.add(file + " ALTERED");
        }
        Files.delete(pack.resolve("issue.sig"));
        Files.createDirectory(pack.resolve("revision-1"));
        due.add("issue.sig UNSIGNED");
        due.add("revision-1/ ADDED");
        assertThat(told(verified(pack, KEYS))).containsExactlyInAnyOrderElementsOf(due);
    }

    @Test
    void refusesWhatHoldsNothingIssued() throws Exception {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThatExceptionOfType(Refused.class)
                .isThrownBy(() -> verified(empty, KEYS))
                .matches(e -> e.reason().key() == ProofMessage.NOTHING_ISSUED);
        assertThatExceptionOfType(Refused.class)
                .isThrownBy(() -> FolderCopy.of(folder.resolve("none")))
                .matches(e -> e.reason().key() == ProofMessage.NO_FOLDER);
    }
}
