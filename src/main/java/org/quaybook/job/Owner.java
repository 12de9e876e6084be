package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** Who the pack is for. Never published. */
@Means("Who the pack is for. Never published.")
public record Owner(
        @Means("name") @Longest(Longest.NAME) @Personal String name,
        @Means("telephone") @Personal @Nullable String phone,
        @Means("e-mail") @Personal @Nullable String email,
        Place place) {

    /** Stands for the owner where it is asked who did something, so that nobody has to be named. */
    public static final String WORD = "owner";
}
