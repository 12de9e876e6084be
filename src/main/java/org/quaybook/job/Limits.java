package org.quaybook.job;

import java.util.regex.Pattern;
import org.quaybook.diag.Message;
import org.quaybook.quantity.Quantity;

/** Holds a value against the range or form that its field is annotated with. */
final class Limits {

    /** Ends of a range stay inside it when a value is written in another unit and conversion rounds its last digit. */
    private static final double CONVERSION_ERROR = 1e-9;

    private Limits() {}

    static void check(Field field, Object value, String text) throws Refusal {
        Matches matches = field.annotation(Matches.class).orElse(null);
        if (matches != null && !Pattern.matches(matches.value(), text)) {
            throw new Refusal(Message.of(JobMessage.BAD_FORM, text, matches.form()));
        }
        Longest longest = field.annotation(Longest.class).orElse(null);
        if (longest != null && text.codePointCount(0, text.length()) > longest.value()) {
            throw new Refusal(
                    Message.of(JobMessage.TEXT_TOO_LONG, text.codePointCount(0, text.length()), longest.value()));
        }
        Within within = field.annotation(Within.class).orElse(null);
        if (within != null && !inside(field, within, number(value))) {
            throw new Refusal(Message.of(JobMessage.OUT_OF_RANGE, text, within.least(), within.most()));
        }
    }

    private static boolean inside(Field field, Within within, double value) throws Refusal {
        double least = number(Scalars.read(field.type(), within.least()));
        double most = number(Scalars.read(field.type(), within.most()));
        double slack = CONVERSION_ERROR * Math.max(Math.abs(least), Math.abs(most));
        return value >= least - slack && value <= most + slack;
    }

    private static double number(Object value) {
        return value instanceof Quantity quantity ? quantity.canonical() : ((Number) value).doubleValue();
    }
}
