package org.quaybook.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schema (draft 2020-12) of figures.json, for programs that read it. */
public final class FiguresSchema {

    private static final String FILE = "figures.schema.json";

    private FiguresSchema() {}

    /** Its text. */
    public static String text() {
        try (InputStream in = FiguresSchema.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: it lacks " + FILE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
