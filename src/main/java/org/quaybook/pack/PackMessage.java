package org.quaybook.pack;

import org.quaybook.diag.MessageKey;
import org.quaybook.reference.TableFault;

/** What the road has to say besides what its stages say. */
public enum PackMessage implements MessageKey {
    /** {0} the logo's file name. */
    LOGO_UNREADABLE("pack.logo-unreadable"),
    /** {0} file of the installer's own chapter, {1} most KiB. */
    CHAPTER_UNREADABLE("pack.chapter-unreadable"),
    CHAPTER_UNTITLED("pack.chapter-untitled"),
    /** {0} most KiB. */
    WORDS_UNREADABLE("pack.words-unreadable"),
    /** {0} the line. */
    WORDS_FORM("pack.words-form"),
    /** {0} the key. */
    WORDS_UNKNOWN("pack.words-unknown"),
    /** {0} the likeliest key. */
    WORDS_MEANT("pack.words-meant"),
    /** {0} the key, {1} the sentence whose places are due. */
    WORDS_PLACES("pack.words-places"),
    /** {0} language. */
    TRANSLATION_CHANGES("pack.translation-changes"),
    /** {0} folder of own tables. */
    TABLES_UNREADABLE("pack.tables-unreadable"),
    /** {0} most KiB. */
    TABLE_UNREADABLE("pack.table-unreadable"),
    /** Of a table: {0} column, {1} what was found, {2} what is allowed. */
    TABLE_NO_ROWS("pack.table-no-rows"),
    TABLE_HEADING("pack.table-heading"),
    TABLE_HEADINGS("pack.table-headings"),
    TABLE_COLUMNS("pack.table-columns"),
    TABLE_CELLS("pack.table-cells"),
    TABLE_CELL("pack.table-cell"),
    TABLE_NUMBER("pack.table-number"),
    TABLE_TWICE("pack.table-twice"),
    TABLE_STANDING("pack.table-standing"),
    TABLE_ROW("pack.table-row"),
    TABLE_STRANGE("pack.table-strange"),
    TABLE_ORDER("pack.table-order"),
    TABLE_OTHER("pack.table-other"),
    /** {0} id that no label has, {1} all that there are. */
    LABEL_UNKNOWN("pack.label-unknown"),
    /** {0} folder of an earlier pack. */
    ISSUE_UNREADABLE("pack.issue-unreadable"),
    /** {0} number of the job that the earlier pack is of, {1} that of this job. */
    ISSUE_OF_OTHER_JOB("pack.issue-of-other-job"),
    /** {0} revision, {1} its date, {2} the next one. */
    REVISION_ISSUED("pack.revision-issued"),
    /** {0} revision of the job, {1} last revision issued, {2} its date, {3} the next one. */
    REVISION_NOT_NEXT("pack.revision-not-next"),
    /** {0} day of the sale, {1} date of the job. */
    SOLD_BEFORE("pack.sold-before"),
    SOLD_NOT_PARTED("pack.sold-not-parted"),
    /** {0} file that should be free for the job file as it was. */
    SOLD_KEPT_ALREADY("pack.sold-kept-already"),
    /** {0} folder, {1} why. */
    CANNOT_WRITE("pack.cannot-write"),
    /** Why the system refused: {0} the file or folder. */
    WHY_DENIED("pack.why-denied"),
    WHY_MISSING("pack.why-missing"),
    WHY_IN_THE_WAY("pack.why-in-the-way"),
    /** {0} folder or file that another run is changing. */
    BUSY("pack.busy"),
    /** {0} folder that holds something else than a pack. */
    NOT_A_PACK("pack.not-a-pack"),
    NOT_A_PACK_HINT("pack.not-a-pack.hint"),
    /** {0} what stands where a file is to be written. */
    NOT_A_FILE("pack.not-a-file");

    private final String key;

    PackMessage(String key) {
        this.key = key;
    }

    /** What to say of a table that cannot be trusted. */
    static PackMessage of(TableFault.Kind kind) {
        return switch (kind) {
            case NO_ROWS -> TABLE_NO_ROWS;
            case HEADING -> TABLE_HEADING;
            case HEADINGS -> TABLE_HEADINGS;
            case COLUMNS -> TABLE_COLUMNS;
            case CELLS -> TABLE_CELLS;
            case CELL -> TABLE_CELL;
            case NUMBER -> TABLE_NUMBER;
            case TWICE -> TABLE_TWICE;
            case STANDING -> TABLE_STANDING;
            case ROW -> TABLE_ROW;
            case TABLE -> TABLE_STRANGE;
            case ORDER -> TABLE_ORDER;
            case OTHER -> TABLE_OTHER;
        };
    }

    @Override
    public String key() {
        return key;
    }
}
