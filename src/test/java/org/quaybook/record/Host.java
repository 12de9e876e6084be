package org.quaybook.record;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;

/** A plain web host: files, index pages, and the page for what is not there. */
final class Host implements AutoCloseable {

    private final Map<String, byte[]> site;
    private final HttpServer server;
    private final List<String> asked = new CopyOnWriteArrayList<>();
    private final List<String> referrers = new CopyOnWriteArrayList<>();

    Host(Map<String, byte[]> site) throws IOException {
        this.site = site;
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::answer);
        server.start();
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    /** The paths that were asked for, as they came over the wire. */
    List<String> asked() {
        return List.copyOf(asked);
    }

    /** The addresses from which the browser said that it came. */
    List<String> referrers() {
        return List.copyOf(referrers);
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        asked.add(exchange.getRequestURI().toString());
        referrers.addAll(exchange.getRequestHeaders().getOrDefault("Referer", List.of()));
        byte[] found = site.get(path.substring(1) + (path.endsWith("/") ? "index.html" : ""));
        byte[] content = found == null ? Objects.requireNonNull(site.get("404.html")) : found;
        exchange.getResponseHeaders().set("Content-Type", type(path));
        exchange.sendResponseHeaders(found == null ? 404 : 200, content.length);
        exchange.getResponseBody().write(content);
        exchange.close();
    }

    private static String type(String path) {
        if (path.endsWith(".sealed")) {
            return "application/octet-stream";
        }
        return (path.endsWith(".js") ? "text/javascript" : "text/html") + "; charset=" + StandardCharsets.UTF_8;
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
