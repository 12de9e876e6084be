package org.quaybook.serve;

import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.function.Consumer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.NanoTime;

/** Tells one line about each answer, as {@link Serving} says. */
final class AccessLog {

    private final Consumer<String> hearer;
    private final boolean addresses;
    private final InstantSource clock;

    AccessLog(Consumer<String> hearer, boolean addresses, InstantSource clock) {
        this.hearer = hearer;
        this.addresses = addresses;
        this.clock = clock;
    }

    void tell(Request request, Response response) {
        String line = String.join(
                " ",
                clock.instant().truncatedTo(ChronoUnit.SECONDS).toString(),
                method(request.getMethod()),
                Objects.requireNonNullElse((String) request.getAttribute(Doorway.SHOWN), Answer.UNSHOWN),
                String.valueOf(response.getStatus()),
                String.valueOf(bytes(request, response)),
                String.valueOf(NanoTime.millisSince(request.getHeadersNanoTime())));
        hearer.accept(addresses ? line + " " + Request.getRemoteAddr(request) : line);
    }

    /** What the server itself refuses is answered past the response that it shows here, but for its fields. */
    private static long bytes(Request request, Response response) {
        return request.getAttribute(Doorway.SHOWN) == null
                ? response.getHeaders().getLongField(HttpHeader.CONTENT_LENGTH)
                : Response.getContentBytesWritten(response);
    }

    /** A method that nobody knows could hold anything. */
    private static String method(String asked) {
        return HttpMethod.fromString(asked) == null ? Answer.UNSHOWN : asked;
    }
}
