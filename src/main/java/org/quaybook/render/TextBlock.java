package org.quaybook.render;

import java.util.List;

/**
 * Text fitted into a box: as large as its style allows and the box bears, broken between words, never cut off.
 *
 * @param paragraphs at least one; a line feed within one breaks the line; a soft hyphen lets a word be divided
 * @param turn how it is turned in its box: left, top and width of the style are those of the turned reader
 */
public record TextBlock(Box box, List<String> paragraphs, TextStyle style, Turn turn) implements Mark {

    public TextBlock {
        paragraphs = List.copyOf(paragraphs);
        if (paragraphs.isEmpty()) {
            throw new IllegalArgumentException("no text");
        }
    }

    /** A text that stands upright. */
    public TextBlock(Box box, List<String> paragraphs, TextStyle style) {
        this(box, paragraphs, style, Turn.UPRIGHT);
    }

    /** The same text turned in the same box. */
    public TextBlock turned(Turn other) {
        return new TextBlock(box, paragraphs, style, other);
    }

    public static TextBlock of(Box box, String text, TextStyle style) {
        return new TextBlock(box, List.of(text), style);
    }

    /** The whole text, for messages. */
    String text() {
        return String.join(" ", paragraphs);
    }
}
