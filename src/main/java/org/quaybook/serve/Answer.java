package org.quaybook.serve;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;

/**
 * What to send.
 *
 * @param fields what goes with it, besides what goes with every answer
 * @param body as it is sent to GET; HEAD gets its length
 * @param shown the path for the log
 */
record Answer(int status, HttpFields fields, ByteBuffer body, String shown) {

    /** A path that is not shown. */
    static final String UNSHOWN = "-";

    /** A status in a word or two, for programs. */
    static Answer plain(int status) {
        return plain(status, HttpFields.EMPTY, UNSHOWN);
    }

    static Answer plain(int status, HttpFields more, String shown) {
        HttpFields.Mutable fields = HttpFields.build(more);
        fields.put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
        fields.put(HttpHeader.CACHE_CONTROL, "no-store");
        fields.put(PagePolicy.FIELD, PagePolicy.USUAL);
        return new Answer(
                status,
                fields.asImmutable(),
                ByteBuffer.wrap((status + " " + HttpStatus.getMessage(status) + "\n").getBytes(StandardCharsets.UTF_8)),
                shown);
    }
}
