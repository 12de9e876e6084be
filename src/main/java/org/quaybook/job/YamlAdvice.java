package org.quaybook.job;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.quaybook.diag.Message;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * What was probably meant where a text is no YAML. The parser tells where it could not go on and in words of its own
 * trade; what has to be changed mostly stands a line above.
 */
final class YamlAdvice {

    /** A key, its colon and a value behind it. */
    private static final Pattern KEY_AND_VALUE = Pattern.compile("(- +)?[^\\s#:]+: .*");

    private final List<String> lines;
    private final Mark at;
    private final Optional<Mark> begun;

    private YamlAdvice(String text, MarkedYAMLException fault) {
        this.lines = text.lines().toList();
        this.at = fault.getProblemMark();
        this.begun = Optional.ofNullable(fault.getContextMark());
    }

    /** Hints to a fault of the parser; none where nothing is sure. */
    static List<Message> of(String text, MarkedYAMLException fault) {
        YamlAdvice advice = new YamlAdvice(text, fault);
        String problem = fault.getProblem();
        Optional<Message> hint = Optional.empty();
        if (problem.startsWith("mapping values are not allowed")) {
            hint = advice.secondColon() ? Optional.of(Message.of(JobMessage.QUOTE_TEXT)) : advice.column();
        } else if (problem.startsWith("expected <block end>")) {
            hint = advice.column();
        } else if (problem.startsWith("could not find expected ':'")) {
            hint = advice.begun.map(key -> Message.of(JobMessage.COLON_AND_SPACE, key.getLine() + 1));
        } else if (problem.startsWith("expected ','")) {
            hint = advice.begun.map(
                    open -> Message.of(JobMessage.NOT_CLOSED, bracket(problem), open.getLine() + 1, at(open)));
        }
        return hint.stream().toList();
    }

    private static int at(Mark mark) {
        return mark.getColumn() + 1;
    }

    /** The bracket that is missing, as the parser names it. */
    private static String bracket(String problem) {
        return problem.contains("'}'") ? "}" : "]";
    }

    /** Whether a key with its colon stands before the colon that cannot be. */
    private boolean secondColon() {
        String line = lines.get(at.getLine());
        return KEY_AND_VALUE
                .matcher(line.substring(0, Math.min(at.getColumn(), line.length()))
                        .strip())
                .matches();
    }

    /** A line that begins in another column than the one above it, which has a value of its own and so nothing below it. */
    private Optional<Message> column() {
        int line = at.getLine();
        int above = line - 1;
        while (above >= 0 && isEmpty(lines.get(above))) {
            above--;
        }
        if (line >= lines.size() || above < 0) {
            return Optional.empty();
        }
        int here = indent(lines.get(line));
        int there = indent(lines.get(above));
        return here == there
                ? Optional.empty()
                : Optional.of(Message.of(JobMessage.SAME_COLUMN, here, above + 1, there));
    }

    private static boolean isEmpty(String line) {
        return line.isBlank() || line.strip().startsWith("#");
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }
}
