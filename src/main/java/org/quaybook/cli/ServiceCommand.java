package org.quaybook.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.intake.ServiceText;
import org.quaybook.job.Header;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.ServiceEntry;
import org.quaybook.job.ServiceLog;
import org.quaybook.job.ServiceReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.Road;
import org.quaybook.pack.changes.IssuedPacks;
import org.quaybook.pack.changes.NotComparable;
import org.quaybook.reference.Rulebook;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook service}. */
@Command(
        name = "service",
        mixinStandardHelpOptions = true,
        header = "Adds a visit after handing over to the job's service log.",
        description = {
            "",
            "Adds a visit to service.yaml beside the job file, which it makes if there is none; what is there stays as it is. "
                    + "Visits since the last signed pack make the next revision together. Their readings count as the "
                    + "job's last tests, their settings as those left; record and guide list them, never with a person's name. "
                    + "What is calculated with, such as a cable, a fuse or the inverter's cut-out, is changed in the job file itself.",
            ""
        },
        footer = {"", "Exit codes: 0 the visit was added; 2 bad input, nothing was added; 3 not written."})
final class ServiceCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "JOB", description = "Job file, or a folder with a job.yaml.")
    private @Nullable Path job;

    @Option(names = "--on", required = true, paramLabel = "DATE", description = "Day of the visit, such as 2027-05-14.")
    private @Nullable LocalDate on;

    @Option(
            names = "--firm",
            required = true,
            paramLabel = "NAME",
            description = "Firm that did the work, or “owner” if the owner did it himself.")
    private String firm = "";

    @Option(names = "--did", required = true, paramLabel = "TEXT", description = "What was done.")
    private String did = "";

    @Option(names = "--by", paramLabel = "NAME", description = "Who did it; never published.")
    private @Nullable String by;

    @Option(names = "--instrument", paramLabel = "NAME", description = "Instrument used.")
    private @Nullable String instrument;

    @Option(
            names = "--reading",
            paramLabel = "TEST",
            description = "What was read, written as a test of the job file, such as "
                    + "\"test: voltage-drop, of: [B1, B2], at: 90 A, result: 0.13 V\". Any number of them.")
    private List<String> readings = List.of();

    @Option(
            names = "--setting",
            paramLabel = "SETTING",
            description = "A setting changed, written as in the job file, such as "
                    + "\"device: charger, name: absorption, value: 28.2 V\". Any number of them.")
    private List<String> settings = List.of();

    @Option(
            names = "--packs",
            paramLabel = "FOLDER",
            defaultValue = "packs",
            description =
                    "Where the job's packs are: they tell which revision was signed last (default: ${DEFAULT-VALUE}).")
    private Path packs = Path.of("packs");

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Report report = new Report(line.getErr(), words, line.getColorScheme().ansi());
        Path file = Road.file(Objects.requireNonNull(job));
        JobReading reading = JobReader.read(file, vocabulary());
        report.problems(reading.problems());
        Job handedOver = reading.job();
        if (handedOver == null) {
            return refused(line, file);
        }
        Path log = Road.service(file);
        ServiceReading before = Files.exists(log)
                ? JobReader.service(log, handedOver, vocabulary())
                : new ServiceReading(ServiceLog.none(handedOver), "", List.of());
        report.problems(before.problems());
        ServiceLog visits = before.log();
        if (visits == null) {
            return refused(line, log);
        }
        Optional<Integer> signed;
        try {
            signed = IssuedPacks.of(packs.resolve(handedOver.job().number()))
                    .last()
                    .map(pack -> pack.manifest().revision());
        } catch (NotComparable e) {
            line.getErr().println(words.say("cli.service.pack-unreadable", e.at()));
            return refused(line, log);
        }
        Header last = handedOver.serviced(visits).job();
        int revision = revision(last.revision(), signed);
        // First one that cannot be wrong: if the log does not take it, the log is at fault and not what was typed.
        LocalDate day = visits.entries().stream()
                .map(ServiceEntry::date)
                .reduce(last.date(), (one, other) -> one.isAfter(other) ? one : other);
        ServiceText.Visit plain =
                new ServiceText.Visit(revision, day.toString(), "–", null, "–", null, List.of(), List.of());
        if (!takes(before.text(), plain, log, handedOver, visits)) {
            line.getErr().println(words.say("cli.service.not-at-end", log.toString()));
            return refused(line, log);
        }
        String after = ServiceText.with(
                before.text(),
                handedOver.job().number(),
                new ServiceText.Visit(
                        revision,
                        Objects.requireNonNull(on).toString(),
                        firm,
                        by,
                        did,
                        instrument,
                        readings,
                        settings));
        ServiceReading read = JobReader.parseService(after, log.toString(), handedOver, vocabulary());
        report.problems(read.problems().stream()
                .filter(problem -> !before.problems().contains(problem))
                .toList());
        if (read.log() == null) {
            return refused(line, log);
        }
        try {
            PackFolder.writeFile(log, before.text(), after.getBytes(StandardCharsets.UTF_8));
        } catch (PackFolder.NotWritten e) {
            report.problems(List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
        line.getOut().println(words.say("cli.service.added", log.toString(), revision));
        if (signed.isEmpty()) {
            line.getOut().println(words.say("cli.service.none-signed", packs.toString()));
        }
        line.getOut().println(words.say("cli.service.next"));
        return Exit.DONE;
    }

    /** Whether a visit written at the end of a log is read as its last one, the others staying as they are. */
    private static boolean takes(String log, ServiceText.Visit visit, Path file, Job job, ServiceLog visits) {
        ServiceLog read = JobReader.parseService(
                        ServiceText.with(log, job.job().number(), visit), file.toString(), job, vocabulary())
                .log();
        int count = visits.entries().size();
        return read != null
                && read.entries().size() == count + 1
                && read.entries().subList(0, count).equals(visits.entries());
    }

    /**
     * What was signed never changes, and the next that is signed is one more: whatever came in between belongs to it. Where
     * nothing is signed, nobody can tell which revision is in the owner's hands, so each visit makes one.
     */
    static int revision(int current, Optional<Integer> signed) {
        return signed.map(last -> Math.max(current, last + 1)).orElse(current + 1);
    }

    private static Vocabulary vocabulary() {
        return new Vocabulary(Rulebook.names(), Words.languages());
    }

    private int refused(CommandLine line, Path file) {
        line.getErr().println(words.say("cli.service.refused", file.toString()));
        return Exit.BAD_INPUT;
    }
}
