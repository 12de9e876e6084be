package org.quaybook.pack.guide;

/**
 * How much the quick card says of a large installation, the fullest first. What it leaves out stands in the guide, under the
 * heading that the card names; that something has to be switched off is never left out.
 */
public enum CardDetail {
    /** Each switch in a step of its own, with its place; all that stays on. */
    FULL(5, Integer.MAX_VALUE, true, true, true, true),
    /** Switches that follow one another at one place in a step together; of what stays on, what takes most. */
    GROUPED(5, 3, true, true, true, true),
    /** Places only where somebody is in danger, all else cut short. */
    PLACED(3, 1, false, true, true, true),
    /** In danger the tags alone, in one step. */
    TAGGED(2, 1, false, false, true, true),
    /** How many switches there are, and where they are listed. */
    COUNTED(2, 1, false, false, false, true),
    /** Where few switches have long names and places: names alone, and in danger tags and places alone. */
    SHORT(2, 1, false, false, false, false);

    private final int runs;
    private final int named;
    private final boolean everywhere;
    private final boolean places;
    private final boolean tags;
    private final boolean whole;

    CardDetail(int runs, int named, boolean everywhere, boolean places, boolean tags, boolean whole) {
        this.runs = runs;
        this.named = named;
        this.everywhere = everywhere;
        this.places = places;
        this.tags = tags;
        this.whole = whole;
    }

    /** Of how many appliances at most it says how long they run. */
    public int runs() {
        return runs;
    }

    /** How many names of a list of appliances are said at most. */
    int named() {
        return named;
    }

    /** Whether each switch is named with its place in every box. */
    boolean everywhere() {
        return everywhere;
    }

    /** Whether each switch is named with its place where somebody is in danger. */
    boolean places() {
        return places;
    }

    /** Whether each switch is named there, if need be by its tag alone. */
    boolean tags() {
        return tags;
    }

    /** Whether what is named at all is named with both name and place. */
    boolean whole() {
        return whole;
    }
}
