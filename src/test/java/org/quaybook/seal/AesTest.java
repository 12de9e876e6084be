package org.quaybook.seal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HexFormat;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Test cases 13, 14 and 16 of McGrew and Viega, The Galois/Counter Mode of Operation, appendix B, which NIST SP 800-38D
 * refers to; AES-256. All values from memory.
 */
class AesTest {

    private static final HexFormat HEX = HexFormat.of();

    @ParameterizedTest
    @CsvSource({
        "0000000000000000000000000000000000000000000000000000000000000000, 000000000000000000000000, '', '', '',"
                + "530f8afbc74536b9a963b4f1c4cb738b",
        "0000000000000000000000000000000000000000000000000000000000000000, 000000000000000000000000, '',"
                + "00000000000000000000000000000000, cea7403d4d606b6e074ec5d3baf39d18, d0d1c8a799996bf0265b98b5d48ab919",
        "feffe9928665731c6d6a8f9467308308feffe9928665731c6d6a8f9467308308, cafebabefacedbaddecaf888,"
                + "feedfacedeadbeeffeedfacedeadbeefabaddad2,"
                + "d9313225f88406e5a55909c5aff5269a86a7a9531534f7da2e4c303d8a318a72"
                + "1c3c0c95956809532fcf0e2449a6b525b16aedf5aa0de657ba637b39,"
                + "522dc1f099567d07f47f37a32a84427d643a8cdcbfe5c0c97598a2bd2555d1aa"
                + "8cb08e48590dbb3da7b08b1056828838c5f61e6393ba7a0abcc9f662,"
                + "76fc6ece0f4e1768cddf8853bb2d551b"
    })
    void encryptsAsPublished(String key, String nonce, String beside, String content, String encrypted, String tag) {
        assertThat(Aes.encrypt(HEX.parseHex(key), HEX.parseHex(nonce), HEX.parseHex(beside), HEX.parseHex(content)))
                .isEqualTo(HEX.parseHex(encrypted + tag));
    }
}
