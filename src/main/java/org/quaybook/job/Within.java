package org.quaybook.job;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The possible values of a quantity or whole number, both ends included; anything outside is a slip of the pen. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Within {
    /** As a job file would write it: {@code 0 V}. */
    String least();

    String most();
}
