package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.quantity.Rounding;
import org.quaybook.text.Words;

/** What the record page says, and how it is made. */
class RecordSiteTest {

    static final List<String> DEMOS = Demos.NAMES;

    /** The project's own limit: it has to open where there is hardly any signal. */
    private static final int LARGEST = 100_000;

    private static final Words WORDS = Words.of("en-GB");

    private static String say(Figure<?> figure) {
        return WORDS.word(figure.stated());
    }

    private static List<String> pages(Demos demo) {
        return demo.site().keySet().stream()
                .filter(path -> path.endsWith(".html"))
                .toList();
    }

    private static boolean isWhole(String path) {
        return path.contains("/record");
    }

    @ParameterizedTest
    @FieldSource("DEMOS")
    void smallFilesAlwaysTheSame(String name) {
        Demos demo = Demos.of(name);
        Map<String, byte[]> site = demo.site();

        assertThat(site)
                .containsOnlyKeys(Stream.concat(
                                Stream.of("404.html", demo.code() + "/offline.js"),
                                demo.job().job().languages().stream()
                                        .map(language -> language.equals(demo.job()
                                                        .job()
                                                        .languages()
                                                        .get(0))
                                                ? ""
                                                : "-" + language)
                                        .flatMap(suffix -> Stream.of("index", "record")
                                                .map(page -> demo.code() + "/" + page + suffix + ".html")))
                        .toList());
        site.forEach((path, content) -> {
            if (!isWhole(path)) {
                assertThat(content).as(path).hasSizeLessThan(LARGEST);
            }
        });
        Demos.of(name)
                .site()
                .forEach((path, content) -> assertThat(content).as(path).isEqualTo(site.get(path)));
    }

    /** Own requirement: the place of a socket is told where its name does not hold it, as in the guide. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void noSocketsPlaceIsSaidTwice(String name) {
        Demos demo = Demos.of(name);
        for (String path : pages(demo)) {
            HtmlPage page = HtmlPage.of(Objects.requireNonNull(demo.site().get(path)));
            for (var head : page.elements("//section[@id = 'guest']//th[@scope = 'rowgroup'][span]")) {
                String place = head.getLastChild().getTextContent().toLowerCase(Locale.ROOT);
                assertThat(head.getFirstChild().getTextContent().toLowerCase(Locale.ROOT))
                        .as(path)
                        .doesNotContain(place);
            }
        }
    }

    /** Lexique des règles typographiques (from memory): a space before a semicolon, of facts that the page joins, too. */
    @Test
    void factsInFrenchAreJoinedAsFrenchDoes() {
        Demos demo = Demos.of("second-biscuit");
        HtmlPage page = HtmlPage.of(Objects.requireNonNull(demo.site().get(demo.code() + "/index-fr.html")));
        assertThat(page.texts("//section[@id = 'what']//dd | //dl//dd"))
                .anySatisfy(fact -> assertThat(fact).contains("plomb AGM\u00A0; sous la couchette avant"))
                .allSatisfy(fact -> assertThat(fact).doesNotContainPattern("\\p{L};"));
    }

    /** Structure that WCAG 2.2 asks for: 1.3.1 headings, captions and scopes; 2.4.1; 2.4.2; 3.1.1. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void structure(String name) {
        Demos demo = Demos.of(name);
        demo.site().forEach((path, content) -> {
            if (!path.endsWith(".html")) {
                return;
            }
            HtmlPage page = HtmlPage.of(content);
            assertThat(page.source()).startsWith("<!DOCTYPE html>");
            assertThat(page.element("/html").getAttribute("lang"))
                    .isIn(
                            path.equals("404.html")
                                    ? List.of("en-GB")
                                    : demo.job().job().languages());
            assertThat(page.texts("//title[not(ancestor::svg)]"))
                    .singleElement()
                    .asString()
                    .isNotBlank();
            assertThat(page.elements("//img[not(@alt)]")).isEmpty();
            assertThat(page.elements(
                            "//p[not(node())] | //ul[not(li)] | //ol[not(li)] | //dl[not(div)] | //dd[not(node())]"))
                    .isEmpty();
            assertThat(page.values("//*[@id]", "id")).as(path).doesNotHaveDuplicates();
            assertThat(page.values("//*[@id]", "id"))
                    .as(path)
                    .containsAll(page.values("//a[starts-with(@href, '#')]", "href").stream()
                            .map(target -> target.substring(1))
                            .toList());
            noLevelIsSkipped(levels(page));
            if (!isWhole(path)) {
                assertThat(page.elements("//table[not(caption)]")).isEmpty();
                assertThat(page.elements("//th[not(@scope)]")).isEmpty();
            }
        });
    }

    private static List<Integer> levels(HtmlPage page) {
        return page.elements("//h1 | //h2 | //h3 | //h4 | //h5 | //h6").stream()
                .map(heading -> heading.getTagName().charAt(1) - '0')
                .toList();
    }

    private static void noLevelIsSkipped(List<Integer> levels) {
        assertThat(levels).startsWith(1).containsOnlyOnce(1);
        for (int at = 1; at < levels.size(); at++) {
            assertThat(levels.get(at)).isLessThanOrEqualTo(levels.get(at - 1) + 1);
        }
    }

    @ParameterizedTest
    @FieldSource("DEMOS")
    void nothingFromOutsideAndNothingToFind(String name) {
        Demos demo = Demos.of(name);
        for (String path : pages(demo)) {
            HtmlPage page = HtmlPage.of(Objects.requireNonNull(demo.site().get(path)));
            assertThat(page.values("//meta[@name='robots']", "content")).containsExactly("noindex, nofollow");
            assertThat(page.values("//meta[@name='referrer']", "content")).containsExactly("no-referrer");
            assertThat(page.values("//meta[@http-equiv='Content-Security-Policy']", "content"))
                    .containsExactly("default-src 'none'; img-src data:; style-src "
                            + (isWhole(path) ? "'unsafe-inline'" : "'" + hash(page, "<style>", "</style>") + "'")
                            + "; script-src "
                            + "'" + hash(page, "<script>", "</script>") + "'"
                            + "; worker-src 'self'; base-uri 'none'; form-action 'none'");
            assertThat(page.elements("//iframe | //object | //embed | //form[@action] | //@onclick/.."))
                    .isEmpty();
            assertThat(page.elements("//script[not(@type)]")).hasSize(1);
            assertThat(page.values("//*[@src]", "src")).allMatch(source -> source.startsWith("data:"));
            assertThat(page.values("//link", "href")).containsExactly("data:,");
            assertThat(page.element("//style").getTextContent()).doesNotContain("url(", "@import");
            assertThat(page.values("//a", "href")).as(path).allMatch(target -> expected(target, demo, isWhole(path)));
        }
    }

    private static boolean expected(String target, Demos demo, boolean whole) {
        return target.startsWith("#")
                || target.startsWith("tel:")
                || target.startsWith("mailto:")
                || target.equals(demo.assessment().installer().website())
                || (!whole
                        && (Demos.DOWNLOADS.contains(target)
                                || target.matches("(index|guide|record)(-[a-z]{2})?\\.html")));
    }

    /** Content Security Policy Level 3, hash source: base64 of the SHA-256 of an element's text. */
    private static String hash(HtmlPage page, String from, String to) {
        try {
            String source = page.source();
            int start = source.indexOf(from) + from.length();
            String content = source.substring(start, source.indexOf(to, start));
            return "sha256-"
                    + Base64.getEncoder()
                            .encodeToString(MessageDigest.getInstance("SHA-256")
                                    .digest(content.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }

    /** The figures on the page are those of the calculation, in the words that all documents use. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void figuresAreTheJobs(String name) {
        Demos demo = Demos.of(name);
        HtmlPage page = demo.page();
        Figures figures = demo.assessment().figures();

        for (ApplianceFigures appliance : figures.appliances()) {
            String row = "//table[@class='runs']/tbody[starts-with(normalize-space(tr/th), '"
                    + appliance.appliance().name() + "')]/tr[@class='times']/td";
            assertThat(page.texts(row)).containsExactly(say(appliance.time()), say(appliance.wornTime()));
        }
        List<String> rest = figures.bank().restTable().stream()
                .map(row -> WORDS.numbers().fixed(row.rest().value(), "V", 2, Rounding.NEAREST))
                .toList();
        assertThat(page.texts("//section[@id='owner']/table[last()]/tbody/tr/td"))
                .isEqualTo(rest);
        assertThat(page.text())
                .contains(
                        "Beep: " + say(figures.inverter().alarm()) + ". Cut-out: "
                                + say(figures.inverter().cutOut()),
                        say(figures.bank().energy()),
                        say(figures.bank().shortCircuit()),
                        say(figures.inverter().worstCurrent()),
                        say(figures.supply().drop()),
                        say(figures.absence().idleToReserve()));
    }

    /** A reserve of 20 % is no charge below the reserve, though 1 - 0.8 is a little less than 0.2 in binary. */
    /** Of more appliances than pairs are told of, the guest reads which of them run one at a time. */
    @Test
    void aGuestIsToldWhatNeverRunsTogetherOfVeryMany(@TempDir Path folder) throws IOException {
        String many = IntStream.rangeClosed(1, 40)
                .mapToObj(i -> "  - { name: Lamp " + i + ", power: 9 W (plate), per-use: 1 h }\n")
                .collect(Collectors.joining("", "\nappliances:\n", ""));
        String guest = Demos.changed("lantern-moth", folder, Map.of("\nappliances:\n", many))
                .page()
                .source();
        assertThat(guest)
                .contains("<li>Of these only one at a time: Washing machine and Induction ring.</li>")
                .contains("<li>Other things together: see the guide first.</li>");
    }

    @Test
    void whatHangsPastTheInverterNeverRunsOnBattery() {
        assertThat(Demos.of("lantern-moth").page().text()).contains("Not on battery: Water heater (shore power).");
        assertThat(Demos.of("lantern-moth").page().texts("//table[@class='runs']//th[@scope='rowgroup']"))
                .isNotEmpty()
                .noneMatch(row -> row.contains("Water heater"));
    }

    @Test
    void theReserveItselfIsNotBelowTheReserve() {
        assertThat(Demos.of("lantern-moth").page().texts("//tr[@class='mark']/th"))
                .extracting(text -> text.replace('\u00A0', ' '))
                .containsExactly("10 % below the reserve", "0 % below the reserve");
    }

    /** ISO 13297 job: 300 ms and 40 ms are IEC 61008-1 (seen), 1 MΩ is IEC 60364-6 Table 6.1 (seen). */
    @Test
    void testsStandBesideTheirLimits() {
        HtmlPage page = Demos.of("second-biscuit").page();

        assertThat(row(page, "RCD trip time: R1 on inverter at 30"))
                .containsExactly(
                        "23 ms 8 June 2026 GQ-2",
                        "at most 300 ms at the rated residual current, 40 ms at five times that IEC 61008-1");
        assertThat(row(page, "insulation resistance"))
                .containsExactly("120 MΩ 8 June 2026 GQ-2", "at least 1 MΩ IEC 60364-6 Table 6.1");
    }

    private static List<String> row(HtmlPage page, String test) {
        return page.texts("//section[@id='surveyor']//tbody[starts-with(tr/th, '" + test + "')]/tr/td").stream()
                .map(cell -> cell.replace('\u00A0', ' '))
                .toList();
    }

    /**
     * The order of switching off: what charges before the battery (common practice, no source), the shore lead at the post
     * (marina and boat safety guidance).
     */
    @Test
    void stepsOfAllOff() {
        assertThat(Demos.of("lantern-moth").page().texts("//section[@id='all-off']/ol/li"))
                .containsExactly(
                        "Shore post: off, then pull the lead there inlet: stern rail, port side",
                        "S2 Shore breaker: off AC board",
                        "Stop the engine if that is safe",
                        "S1 Battery switch: off above the battery box");
        assertThat(Demos.of("lantern-moth").page().texts("//section[@id='all-off']/p"))
                .anyMatch(line ->
                        line.startsWith("4 sources: battery bank, shore power, Engine alternator and Roof panels.")
                                && line.contains("Stays live: Roof panels (no switch recorded: live in daylight)."));
    }

    /** A running generator is stopped before its switch parts it, and no charger loses the battery. Common practice, no source. */
    @Test
    void chargersGoOffBeforeTheBattery() {
        HtmlPage page = Demos.of("hut-seventeen").page();

        assertThat(page.texts("//section[@id='all-off']/ol/li"))
                .containsExactly(
                        "Stop the generator and keep it from starting by itself lean-to, 6 m from the cabin, open on two sides",
                        "S3 Generator switch: off lean-to",
                        "S2 Solar switch: off shed, under the eaves",
                        "S1 Battery switch: off shed, beside the chest");
        assertThat(page.text()).contains("Lock or tag every switch.").doesNotContain("shore lead at the post");
    }

    /** A switch in the feed of the inverter parts the bank from it, by whatever name the job calls what it isolates. */
    @Test
    void theSwitchOfTheInverterIsABatterySwitch(@TempDir Path folder) throws IOException {
        HtmlPage page = Demos.changed("hut-seventeen", folder, Map.of("isolates: [B1]", "isolates: [inverter]"))
                .page();

        assertThat(page.texts("//section[@id='all-off']/ol/li"))
                .last()
                .isEqualTo("S1 Battery switch: off shed, beside the chest");
        assertThat(page.text()).doesNotContain("no switch recorded: always live");
        assertThat(Demos.of("hut-seventeen").page().text()).doesNotContain("no switch recorded: always live");
    }

    /** Whoever has turned off every switch of the bank reads what is still on it. */
    @Test
    void whatNoSwitchTakesOffTheBatteryIsTold() {
        HtmlPage page = Demos.of("long-way-round").page();
        String told = "On the battery all the same, whatever is switched: F2 Living fuse board.";

        assertThat(page.texts("//section[@id='all-off']/p")).anyMatch(text -> text.contains(told));
        assertThat(page.texts("//section[@id='electrician']/p")).anyMatch(text -> text.contains(told));
        assertThat(Demos.of("hut-seventeen").page().text()).doesNotContain("On the battery all the same");
    }

    /** A fuse is looked for by what goes dead without it, and what an alternator may give by what keeps it to that. */
    @Test
    void everyFuseTellsWhatItIsThereFor() {
        HtmlPage page = Demos.of("long-way-round").page();

        assertThat(page.texts("//section[@id='electrician']//dl/div"))
                .anyMatch(text -> text.matches("Feeds\\s*Living fuse board"))
                .anyMatch(text -> text.matches("In the cable of\\s*Engine charger"))
                .anyMatch(text -> text.matches("Kept to that current\\s*yes.*"));
    }

    /** The next electrician and the harbour read of the transformer; where the neutral is tied they read, too. */
    @Test
    void aTransformerBehindTheInletIsTold(@TempDir Path folder) throws IOException {
        String page = Demos.changed(
                        "lantern-moth",
                        folder,
                        Map.of("shore:\n", "shore:\n  transformer: { neutral-tied: yes, shore-earth-goes-on: no }\n"))
                .page()
                .text();

        assertThat(page).contains("Isolating transformer", "neutral behind it tied to earth there");
        assertThat(Demos.of("lantern-moth").page().text()).doesNotContain("Isolating transformer");
    }

    /** A generator that gives DC alone is one that can start, too. */
    @Test
    void aGeneratorThatOnlyChargesIsStopped(@TempDir Path folder) throws IOException {
        HtmlPage page = Demos.changed(
                        "lantern-moth",
                        folder,
                        Map.of("charging:\n", "charging:\n  - { kind: generator, current: 20 A }\n"))
                .page();

        assertThat(page.texts("//section[@id='all-off']/ol/li"))
                .contains("Stop the generator and keep it from starting by itself");
        assertThat(page.texts("//section[@id='all-off']/p"))
                .anyMatch(line -> line.startsWith("5 sources: battery bank, shore power, generator, "));
    }

    @Test
    void onlyWhoFloatsIsToldOfTheWater() {
        assertThat(Demos.of("long-way-round").page().texts("//section[@id='harbour']"))
                .singleElement()
                .asString()
                .contains("Inlet")
                .doesNotContain("Nobody in the water", "Galvanic");
        assertThat(Demos.of("lantern-moth").page().texts("//section[@id='harbour']"))
                .singleElement()
                .asString()
                .contains("Nobody in the water", "Galvanic");
    }

    /** Where nothing can be plugged in, nothing is told of plugging in. */
    @Test
    void withoutShorePowerThereIsNoHarbour() {
        HtmlPage cabin = Demos.of("hut-seventeen").page();
        assertThat(cabin.texts("//nav[@id='doors']//a")).hasSize(5).noneMatch(door -> door.contains("Harbour"));
        assertThat(cabin.texts("//section[@id='harbour']")).isEmpty();
        assertThat(cabin.text()).doesNotContain("When shore power fails");
        HtmlPage boat = Demos.of("lantern-moth").page();
        assertThat(boat.texts("//nav[@id='doors']//a")).hasSize(6);
        assertThat(boat.texts("//section[@id='harbour']")).hasSize(1);
        assertThat(boat.text()).contains("When shore power fails");
    }

    @Test
    void theSourceOfATestIsToldOnce() {
        assertThat(Demos.of("lantern-moth").page().text())
                .contains("shore inlet dead on inverter")
                .doesNotContain("on inverter on inverter");
    }

    @Test
    void generatorWithoutIsolatorIsStopped(@TempDir Path folder) throws IOException {
        Demos demo = Demos.changed(
                "persimmon-tug", folder, Map.of("rcds:", "generator: { power: 3 kW, where: fore deck }\n\nrcds:"));

        assertThat(demo.page().texts("//section[@id='all-off']/ol/li"))
                .containsSubsequence(
                        "Stop the generator and keep it from starting by itself fore deck",
                        "S1 Battery switch: off deckhouse step");
        assertThat(demo.page().text())
                .contains("4 sources: battery bank, shore power, generator and Engine alternator");
    }

    @Test
    void acceptedAndOpenPointsAreTold() {
        HtmlPage page = Demos.of("second-biscuit").page();
        String surveyor = HtmlPage.text(page.element("//section[@id='surveyor']"));

        assertThat(surveyor)
                .contains("ISO 13297", "Reason: owner renews the cable in 50 mm² at the next lay-up")
                .contains("Accepted on 8 June 2026.")
                .contains("Engine starting circuit, not touched");
    }

    @Test
    void whatNobodyHasSeenIsPrinted(@TempDir Path folder) throws IOException {
        Demos demo = Demos.changed("lantern-moth", folder, Map.of("lug-hole: 8 mm", "lug-hole: not seen"));

        assertThat(demo.page().texts("//dl/div[dt='Lug hole']/dd")).containsExactly("not seen");
        assertThat(demo.page().texts("//dl/div[dt='Torque']/dd")).contains("12\u00A0N·m (measured)");
    }

    @Test
    void textOfTheJobCannotBecomeMarkup(@TempDir Path folder) throws IOException {
        Demos demo = Demos.changed(
                "lantern-moth",
                folder,
                Map.of(
                        "where: stern locker",
                        "where: '</dd><script>alert(1)</script>'",
                        "name: Lantern Moth",
                        "name: '\"<b>Moth'"));

        assertThat(demo.page().elements("//script[contains(., 'alert')][not(@type)] | //b[text()='Moth']"))
                .isEmpty();
        assertThat(demo.page().text()).contains("</dd><script>alert(1)</script>");
        assertThat(demo.page().texts("//h1")).containsExactly("\"<b>Moth");
    }

    @Test
    void codeRevisionAndDate() {
        HtmlPage page = Demos.of("persimmon-tug").page();

        assertThat(page.texts("//footer//dd[@class='code']"))
                .containsExactly("NEG8-KHQN-YXPW-TE8S-T5FB-9", "ab".repeat(32));
        assertThat(page.values("//time", "datetime")).containsExactly("2026-07-02");
        assertThat(page.text())
                .contains("the code printed on the label must be the same as NEG8-KHQN-YXPW-TE8S-T5FB-9");
        assertThat(page.values("//a[starts-with(@href, 'tel:')]", "href")).containsOnly("tel:01632960140");
    }

    /** Crockford's base 32 leaves out I, L, O and U (crockford.com/base32, from memory). */
    @Test
    void unknownCodePageKnowsNoRecord() {
        Demos demo = Demos.of("lantern-moth");
        HtmlPage page = demo.unknownCode();

        assertThat(page.text()).contains("I, L, O and U never occur", "01632 960118", "21 letters and digits");
        assertThat(page.source().toUpperCase(Locale.ROOT))
                .doesNotContain(
                        "LANTERN", demo.code(), demo.job().job().record().toString(), "ISO 13297");
    }

    @Test
    void whatCanBeTakenAlong() {
        HtmlPage page = Demos.of("lantern-moth").page("index-nl.html");

        assertThat(page.values("//footer//a[@download]", "href"))
                .containsExactly("record-nl.html", "guide.pdf", "labels.pdf", "figures.json");
        assertThat(page.text().replace('\u00A0', ' ')).contains("Gebruikershandleiding: guide.pdf, 124 kB");
    }

    @Test
    void languagesCanBeSwitched() {
        HtmlPage page = Demos.of("lantern-moth").page("index-nl.html");

        assertThat(page.values("//nav[@class='languages']//a", "href")).containsExactly("index.html");
        assertThat(page.texts("//nav[@class='languages']//span")).containsExactly("Nederlands");
        assertThat(Demos.of("persimmon-tug").page().elements("//nav[@class='languages']"))
                .isEmpty();
    }

    @Test
    void earlierRevisionsAreListedNewestFirst() {
        Demos demo = Demos.of("persimmon-tug");
        Map<String, byte[]> site = demo.site(
                List.of("en-GB"),
                List.of(
                        new Issued(1, LocalDate.of(2026, 1, 2), "1".repeat(64)),
                        new Issued(2, LocalDate.of(2026, 3, 4), "2".repeat(64))));
        HtmlPage page = HtmlPage.of(Objects.requireNonNull(site.get(demo.code() + "/index.html")));

        assertThat(page.values("//footer//a[starts-with(@href, 'revision-')]", "href"))
                .containsExactly("revision-2/index.html", "revision-1/index.html");
        assertThat(page.text()).contains("revision 2, 4 March 2026", "2".repeat(64));
    }

    /** The record in one file leads nowhere else and holds the guide's chapters. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void theWholeRecordInOneFile(String name) {
        HtmlPage whole = Demos.of(name).page("record.html");

        assertThat(whole.text()).contains("In danger: all off", "For the surveyor", "Words explained");
        assertThat(whole.values("//a", "href")).noneMatch(target -> target.endsWith(".html"));
    }

    /** schema.org terms are data for programs: nothing that the page does not say. */
    @Test
    void dataForPrograms() throws IOException {
        HtmlPage page = Demos.of("lantern-moth").page();
        JsonNode data = new ObjectMapper()
                .readTree(page.element("//script[@type='application/ld+json']").getTextContent());

        assertThat(data.path("@context").asText()).isEqualTo("https://schema.org");
        assertThat(data.path("identifier").asText()).isEqualTo("81EZ-D3SW-FGV4-RK1Z-H0YD-Q");
        assertThat(data.path("version").asText()).isEqualTo("1");
        assertThat(data.path("publisher").path("name").asText()).isEqualTo("Mudlark & Thimble Boat Electrics");
    }
}
