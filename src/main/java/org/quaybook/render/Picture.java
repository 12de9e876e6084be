package org.quaybook.render;

/**
 * A drawing, scaled to its box with its proportions kept and centred there.
 *
 * @param svg an SVG document; its text may use our own font families only
 */
public record Picture(Box box, String svg) implements Mark {}
