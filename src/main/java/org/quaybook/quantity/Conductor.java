package org.quaybook.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One pole of a run: equal conductors side by side.
 *
 * @param parallel how many equal conductors share the current, at least 1
 * @param size the size of each
 */
public record Conductor(int parallel, ConductorSize size) {

    private static final Pattern SEVERAL = Pattern.compile("([1-9]) ?[x×] ?(.+)");

    public Conductor {
        if (parallel < 1) {
            throw new IllegalArgumentException("at least one conductor, not " + parallel);
        }
    }

    /** Reads {@code 70 mm2} or {@code 2 x 70 mm2}; empty if the text is neither. */
    public static Optional<Conductor> parse(String text) {
        Matcher several = SEVERAL.matcher(text);
        if (several.matches()) {
            return ConductorSize.parse(several.group(2))
                    .map(size -> new Conductor(Integer.parseInt(several.group(1)), size));
        }
        return ConductorSize.parse(text).map(size -> new Conductor(1, size));
    }

    /** Cross-section of all of them together. */
    public Area copper() {
        return size.area().times(parallel);
    }

    @Override
    public String toString() {
        return parallel == 1 ? size.toString() : parallel + " × " + size;
    }
}
