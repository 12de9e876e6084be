package org.quaybook.proof;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.interfaces.EdECPrivateKey;
import java.security.spec.NamedParameterSpec;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.crypto.Cipher;
import javax.crypto.EncryptedPrivateKeyInfo;
import javax.crypto.SecretKey;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.IvParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.PBEParameterSpec;
import org.quaybook.diag.Message;

/**
 * The private half of an installer's key, Ed25519, as its file keeps it: PKCS #8 in PEM (RFC 8410, RFC 7468), plain or
 * under a passphrase (PBES2 of RFC 8018: PBKDF2 with HMAC-SHA-256, AES-256-CBC).
 */
public final class PrivateKeyFile {

    private static final String ALGORITHM = "Ed25519";
    private static final String UNDER_PASSPHRASE = "PBEWithHmacSHA256AndAES_256";

    /** What PKCS #8 says before the 32 bytes of the key (RFC 8410, section 7). */
    private static final byte[] PKCS8 = HexFormat.of().parseHex("302e020100300506032b657004220420");

    private static final byte[] PBES2 = HexFormat.of().parseHex("06092a864886f70d01050d");

    private static final int KEY_LENGTH = 32;
    private static final int SALT_LENGTH = 16;
    private static final int BLOCK = 16;

    /** Rounds of PBKDF2 with HMAC-SHA-256 that OWASP recommends (2023, from memory). */
    private static final int ROUNDS = 600_000;

    /** A file that asks for more would keep the machine busy for minutes. */
    private static final int MOST_ROUNDS = 10_000_000;

    private static final long LARGEST_FILE = 64 << 10;

    private final byte[] raw;
    private final PrivateKey key;
    private final VerifyingKey verifyingKey;

    private PrivateKeyFile(byte[] raw) throws GeneralSecurityException {
        this.raw = raw.clone();
        this.key = KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(pkcs8()));
        try {
            this.verifyingKey = VerifyingKey.of(publicHalf(raw));
        } catch (Refused e) {
            throw new IllegalStateException("every private key has a public one", e);
        }
    }

    /** The JDK computes a public key only when it draws a pair, so it is given this key for its randomness. */
    private static byte[] publicHalf(byte[] raw) throws GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance(ALGORITHM);
        generator.initialize(NamedParameterSpec.ED25519, new SecureRandom() {
            private static final long serialVersionUID = 1;

            @Override
            public void nextBytes(byte[] bytes) {
                System.arraycopy(raw, 0, bytes, 0, bytes.length);
            }
        });
        byte[] spki = generator.generateKeyPair().getPublic().getEncoded();
        return Arrays.copyOfRange(spki, spki.length - VerifyingKey.LENGTH, spki.length);
    }

    private byte[] pkcs8() {
        return joined(PKCS8, raw);
    }

    /** Draws a new key. */
    public static PrivateKeyFile draw(SecureRandom random) {
        byte[] raw = new byte[KEY_LENGTH];
        random.nextBytes(raw);
        return of(raw);
    }

    /** @param raw the 32 bytes of a private key (RFC 8032, section 5.1.5) */
    static PrivateKeyFile of(byte[] raw) {
        try {
            return new PrivateKeyFile(raw);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java since 15 has Ed25519", e);
        }
    }

    /**
     * Reads the file of a key.
     *
     * @param passphrase asked only if the file is under one; an empty answer gives up
     * @throws Refused if the file cannot be read, is no key of this kind, or the passphrase is wrong
     */
    public static PrivateKeyFile read(Path file, Supplier<char[]> passphrase) throws Refused {
        String text;
        try {
            if (Files.size(file) > LARGEST_FILE) {
                throw new Refused(Message.of(ProofMessage.NOT_A_PRIVATE_KEY, file.toString()));
            }
            text = Files.readString(file);
        } catch (IOException e) {
            throw new Refused(Message.of(ProofMessage.KEY_UNREADABLE, file.toString()));
        }
        Optional<byte[]> plain = Pem.read(Pem.PRIVATE_KEY, text);
        Optional<byte[]> covered = Pem.read(Pem.ENCRYPTED_PRIVATE_KEY, text);
        if (plain.isEmpty() && covered.isEmpty()) {
            throw new Refused(Message.of(ProofMessage.NOT_A_PRIVATE_KEY, file.toString()));
        }
        byte[] der = plain.isPresent() ? plain.get() : uncovered(covered.get(), passphrase.get(), file);
        try {
            PrivateKey read = KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(der));
            return of(((EdECPrivateKey) read).getBytes().orElseThrow());
        } catch (GeneralSecurityException e) {
            throw new Refused(Message.of(ProofMessage.NOT_A_PRIVATE_KEY, file.toString()));
        }
    }

    private static byte[] uncovered(byte[] covered, char[] passphrase, Path file) throws Refused {
        try {
            EncryptedPrivateKeyInfo read = new EncryptedPrivateKeyInfo(covered);
            AlgorithmParameters parameters = read.getAlgParameters();
            if (parameters == null
                    || parameters.getParameterSpec(PBEParameterSpec.class).getIterationCount() > MOST_ROUNDS) {
                throw new Refused(Message.of(ProofMessage.NOT_A_PRIVATE_KEY, file.toString()));
            }
            Cipher cipher = Cipher.getInstance(parameters.toString());
            cipher.init(Cipher.DECRYPT_MODE, stretched(passphrase, parameters.toString()), parameters);
            return read.getKeySpec(cipher).getEncoded();
        } catch (IOException e) {
            throw new Refused(Message.of(ProofMessage.NOT_A_PRIVATE_KEY, file.toString()));
        } catch (GeneralSecurityException e) {
            throw new Refused(Message.of(ProofMessage.WRONG_PASSPHRASE, file.toString()));
        }
    }

    private static SecretKey stretched(char[] passphrase, String algorithm) throws GeneralSecurityException {
        PBEKeySpec spec = new PBEKeySpec(passphrase);
        try {
            return SecretKeyFactory.getInstance(algorithm).generateSecret(spec);
        } finally {
            spec.clearPassword();
        }
    }

    /**
     * Writes the key into a new file that only its owner can read, and the public key into another of the same name with
     * {@code .pub} behind it. Nothing is ever replaced.
     *
     * @param passphrase printable ASCII (32 to 126), which every program reads alike; empty for none
     * @throws Refused if one of the files exists, the place is inside a pack or a site, or the system refuses
     */
    public void write(Path file, char[] passphrase) throws Refused {
        Path publicFile = publicFile(file);
        for (Path each : new Path[] {file, publicFile}) {
            if (Files.exists(each, LinkOption.NOFOLLOW_LINKS)) {
                throw new Refused(Message.of(ProofMessage.KEY_EXISTS, each.toString()));
            }
        }
        Optional<Path> around = IssuedFolders.around(file);
        if (around.isPresent()) {
            throw new Refused(Message.of(
                    ProofMessage.KEY_PLACE, file.toString(), around.get().toString()));
        }
        String text = passphrase.length == 0
                ? Pem.of(Pem.PRIVATE_KEY, pkcs8())
                : Pem.of(Pem.ENCRYPTED_PRIVATE_KEY, covered(passphrase));
        create(file, text, ownersOnly(file));
        try {
            create(publicFile, verifyingKey.pem());
        } catch (Refused e) {
            delete(file);
            throw e;
        }
    }

    /** Where the public key goes: beside the private one. */
    public static Path publicFile(Path file) {
        return file.resolveSibling(file.getFileName() + ".pub");
    }

    /** Whether the system lets others than its owner read a file; false where it does not say. */
    public static boolean isOpenToOthers(Path file) {
        try {
            Set<PosixFilePermission> allowed = EnumSet.copyOf(Files.getPosixFilePermissions(file));
            allowed.removeAll(PosixFilePermissions.fromString("rwx------"));
            return !allowed.isEmpty();
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }

    private byte[] covered(char[] passphrase) throws Refused {
        for (char symbol : passphrase) {
            if (symbol < ' ' || symbol > '~') {
                throw new Refused(Message.of(ProofMessage.PASSPHRASE_SYMBOLS));
            }
        }
        SecureRandom random = new SecureRandom();
        byte[] salt = new byte[SALT_LENGTH];
        byte[] start = new byte[BLOCK];
        random.nextBytes(salt);
        random.nextBytes(start);
        try {
            Cipher cipher = Cipher.getInstance(UNDER_PASSPHRASE);
            cipher.init(
                    Cipher.ENCRYPT_MODE,
                    stretched(passphrase, UNDER_PASSPHRASE),
                    new PBEParameterSpec(salt, ROUNDS, new IvParameterSpec(start)));
            byte[] content = cipher.doFinal(pkcs8());
            // The JDK reads this structure but cannot name its algorithm when writing it.
            return der(0x30, der(0x30, PBES2, cipher.getParameters().getEncoded()), der(0x04, content));
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException("every Java since 8 has " + UNDER_PASSPHRASE, e);
        }
    }

    /** One value of DER (X.690) of less than 64 KiB. */
    private static byte[] der(int tag, byte[]... parts) {
        byte[] content = joined(parts);
        int length = content.length;
        byte[] head = length < 0x80
                ? new byte[] {(byte) tag, (byte) length}
                : length < 0x100
                        ? new byte[] {(byte) tag, (byte) 0x81, (byte) length}
                        : new byte[] {(byte) tag, (byte) 0x82, (byte) (length >> 8), (byte) length};
        return joined(head, content);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            joined.writeBytes(part);
        }
        return joined.toByteArray();
    }

    private static FileAttribute<?>[] ownersOnly(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    private static void create(Path file, String text, FileAttribute<?>... attributes) throws Refused {
        try (var to = Files.newByteChannel(
                file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), attributes)) {
            try {
                var bytes = java.nio.ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII));
                while (bytes.hasRemaining()) {
                    to.write(bytes);
                }
            } catch (IOException e) {
                delete(file);
                throw e;
            }
        } catch (FileAlreadyExistsException e) {
            throw new Refused(Message.of(ProofMessage.KEY_EXISTS, file.toString()));
        } catch (IOException e) {
            throw new Refused(Message.of(ProofMessage.KEY_NOT_WRITTEN, file.toString()));
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // The reason for stopping is told; the key that is left was never used.
        }
    }

    /** The public half. */
    public VerifyingKey verifyingKey() {
        return verifyingKey;
    }

    /** The 64 bytes of the signature over a message (RFC 8032, section 5.1.6). */
    byte[] sign(byte[] message) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(key);
            signature.update(message);
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the key was tried when it was made", e);
        }
    }
}
