package org.quaybook.quantity;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All dimensions that are written with a unit, by their record class; a bare {@link Count} is not among them. */
public final class Kinds {

    private static final Map<Class<?>, Kind<?>> BY_CLASS = Stream.<Kind<?>>of(
                    AirFlow.KIND,
                    Area.KIND,
                    Charge.KIND,
                    Current.KIND,
                    Energy.KIND,
                    Frequency.KIND,
                    Length.KIND,
                    Mass.KIND,
                    Power.KIND,
                    Ratio.KIND,
                    Resistance.KIND,
                    Temperature.KIND,
                    TimeSpan.KIND,
                    Torque.KIND,
                    Voltage.KIND)
            .collect(Collectors.toUnmodifiableMap(kind -> kind.make().apply(1).getClass(), Function.identity()));

    private Kinds() {}

    /**
     * The kind of a quantity class.
     *
     * @throws IllegalArgumentException if the class is no quantity
     */
    public static Kind<?> of(Class<?> quantity) {
        Kind<?> kind = BY_CLASS.get(quantity);
        if (kind == null) {
            throw new IllegalArgumentException(quantity + " is not a quantity");
        }
        return kind;
    }

    /** All kinds, for searching a unit that was meant for another dimension. */
    public static Stream<Kind<?>> all() {
        return BY_CLASS.values().stream();
    }
}
