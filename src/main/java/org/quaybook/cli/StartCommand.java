package org.quaybook.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.intake.Answers;
import org.quaybook.intake.Intake;
import org.quaybook.intake.JobCopy;
import org.quaybook.intake.Question;
import org.quaybook.intake.Questions;
import org.quaybook.job.Header;
import org.quaybook.job.JobReader;
import org.quaybook.job.RecordCode;
import org.quaybook.job.SealKey;
import org.quaybook.job.Vocabulary;
import org.quaybook.pack.Road;
import org.quaybook.pack.SystemReason;
import org.quaybook.pack.WholeFile;
import org.quaybook.reference.Rulebook;
import org.quaybook.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook start}. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        header = "Begins a job file by asking for the essentials, or from an earlier job.",
        description = {
            "",
            "Asks one question at a time, with the usual answer in brackets, and writes a commented job file with a new "
                    + "record code. It can be left and taken up again. Without a terminal it writes an example to fill in.",
            ""
        })
final class StartCommand implements Callable<Integer> {

    private static final String LANGUAGE = "en-GB";
    private static final String KEPT = ".answers";
    private static final String PROFILE = "installer.yaml";

    /** What a copy is asked for: the rest is taken over. */
    private static final List<String> OF_A_COPY = List.of("job.number", "craft.name", "owner.name");

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "Job file to write; it must not be there yet.")
    private Path file = Path.of("job.yaml");

    @Option(
            names = "--from",
            paramLabel = "JOB",
            description = "An earlier job: everything but owner, tests and serial numbers is taken over.")
    private @Nullable Path from;

    @Option(
            names = "--sealed",
            description = "The published record shall be sealed: only who has the link of a label can read it.")
    private boolean sealed;

    private final Words words = Words.of(LANGUAGE);
    private final Vocabulary vocabulary = new Vocabulary(Rulebook.names(), Words.languages());
    private final Clock clock;
    private final @Nullable BufferedReader terminal;

    /** On the machine's clock, and on its terminal if it has one. */
    StartCommand() {
        this(Clock.system(ZoneId.systemDefault()), Terminal.lines());
    }

    /** With a clock and the lines that somebody types; null for nobody. */
    StartCommand(Clock clock, @Nullable BufferedReader terminal) {
        this.clock = clock;
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (Files.exists(file)) {
            err().println(words.say("start.exists", file.toString()));
            return Exit.BAD_INPUT;
        }
        return from == null ? begin() : copy(from);
    }

    private Path folder() {
        return Objects.requireNonNullElse(file.toAbsolutePath().getParent(), file);
    }

    private boolean makeFolder() {
        try {
            Files.createDirectories(folder());
            return true;
        } catch (IOException e) {
            err().println(words.say("start.no-folder", folder().toString(), SystemReason.of(e)));
            return false;
        }
    }

    private Path kept() {
        return file.resolveSibling(file.getFileName() + KEPT);
    }

    private Path profile() {
        return folder().resolve(PROFILE);
    }

    private int begin() throws IOException {
        if (!makeFolder()) {
            return Exit.NOT_WRITTEN;
        }
        Optional<Answers> before = before();
        if (before.isEmpty()) {
            err().println(words.say("start.bad-answers", kept().toString()));
            return Exit.BAD_INPUT;
        }
        Answers answers = Files.exists(profile()) ? before.get().with(Questions.INSTALLER_THERE, "yes") : before.get();
        Intake intake = new Intake(answers, record(), sealKey(sealed), today(), LANGUAGE);
        if (terminal == null) {
            return write(example(intake), comment("head") + "\n" + comment("example"));
        }
        out().println(words.say("start.how"));
        out().println(words.say("start.how.values"));
        if (!before.get().byPath().isEmpty()) {
            out().println(words.say("start.resumed", before.get().byPath().size()));
        }
        Optional<Intake> whole =
                new Dialogue(terminal, out(), words, vocabulary).ask(intake, question -> true, this::keep);
        if (whole.isEmpty()) {
            out().println();
            out().println(words.say(
                    "start.left", before().map(it -> it.byPath().size()).orElse(0), kept().toString()));
            return Exit.DONE;
        }
        return write(whole.get(), comment("head"));
    }

    /** Every question answered as usual, left out, or by example. */
    private Intake example(Intake begun) {
        Intake intake = begun;
        for (Optional<Question> next = intake.next(any -> true); next.isPresent(); next = intake.next(any -> true)) {
            Question question = next.get();
            String answer = question.usual()
                    .apply(intake.answers())
                    .orElseGet(() -> question.optional() ? "" : words.say("start.example." + question.words()));
            intake = intake.with(intake.answers().with(question.path(), answer));
        }
        return intake;
    }

    private int copy(Path earlier) throws IOException {
        Path job = Files.isDirectory(earlier) ? earlier.resolve(Road.USUAL_JOB_NAME) : earlier;
        var reading = JobReader.read(job, vocabulary);
        if (reading.job() == null) {
            err().println(words.say("start.copy.unreadable", job.toString()));
            return Exit.BAD_INPUT;
        }
        if (!makeFolder()) {
            return Exit.NOT_WRITTEN;
        }
        Header header = reading.job().job();
        Map<String, String> values = new LinkedHashMap<>();
        values.put("job.number", header.number() + "-copy");
        values.put("job.record", record());
        values.put("job.revision", "1");
        values.put("job.date", today());
        // A key is for one record: with that of the earlier job its owner could read this one.
        sealKey(sealed || header.sealKey() != null).ifPresent(key -> {
            values.put("job.sealed", sealed || Boolean.TRUE.equals(header.sealed()) ? "yes" : "no");
            values.put("job.seal-key", key);
        });
        if (terminal != null) {
            Optional<Intake> asked = new Dialogue(terminal, out(), words, vocabulary)
                    .ask(
                            new Intake(Answers.none(), record(), Optional.empty(), today(), LANGUAGE),
                            question -> OF_A_COPY.contains(question.path()),
                            answers -> {});
            if (asked.isEmpty()) {
                return Exit.DONE;
            }
            for (String path : OF_A_COPY) {
                asked.get().answers().of(path).ifPresent(answer -> values.put(path, answer));
            }
        }
        Path profile = job.resolveSibling(header.installer());
        Path beside = file.resolveSibling(header.installer());
        // The job last: while it is not there, starting again goes on from here.
        if (!Files.exists(beside) && Files.isDirectory(Objects.requireNonNullElse(beside.getParent(), folder()))) {
            WholeFile.write(beside, Files.readAllBytes(profile));
        }
        put(file, JobCopy.of(Files.readString(job), values));
        out().println(words.say("start.copied", job.toString()));
        return told();
    }

    private int write(Intake intake, String head) throws IOException {
        String text = intake.text(section -> section.equals("head") ? head : comment(section));
        try {
            if (!intake.answers().answered(Questions.INSTALLER_THERE)) {
                put(profile(), intake.installerText(this::comment));
            }
            put(file, text);
        } catch (IOException e) {
            err().println(words.say("start.not-written", file.toString(), SystemReason.of(e), kept().toString()));
            return Exit.NOT_WRITTEN;
        }
        Files.deleteIfExists(kept());
        return told();
    }

    private String comment(String section) {
        return words.say("start.comment." + section);
    }

    /** Says what check says of the new file. */
    private int told() {
        out().println(words.say("start.written", file.toString()));
        Road.Judged judged = Road.judge(file);
        Assessment assessment = judged.assessment();
        Report report = new Report(
                out(),
                words,
                Objects.requireNonNull(spec).commandLine().getColorScheme().ansi());
        if (!judged.problems().isEmpty()
                || (assessment != null && !assessment.findings().isEmpty())) {
            out().println(words.say("start.still"));
        }
        report.problems(judged.problems());
        if (assessment != null) {
            report.findings(assessment.findings());
        }
        return Exit.DONE;
    }

    private String record() {
        return RecordCode.draw(new SecureRandom()).toString();
    }

    private static Optional<String> sealKey(boolean wanted) {
        return wanted ? Optional.of(SealKey.draw(new SecureRandom()).toString()) : Optional.empty();
    }

    private String today() {
        return LocalDate.now(clock).toString();
    }

    private void keep(Answers answers) {
        Properties properties = new Properties();
        answers.byPath().forEach((path, answer) -> {
            if (!path.equals(Questions.INSTALLER_THERE)) {
                properties.setProperty(path, answer);
            }
        });
        try (java.io.StringWriter text = new java.io.StringWriter()) {
            properties.store(text, null);
            put(kept(), text.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The answers of an earlier start; empty if the file that should hold them holds something else. */
    private Optional<Answers> before() throws IOException {
        if (!Files.exists(kept())) {
            return Optional.of(Answers.none());
        }
        Properties properties = new Properties();
        try (var reader = Files.newBufferedReader(kept())) {
            properties.load(reader);
        } catch (IllegalArgumentException | java.nio.charset.CharacterCodingException e) {
            return Optional.empty();
        }
        Map<String, String> answers = new LinkedHashMap<>();
        properties.stringPropertyNames().forEach(path -> answers.put(path, properties.getProperty(path)));
        return Optional.of(new Answers(answers));
    }

    private static void put(Path target, String text) throws IOException {
        WholeFile.write(target.toAbsolutePath(), text.getBytes(StandardCharsets.UTF_8));
    }

    private PrintWriter out() {
        return Objects.requireNonNull(spec).commandLine().getOut();
    }

    private PrintWriter err() {
        return Objects.requireNonNull(spec).commandLine().getErr();
    }
}
