package org.quaybook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.RecordCode;
import org.quaybook.serve.NotStarted;
import org.quaybook.serve.RecordServer;
import org.quaybook.serve.Serving;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook serve}. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        header = "Serves published records to browsers, until it is stopped.",
        description = {
            "",
            "Serves a folder of published records over HTTP: to look at them before they go to a web host, or behind a web "
                    + "server that speaks HTTPS. Nothing but records is served, nothing is listed, and new revisions are "
                    + "seen at once. docs/serve.md says how to run it for good.",
            ""
        })
final class ServeCommand implements Callable<Integer> {

    private static final String STANDARD_OUT = "-";
    private static final int LAST_PORT = 65_535;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "SITE", description = "Folder of published records, with a 404.html.")
    private Path site = Path.of("");

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "8080",
            description = "TCP port to listen on (default: ${DEFAULT-VALUE}); 0 takes any free one.")
    private int port = 8080;

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "Address of this machine to listen on (default: ${DEFAULT-VALUE}, for this machine only).")
    private String address = "127.0.0.1";

    @Option(
            names = "--access-log",
            paramLabel = "FILE",
            description =
                    "Adds a line to this file for each answer: time, method, path with the end of the record's code, "
                            + "status, bytes, milliseconds; “-” is the terminal. Left out, no log is kept.")
    private @Nullable String log;

    @Option(
            names = "--log-addresses",
            description = "Adds to each line of the log who asked. That is personal data in many countries.")
    private boolean addresses;

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        if (port < 0 || port > LAST_PORT) {
            throw new ParameterException(line, words.say("cli.serve.port", Integer.toString(port)));
        }
        if (addresses && log == null) {
            throw new ParameterException(line, words.say("cli.serve.log-addresses"));
        }
        PrintWriter out = line.getOut();
        PrintWriter err = line.getErr();
        RecordServer server;
        try {
            server = RecordServer.start(new Serving(
                    site,
                    address,
                    port,
                    ServeCommand::canonical,
                    log(out, err),
                    addresses,
                    fault -> err.println(words.say("cli.serve.fault", fault.toString())),
                    InstantSource.system()));
        } catch (NotStarted e) {
            new Report(err, words, line.getColorScheme().ansi()).problems(List.of(e.diagnostic()));
            return Exit.BAD_INPUT;
        }
        if (!server.isLoopback()) {
            err.println(words.say("cli.serve.open", address));
        }
        out.println(words.say("cli.serve.running", site.toString(), server.base()));
        return untilStopped(server, out);
    }

    private int untilStopped(RecordServer server, PrintWriter out) {
        // A signal ends the machine with a code of its own; being asked to stop is no failure.
        Thread hook = new Thread(() -> {
            end(server, out);
            Runtime.getRuntime().halt(Exit.DONE);
        });
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            server.await();
        } catch (InterruptedException stopped) {
            Runtime.getRuntime().removeShutdownHook(hook);
            end(server, out);
        }
        return Exit.DONE;
    }

    private void end(RecordServer server, PrintWriter out) {
        out.println(words.say(server.stop() ? "cli.serve.stopped" : "cli.serve.cut"));
        out.flush();
    }

    private Optional<Consumer<String>> log(PrintWriter out, PrintWriter err) {
        if (log == null) {
            return Optional.empty();
        }
        if (log.equals(STANDARD_OUT)) {
            return Optional.of(out::println);
        }
        Path file = Path.of(log);
        return Optional.of(
                new LineLog(file, e -> err.println(words.say("cli.serve.log-unwritable", file.toString(), reason(e)))));
    }

    private static String reason(IOException e) {
        return e.getClass().getSimpleName().replace("Exception", "");
    }

    private static Optional<String> canonical(String typed) {
        try {
            return Optional.of(RecordCode.parse(typed).symbols());
        } catch (IllegalArgumentException noCode) {
            return Optional.empty();
        }
    }
}
