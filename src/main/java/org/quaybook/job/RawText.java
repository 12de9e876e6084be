package org.quaybook.job;

import java.util.Optional;
import java.util.regex.Pattern;
import org.quaybook.diag.Message;
import org.quaybook.diag.Position;
import org.quaybook.diag.SafeText;

/** Looks through a file's text before YAML does, for what YAML would complain of less helpfully or not at all. */
final class RawText {

    private static final Pattern LINE_BREAK = Pattern.compile("\r\n|\r|\n");
    private static final Pattern TAB_INDENTS = Pattern.compile(" *\t\\s*\\S");
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private RawText() {}

    /**
     * Reports characters that may not be there.
     *
     * @return the text with a space in place of each of them, so that reading can go on; empty if a tab indents a line,
     *     for then nobody can know what belongs to what
     */
    static Optional<String> cleaned(String text, Problems problems) {
        String[] lines = LINE_BREAK.split(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text, -1);
        boolean indentKnown = true;
        for (int i = 0; i < lines.length; i++) {
            indentKnown &= !TAB_INDENTS.matcher(lines[i]).lookingAt();
            lines[i] = cleaned(lines[i], i, problems);
        }
        return indentKnown ? Optional.of(String.join("\n", lines)) : Optional.empty();
    }

    private static String cleaned(String line, int number, Problems problems) {
        int[] characters = line.codePoints().toArray();
        boolean inTabs = false;
        for (int column = 0; column < characters.length; column++) {
            int character = characters[column];
            boolean tab = character == '\t';
            if (tab && !inTabs) {
                problems.add(problems.place("", new Position(number, column)), Message.of(JobMessage.TAB));
            }
            if (SafeText.isUnsafe(character)) {
                problems.add(
                        problems.place("", new Position(number, column)),
                        Message.of(JobMessage.UNSAFE_CHARACTER, SafeText.nameOf(character)));
            }
            if (tab || SafeText.isUnsafe(character)) {
                characters[column] = ' ';
            }
            inTabs = tab;
        }
        return new String(characters, 0, characters.length);
    }
}
