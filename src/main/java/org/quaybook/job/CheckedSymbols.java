package org.quaybook.job;

import java.security.SecureRandom;
import java.util.Locale;

/**
 * Numbers as people read them aloud and type them: Crockford's base 32 (no I, L, O, U) with a check symbol at the end, the
 * number's remainder modulo 37. Numbers whose check would need one of the five extra symbols are not issued, so that all
 * stays within letters and digits.
 */
final class CheckedSymbols {

    static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private CheckedSymbols() {}

    /**
     * Holds symbols against their check symbol.
     *
     * @param name of what is checked, with its article, for the exception
     * @param length how many there must be, the check symbol included
     * @throws IllegalArgumentException if the length, a symbol or the check symbol is wrong
     */
    static void check(String name, String symbols, int length) {
        if (symbols.length() != length) {
            throw new IllegalArgumentException(name + " has " + length + " symbols, not " + symbols.length());
        }
        char check = checkSymbol(symbols.substring(0, length - 1));
        if (symbols.charAt(length - 1) != check) {
            throw new IllegalArgumentException("the check symbol of " + name + " does not fit its other symbols");
        }
    }

    /** As people type it: small letters, hyphens and spaces anywhere, O for 0, I and L for 1. */
    static String plain(String typed) {
        return typed.toUpperCase(Locale.ROOT)
                .replace("-", "")
                .replace(" ", "")
                .replace('O', '0')
                .replace('I', '1')
                .replace('L', '1');
    }

    /**
     * Draws new symbols with their check symbol.
     *
     * @param firstOf how many symbols the first one is drawn from
     * @param length as above
     */
    static String draw(SecureRandom random, int firstOf, int length) {
        while (true) {
            StringBuilder data = new StringBuilder();
            data.append(ALPHABET.charAt(random.nextInt(firstOf)));
            while (data.length() < length - 1) {
                data.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            }
            int remainder = remainder(data);
            if (remainder < ALPHABET.length()) {
                return data.append(ALPHABET.charAt(remainder)).toString();
            }
        }
    }

    /**
     * The check symbol of data symbols.
     *
     * @throws IllegalArgumentException for a foreign symbol, or if the check would need one of the five extra symbols
     */
    static char checkSymbol(CharSequence data) {
        int remainder = remainder(data);
        if (remainder >= ALPHABET.length()) {
            throw new IllegalArgumentException("these symbols have no check symbol among letters and digits");
        }
        return ALPHABET.charAt(remainder);
    }

    private static int remainder(CharSequence data) {
        int remainder = 0;
        for (int i = 0; i < data.length(); i++) {
            remainder = (remainder * ALPHABET.length() + value(data.charAt(i))) % 37;
        }
        return remainder;
    }

    /** @throws IllegalArgumentException for a foreign symbol */
    static int value(char symbol) {
        int value = ALPHABET.indexOf(symbol);
        if (value < 0) {
            throw new IllegalArgumentException("'" + symbol + "' is none of the symbols");
        }
        return value;
    }

    /** In groups of four. */
    static String grouped(String symbols) {
        return symbols.replaceAll("(.{4})(?!$)", "$1-");
    }
}
