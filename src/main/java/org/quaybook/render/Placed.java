package org.quaybook.render;

/**
 * Where a label stands.
 *
 * @param id the label's
 * @param page from 1
 * @param x millimetres from the left edge of the paper
 * @param y millimetres from its top edge
 * @param width millimetres
 * @param height millimetres
 */
public record Placed(String id, int page, double x, double y, double width, double height) {}
