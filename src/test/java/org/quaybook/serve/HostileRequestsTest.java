package org.quaybook.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.quaybook.serve.Harbour.CODE;
import static org.quaybook.serve.Harbour.UNKNOWN;

import java.io.EOFException;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Requests that want what is not theirs, or that no client sends. Classes of attack: OWASP, Path Traversal and Web Security
 * Testing Guide (both from memory); CWE-22 and CWE-59 (path traversal, links; from memory); RFC 9112, 11 (splitting and
 * smuggling) and the rules of its sections named below.
 */
class HostileRequestsTest {

    private static final String SECRET = "the key of the safe";

    @TempDir
    static Path folder;

    private static Harbour harbour;

    @BeforeAll
    static void start() throws Exception {
        harbour = new Harbour(folder);
        Path outside = Files.createDirectory(folder.resolve("outside"));
        Files.writeString(outside.resolve("secret.html"), SECRET);
        Files.writeString(outside.resolve("index.html"), SECRET);
        Files.writeString(folder.resolve("secret.html"), SECRET);
        Files.writeString(harbour.site.resolve("secret.html"), SECRET);
        Path record = harbour.site.resolve(CODE);
        Files.writeString(record.resolve(".secret.html"), SECRET);
        Files.writeString(record.resolve("secret.html.tmp"), SECRET);
        Files.writeString(record.resolve("secret.key"), SECRET);
        Files.writeString(Files.createDirectory(harbour.site.resolve(".git")).resolve("index.html"), SECRET);
        // CWE-59: links out of the site, and within it.
        Files.createSymbolicLink(record.resolve("link.html"), outside.resolve("secret.html"));
        Files.createSymbolicLink(record.resolve("up.html"), Path.of("../../secret.html"));
        Files.createSymbolicLink(record.resolve("inside.html"), Path.of(".secret.html"));
        Files.createSymbolicLink(record.resolve("revision-7"), outside);
        Files.createSymbolicLink(harbour.site.resolve(Harbour.NEVER), outside);
    }

    @AfterAll
    static void stop() {
        harbour.close();
        assertThat(harbour.faults).isEmpty();
    }

    static Stream<String> traversals() {
        return Stream.of(
                        // OWASP path traversal: plain dot segments, from the root and from within
                        "/../secret.html",
                        "/../../../../../../etc/passwd",
                        "/%CODE%/../secret.html",
                        "/%CODE%/../../secret.html",
                        "/%CODE%/./index.html",
                        "/%CODE%/..",
                        "/%CODE%/.",
                        "/%CODE%/...//secret.html",
                        "/%CODE%/....//....//secret.html",
                        "/%CODE%/revision-1/../.secret.html",
                        // encoded (OWASP): dots, slashes, both
                        "/%2e%2e/secret.html",
                        "/%2E%2E%2Fsecret.html",
                        "/%CODE%/%2e%2e/%2e%2e/secret.html",
                        "/%CODE%/..%2f..%2fsecret.html",
                        "/%CODE%/.%2e/secret.html",
                        "/%CODE%%2f..%2f..%2fsecret.html",
                        "/%CODE%%2findex.html",
                        // encoded twice (OWASP)
                        "/%252e%252e/secret.html",
                        "/%CODE%/%252e%252e%252f%252e%252e%252fsecret.html",
                        "/%CODE%/%25%32%65%25%32%65/secret.html",
                        // overlong and 16-bit encodings (OWASP; CVE-2000-0884 from memory)
                        "/%c0%ae%c0%ae/secret.html",
                        "/%CODE%/%c0%ae%c0%ae%c0%afsecret.html",
                        "/%CODE%/%e0%80%ae%e0%80%ae/secret.html",
                        "/%CODE%/%u002e%u002e/secret.html",
                        "/%CODE%/%uff0e%uff0e%u2215secret.html",
                        // backslashes (OWASP, Windows)
                        "/..\\secret.html",
                        "/%CODE%\\..\\..\\secret.html",
                        "/%CODE%/..%5c..%5csecret.html",
                        "/%CODE%/%255c..%255csecret.html",
                        // path parameters (RFC 3986, 3.3)
                        "/%CODE%/..;/secret.html",
                        "/%CODE%/..;a=b/../secret.html",
                        "/%CODE%/index.html;a",
                        // NUL and control symbols (OWASP; CWE-158)
                        "/%CODE%/secret.key%00.html",
                        "/%CODE%/index.html%00",
                        "/%CODE%/%00/../secret.html",
                        "/%CODE%/index.html%0d%0aX-Injected:%20yes",
                        "/%CODE%%0d%0aSet-Cookie:a=b",
                        "/%CODE%/index.html%7f",
                        // absolute names, other volumes, shares (CWE-36, CWE-40)
                        "//etc/passwd",
                        "/%CODE%//etc/passwd",
                        "/%CODE%/%2fetc%2fpasswd",
                        "/C:/Windows/win.ini",
                        "/%CODE%/C:%5cWindows%5cwin.ini",
                        "/%5c%5chost%5cshare%5csecret.html",
                        "/file:///etc/passwd",
                        // devices and other spellings of a name (CWE-67, CWE-69, CWE-58; Windows)
                        "/%CODE%/NUL.html",
                        "/%CODE%/con",
                        "/%CODE%/aux.html",
                        "/%CODE%/COM1.html",
                        "/%CODE%/index.html.",
                        "/%CODE%/index.html%20",
                        "/%CODE%/index.html::$DATA",
                        "/%CODE%/INDEX~1.HTM",
                        "/%CODE%/INDEX.HTML",
                        // links (CWE-59)
                        "/%CODE%/link.html",
                        "/%CODE%/up.html",
                        "/%CODE%/inside.html",
                        "/%CODE%/revision-7/",
                        "/%CODE%/revision-7/secret.html",
                        "/" + Harbour.NEVER + "/",
                        "/" + Harbour.NEVER + "/secret.html",
                        // hidden, half-written and private files
                        "/.git/index.html",
                        "/.git/config",
                        "/%CODE%/.secret.html",
                        "/%CODE%/%2esecret.html",
                        "/%CODE%/.index.html.new",
                        "/%CODE%/secret.html.tmp",
                        "/%CODE%/guide.pdf.tmp",
                        "/%CODE%/secret.key",
                        "/%CODE%/revision-2.new/index.html",
                        "/secret.html",
                        "/outside/secret.html",
                        // wildcards, home folders, broken percent signs
                        "/*",
                        "/~root/",
                        "/%CODE%/*.html",
                        "/%CODE%/%",
                        "/%CODE%/%2",
                        "/%CODE%/%zz",
                        "/%CODE%/é.html")
                .map(path -> path.replace("%CODE%", CODE));
    }

    @ParameterizedTest
    @MethodSource("traversals")
    void nothingButTheRecordsIsReached(String path) throws IOException {
        for (String method : new String[] {"GET", "HEAD"}) {
            Wire.Reply reply = harbour.ask(method, path);
            assertThat(reply.status()).isBetween(400, 499);
            assertThat(reply.text()).doesNotContain(SECRET, "root:", "private", "half");
            assertThat(reply.fields()).doesNotContainKeys("x-injected", "set-cookie", "location");
        }
    }

    /** What is asked for by its other lawful spellings is there: RFC 3986, 6.2.2.2; RFC 9112, 3.2.2 (absolute form). */
    @Test
    void lawfulSpellingsAreUnderstood() throws IOException {
        assertThat(harbour.get("/" + CODE + "/%69ndex.html").status()).isEqualTo(200);
        assertThat(harbour.get("http://localhost/" + CODE + "/").status()).isEqualTo(200);
        assertThat(harbour.get("/" + CODE + "/?a=../../secret.html").text()).isEqualTo(Harbour.PAGE);
    }

    static Stream<String> malformed() {
        String host = "Host: a\r\n";
        return Stream.of(
                // RFC 9112, 3.2: one Host, and a good one
                "GET / HTTP/1.1\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: a b\r\n\r\n",
                // RFC 9112, 3: the request line
                " GET / HTTP/1.1\r\n" + host + "\r\n",
                "GET  / HTTP/1.1\r\n" + host + "\r\n",
                "GET /a b HTTP/1.1\r\n" + host + "\r\n",
                "GET\t/ HTTP/1.1\r\n" + host + "\r\n",
                "G\u0000T / HTTP/1.1\r\n" + host + "\r\n",
                "GET /\u0000 HTTP/1.1\r\n" + host + "\r\n",
                "GET nothing HTTP/1.1\r\n" + host + "\r\n",
                "GET /#a HTTP/1.1\r\n" + host + "\r\n",
                "GET / HTTP/1.1 \r\n" + host + "\r\n",
                "GET / http/1.1\r\n" + host + "\r\n",
                "GET / HTTP/9.9\r\n" + host + "\r\n",
                "GET / HTTP/2.0\r\n" + host + "\r\n",
                // HTTP/0.9 and the preface of HTTP/2 (RFC 9113, 3.4)
                "GET /\r\n",
                "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
                // RFC 9112, 5 and 5.1: names of fields
                "GET / HTTP/1.1\r\n" + host + "A : b\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + " A: b\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + ": b\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + "A B: c\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + "A\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + "A: b\u0000c\r\n\r\n",
                // RFC 9112, 5.2: folded lines
                "GET / HTTP/1.1\r\n" + host + "A: b\r\n c\r\n\r\n",
                // RFC 9112, 2.2: bare CR, and LF alone, which it permits to refuse
                "GET / HTTP/1.1\r\n" + host + "A: b\rC: d\r\n\r\n",
                "GET / HTTP/1.1\nHost: a\n\n",
                // RFC 9112, 6.1 to 6.3 and 11.2: two lengths, of which one could be smuggled
                "GET / HTTP/1.1\r\n" + host + "Content-Length: 4\r\nContent-Length: 5\r\n\r\nabcde",
                "GET / HTTP/1.1\r\n" + host + "Content-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + "Content-Length: -1\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + "Content-Length: +1\r\n\r\na",
                "GET / HTTP/1.1\r\n" + host + "Content-Length: 0x1\r\n\r\na",
                "GET / HTTP/1.1\r\n" + host + "Content-Length: 99999999999999999999\r\n\r\na",
                "GET / HTTP/1.1\r\n" + host + "Transfer-Encoding: gzip\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + "Transfer-Encoding: chunked, identity\r\n\r\n",
                "GET / HTTP/1.1\r\n" + host + "Transfer-Encoding: xchunked\r\n\r\n",
                // RFC 9110, 10.1.1
                "GET / HTTP/1.1\r\n" + host + "Expect: miracles\r\n\r\n",
                // TLS where plain HTTP is spoken (RFC 8446, 5.1: a handshake record), and noise
                "\u0016\u0003\u0001\u0000\u0005\u0001\u0000\u0000\u0001\u0000",
                "\u0000\u0001\u0002\u0003\r\n\r\n",
                "()(){}\r\n\r\n");
    }

    @ParameterizedTest
    @MethodSource("malformed")
    void whatIsNoRequestIsRefused(String raw) throws IOException {
        try (Wire wire = harbour.wire()) {
            wire.write(raw);
            Wire.Reply reply = wire.read(false);
            // 505 is what RFC 9110, 15.6.6 has for another version.
            assertThat(reply.status())
                    .satisfiesAnyOf(
                            status -> assertThat(status).isBetween(400, 499),
                            status -> assertThat(status).isEqualTo(505));
            assertThat(reply.text())
                    .doesNotContain("Exception", "at org", "jetty", "Jetty", SECRET)
                    .hasSizeLessThan(60_000);
            assertThat(reply.fields()).doesNotContainKey("server");
        }
        assertThat(harbour.get("/" + CODE + "/").status()).isEqualTo(200);
    }

    /** RFC 9110, 15.5.6 (405 with Allow), 9.3.8 (TRACE would show what a proxy added). */
    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND", "BREW", "get"})
    void onlyReadingIsAllowed(String method) throws IOException {
        for (String path : new String[] {"/", "/" + CODE + "/"}) {
            Wire.Reply reply = harbour.ask(method, path, "Cookie: " + SECRET);
            assertThat(reply.status()).isEqualTo(405);
            assertThat(reply.field("allow")).isEqualTo("GET, HEAD");
            assertThat(reply.text()).doesNotContain(SECRET);
        }
    }

    @Test
    void otherFormsOfATargetAreRefused() throws IOException {
        assertThat(harbour.ask("OPTIONS", "*").status()).isBetween(400, 499);
        assertThat(harbour.ask("CONNECT", "a.example:443").status()).isBetween(400, 499);
    }

    /** RFC 9110, 9.3.1: a body of GET means nothing and may be refused; RFC 9112, 9.3: then the connection ends. */
    @Test
    void bodiesAreRefusedAndNeverTakenForRequests() throws IOException {
        String smuggled = "GET /" + CODE + "/ HTTP/1.1\r\nHost: a\r\n\r\n";
        for (String framing : new String[] {
            "Content-Length: " + smuggled.length() + "\r\n\r\n" + smuggled,
            "Transfer-Encoding: chunked\r\n\r\n" + Integer.toHexString(smuggled.length()) + "\r\n" + smuggled
                    + "\r\n0\r\n\r\n",
            "Content-Length: 99999999\r\n\r\n",
            "Content-Length: 5\r\nExpect: 100-continue\r\n\r\n"
        }) {
            for (String method : new String[] {"GET", "POST"}) {
                try (Wire wire = harbour.wire()) {
                    wire.write(method + " / HTTP/1.1\r\nHost: a\r\n" + framing);
                    Wire.Reply reply = wire.read(false);
                    assertThat(reply.status()).isEqualTo(method.equals("GET") ? 413 : 405);
                    assertThat(reply.field("connection")).isEqualTo("close");
                    assertThat(wire.isClosedByServer()).isTrue();
                }
            }
        }
    }

    /** RFC 9110, 15.5.15 (414); RFC 6585, 5 (431). */
    @Test
    void longRequestsAreRefused() throws IOException {
        assertThat(harbour.get("/" + "a".repeat(9_000)).status()).isEqualTo(414);
        assertThat(harbour.get("/", "A: " + "a".repeat(9_000)).status()).isEqualTo(431);
        assertThat(harbour.get("/", Stream.generate(() -> "A: b").limit(3_000).toArray(String[]::new))
                        .status())
                .isEqualTo(431);
        assertThat(harbour.get("/" + "a".repeat(2_000)).text()).isEqualTo(UNKNOWN);
    }

    /** RFC 9112, 9.3.2: answers to requests sent in one go come in their order. */
    @Test
    void requestsInOneGoAreAnsweredInTheirOrder() throws IOException {
        try (Wire wire = harbour.wire()) {
            wire.write(("GET /" + CODE + "/issue.sig HTTP/1.1\r\nHost: a\r\n\r\n").repeat(3) + "GET /" + CODE
                    + "/ HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n");
            for (int i = 0; i < 3; i++) {
                assertThat(wire.read(false).text()).isEqualTo("c2lnbmVk");
            }
            assertThat(wire.read(false).text()).isEqualTo(Harbour.PAGE);
            assertThat(wire.isClosedByServer()).isTrue();
        }
    }

    /** Slow header fields, from memory of the attack of that kind: a byte now and then holds a connection for ever. */
    @Test
    @SuppressWarnings("try") // one of the three goes early
    void whoDawdlesIsCutOff(@TempDir Path other) throws Exception {
        Limits hasty = new Limits(
                8192,
                2,
                Duration.ofMillis(1500),
                Duration.ofMillis(2500),
                Duration.ofSeconds(2),
                Duration.ofSeconds(1));
        try (Harbour small = new Harbour(other, hasty)) {
            try (Wire silent = small.wire()) {
                long since = System.nanoTime();
                assertThat(closed(silent)).isTrue();
                assertThat(seconds(since)).isBetween(1.0, 15.0);
            }
            try (Wire slow = small.wire()) {
                long since = System.nanoTime();
                slow.write("GET / HTTP/1.1\r\n");
                boolean open = true;
                while (open && seconds(since) < 30) {
                    Thread.sleep(200);
                    try {
                        slow.write("A: b\r\n");
                    } catch (IOException closed) {
                        open = false;
                    }
                }
                assertThat(open).isFalse();
                assertThat(seconds(since)).isBetween(2.0, 15.0);
            }
            // No more than two at a time: the third waits until one of them goes.
            try (Wire first = small.wire();
                    Wire second = small.wire();
                    Wire third = small.wire()) {
                assertThat(first.ask("GET", "/").status()).isEqualTo(404);
                assertThat(second.ask("GET", "/").status()).isEqualTo(404);
                third.patience(500);
                third.write("GET / HTTP/1.1\r\nHost: a\r\n\r\n");
                try {
                    third.read(false);
                    throw new AssertionError("a third connection was served");
                } catch (SocketTimeoutException waits) {
                    first.close();
                }
                third.patience(10_000);
                assertThat(third.read(false).status()).isEqualTo(404);
            }
        }
    }

    /** Closed with or without an answer that says why (RFC 9110, 15.5.9 permits either). */
    private static boolean closed(Wire wire) throws IOException {
        try {
            assertThat(wire.read(false).status()).isEqualTo(408);
        } catch (EOFException none) {
            return true;
        }
        return wire.isClosedByServer();
    }

    private static double seconds(long since) {
        return (System.nanoTime() - since) / 1e9;
    }
}
