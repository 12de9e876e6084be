package org.quaybook.record;

import java.net.URI;
import java.util.Locale;
import org.quaybook.job.RecordCode;

/**
 * The permanent address of a record: the installer's base address and the code, nothing else. Scheme and host are written
 * in capitals, which means the same and needs a smaller QR symbol.
 *
 * @param base the installer's base address, ending in a slash
 */
public record RecordLink(String base, RecordCode code) {

    /** The address as the QR holds it. */
    public String address() {
        URI uri = URI.create(base);
        return (uri.getScheme() + "://" + uri.getRawAuthority()).toUpperCase(Locale.ROOT)
                + uri.getRawPath()
                + code.symbols();
    }

    /** The folder of the record below the base address. */
    public String folder() {
        return code.symbols();
    }
}
