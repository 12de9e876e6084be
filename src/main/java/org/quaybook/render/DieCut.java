package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet of labels that are already cut, all of one size, in columns and rows. Millimetres.
 *
 * @param paperWidth of the whole sheet
 * @param paperHeight of the whole sheet
 * @param columns labels across, at least 1
 * @param rows labels down, at least 1
 * @param labelWidth of one label
 * @param labelHeight of one label
 * @param left from the paper's left edge to the first label
 * @param top from the paper's top edge to the first label
 * @param right from the last label to the paper's right edge; mostly the same as left
 * @param bottom from the last label to the paper's bottom edge; mostly the same as top
 * @param gapAcross between labels of a row
 * @param gapDown between rows
 * @param cornerRadius of a label
 * @param edge what stays white inside a label on all sides, for paper that is fed askew
 */
public record DieCut(
        double paperWidth,
        double paperHeight,
        int columns,
        int rows,
        double labelWidth,
        double labelHeight,
        double left,
        double top,
        double right,
        double bottom,
        double gapAcross,
        double gapDown,
        double cornerRadius,
        double edge)
        implements Medium {

    /** How far sums of lengths given in inches and thousandths may lie from the paper's. */
    private static final double TOLERANCE = 0.05;

    public DieCut {
        double across = left + columns * labelWidth + (columns - 1) * gapAcross + right;
        double down = top + rows * labelHeight + (rows - 1) * gapDown + bottom;
        boolean negative = Math.min(Math.min(left, right), Math.min(top, bottom)) < 0
                || Math.min(gapAcross, gapDown) < 0
                || Math.min(cornerRadius, edge) < 0;
        if (columns < 1
                || rows < 1
                || negative
                || !(Math.abs(across - paperWidth) <= TOLERANCE && Math.abs(down - paperHeight) <= TOLERANCE)) {
            throw new IllegalArgumentException(
                    "labels of " + across + " x " + down + " mm on paper of " + paperWidth + " x " + paperHeight);
        }
        if (!(2 * Math.max(edge, cornerRadius) < Math.min(labelWidth, labelHeight))) {
            throw new IllegalArgumentException("no room on a label of " + labelWidth + " x " + labelHeight + " mm");
        }
    }

    /** Labels on one sheet. */
    public int count() {
        return columns * rows;
    }

    /** Where each label lies on the paper, row by row from the top left. */
    public List<Box> cells() {
        List<Box> cells = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                cells.add(new Box(
                        left + column * (labelWidth + gapAcross),
                        top + row * (labelHeight + gapDown),
                        labelWidth,
                        labelHeight));
            }
        }
        return cells;
    }

    @Override
    public Box room() {
        return new Box(0, 0, labelWidth, labelHeight).inside(edge);
    }
}
