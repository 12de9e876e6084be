package org.quaybook.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Map;

/** Writes what a charset has no symbol for with those that it has, as on a typewriter; what has no such form it leaves alone. */
final class Typewriter extends FilterWriter {

    private static final Map<Character, String> TYPED = Map.ofEntries(
            Map.entry('‘', "'"),
            Map.entry('’', "'"),
            Map.entry('“', "\""),
            Map.entry('”', "\""),
            Map.entry('„', "\""),
            Map.entry('–', "-"),
            Map.entry('—', "-"),
            Map.entry('−', "-"),
            Map.entry('…', "..."),
            Map.entry('→', "->"),
            Map.entry('×', "x"),
            Map.entry('≤', "<="),
            Map.entry('≥', ">="),
            Map.entry('²', "2"),
            Map.entry('Ω', "ohm"),
            Map.entry('\u00a0', " "),
            Map.entry('\u202f', " "));

    private final CharsetEncoder encoder;

    Typewriter(Writer out, Charset charset) {
        super(out);
        this.encoder = charset.newEncoder();
    }

    @Override
    public void write(int symbol) throws IOException {
        write(String.valueOf((char) symbol));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        write(new String(text, from, length), 0, length);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        StringBuilder typed = new StringBuilder(length);
        for (int i = from; i < from + length; i++) {
            char symbol = text.charAt(i);
            String form = encoder.canEncode(symbol) ? null : TYPED.get(symbol);
            if (form == null) {
                typed.append(symbol);
            } else {
                typed.append(form);
            }
        }
        out.write(typed.toString());
    }
}
