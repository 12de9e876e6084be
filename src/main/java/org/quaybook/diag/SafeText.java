package org.quaybook.job;

import java.util.Locale;
import java.util.OptionalInt;

/** Which characters a file may hold: none that a reader cannot see or that turn the direction of the text. */
final class SafeText {

    private SafeText() {}

    static OptionalInt firstUnsafe(String text) {
        return text.codePoints().filter(SafeText::isUnsafe).findFirst();
    }

    /** Control characters other than line breaks and tabs, bidirectional controls, line separators, lone surrogates. */
    static boolean isUnsafe(int character) {
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
    static String nameOf(int character) {
        return String.format(Locale.ROOT, "U+%04X", character);
    }
}
