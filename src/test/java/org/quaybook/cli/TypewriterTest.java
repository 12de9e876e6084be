package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Code pages of consoles as the JDK knows them; which symbols they have: unicode.org, VENDORS/MICSFT/PC, from memory. */
class TypewriterTest {

    private static String typed(String text, Charset charset) throws IOException {
        StringWriter written = new StringWriter();
        try (PrintWriter out = new PrintWriter(new Typewriter(written, charset))) {
            out.print(text);
            out.print('’');
            out.write(text.toCharArray(), 0, 1);
        }
        return written.toString();
    }

    @Test
    void saysWithTheSymbolsOfAWesternConsoleWhatItHasNone() throws IOException {
        Charset western = Charset.forName("IBM850");
        assertThat(typed("“Süd” – the maker’s limit → 35\u00a0mm², 2\u202f×\u202f3\u00a0mΩ …", western))
                .isEqualTo("\"Süd\" - the maker's limit -> 35\u00a0mm², 2 × 3\u00a0mohm ...'\"");
    }

    @Test
    void leavesAloneWhatHasNoSuchForm() throws IOException {
        assertThat(typed("水 \uD83D\uDD0B", StandardCharsets.US_ASCII)).isEqualTo("水 \uD83D\uDD0B'水");
    }

    @Test
    void changesNothingOfWhatCanBeSaid() throws IOException {
        assertThat(typed("“Süd” → 3 mΩ", StandardCharsets.UTF_8)).isEqualTo("“Süd” → 3 mΩ’“");
        assertThat(typed("“Süd” – 2 ×", Charset.forName("windows-1252"))).isEqualTo("“Süd” – 2 ×’“");
    }
}
