package org.quaybook.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.stream.Collectors;
import org.quaybook.render.Templates;

/**
 * A script that stands in a page.
 *
 * @param text what stands between the tags; empty for none
 * @param source how the page's content security policy names it: this script and no other may run
 */
record PageScript(String text, String source) {

    static final PageScript NONE = new PageScript("", "'none'");

    /** Scripts of the template folders, one after the other; the text can be read as HTML and as XML. */
    static PageScript of(Templates templates, String... names) {
        String scripts = Arrays.stream(names).map(templates::text).collect(Collectors.joining());
        String text = "/*<![CDATA[*/\n" + scripts + "/*]]>*/";
        return new PageScript(text, "'" + hash(text) + "'");
    }

    /** How a content security policy names a style or script by its content (CSP level 3, 2.3.1, from memory). */
    static String hash(String content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
