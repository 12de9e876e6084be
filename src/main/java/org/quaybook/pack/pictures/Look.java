package org.quaybook.pack.pictures;

/**
 * The colours of pictures. A picture says nothing by them alone: it is the same in black and white.
 *
 * @param main of heavy lines and filled bars, dark enough for text, {@code #rrggbb}
 * @param tint of the ground of boxes, light enough for text on it, {@code #rrggbb}
 */
public record Look(String main, String tint) {

    /** Of what is neither heavy nor light. */
    static final String INK = "#1a1a1a";

    /** Of lines to read values along. */
    static final String FAINT = "#b5b5b5";

    static final String GROUND = "#ffffff";

    /** Of the stretch below the reserve. */
    static final String SHADE = "#e6e6e6";
}
