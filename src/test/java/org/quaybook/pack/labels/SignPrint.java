package org.quaybook.pack.labels;

import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Label;
import org.quaybook.render.LabelSheet;
import org.quaybook.render.LabelSheetResult;
import org.quaybook.render.Picture;
import org.quaybook.render.Placed;
import org.quaybook.render.Sheet;
import org.quaybook.render.SheetLines;

/** A label as it is printed, measured in the pixels of PDFBox's rendering at 600 dpi. */
record SignPrint(BufferedImage image, double left, double top) {

    /** Height of the signs that are measured, millimetres. */
    static final double HEIGHT = 100;

    private static final float DPI = 600;
    private static final double PIXELS = DPI / 25.4;

    /** A sign alone on a label. */
    static Label label(Sign sign) {
        double width = sign.boxWidth(HEIGHT);
        double height = sign.boxHeight(HEIGHT);
        return new Label(sign.name(), width, height, List.of(new Picture(new Box(0, 0, width, height), sign.svg())));
    }

    static SignPrint of(Sign sign) throws IOException {
        return of(label(sign), Map.of());
    }

    /** A label as a printer prints it that knows no half-tones: each dot is printed or not. */
    static SignPrint inDots(Label label) throws IOException {
        return of(
                label,
                Map.of(
                        RenderingHints.KEY_ANTIALIASING,
                        RenderingHints.VALUE_ANTIALIAS_OFF,
                        RenderingHints.KEY_TEXT_ANTIALIASING,
                        RenderingHints.VALUE_TEXT_ANTIALIAS_OFF));
    }

    private static SignPrint of(Label label, Map<RenderingHints.Key, ?> hints) throws IOException {
        DocumentInfo info = new DocumentInfo("sign", "", "", "en", LocalDate.of(2026, 3, 1));
        LabelSheetResult sheet = LabelSheet.toPdf(List.of(label.uncut()), Sheet.A4, new SheetLines("", "", ""), info);
        Placed placed = sheet.placed().get(0);
        try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
            PDFRenderer renderer = new PDFRenderer(document);
            if (!hints.isEmpty()) {
                renderer.setRenderingHints(new RenderingHints(hints));
            }
            return new SignPrint(renderer.renderImageWithDPI(0, DPI, ImageType.RGB), placed.x(), placed.y());
        }
    }

    Color at(double x, double y) {
        return new Color(image.getRGB((int) ((left + x) * PIXELS), (int) ((top + y) * PIXELS)));
    }

    /** Length in millimetres of a line from a point on which the colour is near the given one. */
    double length(Colour colour, double x, double y, double towardsX, double towardsY, double most) {
        double step = 0.02;
        int hits = 0;
        for (double at = 0; at < most; at += step) {
            hits += near(at(x + towardsX * at, y + towardsY * at), colour) ? 1 : 0;
        }
        return hits * step;
    }

    /** Area in square millimetres of a box on which the test of the colour holds. */
    double area(double width, double height, IntPredicate test) {
        long hits = 0;
        int fromX = (int) Math.round(left * PIXELS);
        int fromY = (int) Math.round(top * PIXELS);
        for (int row = 0; row < height * PIXELS; row++) {
            for (int column = 0; column < width * PIXELS; column++) {
                hits += test.test(image.getRGB(fromX + column, fromY + row)) ? 1 : 0;
            }
        }
        return hits / PIXELS / PIXELS;
    }

    static boolean near(Color seen, Colour colour) {
        return Math.abs(seen.getRed() - colour.red()) < 24
                && Math.abs(seen.getGreen() - colour.green()) < 24
                && Math.abs(seen.getBlue() - colour.blue()) < 24;
    }
}
