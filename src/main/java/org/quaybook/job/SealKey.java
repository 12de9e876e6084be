package org.quaybook.job;

import java.math.BigInteger;
import java.security.SecureRandom;
import java.util.Arrays;

/**
 * What opens a sealed record: 128 random bits as 26 {@linkplain CheckedSymbols symbols}, the first of them 0 to 7, and one
 * check symbol. It stands in the job file and in the link of the labels, and in no file that is published unsealed.
 *
 * @param symbols the 27 symbols without hyphens, capitals
 */
public record SealKey(String symbols) {

    static final int LENGTH = 27;

    private static final int BITS = 128;

    /** 26 symbols hold 130 bits; the two highest are 0. */
    private static final int FIRST_OF = 8;

    /** @throws IllegalArgumentException if the length, a symbol or the check symbol is wrong */
    public SealKey {
        CheckedSymbols.check("a seal key", symbols, LENGTH);
        if (CheckedSymbols.value(symbols.charAt(0)) >= FIRST_OF) {
            throw new IllegalArgumentException("the first symbol of a seal key is 0 to 7");
        }
    }

    /**
     * Reads a key as people type it: small letters, hyphens and spaces anywhere, O for 0, I and L for 1.
     *
     * @throws IllegalArgumentException if it is not a valid key
     */
    public static SealKey parse(String typed) {
        return new SealKey(CheckedSymbols.plain(typed));
    }

    /** Draws a new key. */
    public static SealKey draw(SecureRandom random) {
        return new SealKey(CheckedSymbols.draw(random, FIRST_OF, LENGTH));
    }

    /** The 16 bytes, highest first. */
    public byte[] bytes() {
        BigInteger number = BigInteger.ZERO;
        for (int i = 0; i < LENGTH - 1; i++) {
            number = number.multiply(BigInteger.valueOf(CheckedSymbols.ALPHABET.length()))
                    .add(BigInteger.valueOf(CheckedSymbols.value(symbols.charAt(i))));
        }
        // The bit above them keeps leading zeros.
        byte[] marked = number.setBit(BITS).toByteArray();
        return Arrays.copyOfRange(marked, 1, marked.length);
    }

    /** In groups of four, as printed: {@code 3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4}. */
    @Override
    public String toString() {
        return CheckedSymbols.grouped(symbols);
    }
}
