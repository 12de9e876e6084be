package org.quaybook.job;

import java.security.SecureRandom;
import java.util.Locale;

/**
 * The permanent code of an install record: 20 random symbols (100 bits) and one check symbol, in Crockford's base 32
 * (no I, L, O, U, so that it can be read aloud). The check symbol is the number's remainder modulo 37; codes whose
 * check would need one of the five extra symbols are not issued, so that a link stays within letters and digits.
 *
 * @param symbols the 21 symbols without hyphens, capitals
 */
public record RecordCode(String symbols) {

    private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int DATA_SYMBOLS = 20;

    /** @throws IllegalArgumentException if the length, a symbol or the check symbol is wrong */
    public RecordCode {
        if (symbols.length() != DATA_SYMBOLS + 1) {
            throw new IllegalArgumentException("a record code has 21 symbols, not " + symbols.length());
        }
        char check = checkSymbol(symbols.substring(0, DATA_SYMBOLS));
        if (symbols.charAt(DATA_SYMBOLS) != check) {
            throw new IllegalArgumentException("the check symbol of " + symbols + " should be " + check);
        }
    }

    /**
     * Reads a code as people type it: small letters, hyphens and spaces anywhere, O for 0, I and L for 1.
     *
     * @throws IllegalArgumentException if it is not a valid code
     */
    public static RecordCode parse(String typed) {
        String plain = typed.toUpperCase(Locale.ROOT)
                .replace("-", "")
                .replace(" ", "")
                .replace('O', '0')
                .replace('I', '1')
                .replace('L', '1');
        return new RecordCode(plain);
    }

    /** Draws a new code. */
    public static RecordCode draw(SecureRandom random) {
        while (true) {
            StringBuilder data = new StringBuilder();
            for (int i = 0; i < DATA_SYMBOLS; i++) {
                data.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            }
            int remainder = remainder(data);
            if (remainder < ALPHABET.length()) {
                return new RecordCode(data.append(ALPHABET.charAt(remainder)).toString());
            }
        }
    }

    /**
     * The check symbol of data symbols: their value modulo 37.
     *
     * @throws IllegalArgumentException for a foreign symbol, or if the check would need one of the five extra symbols
     */
    static char checkSymbol(CharSequence data) {
        int remainder = remainder(data);
        if (remainder >= ALPHABET.length()) {
            throw new IllegalArgumentException(data + " has no check symbol among letters and digits");
        }
        return ALPHABET.charAt(remainder);
    }

    private static int remainder(CharSequence data) {
        int remainder = 0;
        for (int i = 0; i < data.length(); i++) {
            int value = ALPHABET.indexOf(data.charAt(i));
            if (value < 0) {
                throw new IllegalArgumentException("'" + data.charAt(i) + "' cannot stand in a record code");
            }
            remainder = (remainder * 32 + value) % 37;
        }
        return remainder;
    }

    /** In groups of four, as printed: {@code 9F3K-7TWM-X2QA-6HCE-D1RB-Y}. */
    @Override
    public String toString() {
        return symbols.replaceAll("(.{4})(?!$)", "$1-");
    }
}
