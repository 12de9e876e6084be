package org.quaybook.checks;

import java.util.Optional;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.job.Deviation;

/**
 * What a check found.
 *
 * @param check which check
 * @param severity how much it matters
 * @param place where in the job file
 * @param message what clashes with what
 * @param remedy what to do about it
 * @param accepted the deviation that accepts it; never on a finding that forbids handing over
 */
public record Finding(
        Check check, Severity severity, Place place, Message message, Message remedy, Optional<Deviation> accepted) {

    Finding acceptedBy(Deviation deviation) {
        return new Finding(check, severity, place, message, remedy, Optional.of(deviation));
    }

    /** Whether handing over is forbidden. */
    public boolean forbids() {
        return severity == Severity.FORBIDS;
    }
}
