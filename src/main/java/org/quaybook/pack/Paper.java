package org.quaybook.pack;

import org.quaybook.checks.Assessment;
import org.quaybook.job.Job;
import org.quaybook.job.PaperKind;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.reference.Rulebook;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Sheet;

/** The paper of a pack: what the job says, or else what lies in the printers of the rulebook's country. */
@SuppressWarnings("ImmutableEnumChecker") // A page format is a record of numbers and a name.
public enum Paper {
    A4(PageFormat.A5, PageFormat.A4, Sheet.A4),
    LETTER(PageFormat.HALF_LETTER, PageFormat.LETTER, Sheet.LETTER);

    private final PageFormat small;
    private final PageFormat full;
    private final Sheet sheet;

    Paper(PageFormat small, PageFormat full, Sheet sheet) {
        this.small = small;
        this.full = full;
        this.sheet = sheet;
    }

    public static Paper of(Assessment it) {
        return of(it.job(), it.tables().rules());
    }

    /** A rulebook that counts conductors in AWG is an American one. */
    public static Paper of(Job job, Rulebook rules) {
        PaperKind asked = job.job().paper();
        boolean letter = asked == null ? rules.conductors() == ConductorSize.Series.AWG : asked == PaperKind.LETTER;
        return letter ? LETTER : A4;
    }

    /** The page of the small guide: half a sheet. */
    public PageFormat small() {
        return small;
    }

    /** The page of everything else: a whole sheet. */
    public PageFormat full() {
        return full;
    }

    /** A whole sheet for labels that are cut apart. */
    public Sheet sheet() {
        return sheet;
    }
}
