package org.quaybook.serve;

import java.util.Map;
import java.util.Optional;

/**
 * What a file is, by the ending of its name. A file with another ending is none of a site's and is not served.
 *
 * @param field content of the field Content-Type
 * @param text whether compression makes it smaller
 */
record MediaType(String field, boolean text) {

    /** Registered names: IANA media types; text/javascript by RFC 9239, JSON without charset by RFC 8259. */
    private static final Map<String, MediaType> BY_ENDING = Map.ofEntries(
            Map.entry("html", new MediaType("text/html; charset=utf-8", true)),
            Map.entry("js", new MediaType("text/javascript; charset=utf-8", true)),
            Map.entry("css", new MediaType("text/css; charset=utf-8", true)),
            Map.entry("txt", new MediaType("text/plain; charset=utf-8", true)),
            Map.entry("ics", new MediaType("text/calendar; charset=utf-8", true)),
            Map.entry("json", new MediaType("application/json", true)),
            Map.entry("webmanifest", new MediaType("application/manifest+json", true)),
            Map.entry("svg", new MediaType("image/svg+xml", true)),
            Map.entry("png", new MediaType("image/png", false)),
            Map.entry("jpg", new MediaType("image/jpeg", false)),
            Map.entry("woff2", new MediaType("font/woff2", false)),
            Map.entry("pdf", new MediaType("application/pdf", false)),
            Map.entry("sealed", new MediaType("application/octet-stream", false)),
            Map.entry("sig", new MediaType("application/octet-stream", false)));

    static Optional<MediaType> of(String fileName) {
        int dot = fileName.lastIndexOf('.');
        return dot < 1 ? Optional.empty() : Optional.ofNullable(BY_ENDING.get(fileName.substring(dot + 1)));
    }

    boolean isPage() {
        return field.startsWith("text/html");
    }
}
