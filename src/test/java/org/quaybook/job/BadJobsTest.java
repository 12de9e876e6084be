package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.KeptFile;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;

/**
 * Each file of {@code jobs/bad} has beside it what reading it must say: {@code <name>.yaml} and {@code <name>.expected}
 * with one {@code line:column key | argument | argument} each and its hints indented below. A file named
 * {@code installer-*.yaml} is read as an installer profile, {@code service-*.yaml} as the service log of full.yaml. A case that begins with {@code #edit} is full.yaml with each
 * {@code #- text} replaced by the {@code #+ text} after it, in which {@code \n} begins a line.
 */
class BadJobsTest {

    private static final Path BAD = JobFiles.FOLDER.resolve("bad");

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(BAD)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void saysWhatIsWrong(Path file) {
        String name = Objects.requireNonNull(file.getFileName()).toString();
        String text = edited(JobFiles.text(file));
        boolean usable;
        List<Diagnostic> problems;
        if (name.startsWith("service-")) {
            Job job =
                    Objects.requireNonNull(JobReader.parse(JobFiles.text("full.yaml"), "full.yaml", JobFiles.VOCABULARY)
                            .job());
            ServiceReading reading = JobReader.parseService(text, name, job, JobFiles.VOCABULARY);
            usable = reading.log() != null;
            problems = reading.problems();
        } else {
            JobReading reading = name.startsWith("installer-")
                    ? JobReader.parseInstaller(text, name)
                    : JobReader.parse(text, name, JobFiles.VOCABULARY);
            usable = reading.job() != null || reading.installer() != null;
            problems = reading.problems();
        }

        KeptFile.assertSame(BAD.resolve(name.replace(".yaml", ".expected")), said(problems), "cases");
        assertThat(usable).isNotEqualTo(problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR));
        assertThat(problems)
                .allMatch(
                        problem -> problem.rule().equals(problem.message().key().key()));
        assertThat(problems).allMatch(problem -> problem.place().file().equals(name));
    }

    /** Applies the edits of a case to the full job; every edit must apply exactly once. */
    private static String edited(String text) {
        if (!text.startsWith("#edit")) {
            return text;
        }
        String job = JobFiles.text("full.yaml");
        List<String> removed = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (line.startsWith("#- ")) {
                removed.add(line.substring(3));
            } else if (line.startsWith("#+ ")) {
                String old = removed.remove(0);
                assertThat(job.split(java.util.regex.Pattern.quote(old), -1))
                        .as(old)
                        .hasSize(2);
                job = job.replace(old, line.substring(3).replace("\\n", "\n"));
            }
        }
        return job;
    }

    private static String said(List<Diagnostic> problems) {
        return problems.stream()
                .map(problem -> problem.place().position() + " " + said(problem.message()) + "\n"
                        + problem.hints().stream()
                                .map(hint -> "  " + said(hint) + "\n")
                                .collect(Collectors.joining()))
                .collect(Collectors.joining());
    }

    private static String said(Message message) {
        return Stream.concat(
                        Stream.of(message.key().key()),
                        message.arguments().stream()
                                .map(argument -> argument instanceof Message part ? said(part) : argument.toString()))
                .collect(Collectors.joining(" | "));
    }
}
