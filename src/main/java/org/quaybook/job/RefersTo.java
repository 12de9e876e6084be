package org.quaybook.job;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A field whose text, or each of whose texts, is the name of something. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface RefersTo {
    Thing[] value();

    /** Words that may stand there besides. */
    String[] words() default {};
}
