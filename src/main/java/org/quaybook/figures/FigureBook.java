package org.quaybook.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.quaybook.job.Given;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Rounding;

/** Collects the figures of one job in the order they are reached; a name is used once. */
final class FigureBook {

    private final Map<String, Figure<?>> figures = new LinkedHashMap<>();

    <Q extends Quantity> Figure<Q> enter(String key, Q value, Rounding rounding, Formula formula, Input... inputs) {
        return enter(key, value, rounding, formula, List.of(inputs));
    }

    <Q extends Quantity> Figure<Q> enter(String key, Q value, Rounding rounding, Formula formula, List<Input> inputs) {
        Figure<Q> figure = new Figure<>(key, value, rounding, new Working(formula, inputs));
        if (figures.put(key, figure) != null) {
            throw new IllegalStateException("the figure " + key + " was entered twice");
        }
        return figure;
    }

    /** A value that the job states, entered so that documents and workings show where it comes from. */
    <Q extends Quantity> Figure<Q> stated(String key, Given<Q> given) {
        Q value = given.value();
        if (value == null) {
            throw new IllegalArgumentException(given.place().path() + " was not seen");
        }
        return enter(key, value, Rounding.NEAREST, Formula.AS_STATED, Input.of("", given));
    }

    List<Figure<?>> all() {
        return List.copyOf(figures.values());
    }
}
