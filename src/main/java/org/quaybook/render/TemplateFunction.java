package org.quaybook.render;

import java.util.List;

/** A function that a template may call like {@code ${word("greeting", name)}}. */
@FunctionalInterface
public interface TemplateFunction {

    /**
     * @param arguments texts, numbers, booleans, lists and maps, as the template wrote them
     * @return plain text; the template escapes it
     */
    String apply(List<Object> arguments);
}
