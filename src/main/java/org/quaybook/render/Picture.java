package org.quaybook.render;

/**
 * A drawing, scaled to its box with its proportions kept and centred there.
 *
 * @param svg an SVG document; its text may use our own font families only
 * @param alternative what it shows, for those who cannot see it; empty for decoration and for what words beside it say
 */
public record Picture(Box box, String svg, String alternative) implements Mark {

    /** A drawing that says nothing of its own. */
    public Picture(Box box, String svg) {
        this(box, svg, "");
    }
}
