package org.quaybook.calc;

import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;

/** Which of two fuses in one path opens first. */
public final class Selectivity {

    private Selectivity() {}

    /**
     * Rating of the fuse nearer to the source over that of the other, both seen from the current through the other: a
     * fuse that carries only a share of that current counts as so much larger.
     *
     * @param upstream rating of the fuse nearer to the source
     * @param share part of the current that flows through it, above 0 and at most 1
     * @param downstream rating of the fuse nearer to the fault, above 0
     */
    public static Ratio ratio(Current upstream, Ratio share, Current downstream) {
        if (share.fraction() <= 0 || share.fraction() > 1 || downstream.amperes() <= 0) {
            throw new IllegalArgumentException("share " + share + ", downstream " + downstream);
        }
        return new Ratio(upstream.ratioTo(downstream) / share.fraction());
    }
}
