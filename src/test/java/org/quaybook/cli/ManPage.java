package org.quaybook.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;

/** The manual page, written from the commands themselves in the man macros of roff (groff_man(7)). */
final class ManPage {

    /** A tag in a footer with what it means, two blanks between them. */
    private static final Pattern TAGGED = Pattern.compile("\\s*(\\S+)  (\\S.*)");

    /** The column of what an option does, in the rows of its renderer. */
    private static final int DESCRIPTION = 4;

    private static final Pattern HEADING_LAST = Pattern.compile("(?m)^\\.S[HS] .*\\n\\z");
    private static final int WIDTH = 78;

    /** Wide enough that nothing is broken into lines before it is here. */
    private static final int ANY_WIDTH = 10_000;

    private final StringBuilder page = new StringBuilder();
    private final Help.ColorScheme plain = Help.defaultColorScheme(Help.Ansi.OFF);

    private ManPage() {}

    /**
     * @param title what the program is, in few words
     * @param date of the release, as in ISO 8601
     */
    static String of(CommandLine program, String title, String date) {
        program.setUsageHelpWidth(ANY_WIDTH);
        ManPage man = new ManPage();
        man.write(program, title, date);
        return man.page.toString();
    }

    private void write(CommandLine program, String title, String date) {
        CommandSpec top = program.getCommandSpec();
        String name = top.name();
        macro("TH " + name.toUpperCase(Locale.ROOT) + " 1 " + date + " Quaybook \"User commands\"");
        macro("SH NAME");
        text(name + " - " + title);
        macro("SH SYNOPSIS");
        synopsis(top);
        macro("SH DESCRIPTION");
        paragraphs(top.usageMessage().description());
        macro("SH OPTIONS");
        arguments(top, true);
        macro("SH COMMANDS");
        text("Each command tells about itself with --help.");
        for (CommandLine command : program.getSubcommands().values()) {
            CommandSpec spec = command.getCommandSpec();
            macro("SS " + quoted(name + " " + spec.name()));
            paragraphs(spec.usageMessage().header());
            paragraph();
            synopsis(spec);
            paragraphs(spec.usageMessage().description());
            arguments(spec, false);
            footer(spec);
        }
        footer(top);
    }

    private void synopsis(CommandSpec spec) {
        // As declared: sorted by name, the order depends on the language of the machine.
        String line =
                new Help(spec, plain).detailedSynopsis(0, null, true).strip().replaceAll("\\s+", " ");
        String name = spec.qualifiedName();
        macro("B " + escaped(name));
        text(line.substring(name.length()).strip());
    }

    /** Options that every command has are told once. */
    private void arguments(CommandSpec spec, boolean standard) {
        Help help = new Help(spec, plain);
        var label = help.parameterLabelRenderer();
        spec.positionalParameters().stream()
                .filter(parameter -> !parameter.hidden())
                .forEach(parameter ->
                        tagged(help.createDefaultParameterRenderer().render(parameter, label, plain)));
        spec.options().stream()
                .filter(option -> !option.hidden())
                .filter(option -> standard || !(option.usageHelp() || option.versionHelp()))
                .forEach(option -> tagged(help.createDefaultOptionRenderer().render(option, label, plain)));
    }

    private void tagged(Help.Ansi.Text[][] rows) {
        // The first column marks what must be given, which the synopsis says.
        String tag = Arrays.stream(rows[0], 1, DESCRIPTION)
                .map(cell -> cell.plainString().strip())
                .collect(Collectors.joining());
        String said = Arrays.stream(rows)
                .map(row -> row[DESCRIPTION].plainString().strip())
                .collect(Collectors.joining(" "));
        tagged(tag.replace(",-", ", -"), said);
    }

    private void tagged(String tag, String said) {
        macro("TP");
        macro("B " + quoted(tag));
        text(said);
    }

    private void footer(CommandSpec spec) {
        for (String line : spec.usageMessage().footer()) {
            Matcher tagged = TAGGED.matcher(line);
            if (line.equals("Exit codes:")) {
                macro("SH EXIT STATUS");
            } else if (tagged.matches()) {
                tagged(tagged.group(1), tagged.group(2));
            } else if (!line.isBlank()) {
                paragraph();
                text(line.strip());
            }
        }
    }

    private void paragraphs(String[] lines) {
        Stream.of(lines).filter(line -> !line.isBlank()).forEach(line -> {
            paragraph();
            text(line.strip());
        });
    }

    private void paragraph() {
        if (!HEADING_LAST.matcher(page).find()) {
            macro("PP");
        }
    }

    private void macro(String line) {
        page.append('.').append(line).append('\n');
    }

    /** Each sentence on lines of its own, as roff wants them, and none that its first character makes a request. */
    private void text(String text) {
        StringBuilder line = new StringBuilder();
        for (String word : escaped(text).split(" ", -1)) {
            if (line.length() + word.length() >= WIDTH) {
                line(line);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            if (word.endsWith(".")) {
                line(line);
            }
        }
        line(line);
    }

    private void line(StringBuilder words) {
        if (!words.isEmpty()) {
            page.append(words.charAt(0) == '.' || words.charAt(0) == '\'' ? "\\&" : "")
                    .append(words)
                    .append('\n');
            words.setLength(0);
        }
    }

    private static String quoted(String text) {
        return '"' + escaped(text) + '"';
    }

    /** In ASCII with the glyph names of groff_char(7), so that no reader has to guess the encoding. */
    private static String escaped(String text) {
        return text.replace("\\", "\\e")
                .replace("-", "\\-")
                .replace("“", "\\(lq")
                .replace("”", "\\(rq")
                .replace("’", "\\(cq")
                .replace("–", "\\(en")
                .replace("—", "\\(em")
                .replace("…", "...");
    }
}
