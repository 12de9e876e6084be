package org.quaybook.record;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.checks.Alike;
import org.quaybook.text.Words;

/** What is said of several things at once. */
public final class AlikeWords {

    /** A name with a number behind it, as ids have: one with leading noughts is no such number. */
    private static final Pattern NUMBERED = Pattern.compile("((?:.*[^0-9])?)(0|[1-9][0-9]{0,8})");

    /** From how many on a row of numbers is told by its ends: up to here it is as short with all its names. */
    private static final int LEAST_RUN = 4;

    private AlikeWords() {}

    /**
     * A text about the first of them, with a sentence that names the others.
     *
     * @param first what is said of the first
     */
    public static String of(Alike alike, String first, Words words) {
        return alike.others().isEmpty()
                ? first
                : first + " " + words.say("alike", words.list(inRuns(alike.others(), words)));
    }

    /** Names in a row; those that differ by a number that goes up by one are told by the first and the last. */
    private static List<String> inRuns(List<String> names, Words words) {
        List<String> told = new ArrayList<>();
        int from = 0;
        while (from < names.size()) {
            int to = from + 1;
            while (to < names.size() && follows(names.get(to - 1), names.get(to))) {
                to++;
            }
            if (to - from >= LEAST_RUN) {
                told.add(words.say("alike.range", names.get(from), names.get(to - 1)));
            } else {
                told.addAll(names.subList(from, to));
            }
            from = to;
        }
        return told;
    }

    private static boolean follows(String former, String name) {
        Matcher before = NUMBERED.matcher(former);
        Matcher after = NUMBERED.matcher(name);
        return before.matches()
                && after.matches()
                && before.group(1).equals(after.group(1))
                && Integer.parseInt(after.group(2)) == Integer.parseInt(before.group(2)) + 1;
    }
}
