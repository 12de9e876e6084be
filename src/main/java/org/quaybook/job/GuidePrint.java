package org.quaybook.job;

/** Which forms of the owner's guide a pack holds for the printer, besides the one for the screen. */
public enum GuidePrint {
    @Means("none: guide.pdf alone, to read on a screen or to print page by page")
    SMALL,
    @Means("the booklet to fold")
    BOOKLET,
    @Means("whole pages for a binder")
    WHOLE_PAGES,
    @Means("both, as when nothing is said")
    ALL;

    /** Whether the booklet is among them. */
    public boolean booklet() {
        return this == BOOKLET || this == ALL;
    }

    /** Whether whole pages are among them. */
    public boolean wholePages() {
        return this == WHOLE_PAGES || this == ALL;
    }
}
