package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.render.Code;
import org.quaybook.render.Placed;
import org.quaybook.render.QrCode;

/**
 * Codes as they are after years on board, read by two programs from pictures of the printed sheets as fine as the dots of
 * printers. How much damage a code must bear is our own choice, no source; level H restores about 30 % of the codewords
 * (ISO/IEC 18004; from memory).
 */
class CodeDamageTest {

    private static final float[] PRINTERS = {203, 300, 600};

    @TempDir
    Path folder;

    /**
     * A code with its quiet zone in the dots of a printer.
     *
     * @param module dots along one module
     * @param modules along one side, without the quiet zone
     */
    private record Scan(BufferedImage image, double module, int modules) {}

    /** A picture of a damaged code, and whether both readers must read it or one is enough. */
    private record Damaged(String how, BufferedImage image, boolean both) {}

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void codesAreReadAfterDamage(String name) throws IOException, InterruptedException {
        areRead(name, DemoJob.demo(name));
    }

    /** The key makes the code of a sealed record two sizes larger, not its modules finer than legible. */
    @Test
    void aSealedRecordsCodeIsReadAfterDamage() throws IOException, InterruptedException {
        areRead("sealed", DemoJob.sealed("lantern-moth", folder));
    }

    private void areRead(String name, DemoJob job) throws IOException, InterruptedException {
        LabelsPrinted printed = job.print();
        int codes = 0;
        try (PDDocument document = Loader.loadPDF(printed.sheet().pdf())) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (LabelSetter.Sized sized : job.sized()) {
                for (Code code : codes(sized)) {
                    codes++;
                    Placed placed = placed(printed, sized.label().id());
                    for (float dpi : PRINTERS) {
                        BufferedImage page = renderer.renderImageWithDPI(placed.page() - 1, dpi, ImageType.GRAY);
                        check(
                                name + " " + placed.id() + " " + code.code() + " at " + dpi,
                                cut(page, placed, code, dpi));
                    }
                }
            }
        }
        assertThat(codes).isGreaterThanOrEqualTo(2);
    }

    private static List<Code> codes(LabelSetter.Sized sized) {
        return sized.label().marks().stream()
                .filter(Code.class::isInstance)
                .map(Code.class::cast)
                .toList();
    }

    private static Placed placed(LabelsPrinted printed, String id) {
        return printed.sheet().placed().stream()
                .filter(placed -> placed.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private void check(String code, Scan scan) throws IOException, InterruptedException {
        Optional<String> text = CodeReaders.zxing(scan.image());
        assertThat(text).as(code).isPresent();
        for (Damaged damaged : damaged(scan)) {
            List<Optional<String>> read =
                    List.of(CodeReaders.zxing(damaged.image()), CodeReaders.zbar(damaged.image(), folder));
            if (damaged.both()) {
                assertThat(read)
                        .as(code + " " + damaged.how() + ", a module of " + scan.module() + " dots")
                        .containsOnly(text);
            } else {
                assertThat(read).as(code + " " + damaged.how()).contains(text).isSubsetOf(text, Optional.empty());
            }
        }
    }

    /**
     * The patches hide 15 % of the symbol without its quiet zone. None lies over one of the three large squares: a code
     * without one is not found at all, whatever its level restores. A scratch over the whole width would cut more
     * codewords than 30 %, so none is asked for. One reader is enough where the other is known to be weak: ZXing takes
     * the fourth corner from the small square that the patch in the corner hides, and either may lose one code of small
     * modules when it is turned or speckled. Of modules of four dots ZXing loses a faded one now and then, as they happen to
     * fall on the dots.
     */
    private static List<Damaged> damaged(Scan scan) {
        double lens = scan.module() / 4;
        double side = Math.sqrt(0.15) * scan.modules();
        double middle = (scan.modules() - side) / 2;
        double corner = scan.modules() - side;
        List<Damaged> all = new ArrayList<>();
        all.add(new Damaged("as printed", scan.image(), true));
        all.add(new Damaged("blurred, sigma a quarter of a module", blurred(scan.image(), lens), true));
        all.add(new Damaged("5 % of its dots wrong, through that lens", blurred(noisy(scan.image()), lens), false));
        for (int degrees : new int[] {7, 33, 90, 180}) {
            all.add(new Damaged("turned by " + degrees, turned(scan.image(), degrees), false));
        }
        all.add(new Damaged("faded to 60 % of its contrast", faded(scan.image()), scan.module() >= 5));
        for (Color patch : List.of(Color.WHITE, Color.BLACK)) {
            all.add(new Damaged("hidden in the middle, " + patch, hidden(scan, middle, side, patch), true));
            all.add(new Damaged("hidden in the corner, " + patch, hidden(scan, corner, side, patch), false));
        }
        return all;
    }

    private static Scan cut(BufferedImage page, Placed placed, Code code, float dpi) {
        double dots = dpi / 25.4;
        int side = (int) (code.box().width() * dots);
        int x = (int) Math.round((placed.x() + code.x()) * dots);
        int y = (int) Math.round((placed.y() + code.y()) * dots);
        return new Scan(
                page.getSubimage(x, y, side, side),
                code.module() * dots,
                code.code().size());
    }

    private static BufferedImage grey(int width, int height) {
        return new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    }

    private static BufferedImage copy(BufferedImage image) {
        BufferedImage copy = grey(image.getWidth(), image.getHeight());
        copy.getRaster().setRect(image.getRaster().createTranslatedChild(0, 0));
        return copy;
    }

    private static BufferedImage blurred(BufferedImage image, double sigma) {
        int reach = (int) Math.ceil(3 * sigma);
        float[] weights = new float[2 * reach + 1];
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
            weights[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += weights[i + reach];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        BufferedImage wide = padded(image, reach);
        BufferedImage across = new ConvolveOp(new Kernel(weights.length, 1, weights)).filter(wide, null);
        return new ConvolveOp(new Kernel(1, weights.length, weights)).filter(across, null);
    }

    private static BufferedImage padded(BufferedImage image, int edge) {
        BufferedImage padded = grey(image.getWidth() + 2 * edge, image.getHeight() + 2 * edge);
        Graphics2D pen = padded.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, padded.getWidth(), padded.getHeight());
        pen.drawImage(image, edge, edge, null);
        pen.dispose();
        return padded;
    }

    private static BufferedImage noisy(BufferedImage image) {
        BufferedImage noisy = copy(image);
        Random random = new Random(18004);
        for (int y = 0; y < noisy.getHeight(); y++) {
            for (int x = 0; x < noisy.getWidth(); x++) {
                if (random.nextDouble() < 0.05) {
                    noisy.getRaster().setSample(x, y, 0, random.nextBoolean() ? 255 : 0);
                }
            }
        }
        return noisy;
    }

    private static BufferedImage turned(BufferedImage image, int degrees) {
        int edge = image.getWidth() / 4;
        BufferedImage turned = grey(image.getWidth() + 2 * edge, image.getHeight() + 2 * edge);
        Graphics2D pen = turned.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, turned.getWidth(), turned.getHeight());
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.rotate(Math.toRadians(degrees), turned.getWidth() / 2.0, turned.getHeight() / 2.0);
        pen.drawImage(image, edge, edge, null);
        pen.dispose();
        return turned;
    }

    private static BufferedImage faded(BufferedImage image) {
        BufferedImage faded = copy(image);
        for (int y = 0; y < faded.getHeight(); y++) {
            for (int x = 0; x < faded.getWidth(); x++) {
                int value = faded.getRaster().getSample(x, y, 0);
                faded.getRaster().setSample(x, y, 0, 255 - (int) Math.round((255 - value) * 0.6));
            }
        }
        return faded;
    }

    /** A square patch, from its left and top edge on, in modules. */
    private static BufferedImage hidden(Scan scan, double from, double side, Color colour) {
        BufferedImage hidden = copy(scan.image());
        int at = (int) Math.round((QrCode.QUIET_ZONE + from) * scan.module());
        int wide = (int) Math.round(side * scan.module());
        Graphics2D pen = hidden.createGraphics();
        pen.setColor(colour);
        pen.fillRect(at, at, wide, wide);
        pen.dispose();
        return hidden;
    }
}
