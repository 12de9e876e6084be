package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorSpace;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceCMYKColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceGrayColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceRGBColor;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.DemoJobs;
import org.quaybook.diag.Place;
import org.quaybook.job.Colours;
import org.quaybook.job.Installer;
import org.quaybook.record.Branding;
import org.quaybook.render.Colour;
import org.quaybook.render.Contrast;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Handbook;
import org.quaybook.render.Resources;

/**
 * Every letter of the guide against what it is printed on, as a page shows it: 4.5 to 1 at least, whatever its size (WCAG
 * 2.2, 1.4.3). That the formula is that of the definition is tested in {@link PaletteTest}.
 */
class PageContrastTest {

    private static final int DPI = 72;

    /** No letter fills so much of its surroundings. */
    private static final double MOSTLY = 0.9;

    static Stream<String> demos() {
        return DemoJobs.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyLetterIsReadable(String demo) throws IOException {
        assertThat(tooWeak(DemoJob.of(demo).guide())).isEmpty();
    }

    /** Colours that nobody could read white on, or on white; the pages darken them. */
    @ParameterizedTest
    @ValueSource(strings = {"#ffe600", "#ffffff", "#7f7f7f", "#00ff66", "#ff7711"})
    void anInstallersColoursMakeNoLetterUnreadable(String colour) throws IOException {
        DemoJob demo = DemoJob.of("lantern-moth");
        Installer installer = new Installer(
                "Firm",
                null,
                null,
                null,
                List.of(),
                null,
                null,
                null,
                new Colours(colour, colour),
                null,
                /* guidePrints= */ null,
                "https://x.example/",
                null,
                null,
                Place.NOWHERE);
        assertThat(tooWeak(new DemoJob(demo.assessment(), Branding.of(installer, Optional.empty())).guide()))
                .isEmpty();
    }

    /** Guards the check itself: grey on white, white on white and black on dark blue are found. */
    @Test
    void findsWhatCannotBeRead() throws IOException {
        String page = "<html xmlns='http://www.w3.org/1999/xhtml'><head><title>t</title><style>"
                + "body { font-family: 'Source Sans Pro' }</style></head><body>"
                + "<p style='color: #999999'>a</p><p style='color: #ffffff'>b</p>"
                + "<p style='color: #000000; background-color: #17425f'>c</p><p style='color: #595959'>d</p></body></html>";
        DocumentInfo info = new DocumentInfo("t", "", "", "en", LocalDate.of(2026, 3, 1));
        assertThat(tooWeak(new Handbook().toPdf(page, info, Resources.none())))
                .hasSize(3)
                .noneMatch(letter -> letter.endsWith("d"));
    }

    /** Letter colour on ground colour, each pair once. */
    private static Set<String> tooWeak(byte[] pdf) throws IOException {
        Set<String> weak = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, DPI, ImageType.RGB);
                Letters letters = new Letters(image, weak, page + 1);
                letters.setStartPage(page + 1);
                letters.setEndPage(page + 1);
                letters.getText(document);
            }
        }
        return weak;
    }

    /** Looks at each letter as it is drawn, with the colour it is drawn in. */
    private static final class Letters extends PDFTextStripper {

        private final BufferedImage image;
        private final Set<String> weak;
        private final int page;

        Letters(BufferedImage image, Set<String> weak, int page) {
            this.image = image;
            this.weak = weak;
            this.page = page;
            addOperator(new SetNonStrokingColor(this));
            addOperator(new SetNonStrokingColorSpace(this));
            addOperator(new SetNonStrokingDeviceCMYKColor(this));
            addOperator(new SetNonStrokingDeviceGrayColor(this));
            addOperator(new SetNonStrokingDeviceRGBColor(this));
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            super.processTextPosition(letter);
            if (letter.getUnicode().isBlank()) {
                return;
            }
            try {
                Colour ink = colour(getGraphicsState().getNonStrokingColor().toRGB());
                Colour ground = ground(letter, ink);
                if (Contrast.ratio(ink, ground) < Contrast.TEXT - 0.05) {
                    weak.add("%s on %s, page %d: %s".formatted(ink, ground, page, letter.getUnicode()));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /** The colour that most of the letter's surroundings have; its own if there is next to nothing else. */
        private Colour ground(TextPosition letter, Colour ink) {
            int left = (int) letter.getXDirAdj() - 1;
            int right = (int) Math.ceil(letter.getXDirAdj() + letter.getWidthDirAdj()) + 1;
            int bottom = (int) letter.getYDirAdj() + (int) (letter.getFontSizeInPt() * 0.2);
            int top = (int) (letter.getYDirAdj() - letter.getFontSizeInPt() * 0.8);
            Map<Integer, Integer> seen = new HashMap<>();
            for (int y = Math.max(0, top); y <= Math.min(image.getHeight() - 1, bottom); y++) {
                for (int x = Math.max(0, left); x <= Math.min(image.getWidth() - 1, right); x++) {
                    seen.merge(image.getRGB(x, y) & 0xffffff, 1, Integer::sum);
                }
            }
            int own = ink.red() << 16 | ink.green() << 8 | ink.blue();
            int all = seen.values().stream().mapToInt(Integer::intValue).sum();
            if (seen.getOrDefault(own, 0) > MOSTLY * all) {
                return ink;
            }
            seen.remove(own);
            return seen.entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .map(most -> colour(most.getKey()))
                    .orElse(Colour.WHITE);
        }

        private static Colour colour(int rgb) {
            return new Colour(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
        }
    }
}
