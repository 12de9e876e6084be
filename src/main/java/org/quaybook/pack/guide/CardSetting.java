package org.quaybook.pack.guide;

/**
 * How the quick card is set in a guide.
 *
 * @param detail how much it says
 * @param size of its text in points, as style sheets write it
 */
public record CardSetting(CardDetail detail, String size) {}
