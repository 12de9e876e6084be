package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.quaybook.Conformance;

/** Installations with many times more of something than a demo: each has a whole pack, and nothing is lost on the way. */
class LargeJobsTest {

    private static final int MANY = 40;

    /** A list of a job file, and one thing more in it. */
    enum More {
        CIRCUITS(
                "ac-circuits",
                "{ id: AX%d, name: Cabin lamp no %1$d, breaker: 10 A, curve: B, cable: 2.5 mm2, source: inverter, rcd: R1 }",
                "Cabin lamp no (\\d+)\\b"),
        SHORE_CIRCUITS(
                "ac-circuits",
                "{ id: AS%d, name: Quay heater no %1$d, breaker: 10 A, curve: B, cable: 2.5 mm2, source: shore, rcd: R1 }",
                "Quay heater no (\\d+)\\b"),
        RCDS(
                "rcds",
                "{ id: RX%d, rating: 30 mA, type: A, source: inverter, where: locker no %1$d }",
                "locker no (\\d+)\\b"),
        BRANCHES(
                "fuses",
                "{ id: FB%d, protects: [], role: branch, feeds: Bilge pump no %1$d, conductor: 6 mm2, load: 10 A,"
                        + " family: midi, rating: 30 A, distance: 100 mm (measured), where: fuse board }",
                "Bilge pump no (\\d+)\\b"),
        ISOLATORS(
                "isolators",
                "{ id: SX%d, name: Lockable switch no %1$d, where: step, side: outside, tool-free: yes, isolates: [B1] }",
                "Lockable switch no (\\d+)\\b"),
        SOCKETS(
                "sockets",
                "{ name: Wall outlet no %d, where: mess, shore-on: shore, shore-off: inverter }",
                "Wall outlet no (\\d+)\\b"),
        CHARGING(
                "charging",
                "{ kind: solar, name: Roof panel no %d, current: 5 A, per-day: 4 h }",
                "Roof panel no (\\d+)\\b"),
        EARTHS(
                "earths",
                "{ id: EX%d, kind: bond, from: tank no %1$d, to: hull stud, fitted: 16 mm2, length: 1.4 m (measured) }",
                "tank no (\\d+)\\b"),
        TESTS(
                "tests",
                "{ test: insulation, of: [A1], result: 9%02d Mohm, by: A. Surveyor, on: 2026-07-01, instrument: NK-M1 }",
                "9(\\d\\d) MΩ"),
        EXPIRIES("expiries", "{ what: Distress flare no %d, on: 2027-07-02 }", "Distress flare no (\\d+)\\b"),
        SCOPE("scope", "Old lamp no %d, not touched", "Old lamp no (\\d+)\\b");

        private final String list;
        private final String item;
        private final Pattern named;

        More(String list, String item, String named) {
            this.list = list;
            this.item = item;
            this.named = Pattern.compile(named);
        }

        String in(String job, int many) {
            String items = IntStream.rangeClosed(1, many)
                    .mapToObj(i -> "  - " + item.formatted(i) + "\n")
                    .collect(Collectors.joining());
            assertThat(job).contains("\n" + list + ":\n");
            return job.replace("\n" + list + ":\n", "\n" + list + ":\n" + items);
        }

        /** Numbers of those that a document names. */
        Stream<Integer> in(String text) {
            return named.matcher(text).results().map(found -> Integer.valueOf(found.group(1)));
        }
    }

    private static Map<String, byte[]> pack(Path folder, int many, More... more) throws IOException, NotPrinted {
        Path demo = Path.of("demo-jobs", "persimmon-tug");
        String job = Files.readString(demo.resolve("job.yaml"));
        for (More one : more) {
            job = one.in(job, many);
        }
        Files.writeString(folder.resolve("job.yaml"), job);
        Files.copy(demo.resolve("installer.yaml"), folder.resolve("installer.yaml"));
        Road.Judged judged = Road.judge(folder);
        assertThat(judged.problems()).isEmpty();
        return Road.documents(judged, null, "test");
    }

    private static String text(byte[] pdf) {
        try (PDDocument read = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(read).replaceAll("[\\s\u00A0]+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @EnumSource
    void packsAnyNumberOf(More more, @TempDir Path folder) throws IOException, NotPrinted {
        Map<String, byte[]> pack = pack(folder, MANY, more);
        assertThat(pack)
                .containsKeys("guide.pdf", "guide-booklet.pdf", "guide-a4.pdf", "labels.pdf", "worksheet.pdf")
                .containsKeys("quick-card.pdf", "sheet-surveyor.pdf", "sheet-electrician.pdf", "sheet-harbour.pdf");
        String guide = text(Objects.requireNonNull(pack.get("guide.pdf")));
        assertThat(more.in(guide).distinct()).as("in the guide").hasSize(MANY);
        String page = pack.entrySet().stream()
                .filter(file -> file.getKey().matches("record/[0-9A-Z]{21}/index.html"))
                .map(file -> new String(file.getValue(), StandardCharsets.UTF_8))
                .findFirst()
                .orElseThrow();
        assertThat(more.in(page.replaceAll("&nbsp;|\\u00a0", " ")).distinct())
                .as("in the record")
                .hasSize(MANY);
    }

    /** All of it at once, and all of it can be archived and read aloud. */
    @Test
    void packsAllOfThemTogether(@TempDir Path folder) throws IOException, NotPrinted {
        Map<String, byte[]> pack = pack(folder, MANY, More.values());
        String guide = text(Objects.requireNonNull(pack.get("guide.pdf")));
        Arrays.stream(More.values())
                .forEach(more ->
                        assertThat(more.in(guide).distinct()).as(more.name()).hasSize(MANY));
        pack.forEach((name, content) -> {
            if (name.endsWith(".pdf") && !name.contains("booklet")) {
                assertThat(Conformance.faultsAsArchive(content)).as(name).isEmpty();
                assertThat(Conformance.faultsForListening(content)).as(name).isEmpty();
            }
        });
    }
}
