package org.quaybook.serve;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The part of a file that was asked for (RFC 9110, 14).
 *
 * @param first position of the first byte
 * @param last position of the last byte; before the first if no byte of the file was asked for
 */
record ByteRange(long first, long last) {

    private static final Pattern ONE = Pattern.compile("(?i)bytes=[ \\t]*([0-9]*)-([0-9]*)[ \\t]*");

    /** Longer numbers are beyond every file. */
    private static final int DIGITS = 18;

    /**
     * Reads what was asked for.
     *
     * @param values of the fields Range
     * @param length of the file, bytes
     * @return empty if the whole file is to be sent: for what is no range, and for several, as RFC 9110, 14.2 permits
     */
    static Optional<ByteRange> of(List<String> values, long length) {
        Matcher range = ONE.matcher(values.size() == 1 ? values.get(0) : "");
        if (!range.matches()) {
            return Optional.empty();
        }
        String from = range.group(1);
        String to = range.group(2);
        if (from.isEmpty()) {
            return to.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new ByteRange(Math.max(0, length - number(to)), length - 1).orNone(number(to)));
        }
        long first = number(from);
        long last = to.isEmpty() ? Long.MAX_VALUE : number(to);
        return first > last ? Optional.empty() : Optional.of(new ByteRange(first, Math.min(last, length - 1)));
    }

    boolean isEmpty() {
        return last < first;
    }

    int length() {
        return Math.toIntExact(last - first + 1);
    }

    private ByteRange orNone(long wanted) {
        return wanted == 0 ? new ByteRange(0, -1) : this;
    }

    private static long number(String digits) {
        String plain = digits.replaceFirst("^0+(?=.)", "");
        return plain.length() > DIGITS ? Long.MAX_VALUE : Long.parseLong(plain);
    }
}
