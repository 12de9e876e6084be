package org.quaybook.job;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** How long a text may be that must find room on cards and labels. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Longest {
    /** A name: a line of a quick card or two of a label (common practice, no source). */
    int NAME = 60;

    /** A telephone number, which is not broken: its 15 digits at most (ITU-T E.164, from memory), grouped, and an extension. */
    int TELEPHONE = 30;

    /** A place in the words of a job: two lines of a quick card (common practice, no source). */
    int PLACE = 120;

    /** In characters, as Unicode counts them. */
    int value();
}
