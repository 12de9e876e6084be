package org.quaybook.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Position;

/**
 * Reads a job file and the installer profile that it names. Never stops at the first problem and never throws for
 * something wrong with a file: what is wrong comes back as diagnostics, all of them at once.
 *
 * <p>The profile lies in the job file's folder, below it, or one folder up with what is below that, so that several jobs
 * can share one; nothing else on the machine can be named. Symbolic links are followed.
 */
public final class JobReader {

    static final int LARGEST_FILE = 1 << 20;

    private JobReader() {}

    /** Reads a job file and the installer profile that it names. */
    public static JobReading read(Path jobFile, Vocabulary vocabulary) {
        return withInstaller(file(Job.class, jobFile, vocabulary, Found.nothing()), jobFile, vocabulary);
    }

    /**
     * Reads the text of a job file and, from the disk, the installer profile that it names.
     *
     * @param jobFile where the text would lie as a file; nothing need be there
     */
    public static JobReading read(String text, Path jobFile, Vocabulary vocabulary) {
        String name = name(jobFile);
        Reading<Job> job = text.getBytes(StandardCharsets.UTF_8).length > LARGEST_FILE
                ? tooLarge(name)
                : text(Job.class, text, name, vocabulary, Found.nothing());
        return withInstaller(job, jobFile, vocabulary);
    }

    private static JobReading withInstaller(Reading<Job> job, Path jobFile, Vocabulary vocabulary) {
        List<Diagnostic> problems = new ArrayList<>(job.problems);
        Optional<Reading<Installer>> installer =
                installerFile(jobFile, job.found).map(file -> file(Installer.class, file, vocabulary, Found.nothing()));
        installer.ifPresent(reading -> problems.addAll(reading.problems));
        return new JobReading(job.value, installer.map(Reading::value).orElse(null), job.text, problems);
    }

    /** Reads the text of a job file, without reading or writing anything; the installer profile is not looked for. */
    public static JobReading parse(String text, String fileName, Vocabulary vocabulary) {
        Reading<Job> job = text(Job.class, text, fileName, vocabulary, Found.nothing());
        return new JobReading(job.value, null, text, job.problems);
    }

    /** Reads the text of an installer profile; in what comes back the job is missing. */
    public static JobReading parseInstaller(String text, String fileName) {
        Reading<Installer> installer =
                text(Installer.class, text, fileName, new Vocabulary(List.of(), List.of()), Found.nothing());
        return new JobReading(null, installer.value, "", installer.problems);
    }

    /** Reads the readings of a later visit to a job; its tests may name whatever the job file names. */
    public static ReadingsReading readings(Path file, Job job, Vocabulary vocabulary) {
        Reading<Readings> reading = file(Readings.class, file, vocabulary, Found.of(job));
        return new ReadingsReading(reading.value, reading.problems);
    }

    /** Reads the text of a file of readings, without reading or writing anything. */
    public static ReadingsReading parseReadings(String text, String fileName, Job job) {
        Reading<Readings> reading =
                text(Readings.class, text, fileName, new Vocabulary(List.of(), List.of()), Found.of(job));
        return new ReadingsReading(reading.value, reading.problems);
    }

    /** Reads the service log of a job; its readings may name whatever the job file names. */
    public static ServiceReading service(Path file, Job job, Vocabulary vocabulary) {
        Reading<ServiceLog> reading = file(ServiceLog.class, file, vocabulary, Found.of(job));
        return new ServiceReading(reading.value, reading.text, reading.problems);
    }

    /** Reads the text of a service log, without reading or writing anything. */
    public static ServiceReading parseService(String text, String fileName, Job job, Vocabulary vocabulary) {
        Reading<ServiceLog> reading = text(ServiceLog.class, text, fileName, vocabulary, Found.of(job));
        return new ServiceReading(reading.value, reading.text, reading.problems);
    }

    /** What came of one file; the value is null exactly if there is an error. */
    record Reading<R>(@Nullable R value, Found found, String text, List<Diagnostic> problems) {}

    private static Optional<Path> installerFile(Path jobFile, Found found) {
        try {
            return found.value("job.installer", String.class).map(jobFile::resolveSibling);
        } catch (InvalidPathException notOnThisSystem) {
            return Optional.empty();
        }
    }

    static <R extends Record> Reading<R> file(Class<R> type, Path file, Vocabulary vocabulary, Found.Known known) {
        String name = name(file);
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST_FILE + 1);
            if (bytes.length > LARGEST_FILE) {
                return tooLarge(name);
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text(type, text, name, vocabulary, known);
        } catch (CharacterCodingException foreign) {
            return refused(name, Message.of(JobMessage.FILE_NOT_UTF8));
        } catch (IOException unreadable) {
            return refused(name, Message.of(Files.exists(file) ? JobMessage.FILE_UNREADABLE : JobMessage.FILE_MISSING));
        }
    }

    private static String name(Path file) {
        return file.toString().replace('\\', '/');
    }

    private static <R> Reading<R> tooLarge(String name) {
        return refused(name, Message.of(JobMessage.FILE_TOO_LARGE, LARGEST_FILE >> 10));
    }

    private static <R> Reading<R> refused(String name, Message message) {
        Problems problems = new Problems(name, "");
        problems.add(problems.place("", Position.START), message);
        return new Reading<>(null, new Found(), "", problems.sorted());
    }

    static <R extends Record> Reading<R> text(
            Class<R> type, String text, String name, Vocabulary vocabulary, Found.Known known) {
        Problems problems = new Problems(name, text);
        Found found = new Found();
        Optional<R> value = RawText.cleaned(text, problems)
                .flatMap(clean -> YamlTree.read(clean, problems))
                .flatMap(root -> new Binder(problems, found).file(type, root));
        new NameChecks(found, problems, vocabulary, known.names()).check();
        new JobChecks(found, problems).check();
        new ThroughChecks(found, problems).check();
        new StockChecks(found, problems).check();
        known.visited().ifPresent(job -> {
            found.all(Readings.class).forEach(readings -> JobChecks.visit(readings, job, problems));
            found.all(ServiceLog.class).forEach(log -> new ServiceChecks(log, job, found, problems).check());
        });
        return new Reading<>(problems.haveErrors() ? null : value.orElse(null), found, text, problems.sorted());
    }
}
