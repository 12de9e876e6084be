package org.quaybook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The job file that answers make: commented, in the order of the format. */
public final class JobText {

    /** What needs no quotes in YAML, in a list of pairs either. */
    private static final Pattern PLAIN =
            Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._()/+°%²Ω-]*[\\p{L}\\p{N}.)%²Ω])?");

    /** What YAML 1.1 or 1.2 takes for a truth value, nothing, a number or a date. */
    private static final Pattern NO_TEXT = Pattern.compile(
            "(?i)true|false|yes|no|on|off|y|n|null|[\\d_]+(\\.[\\d_]*)?(e\\d+)?|0[xob][\\da-f_]+|\\d{4}-\\d\\d?-\\d\\d?.*");

    /** Keys of texts, whatever their words look like. */
    private static final Set<String> TEXTS =
            Set.of("number", "name", "type", "fitter", "where", "firm", "phone", "records");

    private static final String INDENT = "  ";
    private static final List<String> LISTS =
            List.of("cables", "fuses", "isolators", "rcds", "ac-circuits", "charging", "appliances");

    /** Keys of an entry of a list in the order that is read best; the rest as the alphabet has it. */
    private static final List<String> ORDER = List.of(
            "id",
            "name",
            "from",
            "to",
            "protects",
            "length",
            "fitted",
            "rating",
            "power",
            "breaker",
            "curve",
            "cable",
            "kind",
            "current",
            "per-use");

    private final Answers answers;
    private final UnaryOperator<String> comment;
    private final StringBuilder text = new StringBuilder();

    private JobText(Answers answers, UnaryOperator<String> comment) {
        this.answers = answers;
        this.comment = comment;
    }

    /**
     * The text of a job file.
     *
     * @param answers what was asked and answered
     * @param given what nobody is asked: {@code job.record}, {@code job.date}, {@code inverter.output.voltage} and so on
     * @param comment the comment for the head of the file ({@code head}) or of a section; empty for none
     */
    public static String of(Answers answers, Map<String, String> given, UnaryOperator<String> comment) {
        Answers all = answers;
        for (Map.Entry<String, String> entry : given.entrySet()) {
            all = all.with(entry.getKey(), entry.getValue());
        }
        return new JobText(all, comment).write();
    }

    /** The text of an installer profile. */
    static String installer(Answers answers, UnaryOperator<String> comment) {
        JobText profile = new JobText(answers, comment);
        profile.comment("installer");
        for (String key : List.of("firm", "phone", "records")) {
            profile.line("", "installer." + key, key);
        }
        return profile.text.toString();
    }

    private String write() {
        comment("head");
        section(
                "job",
                "number",
                "record",
                "sealed",
                "seal-key",
                "revision",
                "date",
                "rulebook",
                "languages",
                "installer",
                "fitter");
        section("craft", "name", "kind", "type");
        section("owner", "name");
        bank();
        inverter();
        for (String list : List.of("cables", "fuses", "isolators")) {
            list(list);
        }
        section("shore", "inlet", "rcd", "breaker", "smallest-pedestal");
        for (String list : LISTS.subList(3, LISTS.size())) {
            list(list);
        }
        return text.toString();
    }

    private void comment(String section) {
        for (String line : comment.apply(section).lines().toList()) {
            text.append("# ").append(line).append('\n');
        }
    }

    private void section(String name, String... keys) {
        List<String> lines = pairs(name + ".", keys);
        if (!lines.isEmpty()) {
            head(name);
            lines.forEach(line -> text.append(INDENT).append(line).append('\n'));
        }
    }

    private void head(String name) {
        text.append('\n');
        comment(name);
        text.append(name).append(":\n");
    }

    private void bank() {
        head("bank");
        line(INDENT, "bank.chemistry", "chemistry");
        text.append(INDENT).append("block:\n");
        pairs("bank.block.", "voltage", "capacity")
                .forEach(line -> text.append(INDENT).append(INDENT).append(line).append('\n'));
        for (String key : List.of("series", "parallel", "take-off", "temperature", "reserve", "where")) {
            line(INDENT, "bank." + key, key);
        }
    }

    private void inverter() {
        head("inverter");
        for (String key : List.of("continuous", "idle", "alarm", "cut-out")) {
            line(INDENT, "inverter." + key, key);
        }
        flow("output", pairs("inverter.output.", "voltage", "frequency", "wave"));
        line(INDENT, "inverter.neutral-bond", "neutral-bond");
        flow("changeover", pairs("inverter.changeover.", "kind", "when-shore-fails"));
        line(INDENT, "inverter.where", "where");
    }

    private void flow(String key, List<String> pairs) {
        if (!pairs.isEmpty()) {
            text.append(INDENT)
                    .append(key)
                    .append(": { ")
                    .append(String.join(", ", pairs))
                    .append(" }\n");
        }
    }

    private void line(String indent, String path, String key) {
        answers.of(path)
                .ifPresent(value -> text.append(indent)
                        .append(key)
                        .append(": ")
                        .append(scalar(key, value))
                        .append('\n'));
    }

    private List<String> pairs(String prefix, String... keys) {
        List<String> pairs = new ArrayList<>();
        for (String key : keys) {
            answers.of(prefix + key).ifPresent(value -> pairs.add(key + ": " + scalar(key, value)));
        }
        return pairs;
    }

    /** A list of pairs in braces, one line each, keys in the order in which they were asked. */
    private void list(String name) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; entry(name, i).isPresent(); i++) {
            lines.add(entry(name, i).orElseThrow());
        }
        if (!lines.isEmpty()) {
            head(name);
            lines.forEach(
                    line -> text.append(INDENT).append("- { ").append(line).append(" }\n"));
        }
    }

    private Optional<String> entry(String list, int index) {
        Pattern key = Pattern.compile(Pattern.quote(list + "[" + index + "].") + "([a-z-]+)");
        String pairs = answers.sorted().entrySet().stream()
                .filter(answer -> !answer.getValue().isEmpty())
                .map(answer -> {
                    Matcher matcher = key.matcher(answer.getKey());
                    return matcher.matches()
                            ? Map.entry(
                                    matcher.group(1),
                                    matcher.group(1) + ": " + scalar(matcher.group(1), answer.getValue()))
                            : Map.entry("", "");
                })
                .filter(pair -> !pair.getKey().isEmpty())
                .sorted((a, b) -> Integer.compare(rank(a.getKey()), rank(b.getKey())))
                .map(Map.Entry::getValue)
                .collect(Collectors.joining(", "));
        return pairs.isEmpty() ? Optional.empty() : Optional.of(pairs);
    }

    private static int rank(String key) {
        int rank = ORDER.indexOf(key);
        return rank < 0 ? Integer.MAX_VALUE : rank;
    }

    /** A value as it is written behind its key: in quotes where YAML would read something else than was answered. */
    static String scalar(String key, String value) {
        boolean text = TEXTS.contains(key);
        boolean plain = PLAIN.matcher(value).matches()
                ? !(text && NO_TEXT.matcher(value).matches())
                : !text && value.startsWith("[") && value.endsWith("]");
        return plain ? value : "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
