package org.quaybook.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Objects;
import org.quaybook.api.Quaybook;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** The command {@code quaybook}. */
@Command(
        name = "quaybook",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        subcommands = {
            StartCommand.class,
            PackCommand.class,
            LabelsCommand.class,
            RecordCommand.class,
            WithdrawCommand.class,
            StockCommand.class,
            CheckCommand.class,
            ExplainCommand.class,
            RevisitCommand.class,
            ServiceCommand.class,
            SoldCommand.class,
            KeyCommand.class,
            SealKeyCommand.class,
            VerifyCommand.class,
            ServeCommand.class,
            SchemaCommand.class
        },
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "",
            "From one job file (YAML) to a handover pack for a battery-and-inverter power system: the owner's guide, "
                    + "the labels for the board, the install record that a QR code opens, and every figure with its working.",
            ""
        },
        footer = {
            "",
            "Exit codes:",
            "  0  done",
            "  1  findings forbid handing over and only the worksheet was written, a later reading has moved, or a copy is "
                    + "not as issued",
            "  2  bad input or usage; each problem was named with file, line and column",
            "  3  something could not be written; what was there before is still there",
            "  4  a mistake of the program itself, or too little memory; what was there before is still there",
            "",
            "Try:  quaybook pack demo-jobs/lantern-moth",
            "",
            "Figures are estimates. Local codes and licensed practice come first."
        })
public final class Main implements Runnable {

    @CommandLine.Spec
    private CommandLine.Model.@org.jspecify.annotations.Nullable CommandSpec spec;

    /** Prints the version that the jar carries. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"quaybook " + number()};
        }

        static String number() {
            return Quaybook.version();
        }
    }

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(), Words.of("en-GB").say("cli.no-command"));
    }

    public static void main(String[] arguments) {
        PrintWriter out = Terminal.writer(System.out);
        PrintWriter err = Terminal.writer(System.err);
        int code;
        try {
            code = run(out, err, Ansi.AUTO, arguments);
        } catch (OutOfMemoryError e) {
            // Not even enough to say so in a sentence.
            err.println(e);
            code = Exit.OUR_FAULT;
        }
        System.exit(code);
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException(Words.of("en-GB").say("cli.date", text));
        }
    }

    /** Runs one command line; for tests without a process. */
    static int run(PrintWriter out, PrintWriter err, Ansi ansi, String... arguments) {
        int code;
        try {
            code = new CommandLine(new Main())
                    .setOut(out)
                    .setErr(err)
                    .setColorScheme(CommandLine.Help.defaultColorScheme(ansi))
                    .setUsageHelpWidth(100)
                    .setCaseInsensitiveEnumValuesAllowed(true)
                    .registerConverter(LocalDate.class, Main::date)
                    .setExecutionExceptionHandler((e, line, parsed) -> Mishap.tell(e, err))
                    .execute(arguments);
        } catch (RuntimeException | Error e) {
            code = Mishap.tell(e, err);
        }
        if (out.checkError() && code != Exit.OUR_FAULT) {
            err.println(Words.of("en-GB").say("cli.output-lost"));
            return Exit.NOT_WRITTEN;
        }
        return code;
    }
}
