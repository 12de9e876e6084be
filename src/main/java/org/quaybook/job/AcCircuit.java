package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Temperature;

/** An AC circuit. */
@Means("An AC circuit.")
public record AcCircuit(
        @Means(value = "name at the board", example = "A1")
        @Matches(
                value = "[A-Za-z][A-Za-z0-9-]{0,7}",
                form = "a letter and up to 7 letters, digits or hyphens, such as A1")
        @Identifies(Thing.AC_CIRCUIT)
        String id,

        @Means(value = "what it feeds", example = "Galley sockets") @Longest(Longest.NAME)
        String name,

        @Means("rating of its breaker") @Within(least = "1 A", most = "125 A")
        Given<Current> breaker,

        @Means("magnetic trip band of its breaker") @Nullable Given<BreakerCurve> curve,

        @Means("whether its breaker opens neutral too") @Nullable Given<Boolean> twoPole,

        @Means(value = "conductor", example = "2.5 mm2") @Nullable Given<ConductorSize> cable,

        @Means("how its cable is laid; the way that cools worst when not written") @Nullable Given<Laid> laid,

        @Means("temperature rating of the cable's insulation; 70 °C when not written")
        @Within(least = "60 °C", most = "200 °C")
        @Nullable Given<Temperature> insulation,

        @Means("what feeds it") Given<Source> source,

        @Means("id of the RCD that protects it") @RefersTo(Thing.RCD) @Nullable String rcd,

        Place place) {

    /** Whether the inverter never feeds it; where nobody has seen what feeds it, it may be the inverter. */
    public boolean isPastInverter() {
        return source.known().filter(it -> it != Source.INVERTER).isPresent();
    }
}
