package org.quaybook.render;

/**
 * How labels are put onto a stock.
 *
 * @param start label of the first die-cut sheet to print first, from 1, row by row: the ones before it are used up
 * @param offsetX how far the whole print is moved to the right, millimetres, to make up for the printer
 * @param offsetY how far it is moved down, millimetres
 * @param bleed how far filled panels that reach a label's edge are drawn beyond it, millimetres; for plain sheets only
 * @param turned whether labels lie turned by a quarter to the left; not for plain sheets
 */
public record PrintSettings(int start, double offsetX, double offsetY, double bleed, boolean turned) {

    /** Nothing special. */
    public static final PrintSettings USUAL = new PrintSettings(1, 0, 0, 0, false);

    /** A printer that is further off needs mending (common practice, no source). */
    public static final double MOST_OFFSET = 10;

    /** Between labels lie 5 mm, and the cut marks stand outside the bleed (common practice: 3 mm). */
    public static final double MOST_BLEED = 3;

    public PrintSettings startingAt(int label) {
        return new PrintSettings(label, offsetX, offsetY, bleed, turned);
    }

    public PrintSettings movedBy(double right, double down) {
        return new PrintSettings(start, right, down, bleed, turned);
    }

    public PrintSettings withBleed(double millimetres) {
        return new PrintSettings(start, offsetX, offsetY, millimetres, turned);
    }

    public PrintSettings turnedLabels() {
        return new PrintSettings(start, offsetX, offsetY, bleed, true);
    }

    /** Reports what does not go with a stock. */
    void check(Medium medium, Faults faults) {
        int most = medium instanceof DieCut sheet ? sheet.count() : 1;
        if (start < 1 || start > most) {
            faults.add(RenderMessage.START_BEYOND_SHEET, start, most);
        }
        if (!(Math.abs(offsetX) <= MOST_OFFSET && Math.abs(offsetY) <= MOST_OFFSET)) {
            faults.add(RenderMessage.PRINT_OFFSET_TOO_LARGE, offsetX, offsetY, MOST_OFFSET);
        }
        double mostBleed = medium instanceof Sheet ? MOST_BLEED : 0;
        if (!(bleed >= 0 && bleed <= mostBleed)) {
            faults.add(RenderMessage.BLEED_OUT_OF_RANGE, bleed, mostBleed);
        }
        if (turned && medium instanceof Sheet) {
            faults.add(RenderMessage.TURNED_ON_PLAIN_SHEET);
        }
    }
}
