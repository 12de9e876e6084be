package org.quaybook.job;

import java.util.EnumSet;
import java.util.Set;

/** What a job file names in one place and refers to by that name in another. */
enum Thing {
    CABLE("cables"),
    FUSE("fuses"),
    ISOLATOR("isolators"),
    RCD("rcds"),
    AC_CIRCUIT("ac-circuits"),
    EARTH("earths"),
    SOCKET("sockets"),
    APPLIANCE("appliances"),
    /** Named by the vocabulary, not by the file. */
    RULEBOOK("rulebooks of this program"),
    /** Named by the vocabulary, not by the file. */
    LANGUAGE("languages of this program");

    private static final Set<Thing> TAGGED = EnumSet.of(CABLE, FUSE, ISOLATOR, RCD, AC_CIRCUIT, EARTH);

    private final String list;

    Thing(String list) {
        this.list = list;
    }

    /** Where its names stand, for the schema and the reference page. */
    String list() {
        return list;
    }

    /** Whether a name of this must differ from a name of the other: all tags of one installation do. */
    boolean sharesNamesWith(Thing other) {
        return this == other || (TAGGED.contains(this) && TAGGED.contains(other));
    }
}
