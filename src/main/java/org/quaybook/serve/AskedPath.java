package org.quaybook.serve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The path of a request, cut into its segments and decoded once (RFC 3986, 3.3 and 2.1).
 *
 * @param segments at least one; the last is empty for a path that ends in a slash
 */
record AskedPath(List<String> segments) {

    /** A code as people type it, or a file of ours: no dot in front, so nothing hidden and no step upwards. */
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9 -](?:[A-Za-z0-9._ -]*[A-Za-z0-9 -])?");

    /** Devices that Windows has in every folder, whatever the ending (Microsoft, Naming Files, from memory). */
    private static final Pattern DEVICE = Pattern.compile("(?i)(?:CON|PRN|AUX|NUL|COM[0-9]|LPT[0-9])(?:\\..*)?");

    AskedPath {
        segments = List.copyOf(segments);
    }

    /**
     * Reads a path.
     *
     * @param raw as it stood in the request, beginning with a slash
     * @return empty if a name in it could be none of a site's; nothing is mended, for what is mended can be fooled
     */
    static Optional<AskedPath> of(String raw) {
        if (!raw.startsWith("/")) {
            return Optional.empty();
        }
        String[] parts = raw.substring(1).split("/", -1);
        List<String> segments = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            Optional<String> segment = decoded(parts[i]);
            if (segment.isEmpty()) {
                return Optional.empty();
            }
            boolean closing = i == parts.length - 1 && segment.get().isEmpty();
            if (!closing && !isName(segment.get())) {
                return Optional.empty();
            }
            segments.add(segment.get());
        }
        return Optional.of(new AskedPath(segments));
    }

    private static boolean isName(String segment) {
        return NAME.matcher(segment).matches() && !DEVICE.matcher(segment).matches();
    }

    /** Whatever a name of ours holds is one byte, so that no byte above it needs decoding. */
    private static Optional<String> decoded(String part) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < part.length(); i++) {
            char symbol = part.charAt(i);
            if (symbol == '%') {
                int high = i + 2 < part.length() ? Character.digit(part.charAt(i + 1), 16) : -1;
                int low = i + 2 < part.length() ? Character.digit(part.charAt(i + 2), 16) : -1;
                if (high < 0 || low < 0) {
                    return Optional.empty();
                }
                symbol = (char) (high * 16 + low);
                i += 2;
            }
            if (symbol < ' ' || symbol > '~') {
                return Optional.empty();
            }
            text.append(symbol);
        }
        return Optional.of(text.toString());
    }
}
