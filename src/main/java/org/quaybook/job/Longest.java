package org.quaybook.job;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** How long a text may be that must find room on cards and labels. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Longest {
    /** A place in the words of a job: two or three lines of a quick card (common practice, no source). */
    int PLACE = 200;

    /** In characters, as Unicode counts them. */
    int value();
}
