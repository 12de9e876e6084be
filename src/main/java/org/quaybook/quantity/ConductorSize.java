package org.quaybook.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The size of one conductor as it is printed on the cable.
 *
 * @param system which series of sizes
 * @param designation the number as printed: {@code 70}, {@code 2/0}
 * @param area copper cross-section
 */
public record ConductorSize(Series system, String designation, Area area) implements Comparable<ConductorSize> {

    /** The two series of sizes that the rulebooks know. */
    public enum Series {
        METRIC,
        AWG
    }

    private static final Pattern METRIC = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?) ?(?:mm2|mm²|sqmm)");
    private static final Pattern AWG = Pattern.compile("(\\d{1,2}|[1-4]/0) ?AWG");

    /** A metric size in square millimetres. */
    public static ConductorSize metric(double squareMillimetres) {
        String designation = squareMillimetres == Math.rint(squareMillimetres)
                ? Long.toString((long) squareMillimetres)
                : Double.toString(squareMillimetres);
        return new ConductorSize(Series.METRIC, designation, new Area(squareMillimetres));
    }

    /**
     * An American wire gauge size. Area from the gauge's geometry, d = 0.127 mm * 92^((36 - n) / 39), n = 0, -1, -2, -3
     * for 1/0 to 4/0 (ASTM B258, formula from memory).
     *
     * @param designation {@code 18} to {@code 1}, or {@code 1/0} to {@code 4/0}
     */
    public static ConductorSize awg(String designation) {
        int number = designation.endsWith("/0") ? 1 - (designation.charAt(0) - '0') : Integer.parseInt(designation);
        double diameter = 0.127 * StrictMath.pow(92, (36 - number) / 39.0);
        return new ConductorSize(Series.AWG, designation, new Area(Math.PI / 4 * diameter * diameter));
    }

    /** Reads {@code 70 mm2}, {@code 2.5 mm²} or {@code 2/0 AWG}; empty if the text is neither. */
    public static Optional<ConductorSize> parse(String text) {
        Matcher metric = METRIC.matcher(text);
        if (metric.matches() && Double.parseDouble(metric.group(1)) > 0) {
            return Optional.of(metric(Double.parseDouble(metric.group(1))));
        }
        Matcher awg = AWG.matcher(text);
        return awg.matches() ? Optional.of(awg(awg.group(1))) : Optional.empty();
    }

    @Override
    public int compareTo(ConductorSize other) {
        return area.compareTo(other.area);
    }

    /** As printed on the cable: {@code 70 mm²}, {@code 2/0 AWG}. */
    @Override
    public String toString() {
        return designation + (system == Series.METRIC ? " mm²" : " AWG");
    }
}
