package org.quaybook.proof;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Flow;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;

/**
 * The copy of one record at an address, as somebody who scans the label gets it. Only https, except on this machine
 * itself; no redirect is followed, since what stands elsewhere is another copy.
 */
public final class AddressCopy implements Copy {

    private static final Pattern LOOPBACK = Pattern.compile("localhost|127(\\.[0-9]{1,3}){3}|\\[::1]");

    private static final int OK = 200;
    private static final int NOT_FOUND = 404;
    private static final int GONE = 410;

    private final String name;
    private final URI base;
    private final Limits limits;
    private final HttpClient client;
    private final long end;

    /**
     * How long to wait, and for how much.
     *
     * @param connecting until a connection stands
     * @param file until a file has come, whole
     * @param all until all files have come
     * @param largest file, bytes
     */
    record Limits(Duration connecting, Duration file, Duration all, int largest) {
        static final Limits USUAL =
                new Limits(Duration.ofSeconds(10), Duration.ofMinutes(1), Duration.ofMinutes(10), LARGEST);
    }

    private AddressCopy(String name, URI base, Limits limits) {
        this.name = name;
        this.base = base;
        this.limits = limits;
        this.end = System.nanoTime() + limits.all().toNanos();
        this.client = HttpClient.newBuilder()
                .connectTimeout(limits.connecting())
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
    }

    /** Whether a text is meant as an address rather than as a folder. */
    public static boolean isAddress(String text) {
        return text.matches("(?i)[a-z][a-z0-9+.-]*://.*");
    }

    /**
     * The copy at the address that the label's QR code opens, with or without the page's name.
     *
     * @throws Refused if it is no https address, or carries a name, a password, a question or a place in a page
     */
    public static AddressCopy of(String address) throws Refused {
        return of(address, Limits.USUAL);
    }

    static AddressCopy of(String address, Limits limits) throws Refused {
        try {
            URI given = new URI(address);
            String host = given.getHost();
            String scheme = String.valueOf(given.getScheme()).toLowerCase(Locale.ROOT);
            if (host != null
                    && (scheme.equals("https")
                            || (scheme.equals("http") && LOOPBACK.matcher(host).matches()))
                    && given.getRawUserInfo() == null
                    && given.getRawQuery() == null
                    && given.getRawFragment() == null) {
                String path = given.getRawPath().replaceFirst("/(index[^/]*\\.html|issue\\.json)$", "/");
                String folder = path.endsWith("/") ? path : path + "/";
                return new AddressCopy(address, given.resolve(folder), limits);
            }
        } catch (URISyntaxException e) {
            // Told below.
        }
        throw new Refused(Message.of(ProofMessage.NOT_AN_ADDRESS, address));
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String lastName() {
        String path = base.getPath();
        return path.substring(path.lastIndexOf('/', path.length() - 2) + 1).replace("/", "");
    }

    @Override
    public Optional<NavigableMap<String, Kind>> inside(String folder) {
        return Optional.empty();
    }

    @Override
    public Optional<byte[]> read(String path) throws Refused {
        long left = end - System.nanoTime();
        if (left <= 0) {
            throw new Refused(Message.of(ProofMessage.OUT_OF_TIME));
        }
        HttpRequest request = HttpRequest.newBuilder(at(path)).GET().build();
        CompletableFuture<HttpResponse<byte[]>> coming =
                client.sendAsync(request, head -> new Bounded(limits.largest()));
        try {
            return content(coming.get(Math.min(left, limits.file().toNanos()), TimeUnit.NANOSECONDS));
        } catch (TimeoutException e) {
            throw new Refused(Message.of(ProofMessage.OUT_OF_TIME));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refused(Message.of(ProofMessage.OUT_OF_TIME));
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            throw new Refused(
                    cause instanceof TooMuch || (cause != null && cause.getCause() instanceof TooMuch)
                            ? Message.of(ProofMessage.TOO_LARGE, limits.largest() >> 20)
                            : Message.of(
                                    ProofMessage.UNREACHABLE,
                                    base.toString(),
                                    cause == null ? "" : cause.getClass().getSimpleName()));
        } finally {
            coming.cancel(true);
        }
    }

    private URI at(String path) {
        try {
            return base.resolve(
                    new URI(null, null, "/" + path, null).toASCIIString().substring(1));
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("no path: " + path, e);
        }
    }

    private static Optional<byte[]> content(HttpResponse<byte[]> response) throws Refused {
        int status = response.statusCode();
        if (status == NOT_FOUND || status == GONE) {
            return Optional.empty();
        }
        if (status != OK) {
            throw new Refused(Message.of(ProofMessage.STATUS, status));
        }
        return Optional.of(response.body());
    }

    /** More came than any file of ours has. */
    private static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1;
    }

    /** Collects a body, and hangs up when it grows too large. */
    private static final class Bounded implements HttpResponse.BodySubscriber<byte[]> {

        private final CompletableFuture<byte[]> whole = new CompletableFuture<>();
        private final ByteArrayOutputStream come = new ByteArrayOutputStream();
        private final int largest;
        private Flow.@Nullable Subscription source;

        Bounded(int largest) {
            this.largest = largest;
        }

        @Override
        public CompletionStage<byte[]> getBody() {
            return whole;
        }

        @Override
        public void onSubscribe(Flow.Subscription subscription) {
            source = subscription;
            subscription.request(Long.MAX_VALUE);
        }

        @Override
        public void onNext(List<ByteBuffer> buffers) {
            for (ByteBuffer buffer : buffers) {
                byte[] bytes = new byte[buffer.remaining()];
                buffer.get(bytes);
                come.writeBytes(bytes);
            }
            if (come.size() > largest && source != null) {
                source.cancel();
                whole.completeExceptionally(new TooMuch());
            }
        }

        @Override
        public void onError(Throwable problem) {
            whole.completeExceptionally(problem);
        }

        @Override
        public void onComplete() {
            whole.complete(come.toByteArray());
        }
    }
}
