package org.quaybook.calc;

import java.util.Optional;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Temperature;

/**
 * How a DC run is laid.
 *
 * @param length one way
 * @param insulation temperature rating of the insulation
 * @param engineSpace whether it passes an engine space or the like
 * @param ambient hottest usual air along it; empty if nobody has said, then that of the space counts
 * @param bundled current-carrying conductors in its bundle, itself included
 * @param tinned whether its strands are tinned
 */
public record RunConditions(
        Length length,
        Temperature insulation,
        boolean engineSpace,
        Optional<Temperature> ambient,
        int bundled,
        boolean tinned) {

    private static final Temperature USUAL_AIR = new Temperature(30);

    /** The engine-space factors of the rulebooks equal sqrt((T - 50) / (T - 30)): air of 50 °C. */
    private static final Temperature ENGINE_SPACE_AIR = new Temperature(50);

    /** A run in the air of its space. */
    public RunConditions(Length length, Temperature insulation, boolean engineSpace, int bundled, boolean tinned) {
        this(length, insulation, engineSpace, Optional.empty(), bundled, tinned);
    }

    /** The air that its conductors warm up from. */
    public Temperature air() {
        return ambient.orElse(engineSpace ? ENGINE_SPACE_AIR : USUAL_AIR);
    }
}
