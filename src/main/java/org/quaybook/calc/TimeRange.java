package org.quaybook.calc;

import java.util.List;
import org.quaybook.quantity.TimeSpan;

/**
 * A running time as a range.
 *
 * @param least where everything that is uncertain turns out for the worse
 * @param most where it turns out for the better
 */
public record TimeRange(TimeSpan least, TimeSpan most) {

    /**
     * Combines the effects of inputs that do not hang together: the root of the sum of the squares of what each one alone
     * changes (ISO/IEC Guide 98-3, 5.1.2, from memory). Shorter and longer times are combined apart, because a cut-out can
     * make a time end sooner by far more than it could ever last longer.
     *
     * @param time the time with every input as it is
     * @param changed the time with one input at one end of its spread, for each end of each input
     * @return a range that contains the time; never below 0
     */
    public static TimeRange of(TimeSpan time, List<TimeSpan> changed) {
        double shorter = 0;
        double longer = 0;
        for (TimeSpan one : changed) {
            double difference = one.seconds() - time.seconds();
            if (difference < 0) {
                shorter += difference * difference;
            } else {
                longer += difference * difference;
            }
        }
        return new TimeRange(
                new TimeSpan(Math.max(0, time.seconds() - Math.sqrt(shorter))),
                new TimeSpan(time.seconds() + Math.sqrt(longer)));
    }
}
