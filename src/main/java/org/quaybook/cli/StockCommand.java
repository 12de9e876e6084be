package org.quaybook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.LabelStock;
import org.quaybook.job.StockReader;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.StockProof;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook stock}. */
@Command(
        name = "stock",
        mixinStandardHelpOptions = true,
        header = "Lists what labels can be printed on, or makes a page to adjust the printer with.",
        description = {
            "",
            "Lists the stocks of labels that the program knows. With a stock and --proof, writes a page with the outline of "
                    + "each label and scales, from which to read what to give to --move.",
            ""
        })
final class StockCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "STOCK",
            description = "Id of a stock, or a .yaml file with one of your own. Left out, all are listed.")
    private @Nullable String name;

    @Option(names = "--proof", paramLabel = "FILE", description = "Writes the page to adjust the printer with, a PDF.")
    private @Nullable Path proof;

    @Mixin
    private MoveOption move = new MoveOption();

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Report report = new Report(line.getErr(), words, line.getColorScheme().ansi());
        Stocks stocks = new Stocks(report, words);
        int worst = Exit.DONE;
        for (String each : name == null ? StockReader.standard() : List.of(name)) {
            LabelStock stock = stocks.read(each).orElse(null);
            if (stock == null) {
                worst = Exit.BAD_INPUT;
                continue;
            }
            line.getOut().println(words.say("cli.stock.line", stock.id(), stock.title()));
            if (proof != null && name != null) {
                worst = Math.max(worst, proof(stock, proof, line, report));
            }
        }
        return worst;
    }

    private int proof(LabelStock stock, Path file, CommandLine line, Report report) {
        try {
            PackFolder.writeFile(file, StockProof.pdf(stock, move.read(line, words), words));
        } catch (NotPrinted e) {
            report.problems(e.diagnostics());
            return Exit.BAD_INPUT;
        } catch (PackFolder.NotWritten e) {
            report.problems(List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
        line.getOut().println(words.say("cli.proof.written", file.toString()));
        return Exit.DONE;
    }
}
