package org.quaybook.pack.labels;

/** From how far something printed is read. The distances are common practice, no source. */
enum LabelReading {
    /** The sheet itself, in the hand. */
    PAPER(0.33),
    /** A phone held before a code. */
    SCAN(0.3),
    /** Tags, stickers and schedules: somebody comes close. */
    HAND(0.4),
    /** Panels and lids: somebody stands before them. */
    PANEL(0.7),
    /** Outside: somebody comes near in a hurry. */
    APPROACH(1.0);

    private final double metres;

    LabelReading(double metres) {
        this.metres = metres;
    }

    double metres() {
        return metres;
    }

    /** Least cap height of the message, millimetres. */
    double cap() {
        return LabelLegibility.messageCap(metres);
    }
}
