package org.quaybook.serve;

import java.io.IOException;
import java.util.function.Consumer;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpHeaderValue;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.http.PreEncodedHttpField;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Takes requests from the server and sends the answers, those to malformed requests too. */
final class Doorway extends Handler.Abstract {

    /** Request attribute: the path for the log. */
    static final String SHOWN = Doorway.class.getName() + ".shown";

    /**
     * Go with every answer. Fetch standard (nosniff, Cross-Origin-Resource-Policy), HTML standard (Cross-Origin-Opener-Policy),
     * W3C Referrer Policy and Permissions Policy; X-Robots-Tag is common practice of search engines, no standard.
     */
    private static final HttpFields GUARDS = HttpFields.from(
            new PreEncodedHttpField("X-Content-Type-Options", "nosniff"),
            new PreEncodedHttpField("Referrer-Policy", "no-referrer"),
            new PreEncodedHttpField("X-Robots-Tag", "noindex, nofollow"),
            new PreEncodedHttpField("Cross-Origin-Opener-Policy", "same-origin"),
            new PreEncodedHttpField("Cross-Origin-Resource-Policy", "same-origin"),
            new PreEncodedHttpField(
                    "Permissions-Policy",
                    "accelerometer=(), autoplay=(), camera=(), display-capture=(), fullscreen=(), "
                            + "geolocation=(), gyroscope=(), hid=(), magnetometer=(), microphone=(), midi=(), payment=(), "
                            + "serial=(), usb=()"));

    private final Answers answers;
    private final Deadlines deadlines;
    private final Consumer<Throwable> faults;

    Doorway(Answers answers, Deadlines deadlines, Consumer<Throwable> faults) {
        this.answers = answers;
        this.deadlines = deadlines;
        this.faults = faults;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        deadlines.answering(request.getConnectionMetaData().getConnection());
        Answer answer;
        try {
            answer = answers.to(request.getMethod(), request.getHttpURI().getPath(), request.getHeaders());
        } catch (IOException | RuntimeException e) {
            faults.accept(e);
            answer = Answer.plain(HttpStatus.INTERNAL_SERVER_ERROR_500);
        }
        request.setAttribute(SHOWN, answer.shown());
        send(answer, request, response, callback);
        return true;
    }

    /** What the server itself refuses: no request at all, one that is too large, one that comes too late. */
    boolean refuse(Request request, Response response, Callback callback) {
        int status = request.getAttribute(ErrorHandler.ERROR_EXCEPTION) instanceof HttpException refusal
                ? refusal.getCode()
                : response.getStatus();
        if (status == HttpStatus.UPGRADE_REQUIRED_426) {
            // It would have to name a protocol to change to (RFC 9110, 15.5.22), and there is none.
            status = HttpStatus.HTTP_VERSION_NOT_SUPPORTED_505;
        }
        response.setStatus(status);
        send(Answer.plain(status), request, response, callback);
        return true;
    }

    private static void send(Answer answer, Request request, Response response, Callback callback) {
        response.setStatus(answer.status());
        HttpFields.Mutable fields = response.getHeaders();
        for (HttpField guard : GUARDS) {
            fields.put(guard);
        }
        for (HttpField field : answer.fields()) {
            fields.put(field);
        }
        if (Answers.hasBody(request.getHeaders())) {
            // It is not read, and must not be taken for the next request.
            fields.put(HttpHeader.CONNECTION, HttpHeaderValue.CLOSE.asString());
        }
        if (answer.status() == HttpStatus.NOT_MODIFIED_304) {
            response.write(true, null, callback);
            return;
        }
        fields.put(HttpHeader.CONTENT_LENGTH, answer.body().remaining());
        boolean bare = HttpMethod.HEAD.is(request.getMethod());
        response.write(true, bare ? null : answer.body(), callback);
    }
}
