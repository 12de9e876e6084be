package org.quaybook.trust;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;

/** Takes a job that may be anything down the road, and says what was not as it should be. */
final class Trial {

    /** How a trial ended. */
    enum End {
        REFUSED,
        UNFINISHED,
        JUDGED,
        PACKED,
        NOT_PRINTED
    }

    /**
     * What became of a job.
     *
     * @param faults what this program did wrong; empty is as it should be
     */
    record Result(End end, List<String> faults) {

        boolean whole() {
            return end == End.PACKED || end == End.NOT_PRINTED;
        }
    }

    private static final Pattern NO_FIGURE = Pattern.compile("(?<!\\p{L})(?:NaN|Infinity|∞)(?!\\p{L})");
    private static final Pattern SCRIPT = Pattern.compile("<script>.*?</script>", Pattern.DOTALL);
    private static final Pattern LINE_END = Pattern.compile("\\R");
    private static final Pattern UNFILLED = Pattern.compile("\\{\\d}");

    private final Path folder;
    private final Words words;
    private final List<String> faults = new ArrayList<>();

    /**
     * @param folder holds {@code job.yaml} and what it names
     * @param words the language of sentences
     */
    Trial(Path folder, Words words) {
        this.folder = folder;
        this.words = words;
    }

    /** @param whole asked of a job that can be calculated: whether to make the documents too */
    Result run(BooleanSupplier whole) {
        End end = End.REFUSED;
        try {
            end = judged(whole);
        } catch (RuntimeException | StackOverflowError e) {
            faults.add(first(e));
        }
        return new Result(end, List.copyOf(faults));
    }

    private static String first(Throwable e) {
        StackTraceElement[] trace = e.getStackTrace();
        return e + " at " + (trace.length == 0 ? "?" : trace[0])
                + Stream.of(trace)
                        .map(StackTraceElement::toString)
                        .filter(line -> line.startsWith("org.quaybook"))
                        .limit(4)
                        .map(line -> "\n    " + line)
                        .reduce("", String::concat);
    }

    private End judged(BooleanSupplier whole) {
        Road.Judged judged = Road.judge(folder);
        judged.problems().forEach(this::problem);
        Assessment assessment = judged.assessment();
        if (assessment == null) {
            if (judged.problems().stream().noneMatch(problem -> problem.severity() == Severity.ERROR)) {
                faults.add("no figures, and no error says why");
            }
            return judged.unfinished().isPresent() ? End.UNFINISHED : End.REFUSED;
        }
        assessment.figures().all().forEach(this::figure);
        assessment.findings().forEach(this::finding);
        return whole.getAsBoolean() ? packed(judged) : End.JUDGED;
    }

    private void problem(Diagnostic problem) {
        sentence(problem.rule(), words(problem.message()));
        problem.hints().forEach(hint -> sentence(problem.rule(), words(hint)));
        located(
                problem.rule(),
                problem.place().file(),
                problem.place().position().line());
    }

    private static String words(Message message) {
        return Words.of("en-GB").say(message);
    }

    private void finding(Finding finding) {
        sentence(finding.check().toString(), words.say(finding.message()));
        located(
                finding.check().toString(),
                finding.place().file(),
                finding.place().position().line());
    }

    private void sentence(String rule, String sentence) {
        if (sentence.isBlank() || shows(UNFILLED, sentence)) {
            faults.add(rule + " says “" + sentence + "”");
        }
    }

    /** Whether a text has what the program must not write, unless the job's own files have the same: that is only repeated. */
    private boolean shows(Pattern unwanted, String text) {
        return unwanted.matcher(text)
                .results()
                .map(MatchResult::group)
                .distinct()
                .anyMatch(found -> !written(found));
    }

    private boolean written(String text) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(file -> file.toString().endsWith(".yaml")).toList()) {
                if (new String(Files.readAllBytes(file), StandardCharsets.UTF_8).contains(text)) {
                    return true;
                }
            }
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void located(String rule, String file, int line) {
        Path named = Path.of(file);
        try {
            // As the reader counts: a file that is no text has no lines.
            long lines = Files.isRegularFile(named)
                    ? LINE_END.matcher(new String(Files.readAllBytes(named), StandardCharsets.UTF_8))
                            .results()
                            .count()
                    : 0;
            if (file.isEmpty() || line < 0 || line > lines) {
                faults.add(rule + " points to line " + (line + 1) + " of “" + file + "”");
            }
        } catch (IOException e) {
            faults.add(rule + " points into “" + file + "”: " + e);
        }
    }

    private void figure(Figure<?> figure) {
        String printed = words.word(figure.stated());
        if (printed.isBlank() || shows(NO_FIGURE, printed)) {
            faults.add(figure.key() + " prints as “" + printed + "”");
        }
    }

    private End packed(Road.Judged judged) {
        try {
            Map<String, byte[]> documents = Road.documents(judged, null, "test");
            documents.forEach(this::document);
            return End.PACKED;
        } catch (NotPrinted e) {
            e.diagnostics().forEach(reason -> sentence(reason.rule(), words(reason.message())));
            return End.NOT_PRINTED;
        }
    }

    private void document(String name, byte[] content) {
        if (content.length == 0) {
            faults.add(name + " is empty");
        }
        if (name.endsWith(".html") || name.endsWith(".json")) {
            String text = new String(content, StandardCharsets.UTF_8);
            if (shows(NO_FIGURE, SCRIPT.matcher(text).replaceAll(""))) {
                faults.add(name + " shows what is no figure");
            }
        } else if (name.endsWith(".pdf") && !starts(content, "%PDF-")) {
            faults.add(name + " is no PDF");
        }
    }

    private static boolean starts(byte @Nullable [] content, String with) {
        return content != null
                && new String(content, 0, Math.min(content.length, with.length()), StandardCharsets.ISO_8859_1)
                        .equals(with);
    }
}
