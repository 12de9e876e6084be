package org.quaybook.job;

import java.util.List;
import org.quaybook.diag.Place;

/** Appliances that the owner wants to run at the same time. */
@Means("Appliances that the owner wants to run at the same time.")
public record Together(
        @Means("names of the appliances") @RefersTo(Thing.APPLIANCE)
        List<String> appliances,

        Place place) {
    public Together {
        appliances = List.copyOf(appliances);
    }
}
