package org.quaybook.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The program as its users run it: in a process of its own, on some JDK, with settings of the machine. */
final class Program {

    private static final int LONGEST_MINUTES = 10;
    private static final String MAIN = "org.quaybook.cli.Main";

    private final List<String> before = new ArrayList<>();
    private final List<String> options = new ArrayList<>(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    private final Map<String, String> environment = new TreeMap<>();
    private final Path jdk;
    private Path folder = Path.of("").toAbsolutePath();

    private Program(Path jdk) {
        this.jdk = jdk;
    }

    /** How a run ended, and all that it said. */
    record Ended(int code, String said) {}

    /** On the JDK that the tests run on. */
    static Program here() {
        return on(Path.of(System.getProperty("java.home")));
    }

    static Program on(Path jdk) {
        return new Program(jdk);
    }

    /** With options of the virtual machine. */
    Program with(String... more) {
        options.addAll(List.of(more));
        return this;
    }

    Program where(String variable, String value) {
        environment.put(variable, value);
        return this;
    }

    Program in(Path workingFolder) {
        folder = workingFolder;
        return this;
    }

    /** With nothing written into any file past a size, as on a full disk: POSIX {@code ulimit -f}, in 512-byte blocks. */
    Program withFilesUpTo(int blocks) {
        before.addAll(List.of("/bin/sh", "-c", "ulimit -f " + blocks + " && exec \"$0\" \"$@\""));
        return with("-XX:-UsePerfData");
    }

    /** Through another program, such as one that watches it. */
    Program through(List<String> words) {
        before.addAll(words);
        return this;
    }

    /** A class path of folders and jars, whatever the test runner has made of it. */
    private static String classPath() {
        String whole = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Stream.of(whole.split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    /** Starts any main class. */
    Process start(String main, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.add(jdk.resolve("bin/java").toString());
        command.addAll(options);
        command.addAll(List.of("-Djava.awt.headless=true", "-cp", classPath(), main));
        command.addAll(arguments);
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
        builder.environment().keySet().removeIf(name -> name.equals("JAVA_TOOL_OPTIONS"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        return process;
    }

    Process start(String... arguments) throws IOException {
        return start(MAIN, List.of(arguments));
    }

    Ended run(String... arguments) throws IOException, InterruptedException {
        return end(start(arguments));
    }

    static Ended end(Process process) throws IOException, InterruptedException {
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES)).as(said).isTrue();
        return new Ended(process.exitValue(), said);
    }

    /** Every JDK that this machine has in the usual places, by its version; the one that the tests run on too. */
    static Map<String, Path> jdks() throws IOException {
        Path own = Path.of(System.getProperty("java.home"));
        Map<String, Path> found = new TreeMap<>();
        for (Path around : List.of(own.resolveSibling(""), Path.of("/usr/lib/jvm"))) {
            if (Files.isDirectory(around)) {
                try (Stream<Path> beside = Files.list(around)) {
                    for (Path jdk : beside.sorted().toList()) {
                        version(jdk, found);
                    }
                }
            }
        }
        version(own, found);
        return found;
    }

    private static void version(Path jdk, Map<String, Path> found) throws IOException {
        Path release = jdk.resolve("release");
        if (Files.isExecutable(jdk.resolve("bin/java")) && Files.isRegularFile(release)) {
            for (String line : Files.readAllLines(release)) {
                if (line.startsWith("JAVA_VERSION=")) {
                    found.put(line.substring(line.indexOf('"') + 1, line.lastIndexOf('"')), jdk);
                }
            }
        }
    }

    /** The newest of the JDKs that is not the one that the tests run on; that one if there is no other. */
    static Path anotherJdk() throws IOException {
        String own = System.getProperty("java.version");
        return jdks().entrySet().stream()
                .filter(jdk -> !jdk.getKey().equals(own))
                .max(Map.Entry.comparingByKey(
                        java.util.Comparator.comparing(Runtime.Version::parse, Runtime.Version::compareTo)))
                .map(Map.Entry::getValue)
                .orElse(Path.of(System.getProperty("java.home")));
    }
}
