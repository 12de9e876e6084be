package org.quaybook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.job.LabelStock;
import org.quaybook.pack.LabelJob;
import org.quaybook.pack.LabelWish;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.Road;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.pack.labels.LabelOrder.Form;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** {@code quaybook labels}. */
@Command(
        name = "labels",
        mixinStandardHelpOptions = true,
        header = "Prints labels by themselves: on your stock, only some, or only what changed.",
        description = {
            "",
            "Prints the labels of each job on stock of your own, without the rest of the pack, in a folder named by the job "
                    + "number: a PDF for each stock, places.pdf with a map and a list, labels.json, and pictures if asked. An "
                    + "earlier folder of labels of the same job is replaced. Nothing is printed while a finding forbids handing over.",
            ""
        })
final class LabelsCommand extends JobCommand {

    /** Dots an inch of the printers that pictures can be made for. */
    private static final Set<Integer> DOTS = Set.of(203, 300, 600);

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "labels",
            description = "Where the folders of labels go (default: ${DEFAULT-VALUE}).")
    private Path to = Path.of("labels");

    @Option(
            names = "--stock",
            paramLabel = "STOCK",
            split = ",",
            description =
                    "What to print on: an id that “quaybook stock” lists, or a .yaml file of your own. With several, "
                            + "each label goes on the first with room for it. Left out, plain sheets to cut apart.")
    private List<String> stocks = List.of();

    @Option(
            names = "--start",
            paramLabel = "N",
            defaultValue = "1",
            description = "First unused label of a part-used sheet, counted row by row (default: ${DEFAULT-VALUE}).")
    private int start = 1;

    @Mixin
    private MoveOption move = new MoveOption();

    @Option(
            names = "--bleed",
            paramLabel = "MM",
            defaultValue = "0",
            description = "Draws filled edges so far beyond the cut, on plain sheets (default: ${DEFAULT-VALUE}).")
    private double bleed;

    @Option(names = "--one-colour", description = "Prints black only, signs told by shape, hatch and word.")
    private boolean oneColour;

    @Option(names = "--only", paramLabel = "LABEL", split = ",", description = "Prints only the labels with these ids.")
    private List<String> only = List.of();

    @Option(
            names = "--since",
            paramLabel = "PACK",
            description =
                    "Folder of the pack issued before: prints only labels that are new or say something else now, and "
                            + "names those that come off.")
    private @Nullable Path since;

    @Option(
            names = "--also",
            paramLabel = "FORM",
            split = ",",
            description = "Makes of each label besides: PNG, PNG_ONE_BIT, SVG or TEXT, the last two for engravers.")
    private Set<Form> forms = EnumSet.noneOf(Form.class);

    @Option(
            names = "--dpi",
            paramLabel = "DPI",
            defaultValue = "300",
            description = "Dots an inch of pictures and codes where the stock does not say: 203, 300 or 600 "
                    + "(default: ${DEFAULT-VALUE}).")
    private int dpi = 300;

    @Mixin
    private OwnTemplates templates = new OwnTemplates();

    @Override
    public Integer call() {
        if (!DOTS.contains(dpi)) {
            throw new ParameterException(line(), words.say("cli.labels.dpi", Integer.toString(dpi)));
        }
        // Told before anything is read.
        move.read(line(), words);
        templates.read(line(), words);
        return super.call();
    }

    @Override
    int judged(Path job, Road.Judged judged, Assessment assessment) {
        if (assessment.forbidsHandover()) {
            tellForbidding(assessment);
            err().println(words.say("cli.labels.forbidden", job.toString()));
            return Exit.FORBIDDEN;
        }
        Stocks finder = new Stocks(report(err()), words);
        Optional<List<LabelStock>> found = finder.find(stocks);
        if (found.isEmpty()) {
            return Exit.BAD_INPUT;
        }
        Path target = to.resolve(assessment.job().job().number());
        try {
            LabelJob done =
                    LabelJob.of(judged, templates.read(line(), words), wish(found.get()), Main.Version.number());
            if (!done.files().isEmpty()) {
                PackFolder.write(target, LabelJob.MARK, done.files());
            }
            tell(job, target, done);
        } catch (NotPrinted e) {
            report(err()).problems(e.diagnostics());
            if (found.get().stream().allMatch(stock -> stock.plainSheet() == null)) {
                LabelJob.roomier(e, assessment)
                        .ifPresent(roomier -> err().println(words.say(
                                "cli.labels.second-stock", String.join(",", stocks) + "," + roomier)));
            }
            return Exit.BAD_INPUT;
        } catch (PackFolder.NotWritten e) {
            report(err()).problems(List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
        found.get().forEach(stock -> finder.caution(stock).ifPresent(err()::println));
        return Exit.DONE;
    }

    private LabelWish wish(List<LabelStock> found) {
        return new LabelWish(
                found,
                start,
                move.read(line(), words),
                bleed,
                oneColour,
                only,
                issued(),
                String.valueOf(since),
                forms,
                dpi);
    }

    private @Nullable String issued() {
        if (since == null) {
            return null;
        }
        try {
            return Files.readString(since.resolve("figures.json"));
        } catch (IOException e) {
            // An empty text is refused with a message that names the folder.
            return "";
        }
    }

    private void tell(Path job, Path target, LabelJob done) {
        if (done.files().isEmpty()) {
            out().println(words.say("cli.labels.none", job.toString()));
        } else {
            List<String> ids = done.printed().stream().map(LabelNote::id).toList();
            out().println(words.say("cli.labels.printed", done.count(), target.toString(), String.join(", ", ids)));
        }
        if (!done.gone().isEmpty()) {
            out().println(words.say("cli.labels.gone", String.join(", ", done.gone())));
        }
    }
}
