package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.Contrast;
import org.quaybook.render.Ground;
import org.quaybook.render.Label;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.Picture;
import org.quaybook.render.TextBlock;

/**
 * A label for a printer that has black only, without any grey: the head of a thermal printer burns a dot or does not.
 * What a colour said is said by shape, by pattern and by the word. Which pattern stands for which signal word is our own
 * choice, no source: DANGER white on black, WARNING between hatched strips in a heavy frame, CAUTION in a heavy frame,
 * NOTICE in a thin one and without a triangle.
 */
final class OneColour {

    private static final double HEAVY = 1;
    private static final double THIN = 0.3;

    /** Height of the hatched strips above and below WARNING, and width of a stripe, millimetres. */
    private static final double HATCH = 1;

    private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}\\b");

    /** Where the ring of a prohibition begins: the hole in it tells it from other shapes in red. */
    private static final String RING = "<path fill=\"" + SignColours.RED + "\" fill-rule=";

    /**
     * A light edge on both sides of the bar, a quarter of the bar wide, where red lay on black: without it the bar and the
     * picture were one blot. Under the ring, which covers its ends.
     */
    private static final String BAR_EDGE =
            "<rect fill=\"#ffffff\" x=\"80\" y=\"440\" width=\"840\" height=\"120\" transform=\"rotate(45 500 500)\"/>";

    private OneColour() {}

    /** The same label in black on white, every edge where it was. */
    static Label of(Label label) {
        Label.Caption caption = label.caption();
        return new Label(
                label.id(),
                label.width(),
                label.height(),
                marks(label.marks()),
                caption == null ? null : new Label.Caption(caption.height(), marks(caption.marks())),
                label.cut());
    }

    private static List<Mark> marks(List<Mark> marks) {
        List<Mark> black = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Panel panel) {
                boolean onWhite = Ground.of(panel.box(), black).get(0).equals(Colour.WHITE);
                black.addAll(onWhite ? panel(panel) : List.of(plain(panel)));
            } else if (mark instanceof TextBlock text) {
                Colour ground = Ground.of(text.box(), black).get(0);
                Colour ink = Colour.of(Contrast.inkOn(ground));
                black.add(new TextBlock(
                        text.box(), text.paragraphs(), text.style().in(ink), text.turn()));
            } else if (mark instanceof Picture picture) {
                black.add(new Picture(picture.box(), svg(picture.svg()), picture.alternative()));
            } else {
                black.add(mark);
            }
        }
        return black;
    }

    private static List<Mark> panel(Panel panel) {
        Colour fill = panel.fill();
        if (SignColours.ORANGE.equals(fill)) {
            Box box = panel.box();
            Box top = new Box(box.x(), box.y(), box.width(), HATCH);
            Box foot = new Box(box.x(), box.y() + box.height() - HATCH, box.width(), HATCH);
            return List.of(framed(panel, HEAVY), new Picture(top, hatch(top)), new Picture(foot, hatch(foot)));
        }
        if (SignColours.YELLOW.equals(fill)) {
            return List.of(framed(panel, HEAVY));
        }
        if (SignColours.BLUE.equals(fill)) {
            return List.of(framed(panel, THIN));
        }
        if (fill != null && !isDark(fill) && !fill.equals(Colour.WHITE) && panel.stroke() == null) {
            return List.of(framed(panel, THIN));
        }
        return List.of(plain(panel));
    }

    /** Without a frame: on a black ground a light panel is seen by itself, as the stripe of an earth's band. */
    private static Panel plain(Panel panel) {
        return new Panel(
                panel.box(), ink(panel.fill()), ink(panel.stroke()), panel.strokeWidth(), panel.cornerRadius());
    }

    private static Panel framed(Panel panel, double width) {
        double most = Math.min(panel.box().width(), panel.box().height()) / 2;
        return new Panel(panel.box(), Colour.WHITE, Colour.BLACK, Math.min(width, most), panel.cornerRadius());
    }

    /** White stripes at 45° over the heavy frame, whole ones only. */
    private static String hatch(Box strip) {
        StringBuilder stripes = new StringBuilder();
        for (double x = HATCH; x + 2 * HATCH <= strip.width() - HATCH; x += 2 * HATCH) {
            stripes.append(String.format(
                    Locale.ROOT, "M%.3f %.3fH%.3fL%.3f 0H%.3fZ", x, HATCH, x + HATCH, x + 2 * HATCH, x + HATCH));
        }
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1$.3f %2$.3f\" width=\"%1$.3f\" height=\"%2$.3f\">"
                        + "<path fill=\"#ffffff\" d=\"%3$s\"/></svg>",
                strip.width(),
                strip.height(),
                stripes);
    }

    /** A drawing with its colours made black or white; in a prohibition the bar gets a light edge. */
    static String svg(String colours) {
        String edged = colours.replace(RING, BAR_EDGE + RING);
        return COLOUR.matcher(edged).replaceAll(colour -> String.valueOf(ink(Colour.of(colour.group()))));
    }

    private static @Nullable Colour ink(@Nullable Colour colour) {
        if (colour == null) {
            return null;
        }
        return isDark(colour) ? Colour.BLACK : Colour.WHITE;
    }

    /** Whether a colour can be read on white. */
    private static boolean isDark(Colour colour) {
        return Contrast.ratio(colour, Colour.WHITE) >= Contrast.TEXT;
    }
}
