package org.quaybook.seal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Seals the files of one record. A sealed file is
 *
 * <pre>
 *  8 bytes  QUAYSEAL
 *  1 byte   form: 0 as it is, 1 packed by zlib (RFC 1950)
 *  2 bytes  revision, the high byte first
 * 12 bytes  nonce
 *  n bytes  the content by AES-256-GCM, and at its end the tag of 16 bytes
 * </pre>
 *
 * <p>Authenticated with it are the first 11 bytes, the record's code and the file's name: a sealed file passes for no
 * other one, nor for one of another record or revision. Each file has a key of its own, by HKDF-SHA-256 (RFC 5869) with the
 * code as salt. The nonce is the beginning of an HMAC-SHA-256 of all that is sealed, under a further key: the same file gives
 * the same bytes, and no two contents share a nonce but by a chance of 2^-96 a pair.
 */
public final class Seal {

    /** What is put to a file's name when it is sealed. */
    public static final String ENDING = ".sealed";

    private static final byte[] MARK = "QUAYSEAL".getBytes(StandardCharsets.US_ASCII);
    private static final int HEAD = MARK.length + 3;
    private static final byte AS_IS = 0;
    private static final byte PACKED = 1;
    private static final int KEY = 32;
    private static final int TOKEN = 8;

    private final byte[] key;
    private final byte[] record;

    /**
     * A seal.
     *
     * @param key the record's key, 16 bytes
     * @param record its code, 21 symbols
     */
    public Seal(byte[] key, String record) {
        this.key = key.clone();
        this.record = ascii(record);
    }

    /** By what a page tells at once whether a key is the record's; nobody finds the key from it. Hexadecimal digits. */
    public String token() {
        return HexFormat.of().formatHex(Hkdf.derive(key, record, info("token", ""), TOKEN));
    }

    /**
     * Seals a file.
     *
     * @param name the file's, without {@link #ENDING}
     * @param revision 1 to 999
     */
    public byte[] seal(String name, int revision, byte[] content) {
        byte[] packed = packed(content);
        boolean smaller = packed.length < content.length;
        byte[] sealed = smaller ? packed : content;
        byte[] head = ByteBuffer.allocate(HEAD)
                .put(MARK)
                .put(smaller ? PACKED : AS_IS)
                .putShort((short) revision)
                .array();
        byte[] beside = beside(head, name);
        byte[] nonceKey = Hkdf.derive(key, record, info("nonce", name), KEY);
        byte[] nonce = Arrays.copyOf(Hkdf.mac(nonceKey, beside, sealed), Aes.NONCE);
        byte[] encrypted = Aes.encrypt(Hkdf.derive(key, record, info("key", name), KEY), nonce, beside, sealed);
        return ByteBuffer.allocate(HEAD + Aes.NONCE + encrypted.length)
                .put(head)
                .put(nonce)
                .put(encrypted)
                .array();
    }

    private byte[] beside(byte[] head, String name) {
        byte[] file = name.getBytes(StandardCharsets.UTF_8);
        return ByteBuffer.allocate(head.length + record.length + file.length)
                .put(head)
                .put(record)
                .put(file)
                .array();
    }

    private static byte[] info(String purpose, String name) {
        return ("quaybook " + purpose + " " + name).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] packed(byte[] content) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
            out.write(content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            deflater.end();
        }
        return packed.toByteArray();
    }
}
