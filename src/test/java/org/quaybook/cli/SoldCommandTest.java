package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.pack.Road;
import picocli.CommandLine.Help.Ansi;

/** A change of owner from the command line: nothing is lost, and nobody is named to the buyer. */
class SoldCommandTest {

    private static final String ACCOUNTS = """
            accounts:
              - { service: battery monitor, holder: Wilhelmina Oatcake, transfer: letter from Wilhelmina Oatcake }
              - { service: SIM card of the router, holder: Wilhelmina Oatcake }

            """;

    @TempDir
    Path folder;

    private Path job;
    private String before;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void copy() throws IOException {
        Path demo = Path.of("demo-jobs", "lantern-moth");
        job = folder.resolve("job.yaml");
        before = Files.readString(demo.resolve("job.yaml")).replace("rehearsal:", ACCOUNTS + "rehearsal:");
        Files.writeString(job, before);
        for (String name : List.of("installer.yaml", "logo.svg")) {
            Files.copy(demo.resolve(name), folder.resolve(name));
        }
    }

    private int run(String... more) {
        String[] arguments = Stream.concat(
                        Stream.of(
                                "sold",
                                folder.toString(),
                                "--to",
                                folder.resolve("out").toString()),
                        Stream.of(more))
                .toArray(String[]::new);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Ansi.OFF, arguments);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            assertThat(read.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(read).replaceAll("[\\s\u00A0]+", " ");
        }
    }

    @Test
    void theJobGoesOnAndTheFileStays() throws IOException {
        assertThat(run("--on", "2028-04-30")).as(err::toString).isZero();

        assertThat(names())
                .containsExactly(
                        "installer.yaml",
                        "job-revision-1.yaml",
                        "job.yaml",
                        "logo.svg",
                        "out/26-118-buyer-nl.pdf",
                        "out/26-118-buyer.pdf");
        assertThat(folder.resolve("job-revision-1.yaml")).hasContent(before);
        Road.Judged judged = Road.judge(job);
        assertThat(judged.problems()).isEmpty();
        assertThat(judged.assessment()).isNotNull();
        assertThat(Files.readString(job))
                .contains("revision: 2", "date: 2028-04-30")
                .doesNotContainIgnoringCase("oatcake");
        assertThat(out.toString()).contains("revision 2", "job-revision-1.yaml", "26-118-buyer.pdf");
    }

    @Test
    void theBuyersSheetSaysWhatToTakeOverAndNamesNobody() throws IOException {
        run("--on", "2028-04-30");
        String english = text(folder.resolve("out/26-118-buyer.pdf"));
        String dutch = text(folder.resolve("out/26-118-buyer-nl.pdf"));

        assertThat(english)
                .contains("battery monitor", "letter from [name left out]", "SIM card of the router")
                .contains("81EZ-D3SW-FGV4-RK1Z-H0YD-Q", "/81EZD3SWFGV4RK1ZH0YDQ")
                .contains("LM-0001 to LM-0003", "INV-00417", "taped inside the board door")
                .contains("13 May 2027", "14 November 2026", "1 March 2031", "by a qualified electrician");
        assertThat(dutch).contains("Voor de nieuwe eigenaar", "Koolmonoxidemelder vervangen");
        for (String sheet : List.of(english, dutch)) {
            assertThat(sheet).doesNotContainIgnoringCase("oatcake").doesNotContain("07700", "berth 7", "ligplaats 7");
        }
    }

    /** The labels stay and bear the key, so the job keeps it and the buyer gets it. */
    @Test
    void aSealedRecordGoesOnWithItsKey() throws IOException {
        String key = "3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4";
        Files.writeString(
                job, before.replace("  revision: 1\n", "  sealed: yes\n  seal-key: " + key + "\n  revision: 1\n"));

        assertThat(run("--on", "2028-04-30")).as(err::toString).isZero();

        assertThat(Files.readString(job)).contains("sealed: yes", key);
        assertThat(text(folder.resolve("out/26-118-buyer.pdf"))).contains("Key, if the page asks for it", key);
        assertThat(text(folder.resolve("out/26-118-buyer-nl.pdf"))).contains(key);
    }

    /** Sold twice: each file as it was is there, under its own revision. */
    @Test
    void soldAgain() throws IOException {
        run("--on", "2028-04-30");
        String first = Files.readString(job);

        assertThat(run("--on", "2029-01-01")).as(err::toString).isZero();

        assertThat(folder.resolve("job-revision-1.yaml")).hasContent(before);
        assertThat(folder.resolve("job-revision-2.yaml")).hasContent(first);
        assertThat(Files.readString(job)).contains("revision: 3");
    }

    @Test
    void whatIsRefusedChangesNothing() throws IOException {
        assertThat(run("--on", "2026-05-13")).isEqualTo(2);
        assertThat(err.toString()).contains("2026-05-13", "2026-05-14");

        Files.writeString(folder.resolve("job-revision-1.yaml"), "something else");
        assertThat(run("--on", "2028-04-30")).isEqualTo(2);
        assertThat(folder.resolve("job-revision-1.yaml")).hasContent("something else");
        Files.delete(folder.resolve("job-revision-1.yaml"));

        Files.writeString(job, before.replace("\nowner:", "\n\"owner\":"));
        assertThat(run("--on", "2028-04-30")).isEqualTo(2);
        assertThat(err.toString()).contains("cannot be told from the others");

        Files.writeString(job, before.replace("series: 1", "series: many"));
        assertThat(run("--on", "2028-04-30")).isEqualTo(2);
        assertThat(names()).containsExactly("installer.yaml", "job.yaml", "logo.svg");
    }
}
