package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.job.LabelStock;
import org.quaybook.job.StockReader;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.pack.labels.Labels;
import org.quaybook.proof.Digest;
import org.quaybook.record.RecordLink;

/** Labels printed by themselves. The rules are this project's own. */
class LabelJobTest {

    @TempDir
    Path folder;

    private static final Road.Judged JOB = Road.judge(Path.of("demo-jobs/lantern-moth"));
    private static final String VERSION = "test";

    /** "26-118 rev 1 · fuse-F1", which stands at the foot of every label. */
    private static final Pattern STAMP = Pattern.compile("26-118 rev 1 · ([A-Za-z0-9-]+)");

    private static LabelStock stock(String id) {
        return Objects.requireNonNull(StockReader.standard(id).stock());
    }

    private static LabelWish wish(List<LabelStock> stocks, List<String> only, @Nullable String issued) {
        return new LabelWish(stocks, 1, PrintMove.NONE, 0, false, only, issued, "packs/26-118", Set.of(), 300);
    }

    private static LabelJob print(LabelWish wish) throws NotPrinted {
        return LabelJob.of(JOB, null, wish, VERSION);
    }

    private static List<LabelNote> notes() throws NotPrinted {
        var it = Objects.requireNonNull(JOB.assessment());
        return new Labels(Editions.ofLabels(it, null), JOB.branding(), RecordLink.of(it)).notes();
    }

    /** The figures.json of an earlier pack, as far as it is read. */
    private static String issued(String number, Function<LabelNote, String> digest, String... more) throws NotPrinted {
        ObjectNode root = new ObjectMapper().createObjectNode();
        root.putObject("job").put("number", number);
        var labels = root.putArray("labels");
        for (LabelNote note : notes()) {
            labels.addObject().put("label", note.id()).put("sha256", digest.apply(note));
        }
        for (String id : more) {
            labels.addObject().put("label", id).put("sha256", "");
        }
        return root.toString();
    }

    private static List<String> stamps(LabelJob done) throws IOException {
        List<String> ids = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : done.files().entrySet()) {
            if (file.getKey().endsWith(".pdf") && !file.getKey().equals("places.pdf")) {
                try (PDDocument document = Loader.loadPDF(file.getValue())) {
                    Matcher stamp = STAMP.matcher(
                            new PDFTextStripper().getText(document).replace('\u00a0', ' '));
                    while (stamp.find()) {
                        ids.add(stamp.group(1));
                    }
                }
            }
        }
        return ids;
    }

    /** Small labels go on the small stock, the others on the next that has room; none is lost or printed twice. */
    @Test
    void eachLabelGoesOnTheFirstStockWithRoom() throws NotPrinted, IOException {
        LabelJob done = print(wish(List.of(stock("a4-2x4"), stock("a4")), List.of(), null));
        assertThat(done.files()).containsKeys("a4-2x4.pdf", "a4.pdf", "places.pdf", LabelJob.MARK);
        assertThat(stamps(done))
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(done.printed().stream()
                        .map(LabelNote::id)
                        // tags and the strip along the breakers have no room for their id
                        .filter(id -> !id.matches("(cable|earth|breakers).*"))
                        .toList());
        LabelJob small = print(wish(List.of(stock("a4-2x4")), List.of("socket-1", "fuse-F1"), null));
        assertThat(stamps(small)).containsExactlyInAnyOrder("socket-1", "fuse-F1");
    }

    @Test
    void stockTooSmallIsRefusedWithTheLeastThatWouldDoForEveryLabel() {
        assertThatThrownBy(() -> print(wish(List.of(stock("a4-5x13")), List.of("sources", "fuse-F1"), null)))
                .isInstanceOfSatisfying(
                        NotPrinted.class,
                        refused -> assertThat(refused.diagnostics())
                                .extracting(fault -> fault.message().arguments().get(0))
                                .containsExactly("sources", "fuse-F1"));
    }

    @Test
    void unknownLabelsAreNamedWithTheLikeliest() {
        assertThatThrownBy(() -> print(wish(List.of(), List.of("recrod", "fuse-F1", "socket-99"), null)))
                .isInstanceOfSatisfying(NotPrinted.class, refused -> {
                    assertThat(refused.diagnostics())
                            .extracting(fault -> fault.rule() + " " + fault.excerpt())
                            .containsExactly("pack.label-unknown recrod", "pack.label-unknown socket-99");
                    assertThat(refused.diagnostics().get(0).hints().get(0).arguments())
                            .containsExactly("record");
                });
    }

    /** A digest is of what a label says: job number and revision are not in it. */
    @Test
    void onlyWhatSaysSomethingElseIsPrintedAgain() throws NotPrinted, IOException {
        String before =
                issued("26-118", note -> note.id().equals("fuse-F1") ? "0" : Digest.of(note.content()), "socket-9");
        LabelJob done = print(wish(List.of(), List.of(), before));
        assertThat(done.printed()).extracting(LabelNote::id).containsExactly("fuse-F1");
        assertThat(stamps(done)).containsExactly("fuse-F1");
        assertThat(done.gone()).containsExactly("socket-9");
        JsonNode json = new ObjectMapper().readTree(done.files().get(LabelJob.MARK));
        assertThat(json.path("gone").path(0).asText()).isEqualTo("socket-9");
        assertThat(json.path("labels").size()).isEqualTo(1);
    }

    @Test
    void nothingIsPrintedWhenNothingChanged() throws NotPrinted {
        LabelJob done = print(wish(List.of(), List.of(), issued("26-118", note -> Digest.of(note.content()))));
        assertThat(done.files()).isEmpty();
        assertThat(done.printed()).isEmpty();
    }

    @Test
    void packsOfOtherJobsAndOtherFilesAreRefused() throws NotPrinted {
        String other = issued("26-119", note -> "");
        assertThatThrownBy(() -> print(wish(List.of(), List.of(), other)))
                .isInstanceOfSatisfying(
                        NotPrinted.class,
                        refused ->
                                assertThat(refused.diagnostics().get(0).rule()).isEqualTo("pack.issue-of-other-job"));
        for (String broken : List.of("", "{", "[]", "{\"job\": {\"number\": \"26-118\"}}")) {
            assertThatThrownBy(() -> print(wish(List.of(), List.of(), broken)))
                    .isInstanceOfSatisfying(
                            NotPrinted.class,
                            refused -> assertThat(refused.diagnostics().get(0).rule())
                                    .isEqualTo("pack.issue-unreadable"));
        }
    }

    /** What pack writes is what --since reads. */
    @Test
    void figuresOfAPackTellItsLabels() throws NotPrinted {
        var it = Objects.requireNonNull(JOB.assessment());
        byte[] figures = FiguresJson.of(it, Editions.of(it, null).get(0).words(), notes(), VERSION);
        LabelJob done = print(wish(List.of(), List.of(), new String(figures, StandardCharsets.UTF_8)));
        assertThat(done.printed()).isEmpty();
        assertThat(done.gone()).isEmpty();
    }

    /** The tug with so many circuits more. */
    private Road.Judged circuits(int more) throws IOException {
        Path demo = Path.of("demo-jobs/persimmon-tug");
        StringBuilder lines = new StringBuilder();
        for (int i = 1; i <= more; i++) {
            lines.append("  - { id: AX" + i + ", name: Light " + i + ", breaker: 6 A, source: inverter, rcd: R1 }\n");
        }
        Path job = Files.createDirectories(folder.resolve("tug-" + more));
        Files.copy(demo.resolve("installer.yaml"), job.resolve("installer.yaml"));
        Files.writeString(
                job.resolve("job.yaml"),
                Files.readString(demo.resolve("job.yaml")).replace("\nearths:", lines + "\nearths:"));
        return Road.judge(job);
    }

    /** One circuit more, and the list has a label more: each of its labels tells how many there are, so all are replaced. */
    @Test
    void aListIsPrintedAgainWithAllItsLabels() throws NotPrinted, IOException {
        Road.Judged before = circuits(70);
        var it = Objects.requireNonNull(before.assessment());
        List<LabelNote> notes = new Labels(Editions.ofLabels(it, null), before.branding(), RecordLink.of(it)).notes();
        String figures = new String(
                FiguresJson.of(it, Editions.of(it, null).get(0).words(), notes, VERSION), StandardCharsets.UTF_8);
        LabelWish again = wish(List.of(), List.of(), figures);
        assertThat(LabelJob.of(before, null, again, VERSION).count()).isZero();
        LabelJob done = LabelJob.of(circuits(100), null, again, VERSION);
        assertThat(done.printed())
                .extracting(LabelNote::id)
                .contains("circuits")
                .doesNotContain("circuits-1");
        assertThat(done.gone()).isEmpty();
        try (PDDocument document =
                Loader.loadPDF(Objects.requireNonNull(done.files().get("a4.pdf")))) {
            assertThat(new PDFTextStripper().getText(document).replace('\u00a0', ' '))
                    .contains("1 of 3", "2 of 3", "3 of 3");
        }
        long strips = done.printed().stream()
                .filter(note -> note.id().startsWith("breakers"))
                .count();
        assertThat(done.count()).isEqualTo((int) strips + 3);
    }
}
