package org.quaybook.render;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The colours on which a text of a label stands. */
public final class Ground {

    /** A filled panel no thicker than this is a rule and no ground, millimetres. */
    private static final double RULE = 1;

    private Ground() {}

    /**
     * The colours under a box, the uppermost first: of every filled panel that reaches under it, down to the first that
     * lies under all of it, else to the white of the stock.
     *
     * @param below what was drawn before, in order
     */
    public static List<Colour> of(Box box, List<Mark> below) {
        List<Colour> colours = new ArrayList<>();
        for (int i = below.size() - 1; i >= 0; i--) {
            if (below.get(i) instanceof Panel panel
                    && panel.fill() != null
                    && !isRule(panel)
                    && meet(panel.box(), box)) {
                colours.add(panel.fill());
                if (panel.box().holds(box)) {
                    return colours;
                }
            }
        }
        colours.add(Colour.WHITE);
        return colours;
    }

    /** The one of those colours on which another is read worst. */
    static Colour worst(Colour ink, List<Colour> grounds) {
        return grounds.stream()
                .min(Comparator.comparingDouble(ground -> Contrast.ratio(ink, ground)))
                .orElseThrow();
    }

    private static boolean isRule(Panel panel) {
        return Math.min(panel.box().width(), panel.box().height()) <= RULE;
    }

    private static boolean meet(Box one, Box other) {
        return one.x() < other.x() + other.width()
                && other.x() < one.x() + one.width()
                && one.y() < other.y() + other.height()
                && other.y() < one.y() + one.height();
    }
}
