package org.quaybook.job;

/** How a stock of labels is printed. */
public enum StockPrinting {
    @Means("laser printer")
    LASER,
    @Means("inkjet printer; the print does not last outdoors")
    INKJET,
    @Means("label printer with a ribbon; a resin ribbon on polyester lasts")
    THERMAL_TRANSFER,
    @Means("label printer without a ribbon; the print fades in light and warmth, so only for the time being")
    DIRECT_THERMAL,
    @Means("cut or burnt into two-coloured plate")
    ENGRAVING
}
