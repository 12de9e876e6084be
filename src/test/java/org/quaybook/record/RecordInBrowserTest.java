package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.pack.guide.GuidePage;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The record pages in a real browser at phone size, from a folder and from a web server. */
class RecordInBrowserTest {

    static final List<String> DEMOS = Demos.NAMES;

    /** Narrowest window that WCAG 2.2, 1.4.10 asks for, and a small phone. */
    private static final List<Integer> WIDTHS = List.of(320, 360);

    /** The window of a usual phone is about 65 mm and 390 CSS pixels wide (common practice, no source). */
    private static final double PIXELS_PER_MILLIMETRE = 6;

    private static final int WINDOW_HEIGHT = 844;

    private static Phone phone;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() {
        phone = new Phone();
    }

    @AfterAll
    static void stop() {
        if (phone != null) {
            phone.close();
        }
    }

    static Stream<Arguments> demosAndWidths() {
        return DEMOS.stream().flatMap(demo -> WIDTHS.stream().map(width -> Arguments.of(demo, width)));
    }

    private String onDisk(Map<String, byte[]> site, String page) throws IOException {
        for (Map.Entry<String, byte[]> file : site.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
        return folder.resolve(page).toUri().toString();
    }

    private static List<String> pages(Demos demo) {
        return demo.site().keySet().stream()
                .filter(path -> path.endsWith(".html"))
                .toList();
    }

    private static String record(Demos demo) {
        return demo.code() + "/index.html";
    }

    private static void fitsAndIsReadByEverybody(String address) {
        assertThat(phone.wider()).as("reaches out of the window").isEmpty();
        assertThat(phone.requests()).as("asked for").containsExactly(address);
        assertThat(phone.barriers()).as("against WCAG 2.2 AA, by axe-core").isEmpty();
        assertThat(phone.complaints()).as("of the browser").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("demosAndWidths")
    void fromAFolder(String name, int width) throws IOException {
        Demos demo = Demos.of(name);
        for (String page : pages(demo)) {
            String address = onDisk(demo.site(), page);

            phone.open(address, width);

            fitsAndIsReadByEverybody(address);
        }
    }

    @ParameterizedTest
    @MethodSource("demosAndWidths")
    void fromAServer(String name, int width) throws IOException {
        Demos demo = Demos.of(name);
        try (Host host = new Host(demo.site())) {
            String address = host.address() + demo.code() + "/";

            phone.open(address, width);

            assertThat(phone.wider()).isEmpty();
            assertThat(phone.complaints()).isEmpty();
            assertThat(phone.requests()).startsWith(address).allMatch(asked -> asked.startsWith(host.address()));
            assertThat(host.asked()).startsWith("/" + demo.code() + "/");
        }
    }

    /** A value and its unit, and every word but an address: where the column is too narrow the value goes below its name. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void noValueIsTorn(String name) throws IOException {
        Demos demo = Demos.of(name);
        for (String page : pages(demo)) {
            phone.open(onDisk(demo.site(), page), 360);

            assertThat(phone.torn("dd:not(.code, :has(a))")).as(page).isEmpty();
        }
    }

    @ParameterizedTest
    @FieldSource("DEMOS")
    void onADesk(String name) throws IOException {
        Demos demo = Demos.of(name);
        String address = onDisk(demo.site(), record(demo));

        phone.open(address, 1280);

        fitsAndIsReadByEverybody(address);
    }

    /** After one visit the pages open without the host, in every language, and say that they are copies. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void withoutASignal(String name) throws IOException {
        Demos demo = Demos.of(name);
        Map<String, byte[]> site = new TreeMap<>(demo.site());
        List<String> kept = new ArrayList<>();
        for (String language : demo.job().job().languages()) {
            boolean first = kept.isEmpty();
            String guide = GuidePage.name(language, first);
            site.put(
                    demo.code() + "/" + guide,
                    new GuidePage(demo.edition(language), demo.branding(), Templates.builtIn()).html());
            kept.addAll(List.of(first ? "" : "index-" + language + ".html", guide));
        }
        String address;
        try (Host host = new Host(site)) {
            address = host.address() + demo.code() + "/";
            phone.open(address, 360);
            phone.awaitKept();
            phone.open(address, 360);
            for (String page : kept) {
                phone.open(address + page, 360);
                assertThat(phone.shown(".saved")).as(page).isFalse();
            }
        }

        for (String page : kept) {
            phone.open(address + page, 360);

            assertThat(phone.text()).as(page).contains(demo.job().craft().name());
            assertThat(phone.wider()).as(page).isEmpty();
            assertThat(phone.shown(".saved")).as(page).isTrue();
        }
    }

    @Test
    void switchingTheLanguage() throws IOException {
        Demos demo = Demos.of("lantern-moth");
        try (Host host = new Host(demo.site())) {
            phone.open(host.address() + demo.code() + "/", 360);

            phone.follow("Nederlands");

            assertThat(phone.text()).contains("In gevaar: alles uit");
            phone.follow("English");
            assertThat(phone.text()).contains("In danger: all off");
        }
    }

    /** Each wrong symbol at each place is told to be a typing error, without the host's help (Crockford, from memory). */
    @Test
    void aMistypedCodeIsHelped() throws IOException {
        Demos demo = Demos.of("lantern-moth");
        String code = demo.code();
        try (Host host = new Host(demo.site())) {
            for (int at = 0; at < code.length(); at++) {
                char other = code.charAt(at) == '7' ? 'K' : '7';
                phone.open(host.address() + code.substring(0, at) + other + code.substring(at + 1) + "/", 390);

                assertThat(phone.text())
                        .contains("This code is not known here", "its last symbol does not fit", "01632 960118")
                        .doesNotContain("written correctly");
            }
            assertThat(phone.wider()).isEmpty();
            assertThat(phone.barriers()).isEmpty();
            phone.open(host.address() + code.substring(1) + "/", 390);
            assertThat(phone.text()).contains("does not have 21 letters and digits");
            phone.open(host.address() + "9F3K7TWMX2QA6HCED1RBY/", 390);
            assertThat(phone.text()).contains("written correctly");
        }
    }

    /** Small letters, hyphens, O for 0 and L for 1, in the address and typed into the page. */
    @Test
    void aCodeAsPeopleWriteItIsFound() throws IOException {
        Demos demo = Demos.of("lantern-moth");
        String typed = demo.job()
                .job()
                .record()
                .toString()
                .toLowerCase(Locale.ROOT)
                .replace('0', 'o')
                .replace('1', 'l');
        try (Host host = new Host(demo.site())) {
            phone.open(host.address() + typed + "/", 390);
            phone.awaitText("In danger: all off");

            phone.open(host.address() + "nothing/", 390);
            phone.type("en-GB-code", typed);
            phone.awaitText("In danger: all off");
        }
    }

    @Test
    void aWithdrawnRecordSaysSo() throws IOException {
        Demos demo = Demos.of("lantern-moth");
        byte[] page = RecordSite.withdrawn(
                demo.assessment().installer(),
                demo.job().job(),
                LocalDate.of(2027, 3, 4),
                demo.branding(),
                Templates.builtIn());
        String address = onDisk(Map.of("gone/index.html", page), "gone/index.html");

        for (int width : WIDTHS) {
            phone.open(address, width);

            assertThat(phone.text())
                    .contains("withdrew it on 4 March 2027", "am 4. März 2027", "01632 960118", "81EZ-D3SW-FGV4")
                    .doesNotContain("Lantern Moth");
            fitsAndIsReadByEverybody(address);
        }
    }

    /** Without scripts the page says in every language what a code looks like. */
    @Test
    void aMistypedCodeIsHelpedWithoutScripts() throws IOException {
        Demos demo = Demos.of("lantern-moth");
        phone.javaScript(false);
        try {
            phone.open(onDisk(demo.site(), "404.html"), 390);
            assertThat(phone.text())
                    .contains("This code is not known here", "Dieser Code ist hier nicht bekannt")
                    .doesNotContain("Open the record");
        } finally {
            phone.javaScript(true);
        }
    }

    /** WCAG 2.2, 1.4.4: a reader who has set the text to twice its size. */
    @Test
    void twiceTheTextSize() throws IOException {
        try (Phone large = new Phone(32)) {
            for (String name : DEMOS) {
                Demos demo = Demos.of(name);
                large.open(onDisk(demo.site(), record(demo)), 390);

                assertThat(large.textSize("main p")).isEqualTo(36);
                assertThat(large.wider()).as(name).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @FieldSource("DEMOS")
    void allIsThereWithoutScripts(String name) throws IOException {
        Demos demo = Demos.of(name);
        String address = onDisk(demo.site(), record(demo));
        phone.open(address, 390);
        // What a script alone can do is offered by scripts alone.
        String typing = Words.of(demo.job().job().languages().get(0)).say("record.baseline.type");
        List<String> with =
                phone.text().lines().filter(line -> !line.equals(typing)).toList();

        phone.javaScript(false);
        try {
            phone.open(address, 390);
            assertThat(phone.text().lines()).containsAll(with).doesNotContain(typing);
            assertThat(phone.text()).contains("In danger: all off", "For fire and rescue");
        } finally {
            phone.javaScript(true);
        }
    }

    /** The steps stand in the first window, the doors can be hit with a wet thumb: 12 mm. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void firstThingsFirst(String name) throws IOException {
        Demos demo = Demos.of(name);
        phone.open(onDisk(demo.site(), record(demo)), 390);

        assertThat(phone.bottom("#all-off ol")).isLessThan(WINDOW_HEIGHT);
        assertThat(phone.bottom(".doors")).isLessThan(2 * WINDOW_HEIGHT);
        assertThat(phone.leastSide(".doors a, .button")).isGreaterThanOrEqualTo(12 * PIXELS_PER_MILLIMETRE);
        assertThat(phone.textSize("main p")).isEqualTo(18);
        assertThat(phone.firstStop()).isEqualTo("Skip to: all off");
    }

    @ParameterizedTest
    @FieldSource("DEMOS")
    void printedPagesNameTheRecord(String name) throws IOException {
        Demos demo = Demos.of(name);
        phone.open(onDisk(demo.site(), record(demo)), 390);

        try (PDDocument print = Loader.loadPDF(phone.print())) {
            for (int page = 1; page <= print.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                assertThat(text.getText(print))
                        .contains(demo.job().job().record() + ", revision 1, page " + page + "/"
                                + print.getNumberOfPages());
            }
        }
    }

    /** The instruments themselves: a bad page is found bad. */
    @Test
    void faultsAreSeen() throws IOException {
        Path bad = folder.resolve("bad.html");
        Files.writeString(bad, """
                <!DOCTYPE html>
                <html lang="en"><head><title>Bad</title>
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <meta http-equiv="Content-Security-Policy" content="style-src 'none'">
                <style>p { color: red }</style></head>
                <body><main><h1>Bad</h1><div><img src="missing.png"></div>
                <svg width="900" height="10" role="presentation"></svg></main></body></html>
                """);

        phone.open(bad.toUri().toString(), 320);

        assertThat(phone.wider()).isNotEmpty();
        assertThat(phone.requests()).hasSize(2);
        assertThat(phone.barriers()).anyMatch(line -> line.startsWith("image-alt"));
        assertThat(phone.complaints())
                .anyMatch(line -> line.contains("style"))
                .anyMatch(line -> line.contains("missing"));
    }
}
