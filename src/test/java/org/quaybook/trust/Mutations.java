package org.quaybook.trust;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Changes one token of a text, as a slip of the pen, a faulty program or somebody of ill will might. */
final class Mutations {

    /** What can be done to a token. */
    enum Kind {
        DROP,
        DUPLICATE,
        SWAP,
        RETYPE,
        UNIT,
        NEGATIVE,
        HUGE,
        NOT_A_NUMBER,
        STRANGE_TEXT,
        DROP_LINE,
        DUPLICATE_LINE,
        INDENT
    }

    /**
     * A changed text.
     *
     * @param change what was done, for a report
     */
    record Mutant(String text, String change) {}

    private static final Pattern TOKEN = Pattern.compile("[^\\s,{}\\[\\]()]+|[,{}\\[\\]()]");
    private static final Pattern NUMBER = Pattern.compile("[0-9][0-9.]*");

    private static final List<String> TYPES =
            List.of("yes", "no", "17", "0", "~", "[]", "{}", "\"\"", "2026-02-30", "12:75", "word", "- a", "a: b", "'");

    private static final List<String> UNITS = List.of(
            "V", "mV", "A", "mA", "kA", "Ah", "W", "kW", "Wh", "kWh", "mm2", "AWG", "m", "cm", "ft", "in", "s", "ms",
            "min", "h", "days", "°C", "°F", "K", "Ω", "mΩ", "Mohm", "Hz", "Nm", "%", "kg", "lb");

    private static final List<String> HUGE = List.of(
            "0",
            "0.0000000001",
            "1e308",
            "1e-308",
            "9999999999999999999999",
            "2147483648",
            "99999",
            "0x7f",
            "1_000",
            "08");

    private static final List<String> NOT_NUMBERS =
            List.of("NaN", ".nan", ".inf", "-.inf", "Infinity", "-", "--5", "1.2.3", "½", "∞");

    private static final List<String> STRANGE = List.of(
            "\u202Egnp.exe", // turns the reading direction
            "\u0000",
            "\uFEFF",
            "\uD83D\uDEA4",
            "\uD83D",
            "日本",
            "١٢",
            "e\u0301\u0301\u0301",
            "\u200B",
            "<script>alert(1)</script>",
            "&lt;&#x41;",
            "${job.owner}",
            "<#include \"x\">",
            "../../../etc/passwd",
            "file:///etc/passwd",
            "'\"`",
            "*a",
            "&a",
            "!!java.util.Date",
            "W".repeat(400),
            "x ".repeat(3000));

    private final Random random;

    Mutations(long seed) {
        this.random = new Random(seed);
    }

    /** A text that differs from the one given in one place. */
    Mutant of(String text) {
        List<int[]> tokens = new ArrayList<>();
        Matcher found = TOKEN.matcher(text);
        while (found.find()) {
            tokens.add(new int[] {found.start(), found.end()});
        }
        while (true) {
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            int[] at = tokens.get(random.nextInt(tokens.size()));
            String changed = changed(kind, text, at[0], at[1]);
            if (!changed.equals(text)) {
                int line = (int) text.substring(0, at[0])
                                .chars()
                                .filter(c -> c == '\n')
                                .count()
                        + 1;
                return new Mutant(changed, kind + " “" + text.substring(at[0], at[1]) + "” in line " + line);
            }
        }
    }

    private String changed(Kind kind, String text, int start, int end) {
        String token = text.substring(start, end);
        String before = text.substring(0, start);
        String after = text.substring(end);
        boolean number = NUMBER.matcher(token).matches();
        return switch (kind) {
            case DROP -> before + after;
            case DUPLICATE -> before + token + " " + token + after;
            case SWAP -> {
                Matcher next = TOKEN.matcher(text);
                yield next.find(end)
                        ? before + next.group() + text.substring(end, next.start()) + token + text.substring(next.end())
                        : text;
            }
            case RETYPE -> before + pick(TYPES) + after;
            case UNIT -> UNITS.contains(token) ? before + pick(UNITS) + after : text;
            case NEGATIVE -> number ? before + "-" + token + after : text;
            case HUGE -> number ? before + pick(HUGE) + after : text;
            case NOT_A_NUMBER -> number ? before + pick(NOT_NUMBERS) + after : text;
            case STRANGE_TEXT -> before + pick(STRANGE) + after;
            case DROP_LINE -> text.substring(0, lineStart(text, start)) + text.substring(lineEnd(text, start));
            case DUPLICATE_LINE -> {
                String line = text.substring(lineStart(text, start), lineEnd(text, start));
                yield text.substring(0, lineEnd(text, start)) + line + text.substring(lineEnd(text, start));
            }
            case INDENT -> {
                int line = lineStart(text, start);
                yield random.nextBoolean() || text.charAt(line) != ' '
                        ? text.substring(0, line) + " ".repeat(1 + random.nextInt(2)) + text.substring(line)
                        : text.substring(0, line) + text.substring(line + 1);
            }
        };
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }

    private static int lineStart(String text, int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    private static int lineEnd(String text, int at) {
        int end = text.indexOf('\n', at);
        return end < 0 ? text.length() : end + 1;
    }
}
