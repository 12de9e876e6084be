package org.quaybook.job;

import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Length;

/** The cable between neighbouring strings or blocks. */
@Means("The cable between neighbouring strings or blocks.")
public record Link(
        @Means(value = "conductor", example = "70 mm2") Given<Conductor> size,

        @Means(value = "length of one link", example = "0.35 m") @Within(least = "1 cm", most = "10 m")
        Given<Length> length) {}
