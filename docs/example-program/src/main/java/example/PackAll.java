package example;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.quaybook.api.HandoverForbidden;
import org.quaybook.api.JobCalculated;
import org.quaybook.api.JobChecked;
import org.quaybook.api.NotCalculated;
import org.quaybook.api.NotPrinted;
import org.quaybook.api.NotWritten;
import org.quaybook.api.PackWritten;
import org.quaybook.api.Quaybook;
import org.quaybook.diag.Diagnostic;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Unit;
import org.quaybook.text.Words;

/**
 * Takes every job of a folder: says how long its appliances run and what forbids handing it over, and writes the packs of
 * those that may be handed over.
 */
public final class PackAll {

    private final Quaybook quaybook = Quaybook.standard();
    private final Path packs;
    private final PrintStream out;

    private PackAll(Path packs, PrintStream out) {
        this.packs = packs;
        this.out = out;
    }

    /** Ends with 0 if every job has its pack now, 1 if one has not, 2 if it was not told which folders. */
    public static void main(String[] folders) throws IOException {
        if (folders.length != 2) {
            System.err.println("usage: PackAll JOBS PACKS");
            System.exit(2);
        }
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PackAll all = new PackAll(Path.of(folders[1]), out);
        boolean everyOne = true;
        for (Path job : jobs(Path.of(folders[0]))) {
            everyOne &= all.take(job);
        }
        System.exit(everyOne ? 0 : 1);
    }

    /** Folders that hold a job. */
    private static List<Path> jobs(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(job -> Files.exists(job.resolve("job.yaml")))
                    .sorted()
                    .toList();
        }
    }

    private boolean take(Path folder) {
        out.println(folder.getFileName());
        try {
            JobCalculated job = quaybook.read(folder).calculate();
            Words english = job.words("en-GB");
            for (ApplianceFigures appliance : job.figures().appliances()) {
                runs(job, appliance, english);
            }
            JobChecked checked = job.check();
            PackWritten written = checked.pack(packs);
            out.println("  pack: " + written.folder().getFileName() + ", " + written.outcome());
            written.changes().forEach(change -> out.println("    " + change));
            return true;
        } catch (NotCalculated | NotPrinted | NotWritten e) {
            for (Diagnostic problem : e.problems()) {
                out.println("  problem: " + Quaybook.sentence(problem));
            }
        } catch (HandoverForbidden e) {
            Words english = Words.of("en-GB");
            e.findings()
                    .forEach(finding -> out.println("  forbidden by "
                            + finding.check().id() + ": "
                            + english.say(finding.message()) + " → "
                            + english.say(finding.remedy())));
        }
        return false;
    }

    /** The time to plan on, in words and as a number; an appliance that the inverter cannot run has none. */
    private void runs(JobCalculated job, ApplianceFigures appliance, Words english) {
        job.figure(appliance.key() + ".time-worn").ifPresent(time -> {
            Quantity exact = time.value();
            Unit unit = exact.kind().mainUnit();
            out.println("  " + appliance.appliance().name() + ": " + english.word(time.stated()) + ", exactly "
                    + unit.fromCanonical(exact.canonical()) + " " + unit.symbol());
        });
    }
}
