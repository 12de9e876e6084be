package org.quaybook.job;

import org.jspecify.annotations.Nullable;

/** A remote account that goes with the installation. No passwords. */
@Means("A remote account that goes with the installation. No passwords.")
public record Account(
        @Means("what it is for") String service,
        @Means("in whose name it stands") @Personal String holder,
        @Means("how it is handed on") @Nullable String transfer) {}
