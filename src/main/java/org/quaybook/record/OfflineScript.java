package org.quaybook.record;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.job.Header;
import org.quaybook.render.Templates;

/**
 * The service worker that keeps a record's pages in the browser after the first visit. A browser may throw them away when
 * it is not visited for some time, so it replaces neither the card nor the labels nor a saved copy.
 */
final class OfflineScript {

    static final String FILE = "offline.js";

    private final Templates templates;

    OfflineScript(Templates templates) {
        this.templates = templates;
    }

    /**
     * The script.
     *
     * @param pages files to keep, or none is kept; the record's folder itself is among them
     * @param more files to keep if the host gives them
     * @param content of the record's files: whenever it changes the kept copies are renewed
     */
    String of(Header header, List<String> pages, List<String> more, Collection<byte[]> content) {
        return templates
                .text("record/offline.js")
                .replace("'%KEPT%'", "'" + header.record().symbols() + "-" + digest(content) + "'")
                .replace("'%RECORD%'", "'" + header.record().symbols() + "-'")
                .replace("['%PAGES%']", list(Stream.concat(Stream.of("./"), pages.stream())))
                .replace("['%MORE%']", list(more.stream()));
    }

    private static String list(Stream<String> names) {
        return names.map(name -> "'" + name + "'").collect(Collectors.joining(", ", "[", "]"));
    }

    private static String digest(Collection<byte[]> pages) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            pages.forEach(digest::update);
            return HexFormat.of().formatHex(digest.digest(), 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
