package org.quaybook.diag;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Which characters a file may hold and a terminal is sent: none that a reader cannot see or that turn the direction of the text,
 * and so none that a terminal would obey.
 */
public final class SafeText {

    private SafeText() {}

    /** The first character of a text that may not be there; empty if there is none. */
    public static OptionalInt firstUnsafe(String text) {
        return text.codePoints().filter(SafeText::isUnsafe).findFirst();
    }

    /** Control characters other than line breaks and tabs, bidirectional controls, line separators, lone surrogates. */
    public static boolean isUnsafe(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL -> character != '\n' && character != '\r' && character != '\t';
            case Character.FORMAT -> turnsDirection(character) || character == 0xFEFF;
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> true;
            default -> (character & 0xFFFE) == 0xFFFE;
        };
    }

    private static boolean turnsDirection(int character) {
        return switch (Character.getDirectionality(character)) {
            case Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING,
                    Character.DIRECTIONALITY_LEFT_TO_RIGHT_OVERRIDE,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
                    Character.DIRECTIONALITY_POP_DIRECTIONAL_FORMAT,
                    Character.DIRECTIONALITY_LEFT_TO_RIGHT_ISOLATE,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE,
                    Character.DIRECTIONALITY_FIRST_STRONG_ISOLATE,
                    Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE -> true;
            default -> false;
        };
    }

    /** How a message names a character that cannot be shown: {@code U+202E}. */
    public static String nameOf(int character) {
        return String.format(Locale.ROOT, "U+%04X", character);
    }

    /** A text with each unsafe character named in its place: {@code <U+001B>}. Line breaks and tabs stay. */
    public static String shown(String text) {
        return firstUnsafe(text).isEmpty() ? text : named(text, false);
    }

    /** As {@link #shown}, line breaks and tabs named too: for the name of a file, which could feign lines of its own. */
    public static String shownOnOneLine(String text) {
        return named(text, true);
    }

    private static String named(String text, boolean onOneLine) {
        StringBuilder named = new StringBuilder();
        text.codePoints().forEach(character -> {
            if (isUnsafe(character) || (onOneLine && character < ' ')) {
                named.append('<').append(nameOf(character)).append('>');
            } else {
                named.appendCodePoint(character);
            }
        });
        return named.toString();
    }
}
