package org.quaybook.serve;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The content security policy of an answer (W3C, Content Security Policy Level 3). A page of a record states its own, with
 * the digests of its script and style; the same one is said again as a field, with what a page cannot say of itself.
 */
final class PagePolicy {

    static final String FIELD = "Content-Security-Policy";

    /** Of what states none: offline.js must fetch, all else may do nothing but be looked at. */
    static final String USUAL = "default-src 'none'; script-src 'self'; worker-src 'self'; connect-src 'self'; "
            + "img-src 'self' data:; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'none'; "
            + "frame-ancestors 'none'";

    /** Where a page states its policy: before anything that the policy is about. */
    private static final int HEAD_BYTES = 4096;

    private static final Pattern STATED =
            Pattern.compile("<meta http-equiv=\"Content-Security-Policy\" content=\"([^\"]+)\"");
    private static final Pattern SAFE = Pattern.compile("default-src 'none';[A-Za-z0-9 '+/=:;_-]*");

    private PagePolicy() {}

    /** The policy to send with a page of these bytes. */
    static String of(byte[] page) {
        String head = new String(page, 0, Math.min(page.length, HEAD_BYTES), StandardCharsets.ISO_8859_1);
        Matcher stated = STATED.matcher(head);
        if (!stated.find()) {
            return USUAL;
        }
        String policy = stated.group(1).replace("&#39;", "'");
        // frame-ancestors in a page is ignored (CSP 3, 3.3).
        return SAFE.matcher(policy).matches() ? policy + "; frame-ancestors 'none'" : USUAL;
    }
}
