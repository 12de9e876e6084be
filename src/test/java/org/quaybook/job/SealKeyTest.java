package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.security.SecureRandom;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of the symbols are those of {@link RecordCodeTest}; the values follow from them with big integers. */
class SealKeyTest {

    private static final String KEY = "3M8V41QDZT7C0W9XKE5H62RBFY4";

    /** 2^128 - 2 is a 7, 24 times Z and a Y; as 2^36 = 1 and 2^20 = 33 modulo 37, its remainder is 31. */
    @ParameterizedTest
    @CsvSource({
        "000000000000000000000000000, 00000000000000000000000000000000",
        "000000000000000000000000011, 00000000000000000000000000000001",
        "7ZZZZZZZZZZZZZZZZZZZZZZZZYZ, fffffffffffffffffffffffffffffffe"
    })
    void holdsSixteenBytes(String symbols, String bytes) {
        assertThat(new SealKey(symbols).bytes()).isEqualTo(HexFormat.of().parseHex(bytes));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4",
                "3m8v41qdzt7c0w9xke5h62rbfy4",
                "3M8V 4LQD ZT7C OW9X KE5H 62RB FY4",
                "3M8V 4iQD ZT7C oW9X KE5H 62RB FY4"
            })
    void peopleTypeItInManyWays(String typed) {
        assertThat(SealKey.parse(typed).symbols()).isEqualTo(KEY);
        assertThat(SealKey.parse(typed)).hasToString("3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4");
    }

    /** Too short, too long, a foreign symbol, another check symbol, more than 128 bits. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "3M8V41QDZT7C0W9XKE5H62RBFY",
                "3M8V41QDZT7C0W9XKE5H62RBFY44",
                "3M8V41QDZT7C0W9XKE5H62RBUY4",
                "3M8V41QDZT7C0W9XKE5H62RBFY5",
                "800000000000000000000000040"
            })
    void othersAreRefused(String text) {
        assertThatThrownBy(() -> SealKey.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void messagesDoNotRepeatIt() {
        assertThatThrownBy(() -> SealKey.parse(KEY.replace("Y4", "Y5"))).hasMessageNotContaining("3M8V");
    }

    @Test
    void drawnKeysAreOf128Bits() {
        SecureRandom random = new SecureRandom();
        BigInteger seen = BigInteger.ZERO;
        for (int i = 0; i < 1000; i++) {
            SealKey key = SealKey.draw(random);
            assertThat(SealKey.parse(key.toString())).isEqualTo(key);
            assertThat(key.bytes()).hasSize(16);
            seen = seen.or(new BigInteger(1, key.bytes()));
        }
        // A bit that is 0 in a thousand keys is not drawn.
        assertThat(seen).isEqualTo(BigInteger.ONE.shiftLeft(128).subtract(BigInteger.ONE));
    }
}
