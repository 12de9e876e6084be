package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.job.SealKey;

/** A sealed record in a real browser, whose ciphers are not those that sealed it. */
class SealedInBrowserTest {

    private static final String KEY = SealKey.parse(Demos.SEAL_KEY).symbols();
    private static final String SHELL = "JavaScript, switched on";
    private static final String OPENED = "In danger: all off";

    private static Phone phone;
    private static Demos demo;
    private static Map<String, byte[]> sealed;

    @TempDir
    Path folder;

    private Map<String, byte[]> site;
    private Host host;

    @BeforeAll
    static void start(@TempDir Path job) throws IOException {
        phone = new Phone();
        demo = Demos.sealed("lantern-moth", job);
        sealed = demo.sealedSite(List.of());
    }

    @AfterAll
    static void stop() {
        if (phone != null) {
            phone.close();
        }
    }

    /** A host of its own for each test: what a browser keeps belongs to the address with its port. */
    @BeforeEach
    void serve() throws IOException {
        site = new TreeMap<>(sealed);
        host = new Host(site);
    }

    @AfterEach
    void end() {
        host.close();
    }

    private String record() {
        return host.address() + demo.code() + "/";
    }

    /** Opens an address afresh: one that differs only behind the number sign would load nothing. */
    private static void open(String address, int width, int height) {
        phone.open("about:blank", width, height);
        phone.open(address, width, height);
    }

    static Stream<Arguments> demosAndWindows() {
        return Stream.of("lantern-moth", "marmalade-meridian", "long-way-round")
                .flatMap(name -> Stream.of(Arguments.of(name, 360, 640), Arguments.of(name, 1280, 800)));
    }

    @ParameterizedTest
    @MethodSource("demosAndWindows")
    void theLinkOpensIt(String name, int width, int height) throws IOException {
        Demos other = Demos.sealed(name, folder);
        site.putAll(other.sealedSite(List.of()));
        String address = host.address() + other.code() + "/";

        open(address + "#" + KEY, width, height);
        phone.awaitText(other.job().craft().name());

        assertThat(phone.text())
                .contains(OPENED, "For fire and rescue", "Words explained", "Files beside this page")
                .doesNotContain(SHELL, "{0}");
        assertThat(phone.wider()).as("reaches out of the window").isEmpty();
        assertThat(phone.barriers()).as("against WCAG 2.2 AA, by axe-core").isEmpty();
        assertThat(phone.complaints()).as("of the browser").isEmpty();
        assertThat(phone.requests()).allMatch(asked -> asked.startsWith(host.address()) && !asked.contains("sealed#"));
        theKeyStaysHere();
    }

    /** What keeps the files for later names itself where the page names nothing. */
    private void theKeyStaysHere() {
        assertThat(host.asked()).isNotEmpty().noneMatch(asked -> asked.contains(KEY.substring(0, 8)));
        assertThat(host.referrers()).allMatch(from -> from.endsWith("/" + OfflineScript.FILE));
    }

    /** The address holds the key wherever the reader has gone, so that it can be loaded again and passed on. */
    @Test
    void theAddressStaysWhole() {
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);

        phone.click("#doors a");

        phone.awaitTop("#owner");
        assertThat(phone.address()).isEqualTo(record() + "#" + KEY + "/owner");
        phone.reload();
        phone.awaitText(OPENED);
        phone.awaitTop("#owner");
        theKeyStaysHere();
    }

    @Test
    void theLanguageIsSwitchedWithTheKey() {
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);

        phone.follow("Nederlands");
        phone.awaitText("In gevaar: alles uit");

        assertThat(phone.address()).isEqualTo(record() + "index-nl.html#" + KEY);
        phone.follow("English");
        phone.awaitText(OPENED);
        theKeyStaysHere();
    }

    @ParameterizedTest
    @CsvSource({
        "record.html, 81EZ-D3SW-FGV4-RK1Z-H0YD-Q-record.html",
        "guide.pdf, guide.pdf",
        "figures.json, figures.json"
    })
    void filesAreSavedOpen(String name, String savedAs) throws IOException {
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);

        Path file = phone.saved("a[data-file='" + name + "']", folder);

        assertThat(file)
                .hasFileName(savedAs)
                .hasBinaryContent(Objects.requireNonNull(demo.plain().get(name)));
    }

    /** A key that lacks, is cut, mistyped or another's: each is told apart, and nothing of the record shown. */
    @ParameterizedTest
    @CsvSource({
        "'', The address has no key",
        "'#', The address has no key",
        "#3M8V41QDZT7C0W9XKE5H62RBF, The key does not have 27 letters and digits",
        "#3M8V41QDZT7C0W9XKE5H62RBFY44, The key does not have 27 letters and digits",
        "#3M8V41QDZT7C0W9XKE5H62RBFY5, The key has a typing error",
        "#3M8V41QDZT7C0W9XKE5H62RBUY4, The key has a typing error",
        "#%C3, The key does not have 27 letters and digits",
        "#3M8V41QDZT7C0W9XKE5H62RBFZ5, This key does not open this record"
    })
    void otherKeysDoNot(String fragment, String says) {
        open(record() + fragment, 360, 640);
        phone.awaitText(says);

        assertThat(phone.text()).contains(SHELL, "Type the key from the label").doesNotContain("Lantern Moth", OPENED);
        assertThat(phone.wider()).isEmpty();
        assertThat(phone.barriers()).isEmpty();
        assertThat(phone.complaints()).isEmpty();
    }

    /** Typed as people type: small letters, hyphens, O for 0, L for 1. */
    @Test
    void theKeyCanBeTyped() {
        open(record(), 360, 640);
        phone.awaitText("The address has no key");

        phone.type(
                "key", Demos.SEAL_KEY.toLowerCase(Locale.ROOT).replace('0', 'o').replace('1', 'l'));

        phone.awaitText(OPENED);
        assertThat(phone.address()).isEqualTo(record() + "#" + KEY);
        theKeyStaysHere();
    }

    /** The whole link in small letters, through the page for unknown codes. */
    @Test
    void aCodeAsPeopleWriteItKeepsTheKey() {
        open(host.address() + demo.code().toLowerCase(Locale.ROOT) + "/#" + Demos.SEAL_KEY, 360, 640);

        phone.awaitText(OPENED);
        theKeyStaysHere();
    }

    /** A bit altered in the head, the nonce, the content or the tag: nothing is shown. */
    @ParameterizedTest
    @CsvSource({"0", "8", "12", "1000", "-1"})
    void anAlteredFileIsRefused(int at) {
        String name = demo.code() + "/record.html.sealed";
        byte[] altered = Objects.requireNonNull(site.get(name)).clone();
        altered[at < 0 ? altered.length + at : at] ^= 1;
        site.put(name, altered);

        open(record() + "#" + KEY, 360, 640);

        phone.awaitText("is damaged or was altered");
        assertThat(phone.text()).contains(SHELL).doesNotContain("Lantern Moth", OPENED);
    }

    /** The guide in the place of the record, and a revision that does not go with the page. */
    @Test
    void anotherFileIsRefused() {
        String name = demo.code() + "/record.html.sealed";
        site.put(name, Objects.requireNonNull(site.get(demo.code() + "/record-nl.html.sealed")));
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText("is damaged or was altered");

        byte[] later = Objects.requireNonNull(sealed.get(name)).clone();
        later[10]++;
        site.put(name, later);
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText("A new revision is being published");
    }

    @Test
    void aFileThatIsMissingIsTold() {
        site.remove(demo.code() + "/guide.pdf.sealed");
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);
        phone.click("a[data-file='guide.pdf']");
        phone.awaitText("The host does not give the sealed file");

        site.remove(demo.code() + "/record.html.sealed");
        phone.forgetKept();
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText("The host does not give the sealed file");
    }

    @Test
    void withoutScriptsThePageSaysWhatIsNeeded() {
        phone.javaScript(false);
        try {
            open(record() + "#" + KEY, 360, 640);

            assertThat(phone.text())
                    .contains("needs JavaScript", SHELL, "In danger? Do not search", "01632 960118")
                    .doesNotContain("Lantern Moth", OPENED, "Type the key");
            assertThat(phone.wider()).isEmpty();
        } finally {
            phone.javaScript(true);
        }
    }

    /** After one visit the record opens without the host, in every language; without the key it stays closed. */
    @Test
    void withoutASignal() {
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);
        phone.awaitKept();
        assertThat(phone.shown(".saved")).isFalse();
        host.close();

        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);
        assertThat(phone.shown(".saved")).isTrue();
        phone.follow("Nederlands");
        phone.awaitText("In gevaar: alles uit");
        open(record(), 360, 640);
        phone.awaitText("The address has no key");
        assertThat(phone.text()).doesNotContain("Lantern Moth");
    }

    /** The page's policy goes on when the record is open: what would be slipped into it does not run. */
    @Test
    void noOtherScriptRunsInTheOpenedRecord() {
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);

        assertThat(phone.runsForeignScript()).isFalse();
        assertThat(phone.complaints()).anyMatch(line -> line.contains("Content Security Policy"));
    }

    /** A text of the job that looks like a script is shown as text. */
    @Test
    void textOfTheJobCannotBecomeMarkup() throws IOException {
        Demos other = Demos.changed(
                "lantern-moth",
                folder,
                Map.of(
                        "  revision: 1\n",
                        "  sealed: yes\n  seal-key: " + Demos.SEAL_KEY + "\n  revision: 1\n",
                        "where: stern locker",
                        "where: '<img src=x onerror=document.title=1> style=\"x\"'"));
        site.putAll(other.sealedSite(List.of()));

        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);

        assertThat(phone.text()).contains("<img src=x onerror=document.title=1> style=\"x\"");
        assertThat(phone.complaints()).isEmpty();
    }

    @Test
    void theOpenedRecordIsPrinted() throws IOException {
        open(record() + "#" + KEY, 360, 640);
        phone.awaitText(OPENED);

        try (PDDocument print = Loader.loadPDF(phone.print())) {
            assertThat(new PDFTextStripper().getText(print))
                    .contains(OPENED, "81EZ-D3SW-FGV4-RK1Z-H0YD-Q, revision 1, page 1/" + print.getNumberOfPages());
            assertThat(print.getNumberOfPages()).isGreaterThan(5);
        }
    }
}
