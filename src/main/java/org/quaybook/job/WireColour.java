package org.quaybook.job;

/** The colour of a conductor's insulation. */
public enum WireColour {
    @Means("red")
    RED,
    @Means("black")
    BLACK,
    @Means("yellow")
    YELLOW,
    @Means("blue")
    BLUE,
    @Means("brown")
    BROWN,
    @Means("grey")
    GREY,
    @Means("white")
    WHITE,
    @Means("green or green and yellow")
    GREEN,
    @Means("another one")
    OTHER
}
