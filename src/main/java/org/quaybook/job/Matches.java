package org.quaybook.job;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The form that a text must have. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Matches {
    /** Regular expression over the whole text. */
    String value();

    /** The form in words and by example, for the message. */
    String form();
}
