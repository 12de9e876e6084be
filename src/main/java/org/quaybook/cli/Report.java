package org.quaybook.cli;

import java.io.PrintWriter;
import java.util.List;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.SafeText;
import org.quaybook.diag.Severity;
import org.quaybook.text.Words;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Ansi.IStyle;
import picocli.CommandLine.Help.Ansi.Style;

/** Diagnostics and findings as lines on a terminal, readable with colour and without. */
final class Report {

    private static final String INDENT = "  ";

    private final PrintWriter to;
    private final Words words;
    private final Ansi ansi;

    Report(PrintWriter to, Words words, Ansi ansi) {
        this.to = to;
        this.words = words;
        this.ansi = ansi;
    }

    /** Each problem with file, line and column, the line itself with a caret, and what to do. */
    void problems(List<Diagnostic> problems) {
        for (Diagnostic problem : problems) {
            String at = problem.place().file().isEmpty() ? "" : SafeText.shownOnOneLine(problem.place() + ": ");
            to.println(paint(problem.severity(), at) + words.say(problem.message()));
            if (!problem.excerpt().isBlank()) {
                to.println(INDENT + SafeText.shown(problem.excerpt()));
                to.println(INDENT + " ".repeat(problem.place().position().column()) + "^");
            }
            for (Message hint : problem.hints()) {
                to.println(INDENT + words.say("cli.hint", words.say(hint)));
            }
        }
    }

    /** Findings in groups, worst first. */
    void findings(List<Finding> findings) {
        for (Severity severity : Severity.values()) {
            List<Finding> group = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .toList();
            if (!group.isEmpty()) {
                to.println();
                to.println(paint(severity, words.term(severity)));
                group.forEach(this::finding);
            }
        }
    }

    private void finding(Finding finding) {
        to.println();
        to.println(INDENT + finding.check().id() + "  " + finding.place());
        to.println(INDENT + words.say(finding.message()));
        finding.accepted()
                .ifPresentOrElse(
                        deviation -> to.println(
                                INDENT + words.say("cli.accepted", deviation.by(), deviation.on(), deviation.why())),
                        () -> to.println(INDENT + words.say("cli.hint", words.say(finding.remedy()))));
        to.println(INDENT
                + words.say(
                        "cli.source",
                        finding.check().citation().source(),
                        finding.check().citation().standing()));
    }

    private String paint(Severity severity, String text) {
        IStyle colour = switch (severity) {
            case ERROR, FORBIDS -> Style.fg_red;
            case DECIDE -> Style.fg_yellow;
            case NOTE -> Style.fg_cyan;
        };
        return ansi.enabled() ? Style.bold.on() + colour.on() + text + colour.off() + Style.bold.off() : text;
    }
}
