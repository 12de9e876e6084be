package org.quaybook.job;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Current;

/** A switch that makes something dead. */
@Means("A switch that makes something dead.")
public record Isolator(
        @Means(value = "name on its label", example = "S1")
        @Matches(
                value = "[A-Za-z][A-Za-z0-9-]{0,7}",
                form = "a letter and up to 7 letters, digits or hyphens, such as S1")
        @Identifies(Thing.ISOLATOR)
        String id,

        @Means(value = "what it switches", example = "Battery switch") @Longest(Longest.NAME)
        String name,

        @Means("its place") @Longest(Longest.PLACE) String where,

        @Means(value = "current that it bears all the time", example = "300 A")
        @Within(least = "1 A", most = "3000 A")
        @Nullable Given<Current> rating,

        @Means("which side of a lid or door") @Nullable Given<Side> side,

        @Means("whether it can be reached without tools") @Nullable Given<Boolean> toolFree,

        @Means(
                value = "what it makes dead: ids of cables, fuses and AC circuits, or sources by their name",
                example = "[B1, shore]")
        @RefersTo(
                value = {Thing.CABLE, Thing.FUSE, Thing.AC_CIRCUIT},
                words = {"bank", "inverter", "shore", "generator", "alternator", "solar", "wind"})
        List<String> isolates,

        Place place) {

    private static final Set<String> BATTERY_SIDE = Set.of("bank", "inverter");

    public Isolator {
        isolates = List.copyOf(isolates);
    }

    /**
     * Whether it is a battery switch: one that parts the bank or the inverter, or something on the way between them: a cable,
     * a main or a string fuse. The switch of a branch is none: with the windlass or the bilge pump off the bank feeds all the
     * rest.
     *
     * @param cables those between bank and inverter
     * @param fuses all of the job, or those of them that count
     */
    public boolean partsBattery(List<Cable> cables, List<Fuse> fuses) {
        return isolates.stream().anyMatch(BATTERY_SIDE::contains)
                || cables.stream().anyMatch(cable -> isolates.contains(cable.id()))
                || fuses.stream().anyMatch(fuse -> !fuse.isBranch() && isolates.contains(fuse.id()));
    }
}
