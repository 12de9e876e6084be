package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.text.Words;
import picocli.CommandLine.Help.Ansi;

class ReportTest {

    private static final MessageKey KEY = () -> "render.svg-fault";

    /** A logo or a template can hold what a terminal obeys (ECMA-48, from memory) or what turns lines about (Unicode UAX #9). */
    @ParameterizedTest
    @ValueSource(strings = {"\u001b]0;title\u0007", "\u009b2J", "\u0008\u0008", "\u202egnp.", "\u2028", "\u0000"})
    void whatATerminalWouldObeyIsShown(String hostile) {
        String told = told("href " + hostile, "<use href='" + hostile + "'/>", "logo" + hostile + ".svg");
        assertThat(told.codePoints().filter(it -> it != '\n' && it != '\r').boxed())
                .noneMatch(it -> Character.getType(it) == Character.CONTROL
                        || Character.getType(it) == Character.FORMAT
                        || Character.getType(it) == Character.LINE_SEPARATOR);
        assertThat(told.split("<U\\+", -1)).hasSizeGreaterThanOrEqualTo(4);
    }

    @Test
    void everyOtherTextIsToldAsItIs() {
        String plain = "Überlauf – 12 V\u00a0… 中 \uD83D\uDEA2";
        assertThat(told(plain, plain, plain).split(plain, -1)).hasSize(4);
    }

    private static String told(String argument, String excerpt, String file) {
        StringWriter out = new StringWriter();
        Message message = Message.of(KEY, argument);
        Place place = new Place(file, "", new Position(0, 3));
        new Report(new PrintWriter(out, true), Words.of("en-GB"), Ansi.OFF)
                .problems(List.of(new Diagnostic(Severity.ERROR, KEY.key(), place, excerpt, message, List.of())));
        return out.toString();
    }
}
