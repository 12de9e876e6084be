package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Help.Ansi;

/** {@code quaybook serve} from start to end, and what it says when it cannot start. */
class ServeCommandTest {

    private static final String CODE = "81EZD3SWFGV4RK1ZH0YDQ";

    @TempDir
    Path folder;

    private final StringWriter err = new StringWriter();

    @BeforeEach
    void site() throws IOException {
        Files.writeString(folder.resolve("404.html"), "unknown");
        Files.writeString(Files.createDirectory(folder.resolve(CODE)).resolve("index.html"), "record");
    }

    private int run(String... arguments) {
        return Main.run(new PrintWriter(new StringWriter(), true), new PrintWriter(err, true), Ansi.OFF, arguments);
    }

    /** SIGTERM and SIGINT (POSIX) are how a service manager and Ctrl-C ask a program to stop. */
    @ParameterizedTest
    @ValueSource(strings = {"TERM", "INT"})
    void servesUntilItIsStoppedAndThatIsNoFailure(String signal) throws Exception {
        Path log = folder.resolve("access.log");
        // A shell may have told what it starts in the background to ignore Ctrl-C.
        Process process = new ProcessBuilder(
                        "env",
                        "--default-signal=" + signal,
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.quaybook.cli.Main",
                        "serve",
                        folder.toString(),
                        "--port",
                        "0",
                        "--access-log",
                        log.toString())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader out = process.inputReader()) {
            String running = String.valueOf(out.readLine());
            assertThat(running).contains("http://127.0.0.1:");
            String base = running.replaceFirst(".*(http://\\S+) .*", "$1");
            HttpClient client = HttpClient.newBuilder()
                    .followRedirects(HttpClient.Redirect.NORMAL)
                    .build();
            HttpRequest typed = HttpRequest.newBuilder(URI.create(base + "81ez-d3sw-fgv4-rklz-hoyd-q"))
                    .build();
            assertThat(client.send(typed, BodyHandlers.ofString()).body()).isEqualTo("record");

            new ProcessBuilder("kill", "-" + signal, Long.toString(process.pid())).start();
            assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isEqualTo(Exit.DONE);
            assertThat(out.readLine()).isEqualTo("Stopped.");
        } finally {
            process.destroyForcibly();
        }
        assertThat(Files.readAllLines(log))
                .hasSizeGreaterThanOrEqualTo(2)
                .anySatisfy(line -> assertThat(line).matches("\\S+Z GET /…0YDQ/ 200 6 \\d+"))
                .noneSatisfy(line -> assertThat(line).containsAnyOf(CODE, "127.0.0.1"));
    }

    @Test
    void saysWhatKeepsItFromStarting() throws IOException {
        assertThat(run("serve", folder.resolve("none").toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString().lines()).singleElement().asString().contains("is no folder");

        err.getBuffer().setLength(0);
        assertThat(run("serve", folder.resolve(CODE).toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString().lines()).singleElement().asString().contains("no site", "404.html");

        err.getBuffer().setLength(0);
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(taken.getLocalPort());
            assertThat(run("serve", folder.toString(), "--port", port)).isEqualTo(Exit.BAD_INPUT);
            assertThat(err.toString()).contains(port, "taken", "--port");
        }

        err.getBuffer().setLength(0);
        assertThat(run("serve", folder.toString(), "--port", "70000")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("70000");

        err.getBuffer().setLength(0);
        assertThat(run("serve", folder.toString(), "--log-addresses")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("--access-log");
    }

    @Test
    void anUnwritableLogIsToldOnce() {
        LineLog log = new LineLog(folder, e -> err.append("lost "));
        log.accept("one");
        log.accept("two");
        assertThat(err.toString()).isEqualTo("lost ");
    }
}
