package org.quaybook.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A program that lies somewhere as it was unpacked, and how it is called there: through its launcher, in a bare environment. */
record Installed(Path launcher, List<String> before, Map<String, String> environment, Path folder) {

    private static final int LONGEST_MINUTES = 5;

    /** How a run ended, and what it said in either place. */
    record Ended(int code, String out, String err) {}

    static Installed at(Path launcher, Path folder) {
        return new Installed(
                launcher,
                List.of(),
                Map.of(
                        "PATH",
                        Objects.requireNonNull(System.getenv("PATH")),
                        "JAVA_HOME",
                        System.getProperty("java.home")),
                folder);
    }

    Installed with(String variable, String value) {
        Map<String, String> more = new HashMap<>(environment);
        more.put(variable, value);
        return new Installed(launcher, before, Map.copyOf(more), folder);
    }

    /** Called by another program, as the last of its arguments. */
    Installed under(String... command) {
        return new Installed(launcher, List.of(command), environment, folder);
    }

    /** As a user who owns nothing, where the tests run as root; else as who runs them. */
    Installed bySomebodyElse() throws IOException, InterruptedException {
        boolean root = run(folder, List.of("id", "-u")).equals("0\n");
        return root
                ? new Installed(
                        launcher,
                        List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"),
                        environment,
                        folder)
                : this;
    }

    Process start(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.add(launcher.toString());
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        return process;
    }

    Ended run(String... arguments) throws IOException, InterruptedException {
        return end(start(arguments));
    }

    /** What is said is little: a pipe holds it. */
    static Ended end(Process process) throws IOException, InterruptedException {
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES))
                .as(out + err)
                .isTrue();
        return new Ended(process.exitValue(), out, err);
    }

    /** Runs another program, which must succeed; gives what it printed. */
    static String run(Path folder, List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        Ended ended = end(process);
        assertThat(ended.code()).as("%s: %s", command, ended.out()).isZero();
        return ended.out();
    }

    /** Content of each file below a folder, by its path with slashes. */
    static Map<String, byte[]> contents(Path folder) {
        Map<String, byte[]> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return contents;
    }

    static Path product(String property) {
        return Path.of(Objects.requireNonNull(System.getProperty(property), property))
                .toAbsolutePath();
    }
}
