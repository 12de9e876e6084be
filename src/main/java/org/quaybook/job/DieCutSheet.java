package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Length;

/** A sheet of labels already cut, all of one size, in columns and rows. */
@Means("A sheet of labels already cut, all of one size, in columns and rows.")
public record DieCutSheet(
        @Means(value = "width of the whole sheet", example = "210 mm") @Within(least = "20 mm", most = "1000 mm")
        Length paperWidth,

        @Means(value = "height of the whole sheet", example = "297 mm") @Within(least = "20 mm", most = "2000 mm")
        Length paperHeight,

        @Means(value = "labels across", example = "2") @Within(least = "1", most = "50")
        Integer columns,

        @Means(value = "labels down", example = "4") @Within(least = "1", most = "100")
        Integer rows,

        @Means(value = "width of one label", example = "96 mm") @Within(least = "4 mm", most = "1000 mm")
        Length labelWidth,

        @Means(value = "height of one label", example = "67 mm") @Within(least = "4 mm", most = "2000 mm")
        Length labelHeight,

        @Means(value = "from the left edge of the paper to the first label", example = "7.5 mm")
        @Within(least = "0 mm", most = "200 mm")
        Length left,

        @Means(value = "from the top edge of the paper to the first label", example = "14.5 mm")
        @Within(least = "0 mm", most = "200 mm")
        Length top,

        @Means("from the last label to the right edge of the paper; that of left when not written")
        @Within(least = "0 mm", most = "200 mm")
        @Nullable Length right,

        @Means("from the last label to the bottom edge of the paper; that of top when not written")
        @Within(least = "0 mm", most = "200 mm")
        @Nullable Length bottom,

        @Means("space between labels side by side; none when not written")
        @Within(least = "0 mm", most = "100 mm")
        @Nullable Length gapAcross,

        @Means("space between rows; none when not written") @Within(least = "0 mm", most = "100 mm") @Nullable Length gapDown,

        @Means("radius of the corners of a label; square when not written")
        @Within(least = "0 mm", most = "100 mm")
        @Nullable Length cornerRadius,

        @Means(value = "what stays white inside each label, for paper that is fed askew", example = "2 mm")
        @Within(least = "0 mm", most = "20 mm")
        Length edge,

        Place place) {

    private static final Length NONE = new Length(0);

    /** From the last label to the right edge of the paper. */
    public Length rightMargin() {
        return right == null ? left : right;
    }

    /** From the last label to the bottom edge of the paper. */
    public Length bottomMargin() {
        return bottom == null ? top : bottom;
    }

    /** Between labels side by side. */
    public Length columnGap() {
        return gapAcross == null ? NONE : gapAcross;
    }

    /** Between rows. */
    public Length rowGap() {
        return gapDown == null ? NONE : gapDown;
    }

    /** Of a label's corners. */
    public Length radius() {
        return cornerRadius == null ? NONE : cornerRadius;
    }

    /** Margins, labels and gaps across, in all. */
    Length across() {
        return left.plus(labelWidth.times(columns))
                .plus(columnGap().times(columns - 1))
                .plus(rightMargin());
    }

    /** Margins, labels and gaps down, in all. */
    Length down() {
        return top.plus(labelHeight.times(rows)).plus(rowGap().times(rows - 1)).plus(bottomMargin());
    }
}
