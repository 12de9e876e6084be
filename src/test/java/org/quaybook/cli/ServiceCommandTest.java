package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.checks.Assessment;
import org.quaybook.job.ServiceEntry;
import org.quaybook.job.Setting;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.Road;
import picocli.CommandLine.Help.Ansi;

/** Visits after handing over, from the command line to the record page. */
class ServiceCommandTest {

    private static final String DROP = "test: voltage-drop, of: [B1, B2], at: 90 A, result: 0.19 V";

    @TempDir
    Path folder;

    private Path log;
    private Path packs;
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void copy() throws IOException {
        Path demo = Path.of("demo-jobs", "lantern-moth");
        for (String name : List.of("job.yaml", "installer.yaml", "logo.svg")) {
            Files.copy(demo.resolve(name), folder.resolve(name));
        }
        log = folder.resolve("service.yaml");
        packs = folder.resolve("packs");
    }

    private int run(String... arguments) {
        return Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), Ansi.OFF, arguments);
    }

    private int visit(String day, String did, String... more) {
        return run(Stream.concat(
                        Stream.of(
                                "service",
                                folder.toString(),
                                "--on",
                                day,
                                "--firm",
                                "Second Tide: Electrics",
                                "--packs",
                                packs.toString()),
                        Stream.concat(Stream.of("--did", did, "--by", "K. Sorrel-Vane"), Stream.of(more)))
                .toArray(String[]::new));
    }

    private Assessment assessment() {
        Road.Judged judged = Road.judge(folder);
        assertThat(judged.problems()).isEmpty();
        return Objects.requireNonNull(judged.assessment());
    }

    @Test
    void aDateInAnotherFormIsToldWithTheRightOne() {
        assertThat(visit("20.05.2027", "Looked at every joint")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString())
                .startsWith("Invalid value for option '--on': “20.05.2027” is not a date such as 2027-05-14.")
                .doesNotContain("java.");
        assertThat(log).doesNotExist();
    }

    @Test
    void eachVisitMakesTheNextRevision() {
        assertThat(visit("2027-05-20", "Looked at every joint"))
                .as(err::toString)
                .isZero();
        assertThat(visit("2028-05-20", "Again")).as(err::toString).isZero();

        assertThat(assessment().job().job().revision()).isEqualTo(3);
        assertThat(assessment().job().job().date()).isEqualTo(LocalDate.of(2028, 5, 20));
        assertThat(assessment().job().service())
                .extracting(entry -> entry.revision() + " " + entry.firm() + " " + entry.did())
                .containsExactly("2 Second Tide: Electrics Looked at every joint", "3 Second Tide: Electrics Again");
    }

    /** What was signed never changes; what comes before the next signing is signed together. */
    @Test
    void visitsSinceTheLastSignedPackMakeOneRevision() throws IOException {
        Path profile = folder.resolve("installer.yaml");
        Files.writeString(profile, Files.readString(profile).replaceAll("(?m)^public-key:.*\\R", ""));
        String key = folder.resolve("key.pem").toString();
        String site = folder.resolve("site").toString();
        assertThat(run("key", key)).isZero();
        publish(key, site);

        assertThat(visit("2027-05-20", "Looked at every joint")).isZero();
        assertThat(visit("2027-09-01", "Again")).isZero();
        assertThat(assessment().job().job().revision()).isEqualTo(2);
        assertThat(assessment().job().job().date()).isEqualTo(LocalDate.of(2027, 9, 1));
        publish(key, site);
        assertThat(folder.resolve("packs/26-118-revision-1")).isDirectory();
        String page = plain(Files.readString(record(site).resolve("index.html")));
        assertThat(page)
                .contains("Visits: 20 May 2027 (Second Tide: Electrics): Looked at every joint; "
                        + "1 September 2027 (Second Tide: Electrics): Again.");
        assertThat(run("verify", site)).as(err::toString).isZero();

        assertThat(visit("2028-05-20", "Once more")).isZero();
        assertThat(assessment().job().service())
                .extracting(ServiceEntry::revision)
                .containsExactly(2, 2, 3);
        assertThat(run("withdraw", folder.toString(), "--to", site))
                .as(err::toString)
                .isZero();
    }

    private void publish(String key, String site) {
        assertThat(run("pack", folder.toString(), "--to", packs.toString()))
                .as(err::toString)
                .isZero();
        assertThat(run("record", packs.toString(), "--to", site, "--key", key))
                .as(err::toString)
                .isZero();
    }

    private static Path record(String site) throws IOException {
        try (Stream<Path> records = Files.list(Path.of(site))) {
            return records.filter(it -> String.valueOf(it.getFileName()).matches("[0-9A-Z]{21}"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** Whoever revises the job itself goes on from there. */
    @Test
    void theHigherOfJobAndVisitsCounts() throws IOException {
        visit("2027-05-20", "Looked at every joint");
        Path job = folder.resolve("job.yaml");
        Files.writeString(job, Files.readString(job).replace("revision: 1", "revision: 5"));

        assertThat(assessment().job().job().revision()).isEqualTo(5);
        visit("2028-05-20", "Again");
        assertThat(assessment().job().job().revision()).isEqualTo(6);
    }

    /** Read 0.12 V and 0.19 V at the same 90 A: more than half as much again (common practice, no source). */
    @Test
    void readingsAreTheLaterOnesOfTheBaseline() {
        assertThat(run("revisit", folder.toString())).isZero();

        visit("2027-05-20", "Looked at every joint", "--reading", DROP);

        assertThat(run("revisit", folder.toString())).isEqualTo(Exit.FORBIDDEN);
        assertThat(assessment().figures().baseline().items())
                .anySatisfy(item -> assertThat(item.moved()).isTrue());
    }

    @Test
    void aSettingStandsAsLeftWithWhatItWas() {
        visit("2027-05-20", "Set the charger", "--setting", "device: charger, name: absorption, value: 28.4 V");
        visit("2028-05-20", "Set it again", "--setting", "device: charger, name: absorption, value: 28.2 V");

        assertThat(assessment().job().settings())
                .filteredOn(setting -> setting.device().equals("charger"))
                .extracting(Setting::value, Setting::was, Setting::on)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("28.2 V", "28.4 V", LocalDate.of(2028, 5, 20)));
    }

    /** An insulation of 0.4 MΩ forbids handing over (IEC 60364-6:2016 table 6A, least 1 MΩ, from memory) until it is mended. */
    @Test
    void whatWasMendedAndReadAgainForbidsNothing() {
        visit("2027-05-20", "Found the inlet wet", "--reading", "test: insulation, at: 500 V, result: 0.4 MΩ");
        assertThat(assessment().forbidsHandover()).isTrue();

        visit("2027-05-28", "New inlet", "--reading", "test: insulation, at: 500 V, result: 30 MΩ");
        assertThat(assessment().forbidsHandover()).isFalse();
    }

    /** Two job files in one folder have a log each. */
    @Test
    void aJobFileOfAnotherNameHasALogOfThatName() throws IOException {
        Files.move(folder.resolve("job.yaml"), folder.resolve("moth.yaml"));
        assertThat(run(
                        "service",
                        folder.resolve("moth.yaml").toString(),
                        "--on",
                        "2027-05-20",
                        "--firm",
                        "Second Tide",
                        "--did",
                        "[Looked] at \"every\" joint: # all"))
                .as(err::toString)
                .isZero();

        assertThat(folder.resolve("moth-service.yaml")).exists();
        assertThat(Objects.requireNonNull(
                                Road.judge(folder.resolve("moth.yaml")).assessment())
                        .job()
                        .service())
                .extracting(ServiceEntry::did)
                .containsExactly("[Looked] at \"every\" joint: # all");
    }

    @Test
    void whatIsThereStaysLetterByLetter() throws IOException {
        visit("2027-05-20", "Looked at every joint");
        String before = "# ours, with a note\n" + Files.readString(log).stripTrailing();
        Files.writeString(log, before);

        assertThat(visit("2028-05-20", "Again")).as(err::toString).isZero();

        assertThat(Files.readString(log)).startsWith(before + "\n");
    }

    @Test
    void whatCannotStandIsRefusedAndNothingWritten() throws IOException {
        assertThat(visit("2026-05-13", "Too early")).isEqualTo(Exit.BAD_INPUT);
        assertThat(visit("2027-05-20", "Read", "--reading", DROP.replace("B2", "B9")))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("service.yaml:10:", "B9", "no visit was added");
        assertThat(log).doesNotExist();

        visit("2027-05-20", "Looked at every joint");
        String before = Files.readString(log);
        assertThat(visit("2027-05-19", "Before the one before")).isEqualTo(Exit.BAD_INPUT);
        assertThat(log).hasContent(before);

        String flow = "entries: []\njob: 26-118\n";
        Files.writeString(log, flow);
        assertThat(visit("2027-05-20", "Nowhere to add it")).isEqualTo(Exit.BAD_INPUT);
        assertThat(log).hasContent(flow);

        Files.writeString(log, before.replace("26-118", "26-119"));
        assertThat(visit("2028-05-20", "Of another job")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("26-119");
    }

    /** What says that it tells of the handover must not tell of a visit. */
    @Test
    void whatWasReadAtAVisitPassesForNoReadingOfTheHandover() throws IOException, NotPrinted {
        visit("2027-05-20", "Looked at every joint", "--reading", DROP);

        Map<String, byte[]> pack = Road.documents(Road.judge(folder), null, "test");

        assertThat(print(pack, "sheet-electrician.pdf"))
                .contains("0.12 V at 90 A")
                .doesNotContain("0.19 V");
        String guide = page(pack, "guide.html");
        assertThat(guide).contains("0.12 V").doesNotContain("0.19 V");
        assertThat(print(pack, "labels.pdf"))
                .containsPattern("Revision 2\\s+20 May 2027")
                .containsPattern("Last tests\\s+20 May 2027")
                .doesNotContain("Handed over");
    }

    private static String print(Map<String, byte[]> pack, String name) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Objects.requireNonNull(pack.get(name)))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(pdf);
        }
    }

    /** Page, guide and figures tell visits, newest first, in the languages of the job; they name firms and the owner's part only. */
    @Test
    void whatIsPublishedShowsVisitsAndNamesNobody() throws IOException, NotPrinted {
        visit(
                "2027-05-20",
                "Called by Wilhelmina Oatcake",
                "--reading",
                DROP,
                "--setting",
                "device: charger, name: absorption, value: 28.2 V, was: 28.4 V");
        assertThat(run(
                        "service",
                        folder.toString(),
                        "--on",
                        "2027-09-01",
                        "--firm",
                        "owner",
                        "--did",
                        "The owner set the charger",
                        "--setting",
                        "device: charger, name: absorption, value: 28.6 V",
                        "--setting",
                        "device: charger, name: float, value: 27.0 V, by: Wilhelmina Oatcake"))
                .as(err::toString)
                .isZero();
        Files.writeString(
                log,
                Files.readString(log)
                        .replace(
                                "entries:",
                                "translations:\n  - { language: nl, texts: [The owner set the charger = De eigenaar stelde"
                                        + " de lader in] }\nentries:"));

        Map<String, byte[]> pack = Road.documents(Road.judge(folder), null, "test");
        String page = page(pack, "index.html");
        String visits = page.substring(page.lastIndexOf("Visits after handing over"));

        assertThat(visits.indexOf("1 September 2027"))
                .isLessThan(visits.indexOf("20 May 2027"))
                .isPositive();
        assertThat(visits)
                .contains("1 September 2027, the owner, revision 3", "The owner set the charger", "28.6 V was 28.2 V")
                .contains("20 May 2027, Second Tide: Electrics, revision 2", "Called by [name left out]")
                .contains("0.19 V", "28.2 V was 28.4 V");
        assertThat(page)
                .contains("charger: absorption 28.6 V was 28.2 V changed 1 September 2027 by the owner")
                .contains("charger: float 27.0 V changed 1 September 2027 by the owner");
        assertThat(page(pack, "index-nl.html"))
                .contains(
                        "Bezoeken na de oplevering", "1 september 2027, de eigenaar", "De eigenaar stelde de lader in");
        assertThat(page(pack, "guide.html"))
                .contains("Visits after handing over", "Second Tide: Electrics", "1 September 2027 the owner");
        String handover =
                page.substring(page.indexOf("Tests at handover"), page.lastIndexOf("Visits after handing over"));
        assertThat(handover).contains("0.12 V").doesNotContain("0.19 V");
        pack.forEach((path, content) -> {
            if (path.startsWith("record/")) {
                assertThat(new String(content, StandardCharsets.UTF_8))
                        .as(path)
                        .doesNotContain("Sorrel-Vane", "Oatcake");
            }
        });

        JsonNode visit = new ObjectMapper()
                .readTree(pack.get("figures.json"))
                .path("service")
                .path(0);
        assertThat(visit.path("date").asText()).isEqualTo("2027-05-20");
        assertThat(visit.path("firm").asText()).isEqualTo("Second Tide: Electrics");
        JsonNode result = visit.path("readings").path(0).path("result");
        assertThat(result.path("value").asDouble()).isEqualTo(0.19);
        assertThat(result.path("unit").asText()).isEqualTo("V");
        assertThat(visit.path("settings").path(0).path("was").asText()).isEqualTo("28.4 V");
    }

    private static String plain(String html) {
        return html.replaceAll("<[^>]*>", " ").replaceAll("[\\s\u00A0]+", " ");
    }

    private static String page(Map<String, byte[]> pack, String name) {
        return pack.entrySet().stream()
                .filter(file -> file.getKey().matches("record/[0-9A-Z]{21}/" + name.replace(".", "\\.")))
                .map(file -> plain(new String(file.getValue(), StandardCharsets.UTF_8)))
                .findFirst()
                .orElseThrow();
    }

    /** The former owner is no longer known as such afterwards: his name may not stay in what was done. */
    @Test
    void soldJobsForgetTheOwnerInTheLogToo() throws IOException {
        visit("2027-05-20", "Called by Wilhelmina Oatcake");
        String before = Files.readString(log);

        assertThat(run(
                        "sold",
                        folder.toString(),
                        "--on",
                        "2028-04-30",
                        "--to",
                        folder.resolve("out").toString()))
                .as(err::toString)
                .isZero();

        assertThat(Files.readString(log)).doesNotContain("Oatcake").contains("Called by –");
        assertThat(folder.resolve("service-revision-2.yaml")).hasContent(before);
        assertThat(folder.resolve("job-revision-2.yaml")).exists();
        assertThat(assessment().job().job().revision()).isEqualTo(3);
    }
}
