package org.quaybook.figures;

/** Which way a figure may go when something is changed. */
enum Way {
    NEVER_MORE,
    NEVER_LESS,
    SAME;

    /** Rounding of the arithmetic itself, against the value. */
    static final double NOISE = 1e-9;

    /** The hours of a day are walked in steps: a state of charge is right to so much of the whole. */
    private static final double WALK = 1e-3;

    /**
     * Whether a figure may change like this.
     *
     * @param share how far beyond it may be, against the value
     */
    boolean allows(String key, double before, double after, double share) {
        if (before == after) {
            return true;
        }
        double least = key.matches(Families.CHARGE_OF_DAY) ? WALK : 0;
        double slack = Math.max(least, share * Math.min(Math.abs(before), Math.abs(after)));
        return switch (this) {
            case NEVER_MORE -> after <= before + slack;
            case NEVER_LESS -> after >= before - slack;
            case SAME -> Math.abs(after - before) <= slack;
        };
    }
}
