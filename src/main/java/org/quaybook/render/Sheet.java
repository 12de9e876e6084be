package org.quaybook.render;

/**
 * Plain paper or foil that labels are printed on to be cut apart, millimetres.
 *
 * @param width of the paper
 * @param height of the paper
 * @param margin what the printer leaves white on all sides
 * @param gap between labels
 */
public record Sheet(double width, double height, double margin, double gap) implements Medium {

    /** ISO 216 A4; margin and gap are common practice, no source. */
    public static final Sheet A4 = new Sheet(210, 297, 10, 5);

    /** ANSI/ASME Y14.1 size A, 8.5 x 11 inch; margin and gap are common practice, no source. */
    public static final Sheet LETTER = new Sheet(215.9, 279.4, 10, 5);

    /** Height of the header line and of the foot with its rule, inside the margins. */
    static final double HEADER = 8;

    static final double FOOTER = 13;

    /** Length of the rule to check the print with. */
    static final double RULE = 100;

    public Sheet {
        if (!(margin >= 0 && gap >= 0) || width - 2 * margin < RULE || height - 2 * margin <= HEADER + FOOTER) {
            throw new IllegalArgumentException("no room on a sheet of " + width + " x " + height + " mm");
        }
    }

    @Override
    public Box room() {
        return new Box(margin, margin + HEADER, width - 2 * margin, height - 2 * margin - HEADER - FOOTER);
    }
}
