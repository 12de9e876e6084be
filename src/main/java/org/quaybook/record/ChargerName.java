package org.quaybook.record;

import org.quaybook.job.Charging;
import org.quaybook.text.Words;

/** What a charging source is called. */
public final class ChargerName {

    private ChargerName() {}

    /** The name that the job gives it, or what it is. */
    public static String of(Charging charging, Words words) {
        return charging.name() == null ? words.term(charging.kind()) : charging.name();
    }
}
