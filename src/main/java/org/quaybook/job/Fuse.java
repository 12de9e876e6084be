package org.quaybook.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;

/** A DC fuse or breaker. */
@Means("A DC fuse or breaker.")
public record Fuse(
        @Means(value = "name on its tag", example = "F1")
        @Matches(
                value = "[A-Za-z][A-Za-z0-9-]{0,7}",
                form = "a letter and up to 7 letters, digits or hyphens, such as F1")
        @Identifies(Thing.FUSE)
        String id,

        @Means(value = "ids of the cables it protects", example = "[B1]") @RefersTo(Thing.CABLE)
        List<String> protects,

        @Means("what it is there for; the main fuse when not written, and then it must protect a cable") @Nullable Given<FuseRole> role,

        @Means(value = "what a branch feeds", example = "Cabin lights") @Longest(Longest.NAME) @Nullable String feeds,

        @Means("conductor behind it, where that is none of the cables: of a string or a branch") @Nullable Given<ConductorSize> conductor,

        @Means("largest lasting current of a branch") @Within(least = "0 A", most = "1000 A") @Nullable Given<Current> load,

        @Means(
                value =
                        "what a branch draws on average, day and night, while somebody is there; 0 A of one that is used for moments only",
                example = "3 A")
        @Within(least = "0 A", most = "1000 A")
        @Nullable Given<Current> average,

        @Means("family; left out, one is proposed") @Nullable Given<FuseFamily> family,

        @Means(value = "rated current; left out, one is proposed", example = "250 A")
        @Within(least = "1 A", most = "1000 A")
        @Nullable Given<Current> rating,

        @Means(
                "DC current it can interrupt at the bank voltage, off its data; the family's usual value when not written")
        @Within(least = "100 A", most = "200 kA")
        @Nullable Given<Current> interrupting,

        @Means(
                value =
                        "length of conductor between battery terminal and fuse; of a branch, from where it branches off",
                example = "180 mm")
        @Within(least = "0 mm", most = "10 m")
        @Nullable Given<Length> distance,

        @Means(
                value =
                        "of a branch: ids of the fuses and cables that its current shares with the inverter or another branch, both poles; bank where it is connected at the bank itself",
                example = "[F1, B1, B2]")
        @RefersTo(
                value = {Thing.FUSE, Thing.CABLE},
                words = AT_BANK)
        List<String> through,

        @Means("the place it is at") @Longest(Longest.PLACE) @Nullable String where,

        @Means("where the spare is") @Nullable String spare,
        Place place) {
    /** What a way is written as that leads through nothing: connected at the bank itself. */
    static final String AT_BANK = "bank";

    public Fuse {
        protects = List.copyOf(protects);
        through = List.copyOf(through);
    }

    /** The fuses and cables that a way leads through; none where it begins at the bank itself. */
    public static List<String> parts(List<String> way) {
        return way.stream().filter(id -> !id.equals(AT_BANK)).toList();
    }

    /** What it feeds, else its id. */
    public String feedsOrId() {
        return feeds == null ? id : feeds;
    }

    /** Whether it is there for something besides the inverter: a load, or the cable of a charger that names it. */
    public boolean isBranch() {
        return Given.maybe(role).filter(FuseRole.BRANCH::equals).isPresent();
    }
}
