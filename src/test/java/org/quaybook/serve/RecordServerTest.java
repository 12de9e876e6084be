package org.quaybook.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.quaybook.serve.Harbour.CODE;
import static org.quaybook.serve.Harbour.GONE;
import static org.quaybook.serve.Harbour.NEVER;
import static org.quaybook.serve.Harbour.PAGE;
import static org.quaybook.serve.Harbour.UNKNOWN;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is answered over a real socket, held against RFC 9110 (HTTP semantics) and RFC 9111 (caching). */
class RecordServerTest {

    @TempDir
    static Path folder;

    private static Harbour harbour;

    @BeforeAll
    static void start() throws Exception {
        harbour = new Harbour(folder);
    }

    @AfterAll
    static void stop() {
        harbour.close();
        assertThat(harbour.faults).isEmpty();
    }

    /** Names and charsets: IANA media types; RFC 9239 (js), RFC 8259 (json), RFC 5545 8.1 (ics), RFC 8118 (pdf). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "|text/html; charset=utf-8",
                "index-de.html|text/html; charset=utf-8",
                "offline.js|text/javascript; charset=utf-8",
                "figures.json|application/json",
                "calendar.ics|text/calendar; charset=utf-8",
                "guide.pdf|application/pdf",
                "issue.sig|application/octet-stream",
                "record.html.sealed|application/octet-stream",
                "site.webmanifest|application/manifest+json",
                "empty.txt|text/plain; charset=utf-8",
                "revision-1/|text/html; charset=utf-8",
                "revision-1/guide.pdf|application/pdf"
            })
    void everyFileOfARecordIsSentAsItIs(String name, String type) throws Exception {
        String path = name == null ? "" : name;
        Wire.Reply reply = harbour.get("/" + CODE + "/" + path);
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.field("content-type")).isEqualTo(type);
        Path file =
                harbour.site.resolve(CODE).resolve(path.isEmpty() || path.endsWith("/") ? path + "index.html" : path);
        assertThat(reply.bytes()).isEqualTo(Files.readAllBytes(file));
        // RFC 9110, 8.8.3: a strong validator changes with the bytes; here it is their SHA-256.
        assertThat(reply.field("etag"))
                .isEqualTo('"'
                        + HexFormat.of()
                                .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)))
                        + '"');
        // RFC 9110, 8.8.2 and 5.6.7: whole seconds, in GMT; the file was written at 10:20:30.75.
        assertThat(reply.field("last-modified")).isEqualTo("Thu, 14 May 2026 10:20:30 GMT");
    }

    /** RFC 9110, 9.3.2: HEAD is GET without the body, with the same fields. */
    @ParameterizedTest
    @ValueSource(strings = {"", "guide.pdf", "nothing.html", "revision-1", "revision-1/"})
    void headIsGetWithoutTheBody(String name) throws IOException {
        for (String encoding : List.of("identity", "gzip")) {
            try (Wire wire = harbour.wire()) {
                Wire.Reply head = wire.ask("HEAD", "/" + CODE + "/" + name, "Accept-Encoding: " + encoding);
                // On the same connection: a body sent by mistake would be read as the next answer.
                Wire.Reply get = wire.ask("GET", "/" + CODE + "/" + name, "Accept-Encoding: " + encoding);
                assertThat(head.status()).isEqualTo(get.status());
                assertThat(undated(head)).isEqualTo(undated(get));
                assertThat(Integer.parseInt(head.field("content-length"))).isEqualTo(get.bytes().length);
                assertThat(get.bytes()).isNotEmpty();
            }
        }
    }

    private static Map<String, String> undated(Wire.Reply reply) {
        Map<String, String> fields = new TreeMap<>(reply.fields());
        assertThat(fields.remove("date")).isNotNull();
        return fields;
    }

    /** RFC 9111, 5.2.2.4 (no-cache: keep, but ask again); RFC 8246 (immutable). */
    @Test
    void whatCanChangeIsAskedForAgain() throws IOException {
        for (String name : List.of("", "index-de.html", "offline.js", "guide.pdf", "figures.json")) {
            assertThat(harbour.get("/" + CODE + "/" + name).field("cache-control"))
                    .isEqualTo("no-cache");
        }
        for (String name : List.of("", "index.html", "guide.pdf")) {
            assertThat(harbour.get("/" + CODE + "/revision-1/" + name).field("cache-control"))
                    .isEqualTo("public, max-age=31536000, immutable");
        }
        assertThat(harbour.get("/" + NEVER + "/").field("cache-control")).isEqualTo("no-cache");
    }

    /** RFC 9110, 12.5.3 (Accept-Encoding), 12.5.5 (Vary), 8.8.3.3 (a tag for each encoding); RFC 1952 (gzip). */
    @Test
    void textIsCompressedForWhoTakesIt() throws IOException {
        Wire.Reply plain = harbour.get("/" + CODE + "/");
        Wire.Reply zipped = harbour.get("/" + CODE + "/", "Accept-Encoding: br, gzip");
        assertThat(zipped.field("content-encoding")).isEqualTo("gzip");
        assertThat(zipped.bytes().length).isLessThan(plain.bytes().length / 5);
        assertThat(new String(
                        new GZIPInputStream(new ByteArrayInputStream(zipped.bytes())).readAllBytes(),
                        StandardCharsets.UTF_8))
                .isEqualTo(PAGE);
        assertThat(zipped.field("etag")).isNotEqualTo(plain.field("etag")).doesNotStartWith("W/");
        assertThat(List.of(plain.field("vary"), zipped.field("vary"))).containsOnly("Accept-Encoding");
        assertThat(plain.fields()).doesNotContainKey("content-encoding");
        assertThat(harbour.get("/" + CODE + "/guide.pdf", "Accept-Encoding: gzip")
                        .fields())
                .doesNotContainKey("content-encoding");
        assertThat(harbour.get("/" + CODE + "/empty.txt", "Accept-Encoding: gzip")
                        .fields())
                .doesNotContainKey("content-encoding");
    }

    /** RFC 9110, 12.4.2 (weights) and 12.5.3, the first lines its own examples. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "compress, gzip|true",
                "''|false",
                "*|true",
                "compress;q=0.5, gzip;q=1.0|true",
                "gzip;q=1.0, identity; q=0.5, *;q=0|true",
                "gzip;q=0, *|false",
                "identity, *;q=0|false",
                "gzip;q=0.2, identity;q=0.8|false",
                "x-gzip|true",
                "GZIP|true",
                "gzip;q=0.000|false",
                "gzip;q=2|false",
                "notgzip|false"
            })
    void weightsDecide(String accepted, boolean compressed) throws IOException {
        Wire.Reply reply = harbour.get("/" + CODE + "/", "Accept-Encoding: " + accepted);
        assertThat(reply.field("content-encoding")).isEqualTo(compressed ? "gzip" : "");
    }

    /** RFC 9110, 13.1.1 to 13.1.4, 13.2.2 (order) and 15.4.5 (what a 304 carries). {0} the plain tag, {1} that of gzip. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "304|If-None-Match: {0}",
                "304|If-None-Match: W/{0}",
                "304|If-None-Match: \"other, \", {0}",
                "304|If-None-Match: *",
                "200|If-None-Match: \"other\"",
                "200|If-None-Match: {1}",
                "304|If-None-Match: {1}~Accept-Encoding: gzip",
                "200|If-None-Match: {0}~Accept-Encoding: gzip",
                "304|If-Modified-Since: Thu, 14 May 2026 10:20:30 GMT",
                "304|If-Modified-Since: Thursday, 14-May-26 10:20:30 GMT",
                "304|If-Modified-Since: Thu May 14 10:20:30 2026",
                "304|If-Modified-Since: Fri, 15 May 2026 00:00:00 GMT",
                "200|If-Modified-Since: Thu, 14 May 2026 10:20:29 GMT",
                "200|If-Modified-Since: yesterday",
                "200|If-None-Match: \"other\"~If-Modified-Since: Fri, 15 May 2026 00:00:00 GMT",
                "304|If-None-Match: {0}~If-Modified-Since: Thu, 14 May 2026 10:20:29 GMT",
                "412|If-Match: \"other\"",
                "412|If-Match: W/{0}",
                "200|If-Match: \"other\", {0}",
                "200|If-Match: *",
                "412|If-Unmodified-Since: Thu, 14 May 2026 10:20:29 GMT",
                "200|If-Unmodified-Since: Thu, 14 May 2026 10:20:30 GMT",
                "200|If-Match: {0}~If-Unmodified-Since: Thu, 14 May 2026 10:20:29 GMT",
                "412|If-Match: \"other\"~If-None-Match: {0}"
            })
    void conditionsAreKept(int status, String conditions) throws IOException {
        String plain = harbour.get("/" + CODE + "/").field("etag");
        String zipped = harbour.get("/" + CODE + "/", "Accept-Encoding: gzip").field("etag");
        String[] fields =
                conditions.replace("{0}", plain).replace("{1}", zipped).split("~");
        for (String method : List.of("GET", "HEAD")) {
            try (Wire wire = harbour.wire()) {
                Wire.Reply reply = wire.ask(method, "/" + CODE + "/", fields);
                assertThat(reply.status()).isEqualTo(status);
                if (status == 304) {
                    assertThat(reply.fields())
                            .containsKeys("etag", "cache-control", "vary", "date", "content-security-policy")
                            .doesNotContainKeys("content-type", "content-encoding");
                }
                // The connection goes on in step.
                assertThat(wire.ask("GET", "/" + CODE + "/issue.sig").text()).isEqualTo("c2lnbmVk");
            }
        }
    }

    /** RFC 9110, 13.2.1: conditions are about what is there, so the page for what is not there is sent whole. */
    @Test
    void whatIsNotThereHasNoConditions() throws IOException {
        Wire.Reply reply = harbour.get("/" + NEVER + "/", "If-None-Match: *", "Range: bytes=0-3");
        assertThat(reply.status()).isEqualTo(404);
        assertThat(reply.text()).isEqualTo(UNKNOWN);
    }

    /** RFC 9110, 14.1.2 (forms of a range, its own examples shrunk to 10 009 bytes), 14.4, 15.3.7, 15.5.17. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bytes=0-499|206|0|499",
                "bytes=500-999|206|500|999",
                "bytes=-500|206|9509|10008",
                "bytes=9500-|206|9500|10008",
                "bytes=0-0|206|0|0",
                "bytes=0-99999|206|0|10008",
                "bytes=-99999|206|0|10008",
                "BYTES=1-2|206|1|2",
                "bytes=0-99999999999999999999999|206|0|10008",
                "bytes=10009-|416||",
                "bytes=99999999999999999999999-|416||",
                "bytes=-0|416||",
                "bytes=5-4|200||",
                "bytes=-|200||",
                "bytes=a-b|200||",
                "lines=0-1|200||",
                "bytes=0-0,-1|200||",
                "bytes|200||"
            })
    void partsAreSent(String range, int status, Integer first, Integer last) throws IOException {
        byte[] whole = Files.readAllBytes(harbour.site.resolve(CODE + "/guide.pdf"));
        assertThat(whole).hasSize(10_009);
        Wire.Reply reply = harbour.get("/" + CODE + "/guide.pdf", "Range: " + range, "Accept-Encoding: gzip");
        assertThat(reply.status()).isEqualTo(status);
        switch (status) {
            case 206 -> {
                assertThat(reply.bytes()).isEqualTo(Arrays.copyOfRange(whole, first, last + 1));
                assertThat(reply.field("content-range")).isEqualTo("bytes " + first + "-" + last + "/10009");
                assertThat(reply.fields()).containsKeys("etag", "cache-control", "vary", "date");
            }
            case 416 -> assertThat(reply.field("content-range")).isEqualTo("bytes */10009");
            default -> {
                assertThat(reply.bytes()).isEqualTo(whole);
                assertThat(reply.field("accept-ranges")).isEqualTo("bytes");
            }
        }
    }

    /** RFC 9110, 13.1.5 (If-Range) and 14.2 (HEAD knows no ranges); parts are those of the plain bytes. */
    @Test
    void aPartGoesOnlyWithWhatIsThere() throws IOException {
        String path = "/" + CODE + "/";
        byte[] whole = PAGE.getBytes(StandardCharsets.UTF_8);
        String plain = harbour.get(path).field("etag");
        String zipped = harbour.get(path, "Accept-Encoding: gzip").field("etag");
        String range = "Range: bytes=10-19";
        for (String same : List.of(plain, "Thu, 14 May 2026 10:20:30 GMT")) {
            Wire.Reply reply = harbour.get(path, range, "If-Range: " + same, "Accept-Encoding: gzip");
            assertThat(reply.status()).isEqualTo(206);
            assertThat(reply.fields()).doesNotContainKey("content-encoding");
            assertThat(reply.field("etag")).isEqualTo(plain);
            assertThat(reply.bytes()).isEqualTo(Arrays.copyOfRange(whole, 10, 20));
        }
        for (String other : List.of("\"other\"", "W/" + plain, zipped, "Thu, 14 May 2026 10:20:31 GMT", "never")) {
            Wire.Reply reply = harbour.get(path, range, "If-Range: " + other);
            assertThat(reply.status()).as(other).isEqualTo(200);
            assertThat(reply.bytes()).isEqualTo(whole);
        }
        assertThat(harbour.ask("HEAD", path, range).status()).isEqualTo(200);
        assertThat(harbour.get(path, range, "If-None-Match: " + plain).status()).isEqualTo(304);
    }

    /** RFC 9110, 15.4.9 (308) and 10.2.2 (a relative Location holds behind any base address). */
    @Test
    void codesAsPeopleTypeThemLeadToTheRecord() throws IOException {
        String typed = CODE.toLowerCase(Locale.ROOT).replaceAll("(.{4})(?!$)", "$1-");
        String misread = CODE.replace('0', 'O').replace('1', 'l');
        for (String base : List.of("http://a.example/", "http://a.example/deep/er/")) {
            for (String code : List.of(CODE, typed, misread + "%20", "%20" + typed.replace("-", "%20"))) {
                for (String rest :
                        List.of("", "/guide.pdf", "/", "/revision-1", "/revision-1/", "/revision-1/guide.pdf")) {
                    boolean isFolder = rest.isEmpty() || rest.equals("/revision-1");
                    Wire.Reply reply = harbour.get("/" + code + rest);
                    if (code.equals(CODE) && !isFolder) {
                        assertThat(reply.status()).isEqualTo(200);
                    } else {
                        assertThat(reply.status()).as(code + rest).isEqualTo(308);
                        assertThat(URI.create(base + code + rest).resolve(reply.field("location")))
                                .isEqualTo(URI.create(base + CODE + rest + (isFolder ? "/" : "")));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/404.html",
                "/index.html",
                "/favicon.ico",
                "/robots.txt",
                "/%CODE%/nothing.html",
                "/%CODE%/job.yaml",
                "/%CODE%/withdrawn",
                "/%CODE%/guide.pdf/",
                "/%CODE%/drafts/",
                "/%CODE%/drafts/index.html",
                "/%CODE%/revision-2/",
                "/%CODE%/revision-01/",
                "/%CODE%/revision-1/revision-1/",
                "/%NEVER%",
                "/%NEVER%/",
                "/%NEVER%/index.html",
                "/AAAAAAAAAAAAAAAAAAAAA/",
                "/short"
            })
    void whatIsNotThereIsAnsweredAlike(String path) throws IOException {
        Wire.Reply reply = harbour.get(path.replace("%CODE%", CODE).replace("%NEVER%", NEVER));
        assertThat(reply.status()).isEqualTo(404);
        assertThat(reply.text()).isEqualTo(UNKNOWN);
        assertThat(reply.field("content-type")).isEqualTo("text/html; charset=utf-8");
        assertThat(undated(reply)).isEqualTo(undated(harbour.get("/")));
    }

    /** RFC 9110, 15.5.11. */
    @Test
    void aWithdrawnRecordIsGone() throws IOException {
        for (String rest : List.of("", "/", "/index.html", "/guide.pdf", "/revision-1/", "/nothing", "/withdrawn")) {
            Wire.Reply reply = harbour.get("/" + GONE + rest);
            assertThat(reply.status()).isEqualTo(410);
            assertThat(reply.text()).contains("Withdrawn");
        }
    }

    @Test
    void everyAnswerIsGuarded() throws IOException {
        for (Wire.Reply reply : List.of(
                harbour.get("/" + CODE + "/"),
                harbour.get("/" + CODE + "/guide.pdf", "Range: bytes=0-1"),
                harbour.get("/" + CODE + "/guide.pdf", "Range: bytes=99999-"),
                harbour.get("/" + CODE + "/", "If-None-Match: *"),
                harbour.get("/" + CODE + "/", "If-Match: \"other\""),
                harbour.get("/" + CODE),
                harbour.get("/" + NEVER + "/"),
                harbour.get("/" + GONE + "/"),
                harbour.ask("POST", "/"),
                harbour.ask("TRACE", "/"),
                harbour.get("/%00"),
                harbour.get("/" + "a".repeat(9000)),
                harbour.get("/", "X: " + "a".repeat(9000)))) {
            assertThat(reply.fields())
                    .containsEntry("x-content-type-options", "nosniff")
                    .containsEntry("referrer-policy", "no-referrer")
                    .containsEntry("cross-origin-opener-policy", "same-origin")
                    .containsEntry("cross-origin-resource-policy", "same-origin")
                    .containsKeys("permissions-policy", "cache-control")
                    .doesNotContainKeys("server", "x-powered-by", "set-cookie");
            assertThat(reply.field("x-robots-tag")).contains("noindex");
            assertThat(reply.field("content-security-policy"))
                    .startsWith("default-src 'none'; ")
                    .contains("frame-ancestors 'none'");
        }
    }

    /** CSP level 3, 3.3: what a page says of itself holds, and frame-ancestors can only be said outside it. */
    @Test
    void aPagesOwnPolicyIsSaidAgain() throws IOException {
        assertThat(harbour.get("/" + CODE + "/").field("content-security-policy"))
                .isEqualTo("default-src 'none'; style-src 'sha256-ab+/='; frame-ancestors 'none'");
        assertThat(harbour.get("/" + CODE + "/offline.js").field("content-security-policy"))
                .isEqualTo("default-src 'none'; script-src 'self'; worker-src 'self'; connect-src 'self'; "
                        + "img-src 'self' data:; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'none'; "
                        + "frame-ancestors 'none'");
        assertThat(PagePolicy.of(
                        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; a\r\nX: y\""
                                .getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(PagePolicy.USUAL);
    }

    @Test
    void theLogShowsNeitherWhoAskedNorAWholeCode() throws Exception {
        awaitQuiet();
        harbour.log.clear();
        harbour.get("/" + CODE + "/guide.pdf?from=me", "User-Agent: spy", "Referer: http://b.example/");
        awaitLines(1);
        harbour.get("/" + CODE.toLowerCase(Locale.ROOT) + "/");
        awaitLines(2);
        harbour.get("/" + NEVER + "/guide.pdf");
        awaitLines(3);
        harbour.get("/" + CODE.substring(1) + "/" + CODE + ".pdf");
        awaitLines(4);
        harbour.ask("BREW", "/" + CODE);
        awaitLines(5);
        String end = CODE.substring(17);
        assertThat(harbour.log.get(0))
                .matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\dZ GET /…" + end + "/guide\\.pdf 200 10009 \\d+");
        assertThat(harbour.log.get(1)).contains(" GET /…" + end.toLowerCase(Locale.ROOT) + "/ 308 ");
        assertThat(harbour.log.get(2)).contains(" GET /…epdf 404 ");
        assertThat(harbour.log.get(3)).contains(" 404 ");
        assertThat(harbour.log.get(4)).contains(" - - 405 ");
        assertThat(String.join("\n", harbour.log).toUpperCase(Locale.ROOT))
                .doesNotContain(CODE.substring(0, 17), NEVER.substring(0, 17), "127.0.0.1", "SPY", "EXAMPLE", "FROM");
    }

    /** Lines about what other tests asked for may still come. */
    private static void awaitQuiet() throws InterruptedException {
        for (int before = -1; before != harbour.log.size(); ) {
            before = harbour.log.size();
            Thread.sleep(300);
        }
    }

    /** A line is written after the answer: two could change places. */
    private static void awaitLines(int due) throws InterruptedException {
        for (int tries = 0; harbour.log.size() < due && tries < 100; tries++) {
            Thread.sleep(50);
        }
        assertThat(harbour.log).hasSize(due);
    }

    @Test
    void anAddressIsLoggedOnlyIfAskedFor(@TempDir Path other) throws Exception {
        List<String> lines = new java.util.concurrent.CopyOnWriteArrayList<>();
        Files.writeString(other.resolve("404.html"), UNKNOWN);
        RecordServer server = RecordServer.start(new Serving(
                other,
                "127.0.0.1",
                0,
                Harbour::canonical,
                Optional.of(lines::add),
                true,
                harbour.faults::add,
                InstantSource.system()));
        try (Wire wire = new Wire(server.port())) {
            assertThat(wire.ask("GET", "/").status()).isEqualTo(404);
        }
        server.stop();
        assertThat(lines).singleElement().asString().endsWith(" 127.0.0.1");
    }

    /** A site is put in place by moving: by the file, by the folder, and by a link that leads to the whole of it. */
    @Test
    void aReplacedFileIsSeenAtOnce(@TempDir Path other) throws Exception {
        Path file = harbour.site.resolve(CODE + "/replaced.txt");
        Files.writeString(file, "one");
        for (String text : List.of("one", "two", "six", "two")) {
            Path fresh = Files.writeString(other.resolve("fresh"), text);
            Files.setLastModifiedTime(fresh, java.nio.file.attribute.FileTime.from(Harbour.WRITTEN));
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            assertThat(harbour.get("/" + CODE + "/replaced.txt").text()).isEqualTo(text);
        }
        Files.delete(file);
        assertThat(harbour.get("/" + CODE + "/replaced.txt").status()).isEqualTo(404);
    }

    @Test
    void whatCannotBeServedIsToldBefore(@TempDir Path empty) throws Exception {
        assertThatThrownBy(() -> starting(empty.resolve("none"), "127.0.0.1", 0))
                .isInstanceOf(NotStarted.class)
                .hasMessage("serve.no-folder");
        assertThatThrownBy(() -> starting(empty, "127.0.0.1", 0)).hasMessage("serve.not-a-site");
        assertThatThrownBy(() -> starting(harbour.site, "127.0.0.1", harbour.server.port()))
                .hasMessage("serve.port-taken");
        // 192.0.2.0/24 is nobody's (RFC 5737).
        assertThatThrownBy(() -> starting(harbour.site, "192.0.2.1", 0)).hasMessage("serve.cannot-listen");
    }

    private static RecordServer starting(Path site, String address, int port) throws NotStarted {
        return RecordServer.start(new Serving(
                site,
                address,
                port,
                Harbour::canonical,
                Optional.empty(),
                false,
                harbour.faults::add,
                InstantSource.system()));
    }

    /** RFC 9110, 5.6.7: a year of two digits is never more than 50 years ahead. */
    @Test
    void aYearOfTwoDigitsIsNotFarAhead() {
        java.time.Instant now = java.time.Instant.parse("2026-05-14T00:00:00Z");
        assertThat(HttpDate.read("Sunday, 06-Nov-94 08:49:37 GMT", now))
                .contains(java.time.Instant.parse("1994-11-06T08:49:37Z"));
        assertThat(HttpDate.read("Sun Nov  6 08:49:37 1994", now))
                .contains(java.time.Instant.parse("1994-11-06T08:49:37Z"));
        assertThat(HttpDate.read("Sun, 06 Nov 1994 08:49:37 GMT", now))
                .contains(java.time.Instant.parse("1994-11-06T08:49:37Z"));
    }
}
