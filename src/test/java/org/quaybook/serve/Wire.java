package org.quaybook.serve;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.NullMarked;

/** One connection to a server, on which anything can be written: no library mends it. */
@NullMarked
final class Wire implements AutoCloseable {

    private final Socket socket;

    Wire(int port) throws IOException {
        this.socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setSoTimeout(20_000);
        socket.setTcpNoDelay(true);
    }

    /**
     * An answer.
     *
     * @param fields by name in small letters
     */
    record Reply(int status, Map<String, String> fields, Body body) {

        String field(String name) {
            return fields.getOrDefault(name.toLowerCase(Locale.ROOT), "");
        }

        byte[] bytes() {
            return body.bytes();
        }

        String text() {
            return new String(bytes(), StandardCharsets.UTF_8);
        }
    }

    /** Bytes of a body. */
    interface Body {
        byte[] bytes();
    }

    void write(String raw) throws IOException {
        write(raw.getBytes(StandardCharsets.ISO_8859_1));
    }

    void write(byte[] raw) throws IOException {
        socket.getOutputStream().write(raw);
        socket.getOutputStream().flush();
    }

    /** Asks and waits for the answer; the connection stays open. */
    Reply ask(String method, String path, String... fields) throws IOException {
        StringBuilder request = new StringBuilder(method + " " + path + " HTTP/1.1\r\nHost: localhost\r\n");
        for (String field : fields) {
            request.append(field).append("\r\n");
        }
        write(request.append("\r\n").toString());
        return read(method.equals("HEAD"));
    }

    /** @throws EOFException if the server closed the connection without an answer */
    Reply read(boolean head) throws IOException {
        InputStream in = socket.getInputStream();
        String[] status = line(in).split(" ", 3);
        Map<String, String> fields = new TreeMap<>();
        for (String line = line(in); !line.isEmpty(); line = line(in)) {
            int colon = line.indexOf(':');
            fields.put(
                    line.substring(0, colon).toLowerCase(Locale.ROOT),
                    line.substring(colon + 1).strip());
        }
        int code = Integer.parseInt(status[1]);
        int length = head || code == 304 ? 0 : Integer.parseInt(fields.getOrDefault("content-length", "0"));
        byte[] body = in.readNBytes(length);
        if (body.length < length) {
            throw new EOFException("the body ends after " + body.length + " of " + length + " bytes");
        }
        return new Reply(code, fields, () -> body);
    }

    /** Waits for the server to close the connection. */
    boolean isClosedByServer() throws IOException {
        try {
            return socket.getInputStream().read() < 0;
        } catch (java.net.SocketException reset) {
            return true;
        }
    }

    void patience(int millis) throws IOException {
        socket.setSoTimeout(millis);
    }

    private static String line(InputStream in) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException("closed");
            }
            line.write(next);
        }
        return line.toString(StandardCharsets.ISO_8859_1).stripTrailing();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
