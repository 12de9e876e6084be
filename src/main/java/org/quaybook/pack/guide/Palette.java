package org.quaybook.pack.guide;

import java.util.Locale;
import java.util.Map;
import org.quaybook.pack.pictures.Look;
import org.quaybook.record.Branding;
import org.quaybook.record.Rows;
import org.quaybook.render.Colour;
import org.quaybook.render.Contrast;

/**
 * The installer's colours made fit for reading: text and bars keep a contrast of 4.5 to 1 against white (WCAG 2.2,
 * success criterion 1.4.3), whatever the profile asks for.
 */
public final class Palette {

    private static final double DARKER = 0.9;
    private static final double TINT = 0.10;

    private final Colour main;
    private final Colour accent;

    public Palette(Branding branding) {
        this.main = readable(Colour.of(branding.main()));
        this.accent = Colour.of(branding.accent());
    }

    /** The colours as {@code #rrggbb}: {@code main}, {@code accent}, {@code tint}. */
    public Map<String, Object> facts() {
        return new Rows()
                .put("main", hex(main))
                .put("accent", hex(accent))
                .put("tint", hex(tint()))
                .map();
    }

    /** The colours of the pictures. */
    public Look look() {
        return new Look(hex(main), hex(tint()));
    }

    /** The colour itself, or as much darker as white paper asks for. */
    private static Colour readable(Colour colour) {
        Colour darker = colour;
        while (Contrast.ratio(darker, Colour.WHITE) < Contrast.TEXT) {
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

    private static String hex(Colour colour) {
        return String.format(Locale.ROOT, "#%02x%02x%02x", colour.red(), colour.green(), colour.blue());
    }
}
