package org.quaybook.job;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a field of the job file means, in a sentence for the schema and the reference page. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.TYPE})
@interface Means {
    String value();

    /** A value as it could stand in a job file. */
    String example() default "";
}
