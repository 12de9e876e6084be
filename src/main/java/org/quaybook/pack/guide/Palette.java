package org.quaybook.pack.guide;

import java.util.Locale;
import java.util.Map;
import org.quaybook.record.Branding;
import org.quaybook.record.Rows;
import org.quaybook.render.Colour;

/**
 * The installer's colours made fit for reading: text and bars keep a contrast of 4.5 to 1 against white (WCAG 2.2,
 * success criterion 1.4.3), whatever the profile asks for.
 */
final class Palette {

    private static final double READABLE = 4.5;
    private static final double DARKER = 0.9;
    private static final double TINT = 0.10;

    private final Colour main;
    private final Colour accent;

    Palette(Branding branding) {
        this.main = readable(Colour.of(branding.main()));
        this.accent = Colour.of(branding.accent());
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("main", hex(main))
                .put("accent", hex(accent))
                .put("tint", hex(tint()))
                .map();
    }

    /** The colour itself, or as much darker as white paper asks for. */
    private static Colour readable(Colour colour) {
        Colour darker = colour;
        while (contrast(darker, Colour.WHITE) < READABLE) {
            darker = new Colour(
                    (int) (darker.red() * DARKER), (int) (darker.green() * DARKER), (int) (darker.blue() * DARKER));
        }
        return darker;
    }

    private Colour tint() {
        return new Colour(towardsWhite(main.red()), towardsWhite(main.green()), towardsWhite(main.blue()));
    }

    private static int towardsWhite(int part) {
        return (int) Math.round(255 - (255 - part) * TINT);
    }

    /** Contrast ratio of WCAG 2.2, 1 to 21. */
    static double contrast(Colour a, Colour b) {
        double lighter = Math.max(luminance(a), luminance(b));
        double darker = Math.min(luminance(a), luminance(b));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Colour colour) {
        return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static String hex(Colour colour) {
        return String.format(Locale.ROOT, "#%02x%02x%02x", colour.red(), colour.green(), colour.blue());
    }
}
