package org.quaybook.job;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what somebody probably meant. */
public final class Spelling {

    private Spelling() {}

    /**
     * The likeliest of the known words for a mistyped one: at most one slip in three letters, capitals and small
     * letters and hyphens, underscores and spaces being the same; the first of equals. Of a tag as short as B1 no slip
     * is guessed at, for F1 would be as near.
     */
    public static Optional<String> nearest(String typed, Collection<String> known) {
        String plain = plain(typed);
        int most = plain.length() / 3;
        return known.stream()
                .filter(word -> Math.abs(word.length() - plain.length()) <= most)
                .filter(word -> distance(plain, plain(word)) <= most)
                .min(Comparator.comparingInt(word -> distance(plain, plain(word))));
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Slips between two words: letters left out, added, changed, or neighbours swapped (optimal string alignment). */
    static int distance(String a, String b) {
        int[][] slips = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                slips[i][j] = i == 0 || j == 0 ? i + j : fewest(slips, a, b, i, j);
            }
        }
        return slips[a.length()][b.length()];
    }

    private static int fewest(int[][] slips, String a, String b, int i, int j) {
        int change = slips[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int fewest = Math.min(change, Math.min(slips[i - 1][j], slips[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(fewest, slips[i - 2][j - 2] + 1) : fewest;
    }
}
