package org.quaybook.figures;

import java.util.List;

/** How a figure was reached: the formula and what went into it. */
public record Working(Formula formula, List<Input> inputs) {

    public Working {
        inputs = List.copyOf(inputs);
    }
}
