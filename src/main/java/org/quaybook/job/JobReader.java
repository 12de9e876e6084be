package org.quaybook.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Position;

/**
 * Reads a job file and the installer profile that it names. Never stops at the first problem and never throws for
 * something wrong with a file: what is wrong comes back as diagnostics, all of them at once.
 */
public final class JobReader {

    static final long LARGEST_FILE = 1 << 20;

    private JobReader() {}

    /** Reads a job file and, beside it, the installer profile. */
    public static JobReading read(Path jobFile, Vocabulary vocabulary) {
        FileReading<Job> job = file(Job.class, jobFile, vocabulary);
        List<Diagnostic> problems = new ArrayList<>(job.problems);
        Optional<FileReading<Installer>> installer = job.value
                .map(it -> it.job().installer())
                .map(path -> file(Installer.class, jobFile.resolveSibling(path), vocabulary));
        installer.ifPresent(it -> problems.addAll(it.problems));
        return new JobReading(
                job.value.orElse(null), installer.flatMap(it -> it.value).orElse(null), problems);
    }

    /** Reads the text of a job file; the installer profile is not looked for. */
    public static JobReading parse(String text, String fileName, Vocabulary vocabulary) {
        FileReading<Job> job = text(Job.class, text, fileName, vocabulary);
        return new JobReading(job.value.orElse(null), null, job.problems);
    }

    private record FileReading<R>(Optional<R> value, List<Diagnostic> problems) {}

    private static <R extends Record> FileReading<R> file(Class<R> type, Path file, Vocabulary vocabulary) {
        String name = file.toString().replace('\\', '/');
        try {
            if (Files.size(file) > LARGEST_FILE) {
                return refused(name, Message.of(JobMessage.FILE_TOO_LARGE, Files.size(file), LARGEST_FILE));
            }
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
            return text(type, text, name, vocabulary);
        } catch (CharacterCodingException foreign) {
            return refused(name, Message.of(JobMessage.FILE_NOT_UTF8, name));
        } catch (IOException unreadable) {
            return refused(name, Message.of(JobMessage.FILE_UNREADABLE, name));
        }
    }

    private static <R> FileReading<R> refused(String name, Message message) {
        Problems problems = new Problems(name, "");
        problems.add(problems.place("", Position.START), message);
        return new FileReading<>(Optional.empty(), problems.sorted());
    }

    private static <R extends Record> FileReading<R> text(
            Class<R> type, String text, String name, Vocabulary vocabulary) {
        Problems problems = new Problems(name, text);
        Found found = new Found();
        Optional<R> value = YamlTree.read(text, problems).flatMap(root -> new Binder(problems, found).file(type, root));
        new VocabularyChecks(found, problems, vocabulary).check();
        return new FileReading<>(problems.isEmpty() ? value : Optional.empty(), problems.sorted());
    }
}
