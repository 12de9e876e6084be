package org.quaybook.render;

import java.util.List;

/**
 * Text fitted into a box: as large as its style allows and the box bears, broken between words, never cut off.
 *
 * @param paragraphs at least one; a line feed within one breaks the line; a soft hyphen lets a word be divided
 */
public record TextBlock(Box box, List<String> paragraphs, TextStyle style) implements Mark {

    public TextBlock {
        paragraphs = List.copyOf(paragraphs);
        if (paragraphs.isEmpty()) {
            throw new IllegalArgumentException("no text");
        }
    }

    public static TextBlock of(Box box, String text, TextStyle style) {
        return new TextBlock(box, List.of(text), style);
    }

    /** The whole text, for messages. */
    String text() {
        return String.join(" ", paragraphs);
    }
}
