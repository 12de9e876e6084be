package org.quaybook.serve;

import java.net.BindException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.util.Optional;
import org.eclipse.jetty.http.HttpCompliance;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.quaybook.diag.Message;

/** A running server of published records. */
public final class RecordServer {

    /** Answers come from memory or from one file each: few at a time are enough. */
    private static final int THREADS = 32;

    private final Server server;
    private final ServerConnector connector;
    private final Deadlines deadlines;
    private final InetAddress address;

    private RecordServer(Server server, ServerConnector connector, Deadlines deadlines, InetAddress address) {
        this.server = server;
        this.connector = connector;
        this.deadlines = deadlines;
        this.address = address;
    }

    /**
     * Starts to serve.
     *
     * @throws NotStarted if there is no site, or the address cannot be listened on
     */
    public static RecordServer start(Serving serving) throws NotStarted {
        return start(serving, Limits.USUAL);
    }

    static RecordServer start(Serving serving, Limits limits) throws NotStarted {
        requireSite(serving);
        InetAddress address = address(serving);
        Server server = new Server(new QueuedThreadPool(THREADS));
        ServerConnector connector = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http(limits)));
        connector.setHost(address.getHostAddress());
        connector.setPort(serving.port());
        connector.setIdleTimeout(limits.idle().toMillis());
        connector.setShutdownIdleTimeout(limits.stopping().toMillis());
        server.addConnector(connector);
        server.addBean(new NetworkConnectionLimit(limits.connections(), connector));
        server.setStopTimeout(limits.stopping().toMillis());
        Deadlines deadlines = new Deadlines(connector.getScheduler(), limits);
        connector.addBean(deadlines);
        Doorway doorway = new Doorway(
                new Answers(new Site(serving.site(), serving.canonical()), serving.clock()),
                deadlines,
                serving.faults());
        server.setHandler(new GracefulHandler(doorway));
        server.setErrorHandler(doorway::refuse);
        Optional<AccessLog> log =
                serving.log().map(hearer -> new AccessLog(hearer, serving.addresses(), serving.clock()));
        server.setRequestLog((request, response) -> {
            deadlines.answered(request.getConnectionMetaData().getConnection());
            log.ifPresent(it -> it.tell(request, response));
        });
        try {
            connector.open();
            server.start();
        } catch (Exception e) {
            throw refused(serving, e);
        }
        return new RecordServer(server, connector, deadlines, address);
    }

    private static void requireSite(Serving serving) throws NotStarted {
        if (!Files.isDirectory(serving.site())) {
            throw new NotStarted(
                    null, Message.of(ServeMessage.NO_FOLDER, serving.site().toString()));
        }
        if (!Files.isRegularFile(serving.site().resolve(Site.UNKNOWN), LinkOption.NOFOLLOW_LINKS)) {
            throw new NotStarted(
                    null, Message.of(ServeMessage.NOT_A_SITE, serving.site().toString(), Site.UNKNOWN));
        }
    }

    private static InetAddress address(Serving serving) throws NotStarted {
        try {
            return InetAddress.getByName(serving.address());
        } catch (UnknownHostException e) {
            throw refused(serving, e);
        }
    }

    private static NotStarted refused(Serving serving, Exception e) {
        String port = Integer.toString(serving.port());
        Throwable cause = e;
        while (cause.getCause() != null && !(cause instanceof BindException)) {
            cause = cause.getCause();
        }
        // The system says nothing else by which a taken port is told from one that is not allowed.
        if (cause instanceof BindException && String.valueOf(cause.getMessage()).contains("in use")) {
            return new NotStarted(
                    e,
                    Message.of(ServeMessage.PORT_TAKEN, serving.address(), port),
                    Message.of(ServeMessage.PORT_TAKEN_HINT));
        }
        return new NotStarted(
                e, Message.of(ServeMessage.CANNOT_LISTEN, serving.address(), port, String.valueOf(cause.getMessage())));
    }

    private static HttpConfiguration http(Limits limits) {
        HttpConfiguration http = new HttpConfiguration();
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setRequestHeaderSize(limits.headBytes());
        // Nothing malformed is mended (RFC 9112, 11.2: what two readers read differently can be smuggled past one).
        http.setHttpCompliance(HttpCompliance.STRICT);
        http.setUriCompliance(UriCompliance.RFC3986);
        return http;
    }

    /** Whether only this machine can reach it. */
    public boolean isLoopback() {
        return address.isLoopbackAddress();
    }

    /** The port that is listened on. */
    public int port() {
        return connector.getLocalPort();
    }

    /** The address of the site, ending in a slash. */
    public String base() {
        String host = address.getHostAddress();
        return "http://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port() + "/";
    }

    /**
     * Waits until the server was stopped.
     *
     * @throws InterruptedException if the thread is told to stop waiting; the server goes on
     */
    public void await() throws InterruptedException {
        server.join();
    }

    /**
     * Accepts nothing more, gives answers under way some seconds to finish, and ends.
     *
     * @return whether all of them finished
     */
    public boolean stop() {
        deadlines.finish();
        try {
            server.stop();
            return true;
        } catch (Exception unfinished) {
            return false;
        }
    }
}
