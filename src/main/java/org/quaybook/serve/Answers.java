package org.quaybook.serve;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.http.HttpStatus;

/** What to answer to a request (RFC 9110 and 9111). */
final class Answers {

    private static final String ASK_AGAIN = "no-cache";
    private static final String KEEP = "public, max-age=31536000, immutable";
    private static final HttpFields METHODS = HttpFields.from(
            new HttpField(HttpHeader.ALLOW, HttpMethod.GET.asString() + ", " + HttpMethod.HEAD.asString()));

    private final Site site;
    private final Shelf shelf;
    private final InstantSource clock;

    Answers(Site site, InstantSource clock) {
        this.site = site;
        this.shelf = new Shelf(clock);
        this.clock = clock;
    }

    /**
     * Answers.
     *
     * @param rawPath as it stood in the request
     * @throws IOException if a file is there and cannot be read
     */
    Answer to(String method, String rawPath, HttpFields asked) throws IOException {
        if (!HttpMethod.GET.is(method) && !HttpMethod.HEAD.is(method)) {
            return Answer.plain(HttpStatus.METHOD_NOT_ALLOWED_405, METHODS, Answer.UNSHOWN);
        }
        if (hasBody(asked)) {
            return Answer.plain(HttpStatus.PAYLOAD_TOO_LARGE_413);
        }
        String unknown = "/…" + Site.lastSymbols(rawPath);
        Optional<AskedPath> path = AskedPath.of(rawPath);
        Site.Place place = path.isPresent() ? site.at(path.get()) : new Site.Nothing();
        try {
            if (place instanceof Site.Document document) {
                return document(document, HttpMethod.GET.is(method), asked);
            }
            if (place instanceof Site.Elsewhere elsewhere) {
                return Answer.plain(
                        HttpStatus.PERMANENT_REDIRECT_308,
                        HttpFields.build().put(HttpHeader.LOCATION, elsewhere.way()),
                        elsewhere.shown());
            }
            if (place instanceof Site.Withdrawn withdrawn) {
                return page(HttpStatus.GONE_410, withdrawn.page(), asked, withdrawn.shown());
            }
        } catch (NoSuchFileException goneMeanwhile) {
            return page(HttpStatus.NOT_FOUND_404, site.unknown(), asked, unknown);
        }
        return page(HttpStatus.NOT_FOUND_404, site.unknown(), asked, unknown);
    }

    static boolean hasBody(HttpFields asked) {
        return asked.contains(HttpHeader.TRANSFER_ENCODING) || asked.getLongField(HttpHeader.CONTENT_LENGTH) > 0;
    }

    /** A page that says why what was asked for is not there. */
    private Answer page(int status, Path file, HttpFields asked, String shown) throws IOException {
        Content content;
        try {
            content = shelf.read(file);
        } catch (NoSuchFileException none) {
            return Answer.plain(status, HttpFields.EMPTY, shown);
        }
        MediaType type = MediaType.of(file.toString()).orElseThrow();
        boolean zipped = zipped(type, content, asked);
        HttpFields.Mutable fields = described(type, content, zipped);
        fields.put(HttpHeader.CACHE_CONTROL, ASK_AGAIN);
        return new Answer(status, fields, ByteBuffer.wrap(zipped ? content.zipped() : content.bytes()), shown);
    }

    private Answer document(Site.Document document, boolean partly, HttpFields asked) throws IOException {
        Content content = shelf.read(document.file());
        MediaType type = MediaType.of(document.file().toString()).orElseThrow();
        // Only GET knows ranges (RFC 9110, 14.2); they are parts of the plain bytes.
        boolean ranged = partly && asked.contains(HttpHeader.RANGE);
        boolean zipped = !ranged && zipped(type, content, asked);
        byte[] body = zipped ? content.zipped() : content.bytes();
        Instant now = clock.instant();
        Instant modified = earlier(content.modified(), now).truncatedTo(ChronoUnit.SECONDS);
        String tag = zipped ? content.zippedTag() : content.tag();

        HttpFields.Mutable fields = described(type, content, zipped);
        fields.put(HttpHeader.ETAG, tag);
        fields.put(HttpHeader.LAST_MODIFIED, HttpDate.write(modified));
        fields.put(HttpHeader.CACHE_CONTROL, document.lasting() ? KEEP : ASK_AGAIN);
        Conditions conditions = new Conditions(asked, tag, modified, now);
        switch (conditions.verdict()) {
            case NOT_MODIFIED -> {
                // Without what describes a body that is not sent (RFC 9110, 15.4.5).
                fields.remove(HttpHeader.CONTENT_TYPE);
                fields.remove(HttpHeader.CONTENT_ENCODING);
                return new Answer(HttpStatus.NOT_MODIFIED_304, fields, ByteBuffer.allocate(0), document.shown());
            }
            case FAILED -> {
                return Answer.plain(HttpStatus.PRECONDITION_FAILED_412, HttpFields.EMPTY, document.shown());
            }
            case HOLD -> fields.put(HttpHeader.ACCEPT_RANGES, "bytes");
        }
        Optional<ByteRange> range = ranged && conditions.allowPart()
                ? ByteRange.of(asked.getValuesList(HttpHeader.RANGE), body.length)
                : Optional.empty();
        if (range.isEmpty()) {
            return new Answer(HttpStatus.OK_200, fields, ByteBuffer.wrap(body), document.shown());
        }
        ByteRange part = range.get();
        if (part.isEmpty()) {
            return Answer.plain(
                    HttpStatus.RANGE_NOT_SATISFIABLE_416,
                    HttpFields.build().put(HttpHeader.CONTENT_RANGE, "bytes */" + body.length),
                    document.shown());
        }
        fields.put(HttpHeader.CONTENT_RANGE, "bytes " + part.first() + "-" + part.last() + "/" + body.length);
        return new Answer(
                HttpStatus.PARTIAL_CONTENT_206,
                fields,
                ByteBuffer.wrap(body, Math.toIntExact(part.first()), part.length()),
                document.shown());
    }

    private static HttpFields.Mutable described(MediaType type, Content content, boolean zipped) {
        HttpFields.Mutable fields = HttpFields.build()
                .put(HttpHeader.CONTENT_TYPE, type.field())
                .put(HttpHeader.VARY, HttpHeader.ACCEPT_ENCODING.asString())
                .put(PagePolicy.FIELD, type.isPage() ? PagePolicy.of(content.bytes()) : PagePolicy.USUAL);
        return zipped ? fields.put(HttpHeader.CONTENT_ENCODING, "gzip") : fields;
    }

    private static boolean zipped(MediaType type, Content content, HttpFields asked) {
        return type.text()
                && Encodings.takeGzip(asked.getValuesList(HttpHeader.ACCEPT_ENCODING))
                && content.zipped().length < content.bytes().length;
    }

    /** None may say that it was modified after it was sent (RFC 9110, 8.8.2.1). */
    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
