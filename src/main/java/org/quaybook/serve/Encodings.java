package org.quaybook.serve;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which encodings an asker takes (RFC 9110, 12.5.3). */
final class Encodings {

    private static final Pattern ONE = Pattern.compile(
            "[ \\t]*([!#$%&'*+.^_`|~0-9A-Za-z-]+)[ \\t]*(?:;[ \\t]*[qQ]=(0(?:\\.[0-9]{0,3})?|1(?:\\.0{0,3})?))?[ \\t]*");

    private Encodings() {}

    /**
     * Whether to compress.
     *
     * @param values of the fields Accept-Encoding
     * @return whether gzip is taken, and plain bytes are not liked better
     */
    static boolean takeGzip(List<String> values) {
        double gzip = -1;
        double plain = -1;
        double other = -1;
        for (String part : String.join(",", values).split(",", -1)) {
            Matcher one = ONE.matcher(part);
            if (one.matches()) {
                double weight = one.group(2) == null ? 1 : Double.parseDouble(one.group(2));
                switch (one.group(1).toLowerCase(Locale.ROOT)) {
                    // x-gzip is another name of gzip (RFC 9110, 8.4.1.3).
                    case "gzip", "x-gzip" -> gzip = Math.max(gzip, weight);
                    case "identity" -> plain = weight;
                    case "*" -> other = weight;
                    default -> {}
                }
            }
        }
        double liked = gzip < 0 ? other : gzip;
        return liked > 0 && liked >= plain;
    }
}
