package org.quaybook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A new job from an earlier one. What belongs to the earlier customer or was seen on the earlier craft does not come along:
 * owner, tests, deviations, photographs, rehearsal and serial numbers are left out, and what was measured or told there is
 * only assumed here.
 */
public final class JobCopy {

    private static final Set<String> LEFT_BEHIND = Set.of(
            "owner",
            "tests",
            "deviations",
            "expiries",
            "photos",
            "scope",
            "accounts",
            "rehearsal",
            "policy-conditions",
            "owners-first-mistake");

    private static final Pattern SECTION = Pattern.compile("([a-z][a-z-]*):.*");
    private static final Pattern KEY = Pattern.compile(" +([a-z][a-z-]*): .*");
    private static final Pattern SEEN_THERE = Pattern.compile("\\((?:measured|told)\\b[^)]*\\)");
    private static final Pattern SERIAL_IN_BRACES = Pattern.compile(", serial: (?:\"[^\"]*\"|[^,}]*[^,} ])");

    private JobCopy() {}

    /**
     * The text of the new job file.
     *
     * @param earlier text of the earlier one
     * @param values new values by path: {@code job.number}, {@code job.record}, {@code craft.name} and so on; a path whose
     *     line the earlier file lacks is added to its section
     */
    public static String of(String earlier, Map<String, String> values) {
        List<String> lines = new ArrayList<>();
        Map<String, String> open = new TreeMap<>(values);
        String section = "";
        for (String line : earlier.lines().toList()) {
            Matcher begins = SECTION.matcher(line);
            if (begins.matches()) {
                section = begins.group(1);
            }
            if (LEFT_BEHIND.contains(section) || line.startsWith("#")) {
                continue;
            }
            Matcher key = KEY.matcher(line);
            String path = key.matches() && line.startsWith("  ") && !line.startsWith("   ")
                    ? section + "." + key.group(1)
                    : "";
            String value = values.get(path);
            if (value != null) {
                lines.add("  " + key.group(1) + ": " + JobText.scalar(key.group(1), value));
                open.remove(path);
            } else if (!line.trim().startsWith("serial:")) {
                lines.add(assumed(line));
            }
        }
        open.forEach((path, value) -> add(lines, path, value));
        return String.join("\n", lines).replaceAll("\n{3,}", "\n\n").strip() + "\n";
    }

    private static String assumed(String line) {
        return SERIAL_IN_BRACES
                .matcher(SEEN_THERE.matcher(line).replaceAll("(assumed)"))
                .replaceAll("");
    }

    private static void add(List<String> lines, String path, String value) {
        String section = path.substring(0, path.indexOf('.'));
        String key = path.substring(path.indexOf('.') + 1);
        String line = "  " + key + ": " + JobText.scalar(key, value);
        int at = lines.indexOf(section + ":");
        if (at >= 0) {
            lines.add(at + 1, line);
        } else {
            lines.add("");
            lines.add(section + ":");
            lines.add(line);
        }
    }
}
