package org.quaybook.serve;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.NullMarked;
import org.quaybook.job.RecordCode;

/** A site with two records, one of them withdrawn, and a server of it. All is invented. */
@NullMarked
final class Harbour implements AutoCloseable {

    static final String CODE = RecordCode.draw(new SecureRandom()).symbols();
    static final String GONE = RecordCode.draw(new SecureRandom()).symbols();
    static final String NEVER = RecordCode.draw(new SecureRandom()).symbols();
    static final Instant WRITTEN = Instant.parse("2026-05-14T10:20:30.750Z");
    static final String PAGE = "<!DOCTYPE html><html><head><meta charset=\"utf-8\"/>"
            + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src &#39;sha256-ab+/=&#39;\"/>"
            + "</head><body>" + "Bilge pump ✓ ".repeat(400) + "</body></html>";
    static final String UNKNOWN = "<!DOCTYPE html><p>Unknown code, unbekannter Code</p>".repeat(20);

    final Path site;
    final List<String> log = new CopyOnWriteArrayList<>();
    final List<Throwable> faults = new CopyOnWriteArrayList<>();
    final RecordServer server;

    Harbour(Path folder) throws IOException, NotStarted {
        this(folder, Limits.USUAL);
    }

    Harbour(Path folder, Limits limits) throws IOException, NotStarted {
        this.site = folder.resolve("site");
        put("404.html", UNKNOWN);
        put(CODE + "/index.html", PAGE);
        put(CODE + "/index-de.html", PAGE.replace("Bilge", "Lenz"));
        put(CODE + "/guide.pdf", "%PDF-1.7 " + "0123456789".repeat(1000));
        put(CODE + "/figures.json", "{\"figures\": [" + "1, ".repeat(500) + "1]}");
        put(CODE + "/calendar.ics", "BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n");
        put(CODE + "/offline.js", "'use strict';\n".repeat(50));
        put(CODE + "/issue.sig", "c2lnbmVk");
        put(CODE + "/record.html.sealed", "QUAYSEAL");
        put(CODE + "/site.webmanifest", "{}");
        put(CODE + "/empty.txt", "");
        put(CODE + "/revision-1/index.html", PAGE.replace("Bilge", "First"));
        put(CODE + "/revision-1/guide.pdf", "%PDF-1.7 first");
        put(CODE + "/.index.html.new", "half");
        put(CODE + "/.hidden.html", "hidden");
        put(CODE + "/guide.pdf.tmp", "half");
        put(CODE + "/job.yaml", "private");
        put(CODE + "/drafts/index.html", "private");
        put(CODE + "/revision-2.new/index.html", "half");
        put(GONE + "/index.html", "<!DOCTYPE html><p>Withdrawn</p>");
        put(GONE + "/guide.pdf", "%PDF-1.7 withdrawn");
        put(GONE + "/withdrawn", "");
        this.server = RecordServer.start(
                new Serving(
                        site,
                        "127.0.0.1",
                        0,
                        Harbour::canonical,
                        Optional.of(log::add),
                        false,
                        faults::add,
                        InstantSource.system()),
                limits);
    }

    static Optional<String> canonical(String typed) {
        try {
            return Optional.of(RecordCode.parse(typed).symbols());
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private void put(String path, String text) throws IOException {
        Path file = site.resolve(path);
        Files.createDirectories(java.util.Objects.requireNonNull(file.getParent()));
        Files.writeString(file, text);
        Files.setLastModifiedTime(file, FileTime.from(WRITTEN));
    }

    Wire wire() throws IOException {
        return new Wire(server.port());
    }

    /** One request on a connection of its own. */
    Wire.Reply ask(String method, String path, String... fields) throws IOException {
        try (Wire wire = wire()) {
            return wire.ask(method, path, fields);
        }
    }

    Wire.Reply get(String path, String... fields) throws IOException {
        return ask("GET", path, fields);
    }

    @Override
    public void close() {
        server.stop();
    }
}
