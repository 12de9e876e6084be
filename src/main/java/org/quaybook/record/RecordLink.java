package org.quaybook.record;

import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import org.quaybook.checks.Assessment;
import org.quaybook.job.RecordCode;
import org.quaybook.job.SealKey;

/**
 * The permanent address of a record: the installer's base address and the code, nothing else but, behind a number sign, the
 * key of a sealed record, which no browser sends to the host (RFC 3986, 3.5). Scheme and host are written in capitals, which
 * means the same and needs a smaller QR symbol.
 *
 * @param base the installer's base address, ending in a slash
 * @param key what opens a sealed record; empty for one that everybody with the code may read
 */
public record RecordLink(String base, RecordCode code, Optional<SealKey> key) {

    /** Folder of a pack that holds the record as it is before it is sealed; it is not published. */
    public static final String UNSEALED = "unsealed";

    /** The address of a job's record. */
    public static RecordLink of(Assessment it) {
        return new RecordLink(
                it.installer().records(),
                it.job().job().record(),
                it.job().job().seal());
    }

    /** The address as the QR holds it. */
    public String address() {
        URI uri = URI.create(base);
        return (uri.getScheme() + "://" + uri.getRawAuthority()).toUpperCase(Locale.ROOT)
                + uri.getRawPath()
                + code.symbols()
                + key.map(it -> "#" + it.symbols()).orElse("");
    }

    /** The key as people read it; empty for none. */
    public String printedKey() {
        return key.map(SealKey::toString).orElse("");
    }

    /** The same address for where others may read it: it opens a sealed record for nobody who has not got the key. */
    public RecordLink withoutKey() {
        return new RecordLink(base, code, Optional.empty());
    }

    /** The folder inside a pack where the record can be read without a key. */
    public String readable() {
        return key.isPresent() ? UNSEALED : "record/" + folder();
    }

    /** The folder of the record below the base address. */
    public String folder() {
        return code.symbols();
    }
}
