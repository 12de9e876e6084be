package org.quaybook.cli;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** What the program itself consists of. */
final class ProgramFiles {

    private ProgramFiles() {}

    /** The program's own jar, or the folder of its classes where it runs without one, and the libraries beside it. */
    static List<Path> all() {
        CodeSource source = Objects.requireNonNull(
                ProgramFiles.class.getProtectionDomain().getCodeSource(), "our classes come from files");
        try {
            Path program = Path.of(source.getLocation().toURI());
            return Stream.of(program, program.resolveSibling("lib"))
                    .filter(Files::exists)
                    .toList();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("classes come from an address that is none", e);
        }
    }
}
