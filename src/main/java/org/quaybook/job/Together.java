package org.quaybook.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.TimeSpan;

/** Appliances that the owner wants to run at the same time. */
@Means("Appliances that the owner wants to run at the same time.")
public record Together(
        @Means("names of the appliances") @RefersTo(Thing.APPLIANCE)
        List<String> appliances,

        @Means("how long the owner wants all of them to run from full, with the bank old and cold")
        @Within(least = "1 s", most = "60 d")
        @Nullable Given<TimeSpan> wishedTime,

        Place place) {
    public Together {
        appliances = List.copyOf(appliances);
    }
}
