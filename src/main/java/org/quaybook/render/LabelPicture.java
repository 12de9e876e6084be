package org.quaybook.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import org.quaybook.render.TextStyle.Listing;

/** One label by itself: as a picture of dots for label printers, as outlines or words for engravers. */
public final class LabelPicture {

    private static final double HAIRLINE = 0.05;

    private LabelPicture() {}

    /**
     * A PNG in colours, one pixel a dot.
     *
     * @param dots of the printer; the codes of the label must be made of whole ones
     * @throws RenderException if a text does not fit its box, cannot be told from its ground, a character is in no font or
     *     a drawing is faulty: all of them at once
     */
    public static byte[] png(Label label, Dots dots) {
        return png(label, dots, BufferedImage.TYPE_INT_RGB);
    }

    /**
     * A PNG of black and white, one bit a dot, without grey between.
     *
     * @param label one of black alone: what has a colour turns black or white as its lightness says
     * @throws RenderException as above
     */
    public static byte[] oneBit(Label label, Dots dots) {
        return png(label, dots, BufferedImage.TYPE_BYTE_BINARY);
    }

    private static byte[] png(Label label, Dots dots, int type) {
        PreparedLabel prepared = prepared(label);
        BufferedImage image = new BufferedImage(dots.in(label.width()), dots.in(label.height()), type);
        boolean grey = type != BufferedImage.TYPE_BYTE_BINARY;
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING,
                grey ? RenderingHints.VALUE_ANTIALIAS_ON : RenderingHints.VALUE_ANTIALIAS_OFF);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        prepared.draw(new GraphicsCanvas(graphics, dots));
        graphics.dispose();
        return encoded(image, dots);
    }

    private static PreparedLabel prepared(Label label) {
        Faults faults = new Faults(label.id());
        PreparedLabel prepared = PreparedLabel.bare(label, faults);
        faults.throwIfAny();
        return prepared;
    }

    private static byte[] encoded(BufferedImage image, Dots dots) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            IIOMetadata about = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
            scale(about, dots);
            writer.setOutput(stream);
            writer.write(new IIOImage(image, null, about));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** The pHYs chunk (ISO/IEC 15948): without it a program prints the picture at a size of its own. */
    private static void scale(IIOMetadata about, Dots dots) throws IIOInvalidTreeException {
        String perMetre = Integer.toString(dots.perMetre());
        IIOMetadataNode physical = new IIOMetadataNode("pHYs");
        physical.setAttribute("pixelsPerUnitXAxis", perMetre);
        physical.setAttribute("pixelsPerUnitYAxis", perMetre);
        physical.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
        root.appendChild(physical);
        about.mergeTree("javax_imageio_png_1.0", root);
    }

    /**
     * An SVG in true millimetres: letters are outlines, a code is one path, and the edge to cut along is a group of its
     * own.
     *
     * @throws RenderException as above
     */
    public static String svg(Label label) {
        PreparedLabel prepared = prepared(label);
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$smm\" height=\"%2$smm\" viewBox=\"0 0 %1$s %2$s\">\n",
                Millimetres.plain(label.width()),
                Millimetres.plain(label.height())));
        out.append("<g id=\"print\">\n");
        SvgCanvas canvas = new SvgCanvas(out);
        prepared.draw(canvas);
        out.append("</g>\n<g id=\"cut\">\n");
        canvas.stroke(new Box(0, 0, label.width(), label.height()), 0, Colour.BLACK, HAIRLINE);
        return out.append("</g>\n</svg>\n").toString();
    }

    /**
     * The words of a label in the order of reading, a line each. What a tag says on several of its sides is said once; each
     * cell of a table is said, whatever another one says.
     */
    public static String text(Label label) {
        List<String> lines = new ArrayList<>();
        for (Mark mark : label.marks()) {
            if (mark instanceof TextBlock block) {
                for (int i = 0; i < block.paragraphs().size(); i++) {
                    String number = block.style().listing() == Listing.NUMBERS ? (i + 1) + ". " : "";
                    lines.add(number + block.paragraphs().get(i).replace("\u00ad", ""));
                }
            } else if (mark instanceof Code code) {
                lines.add(code.code().text());
            }
        }
        return String.join("\n", once(lines)) + "\n";
    }

    /** The first of equal runs of lines that make up the whole; all if it is no such repetition. */
    private static List<String> once(List<String> lines) {
        for (int length = 1; length <= lines.size() / 2; length++) {
            int run = length;
            if (lines.size() % run == 0
                    && IntStream.range(run, lines.size())
                            .allMatch(i -> lines.get(i).equals(lines.get(i - run)))) {
                return lines.subList(0, run);
            }
        }
        return lines;
    }
}
