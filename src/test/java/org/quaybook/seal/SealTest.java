package org.quaybook.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.InflaterInputStream;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.Test;

/**
 * Sealed files are opened here by the description in docs/sealed.md, step by step, with the ciphers of the JDK, and by a
 * browser in SealedInBrowserTest.
 */
class SealTest {

    private static final byte[] KEY = HexFormat.of().parseHex("000102030405060708090a0b0c0d0e0f");
    private static final String CODE = "9F3K7TWMX2QA6HCED1RBY";
    private static final byte[] TEXT =
            "Battery switch: above the battery box. ".repeat(40).getBytes(StandardCharsets.UTF_8);

    private static final Seal SEAL = new Seal(KEY, CODE);

    @Test
    void opensByItsDescription() throws Exception {
        byte[] noise = new byte[1000];
        new Random(1).nextBytes(noise);
        for (byte[] content : List.of(TEXT, noise, new byte[0], new byte[1])) {
            assertThat(opened(SEAL.seal("record.html", 300, content), KEY, CODE, "record.html"))
                    .isEqualTo(content);
        }
    }

    @Test
    void saysFormAndRevision() {
        byte[] sealed = SEAL.seal("record.html", 300, TEXT);

        assertThat(new String(sealed, 0, 8, StandardCharsets.US_ASCII)).isEqualTo("QUAYSEAL");
        assertThat(Arrays.copyOfRange(sealed, 8, 11)).containsExactly(1, 1, 44);
        assertThat(sealed.length).isLessThan(TEXT.length / 4);
    }

    /** Every byte that is altered, and a file that is cut, is found out by the tag. */
    @Test
    void anyAlterationIsRefused() throws Exception {
        byte[] sealed = SEAL.seal("record.html", 1, TEXT);
        for (int at = 0; at < sealed.length; at++) {
            byte[] altered = sealed.clone();
            altered[at] ^= 0x10;
            assertRefused(altered, KEY, CODE, "record.html");
        }
        assertRefused(Arrays.copyOf(sealed, sealed.length - 1), KEY, CODE, "record.html");
    }

    /** A sealed file passes for no other file, no other record, and opens with no other key. */
    @Test
    void belongsToOneFileOfOneRecord() throws Exception {
        byte[] sealed = SEAL.seal("record.html", 1, TEXT);
        byte[] other = KEY.clone();
        other[15] ^= 1;

        assertRefused(sealed, KEY, CODE, "record-de.html");
        assertRefused(sealed, KEY, "81EZD3SWFGV4RK1ZH0YDQ", "record.html");
        assertRefused(sealed, other, CODE, "record.html");
    }

    /** The same job gives the same bytes; whatever differs gets another nonce (NIST SP 800-38D, 8: never one twice). */
    @Test
    void noncesFollowFromWhatIsSealed() {
        byte[] changed = TEXT.clone();
        changed[7]++;

        assertThat(SEAL.seal("record.html", 1, TEXT)).isEqualTo(SEAL.seal("record.html", 1, TEXT));
        assertThat(Stream.of(
                                SEAL.seal("record.html", 1, TEXT),
                                SEAL.seal("record.html", 1, changed),
                                SEAL.seal("record.html", 2, TEXT),
                                SEAL.seal("record-de.html", 1, TEXT),
                                new Seal(KEY, "81EZD3SWFGV4RK1ZH0YDQ").seal("record.html", 1, TEXT))
                        .map(file -> HexFormat.of().formatHex(file, 11, 23)))
                .doesNotHaveDuplicates();
    }

    /** A page tells by the token whether a key is its own; tokens tell nothing of keys or of each other. */
    @Test
    void tokensDiffer() throws Exception {
        byte[] other = KEY.clone();
        other[0] ^= 1;

        assertThat(SEAL.token())
                .isEqualTo(HexFormat.of().formatHex(derived(KEY, CODE, "quaybook token "), 0, 8))
                .isNotEqualTo(new Seal(other, CODE).token())
                .isNotEqualTo(new Seal(KEY, "81EZD3SWFGV4RK1ZH0YDQ").token());
    }

    private static void assertRefused(byte[] file, byte[] key, String code, String name) {
        assertThatExceptionOfType(AEADBadTagException.class).isThrownBy(() -> opened(file, key, code, name));
    }

    private static byte[] opened(byte[] file, byte[] key, String code, String name) throws Exception {
        ByteArrayOutputStream beside = new ByteArrayOutputStream();
        beside.write(file, 0, 11);
        beside.writeBytes((code + name).getBytes(StandardCharsets.UTF_8));
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(
                Cipher.DECRYPT_MODE,
                new SecretKeySpec(derived(key, code, "quaybook key " + name), "AES"),
                new GCMParameterSpec(128, file, 11, 12));
        cipher.updateAAD(beside.toByteArray());
        byte[] content = cipher.doFinal(file, 23, file.length - 23);
        return file[8] == 1 ? new InflaterInputStream(new ByteArrayInputStream(content)).readAllBytes() : content;
    }

    /** HKDF (RFC 5869) of 32 bytes: one block. */
    private static byte[] derived(byte[] key, String salt, String info) throws GeneralSecurityException {
        byte[] extracted = hmac(salt.getBytes(StandardCharsets.UTF_8), key);
        return hmac(extracted, (info + "\1").getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] hmac(byte[] key, byte[] text) throws GeneralSecurityException {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(key, "HmacSHA256"));
        return mac.doFinal(text);
    }
}
