package org.quaybook.job;

import java.security.SecureRandom;

/**
 * The permanent code of an install record: 20 random {@linkplain CheckedSymbols symbols} (100 bits) and one check symbol.
 *
 * @param symbols the 21 symbols without hyphens, capitals
 */
public record RecordCode(String symbols) {

    static final int LENGTH = 21;

    /** @throws IllegalArgumentException if the length, a symbol or the check symbol is wrong */
    public RecordCode {
        CheckedSymbols.check("a record code", symbols, LENGTH);
    }

    /**
     * Reads a code as people type it: small letters, hyphens and spaces anywhere, O for 0, I and L for 1.
     *
     * @throws IllegalArgumentException if it is not a valid code
     */
    public static RecordCode parse(String typed) {
        return new RecordCode(CheckedSymbols.plain(typed));
    }

    /** Draws a new code. */
    public static RecordCode draw(SecureRandom random) {
        return new RecordCode(CheckedSymbols.draw(random, CheckedSymbols.ALPHABET.length(), LENGTH));
    }

    /** In groups of four, as printed: {@code 9F3K-7TWM-X2QA-6HCE-D1RB-Y}. */
    @Override
    public String toString() {
        return CheckedSymbols.grouped(symbols);
    }
}
