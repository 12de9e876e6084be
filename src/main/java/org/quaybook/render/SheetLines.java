package org.quaybook.render;

/**
 * What stands on every sheet beside the labels. The page number is added to the header.
 *
 * @param header one line above the labels
 * @param footer one line below them
 * @param rule what stands beside the rule of 100 mm: that the printed line must measure so much
 */
public record SheetLines(String header, String footer, String rule) {}
