package org.quaybook.render;

/** How the print gets onto the stock. */
public enum Printing {
    LASER(false, false),
    INKJET(false, false),
    THERMAL_TRANSFER(true, false),
    DIRECT_THERMAL(true, true),
    ENGRAVING(true, false);

    private final boolean oneColour;
    private final boolean fading;

    Printing(boolean oneColour, boolean fading) {
        this.oneColour = oneColour;
        this.fading = fading;
    }

    /** Whether it has one colour only, that of the ribbon, the paper or the layer below. */
    public boolean oneColour() {
        return oneColour;
    }

    /** Whether light and warmth make the print fade within months (common practice, no source). */
    public boolean fading() {
        return fading;
    }
}
