package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.job.StockReader;
import picocli.CommandLine.Help.Ansi;

/** The commands about labels and what they are printed on. */
class LabelsCommandTest {

    private static final String BARGE = "demo-jobs/lantern-moth";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Ansi.OFF, arguments);
    }

    private Path labels() {
        return folder.resolve("26-118");
    }

    @Test
    void printsOneLabelAgain() {
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--only", "fuse-F1"))
                .isZero();
        assertThat(labels())
                .isDirectoryContaining("glob:**/a4.pdf")
                .isDirectoryContaining("glob:**/places.pdf")
                .isDirectoryContaining("glob:**/labels.json");
        assertThat(out.toString()).contains("fuse-F1");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void warnsOfStockThatFades() {
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--only", "fuse-F1", "--stock", "roll-62-direct"))
                .isZero();
        assertThat(err.toString()).contains("roll-62-direct").contains("fade");
    }

    @Test
    void readsStockOfOnesOwn() throws IOException {
        Path own = folder.resolve("own.yaml");
        Files.writeString(own, """
                id: own-tape
                title: tape of 80 mm
                printing: thermal-transfer
                dots-per-mm: 8
                roll: { width: 80 mm, edge: 2 mm, gap: 3 mm }
                """);
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--only", "fuse-F1", "--stock", own.toString()))
                .as(err.toString())
                .isZero();
        try (PDDocument printed = Loader.loadPDF(Files.readAllBytes(labels().resolve("own-tape.pdf")))) {
            PDRectangle page = printed.getPage(0).getMediaBox();
            assertThat(page.getWidth() / 72 * 25.4).isBetween(79.9, 80.1);
        }
    }

    /** The stock is 96 mm wide and 67 mm high, less 2 mm that the printer may miss on each side. */
    @Test
    void aStockWithoutRoomIsToldAsItLiesAndWithOneThatHasIt() {
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--stock", "a4-2x4"))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("“a4-2x4” has at most 92 × 63 mm", "--stock a4-2x4,a4");
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--stock", "a4-2x4,a4"))
                .isZero();
    }

    @Test
    void makesPicturesOfEachLabelInTheDotsOfItsStock() throws IOException {
        assertThat(run(
                        "labels",
                        BARGE,
                        "--to",
                        folder.toString(),
                        "--only",
                        "record,inlet",
                        "--stock",
                        "roll-102,a4",
                        "--also",
                        "PNG,PNG_ONE_BIT,SVG,TEXT",
                        "--dpi",
                        "600"))
                .as(err.toString())
                .isZero();
        for (String id : List.of("record", "inlet")) {
            for (String file : List.of("png/%s.png", "one-bit/%s.png", "svg/%s.svg", "text/%s.txt")) {
                assertThat(labels().resolve(file.formatted(id))).isNotEmptyFile();
            }
        }
        assertThat(labels().resolve("text/inlet.txt")).content().contains("230");
        // roll-102 says 8 dots a millimetre, whatever --dpi says
        assertThat(ImageIO.read(labels().resolve("png/record.png").toFile()).getWidth() % 8)
                .isZero();
    }

    @Test
    void writesNothingForWrongInput() {
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--stock", "a4-2x44"))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("a4-2x4");
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--stock", "a4-2x4", "--start", "9"))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--only", "fuse-F9"))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--since", folder.toString()))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--dpi", "150"))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--move", "1"))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void printsNothingWhileAFindingForbids() {
        assertThat(run("labels", BARGE + "/as-found.yaml", "--to", folder.toString()))
                .isEqualTo(Exit.FORBIDDEN);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void leavesOtherFoldersAlone() throws IOException {
        Files.createDirectories(labels());
        Files.writeString(labels().resolve("diary.txt"), "mine");
        assertThat(run("labels", BARGE, "--to", folder.toString(), "--only", "fuse-F1"))
                .isEqualTo(Exit.NOT_WRITTEN);
        assertThat(labels().resolve("diary.txt")).hasContent("mine");
    }

    @Test
    void listsStocksAndMakesAProof() throws IOException {
        assertThat(run("stock")).isZero();
        assertThat(out.toString()).contains(StockReader.standard());
        Path proof = folder.resolve("proof.pdf");
        assertThat(run("stock", "letter-2x5", "--proof", proof.toString(), "--move", "0.5,-1"))
                .isZero();
        try (PDDocument printed = Loader.loadPDF(Files.readAllBytes(proof))) {
            assertThat(printed.getNumberOfPages()).isEqualTo(1);
            assertThat(List.of(printed.getPage(0).getMediaBox().getWidth())).containsExactly(612f);
        }
        assertThat(run("stock", "nothing")).isEqualTo(Exit.BAD_INPUT);
    }
}
