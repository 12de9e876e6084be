package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.quaybook.render.Face;

/**
 * The kinds of text in a picture. Sizes are points where a picture is as wide as the text of an A5 page; half a Letter
 * page is 7 % narrower and still leaves more than 7 pt.
 */
enum Lettering {
    NAME(Face.BOLD, 9.5),
    PLAIN(Face.REGULAR, 9),
    SMALL(Face.REGULAR, 8),
    SMALL_BOLD(Face.BOLD, 8);

    /** Common practice, no source: leading of 1.2 times the size. */
    private static final double LEADING = 1.2;

    /** What hangs below the last baseline. */
    static final double DESCENT = 2.4;

    private final Face face;
    private final double size;

    Lettering(Face face, double size) {
        this.face = face;
        this.size = size;
    }

    double size() {
        return size;
    }

    boolean bold() {
        return face == Face.BOLD;
    }

    /** From baseline to baseline. */
    double leading() {
        return size * LEADING;
    }

    /** Height of capitals. */
    double capitals() {
        return face.capHeight(size);
    }

    double width(String text) {
        return face.widthOf(text, capitals());
    }

    /** Lines no wider than asked; a word that is wider itself is broken where it must be. */
    List<String> wrap(String text, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line) > width) {
                int fits = fitting(line, width);
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        lines.add(line);
        return lines;
    }

    /** Whether a text needs no word broken at a width. */
    boolean wrapsWords(String text, double width) {
        return Arrays.stream(text.split(" ", -1)).allMatch(word -> width(word) <= width);
    }

    private int fitting(String word, double width) {
        int fits = 1;
        while (fits < word.length() - 1 && width(word.substring(0, fits + 1)) <= width) {
            fits++;
        }
        return fits;
    }
}
