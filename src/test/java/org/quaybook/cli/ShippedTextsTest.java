package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.quaybook.KeptFile.assertSame;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import picocli.AutoComplete;
import picocli.CommandLine;

/** What is shipped beside the program and says what its commands are: manual page and completion. */
class ShippedTextsTest {

    private static final Path MANUAL = Path.of("src/main/dist/quaybook.1");
    private static final Path COMPLETION = Path.of("src/main/dist/completion/quaybook.bash");

    private static CommandLine program() {
        return new CommandLine(new Main());
    }

    /** The day that the archives carry. */
    private static String released() throws IOException {
        Matcher date = Pattern.compile("<project\\.build\\.outputTimestamp>(\\d{4}-\\d\\d-\\d\\d)T")
                .matcher(Files.readString(Path.of("pom.xml")));
        assertThat(date.find()).isTrue();
        return date.group(1);
    }

    @Test
    void manualPageSaysWhatTheCommandsSay() throws IOException {
        assertSame(
                MANUAL,
                ManPage.of(program(), "handover packs for battery-and-inverter power systems", released()),
                "commands");
    }

    @Test
    void completionKnowsTheCommands() {
        // Shells read it; nobody runs it.
        String script = AutoComplete.bash("quaybook", program()).replaceFirst("^#!.*\n", "");
        assertSame(COMPLETION, script, "commands");
    }

    @Test
    void manualPageNamesEveryCommandAndOption() throws IOException {
        String page = Files.readString(MANUAL);
        assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(page)).isTrue();
        assertThat(page).startsWith(".TH QUAYBOOK 1 ").contains("\n.SH EXIT STATUS\n");
        for (CommandLine command : program().getSubcommands().values()) {
            var spec = command.getCommandSpec();
            assertThat(page).contains("\n.SS \"quaybook " + spec.name().replace("-", "\\-") + "\"\n");
            spec.options().stream()
                    .filter(option -> !option.hidden())
                    .forEach(option -> assertThat(page)
                            .as("%s %s", spec.name(), option.longestName())
                            .contains(option.longestName()
                                    .toLowerCase(Locale.ROOT)
                                    .replace("-", "\\-")));
        }
    }
}
