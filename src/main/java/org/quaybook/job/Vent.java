package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.AirFlow;
import org.quaybook.quantity.Area;

/** Ventilation of the battery space. */
@Means("Ventilation of the battery space.")
public record Vent(
        @Means(value = "free area of the inlet", example = "150 cm2")
        @Within(least = "0 cm2", most = "10000 cm2")
        @Nullable Given<Area> inlet,

        @Means("free area of the outlet") @Within(least = "0 cm2", most = "10000 cm2") @Nullable Given<Area> outlet,

        @Means("where the inlet is; low when not written") @Nullable Given<Height> inletPlace,

        @Means("where the outlet is; high when not written") @Nullable Given<Height> outletPlace,

        @Means("whether the outlet ends in the open air, through a hose or not") @Nullable Given<Boolean> outside,

        @Means("air that a fan moves whenever the bank is charged; left out, the draught is natural")
        @Within(least = "0 m³/h", most = "1000 m³/h")
        @Nullable Given<AirFlow> fan,

        @Means("where the outlet ends") @Nullable String leadsTo,
        Place place) {}
