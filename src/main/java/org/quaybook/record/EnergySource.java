package org.quaybook.record;

import java.util.Locale;

/**
 * The kinds of source, in the order of making dead: what feeds the sockets first, the battery last, so that no charger
 * loses it. An alternator or regulator that loses its battery while it charges makes a voltage surge. Common practice, no
 * source.
 */
public enum EnergySource {
    SHORE,
    GENERATOR,
    ALTERNATOR,
    SOLAR,
    WIND,
    BATTERY;

    /** As it stands in keys and in the job file. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
