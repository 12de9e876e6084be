package org.quaybook.checks;

import java.util.Locale;
import org.quaybook.diag.MessageKey;

/** What figures and limits hang on and somebody has to measure, as it is called in a sentence. */
enum ReliedOn implements MessageKey {
    /** Whose value it is, where that has no id. */
    BANK,
    LENGTH,
    DISTANCE,
    AIR_INLET,
    AIR_OUTLET,
    TORQUE;

    @Override
    public String key() {
        return "relied-on." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
