package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks text into lines, each as full as it gets: between words, and inside a word only at a soft hyphen.
 *
 * @param size font size; the width's unit
 */
record LineBreaker(Typeface typeface, double size) {

    private static final char SOFT_HYPHEN = '\u00ad';
    private static final String HYPHEN = "-";

    /** Less than a printer can show: what a line may be too wide by the rounding of a sum. */
    private static final double SLACK = 1e-9;

    /**
     * @param text line feeds in it always break
     * @return at least one line; one is wider than allowed when a part of a word is
     */
    List<String> lines(String text, double width) {
        List<String> lines = new ArrayList<>();
        for (String forced : text.split("\n", -1)) {
            String line = "";
            for (String word : forced.strip().split(" +", -1)) {
                line = append(lines, line, word, width);
            }
            lines.add(line);
        }
        return lines;
    }

    /** Puts a word at the end of a line, or what does not fit onto lines of its own; returns the line begun last. */
    private String append(List<String> done, String line, String word, double width) {
        String start = line.isEmpty() ? "" : line + " ";
        if (fits(start + visible(word), width)) {
            return start + visible(word);
        }
        int cut = longestPart(start, word, width);
        if (cut > 0) {
            done.add(start + visible(word.substring(0, cut)) + HYPHEN);
            return append(done, "", word.substring(cut + 1), width);
        }
        if (!line.isEmpty()) {
            done.add(line);
            return append(done, "", word, width);
        }
        return breakAnyway(done, word, width);
    }

    /** A word whose first part is too wide for any line. */
    private String breakAnyway(List<String> done, String word, double width) {
        int first = word.indexOf(SOFT_HYPHEN);
        if (first <= 0) {
            return visible(word);
        }
        done.add(word.substring(0, first) + HYPHEN);
        return append(done, "", word.substring(first + 1), width);
    }

    /** The last soft hyphen up to which a word fits behind the start of a line; -1 when there is none. */
    private int longestPart(String start, String word, double width) {
        int cut = word.lastIndexOf(SOFT_HYPHEN);
        while (cut > 0 && !fits(start + visible(word.substring(0, cut)) + HYPHEN, width)) {
            cut = word.lastIndexOf(SOFT_HYPHEN, cut - 1);
        }
        return cut;
    }

    /** The least width that every part of a text fits. */
    double leastWidth(String text) {
        double least = 0;
        for (String word : text.strip().split("[ \n]+", -1)) {
            String[] parts = word.split(String.valueOf(SOFT_HYPHEN), -1);
            for (int i = 0; i < parts.length; i++) {
                least = Math.max(least, width(i + 1 < parts.length ? parts[i] + HYPHEN : parts[i]));
            }
        }
        return least;
    }

    double width(String text) {
        return typeface.width(text, size);
    }

    private boolean fits(String text, double width) {
        return width(text) <= width + SLACK;
    }

    private static String visible(String word) {
        return word.replace(String.valueOf(SOFT_HYPHEN), "");
    }
}
