package org.quaybook.pack;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Tables;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.reference.TableFault;
import org.quaybook.reference.TableShelf;

/**
 * Reads the folder of an installer's own copies of rulebook tables: that of the job, else that of the installer profile.
 * It lies in the folder of the file that names it, below it, or one folder up; symbolic links are followed.
 */
final class OwnTables {

    private static final long LARGEST_TABLE = 1 << 20;
    private static final String ENDING = ".csv";

    private final List<Diagnostic> problems;
    private final Map<String, Copy> copies = new HashMap<>();

    /** A copy as it was read. */
    private record Copy(Path file, String content) {}

    private OwnTables(List<Diagnostic> problems) {
        this.problems = problems;
    }

    /** The tables of a job; empty if a copy cannot be used, and then the problems say why. */
    static Optional<Tables> read(Path jobFile, Job job, Installer installer, List<Diagnostic> problems) {
        Path profile = jobFile.resolveSibling(job.job().installer());
        OwnTables tables = new OwnTables(problems);
        Optional<TableShelf> shelf = job.job().tables() != null
                ? tables.folder(
                        jobFile.resolveSibling(job.job().tables()), job.job().place())
                : installer.tables() != null
                        ? tables.folder(profile.resolveSibling(installer.tables()), installer.place())
                        : Optional.of(TableShelf.standard());
        return shelf.flatMap(it -> tables.together(job, it));
    }

    private Optional<Tables> together(Job job, TableShelf shelf) {
        try {
            return Optional.of(Tables.of(job.job().rulebook(), shelf));
        } catch (TableFault fault) {
            Copy copy = copies.getOrDefault(fault.table(), new Copy(Path.of(fault.table() + ENDING), ""));
            refuse(fault, name(copy.file()), copy.content());
            return Optional.empty();
        }
    }

    private Optional<TableShelf> folder(Path folder, Place named) {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            add(named, Message.of(PackMessage.TABLES_UNREADABLE, name(folder)));
            return Optional.empty();
        }
        TableShelf shelf = TableShelf.standard();
        int before = problems.size();
        for (Path file : files) {
            shelf = with(shelf, file);
        }
        return problems.size() > before ? Optional.empty() : Optional.of(shelf);
    }

    private TableShelf with(TableShelf shelf, Path file) {
        String content = text(file);
        if (content == null) {
            add(
                    new Place(name(file), "", Position.START),
                    Message.of(PackMessage.TABLE_UNREADABLE, LARGEST_TABLE / 1024));
            return shelf;
        }
        String fileName = String.valueOf(file.getFileName());
        String table = fileName.substring(0, fileName.length() - ENDING.length());
        copies.put(table, new Copy(file, content));
        try {
            return shelf.with(table, content);
        } catch (TableFault fault) {
            refuse(fault, name(file), content);
            return shelf;
        }
    }

    private static @Nullable String text(Path file) {
        try {
            return Files.size(file) > LARGEST_TABLE
                    ? null
                    : StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                            .toString();
        } catch (CharacterCodingException foreign) {
            return null;
        } catch (IOException unreadable) {
            return null;
        }
    }

    private void refuse(TableFault fault, String file, String content) {
        int line = Math.max(0, fault.line() - 1);
        add(
                new Place(file, "", new Position(line, column(fault, content, line))),
                Message.of(PackMessage.of(fault.kind()), fault.column(), fault.found(), fault.allowed()));
    }

    /** Where the cell begins in its line. */
    private static int column(TableFault fault, String content, int line) {
        List<String> lines = content.lines().toList();
        Optional<String> names =
                lines.stream().filter(it -> !it.startsWith("#")).findFirst();
        if (fault.column().isEmpty() || names.isEmpty() || line >= lines.size()) {
            return 0;
        }
        int at = List.of(names.get().split(",", -1)).indexOf(fault.column());
        String[] cells = lines.get(line).split(",", -1);
        int start = 0;
        for (int cell = 0; cell < at && cell < cells.length; cell++) {
            start += cells[cell].length() + 1;
        }
        return start;
    }

    private static String name(Path file) {
        return file.toString().replace('\\', '/');
    }

    private void add(Place place, Message message) {
        problems.add(new Diagnostic(Severity.ERROR, message.key().key(), place, "", message, List.of()));
    }
}
