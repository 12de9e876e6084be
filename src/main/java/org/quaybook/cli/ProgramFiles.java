package org.quaybook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.quaybook.proof.Digest;

/** What the program itself consists of: packs made by another build may come out otherwise. */
final class ProgramFiles {

    private ProgramFiles() {}

    /**
     * A digest of the program's own jar, or of its classes where it runs without one; libraries are told apart by name and
     * size.
     *
     * @throws UncheckedIOException if they cannot be read
     */
    static String digest() {
        try {
            CodeSource source = Objects.requireNonNull(
                    ProgramFiles.class.getProtectionDomain().getCodeSource(), "our classes come from files");
            Path program = Path.of(source.getLocation().toURI());
            List<String> parts = new ArrayList<>();
            try (Stream<Path> files = Files.walk(program)) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    parts.add(program.relativize(file) + " " + Digest.of(Files.readAllBytes(file)));
                }
            }
            Path libraries = program.resolveSibling("lib");
            if (Files.isDirectory(libraries)) {
                try (Stream<Path> files = Files.list(libraries)) {
                    for (Path file : files.sorted().toList()) {
                        parts.add(file.getFileName() + " " + Files.size(file));
                    }
                }
            }
            return Digest.of(String.join("\n", parts));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("classes come from an address that is none", e);
        }
    }
}
