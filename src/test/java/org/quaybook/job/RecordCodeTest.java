package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.security.SecureRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Source of the rules: Douglas Crockford, "Base 32": 32 symbols without I, L, O, U; check symbol = number modulo 37, the
 * five further symbols being * ~ $ = U; on reading, O counts as 0, I and L as 1, hyphens are ignored. The values below
 * follow from these rules with big integers; they were not read anywhere.
 */
class RecordCodeTest {

    private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final String CODE = "9F3K7TWMX2QA6HCED1RBY";

    @ParameterizedTest
    @CsvSource({
        "1234, 16J, D",
        "0, 0, 0",
        "65535, 1ZZZ, 8",
        "1234567, 15NM7, S",
        "4294967295, 3ZZZZZZ, 6",
        "1267650600228229401496703205375, ZZZZZZZZZZZZZZZZZZZZ, B"
    })
    void checkSymbolIsTheNumberModulo37(BigInteger number, String symbols, char check) {
        assertThat(value(symbols)).isEqualTo(number);
        assertThat(ALPHABET.charAt(number.mod(BigInteger.valueOf(37)).intValueExact()))
                .isEqualTo(check);
        assertThat(CheckedSymbols.checkSymbol(symbols)).isEqualTo(check);
    }

    @Test
    void codesWithAnExtraCheckSymbolAreNotIssued() {
        // 32 is written 10; 32 modulo 37 is 32, whose check symbol would be the asterisk.
        assertThatThrownBy(() -> CheckedSymbols.checkSymbol("10"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no check symbol");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "9F3K-7TWM-X2QA-6HCE-D1RB-Y",
                "9f3k7twmx2qa6hced1rby",
                "9F-3K7TW MX2Q A6HCED1 RBY",
                "9F3K-7TWM-X2QA-6HCE-DIRB-Y",
                "9F3K-7TWM-X2QA-6HCE-DlRB-Y"
            })
    void peopleTypeItInManyWays(String typed) {
        assertThat(RecordCode.parse(typed).symbols()).isEqualTo(CODE);
        assertThat(RecordCode.parse(typed)).hasToString("9F3K-7TWM-X2QA-6HCE-D1RB-Y");
    }

    @Test
    void letterOCountsAsZero() {
        String data = "0".repeat(19) + "1";
        assertThat(RecordCode.parse("o".repeat(10) + "O".repeat(9) + "1" + "1").symbols())
                .isEqualTo(data + "1");
    }

    @Test
    void everyChangeOfOneSymbolIsCaught() {
        int caught = 0;
        for (int i = 0; i < 20; i++) {
            for (int j = 0; j < ALPHABET.length(); j++) {
                char other = ALPHABET.charAt(j);
                if (other != CODE.charAt(i)) {
                    assertRefused(CODE.substring(0, i) + other + CODE.substring(i + 1));
                    caught++;
                }
            }
        }
        assertThat(caught).isEqualTo(620);
    }

    @Test
    void everySwapOfNeighboursIsCaught() {
        int caught = 0;
        for (int i = 0; i < 19; i++) {
            assertThat(CODE.charAt(i)).isNotEqualTo(CODE.charAt(i + 1));
            assertRefused(CODE.substring(0, i) + CODE.charAt(i + 1) + CODE.charAt(i) + CODE.substring(i + 2));
            caught++;
        }
        assertThat(caught).isEqualTo(19);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "9F3K", "9F3K7TWMX2QA6HCED1RBYY", "9F3K7TWMX2QA6HCEU1RBY", "9F3K7TWMX2QA6HCE*1RBY"})
    void otherLengthsAndSymbolsAreRefused(String text) {
        assertRefused(text);
    }

    @Test
    void drawnCodesAreReadable() {
        SecureRandom random = new SecureRandom();
        for (int i = 0; i < 1000; i++) {
            RecordCode code = RecordCode.draw(random);
            // 20 symbols of 5 bits are 100 bits; with the check symbol all fit a QR code's alphanumeric mode.
            assertThat(code.symbols()).matches("[" + ALPHABET + "]{21}");
            assertThat(RecordCode.parse(code.toString())).isEqualTo(code);
        }
    }

    private static void assertRefused(String text) {
        assertThatThrownBy(() -> RecordCode.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    private static BigInteger value(String symbols) {
        BigInteger value = BigInteger.ZERO;
        for (int i = 0; i < symbols.length(); i++) {
            value = value.multiply(BigInteger.valueOf(32)).add(BigInteger.valueOf(ALPHABET.indexOf(symbols.charAt(i))));
        }
        return value;
    }
}
