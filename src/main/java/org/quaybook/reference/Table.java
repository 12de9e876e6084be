package org.quaybook.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A table file, read strictly. It begins with comment lines {@code # heading: words}, all of {@link #HEADINGS}; then
 * come the column names and the rows, cells parted by commas and never quoted. A cell that holds nothing on purpose is
 * written {@code -}. Columns named {@code source} and {@code standing} speak for their row; otherwise the headings
 * speak for all rows.
 *
 * @param name file name without ending
 * @param headings what the comment lines say
 * @param rows in the order of the file, at least one
 */
record Table(String name, Map<String, String> headings, List<TableRow> rows) {

    private static final List<String> HEADINGS =
            List.of("title", "source", "edition", "number", "units", "standing", "publish", "caution", "key");

    /** A cell that holds nothing on purpose. */
    static final String NONE = "-";

    /** Reads {@code shared/<name>.csv} from the class path. */
    static Table load(String name) {
        try (InputStream in = Table.class.getResourceAsStream("/shared/" + name + ".csv")) {
            if (in == null) {
                throw new TableFault(name, 0, "no such table on the class path");
            }
            return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Table parse(String name, String content) {
        List<String> lines = content.lines().toList();
        int head = (int) lines.stream().takeWhile(line -> line.startsWith("#")).count();
        Map<String, String> headings = headings(name, lines.subList(0, head));
        if (lines.size() < head + 2) {
            throw new TableFault(TableFault.Kind.NO_ROWS, name, lines.size(), "", "", "");
        }
        List<String> columns = List.of(lines.get(head).split(",", -1));
        if (new HashSet<>(columns).size() < columns.size()) {
            throw new TableFault(
                    TableFault.Kind.COLUMNS, name, head + 1, "", String.join(", ", columns), "each name once");
        }
        List<TableRow> rows = new ArrayList<>();
        for (int at = head + 1; at < lines.size(); at++) {
            Map<String, String> cells = cells(name, at + 1, columns, lines.get(at));
            rows.add(new TableRow(name, at + 1, key(name, headings, cells), cells, citation(name, headings, cells)));
        }
        refuseTwins(name, rows);
        return new Table(name, headings, List.copyOf(rows));
    }

    private static Map<String, String> headings(String name, List<String> lines) {
        Map<String, String> headings = new LinkedHashMap<>();
        for (int at = 0; at < lines.size(); at++) {
            String[] parts = lines.get(at).substring(1).split(":", 2);
            if (parts.length < 2 || parts[1].isBlank() || headings.put(parts[0].strip(), parts[1].strip()) != null) {
                throw new TableFault(TableFault.Kind.HEADING, name, at + 1, "", lines.get(at), "# heading: words");
            }
        }
        if (!headings.keySet().equals(Set.copyOf(HEADINGS))) {
            throw new TableFault(
                    TableFault.Kind.HEADINGS,
                    name,
                    0,
                    "",
                    String.join(", ", headings.keySet()),
                    String.join(", ", HEADINGS));
        }
        return Map.copyOf(headings);
    }

    private static Map<String, String> cells(String name, int line, List<String> columns, String written) {
        List<String> cells = List.of(written.split(",", -1));
        if (cells.size() != columns.size()) {
            throw new TableFault(
                    TableFault.Kind.CELLS,
                    name,
                    line,
                    "",
                    Integer.toString(cells.size()),
                    Integer.toString(columns.size()));
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (int at = 0; at < cells.size(); at++) {
            String cell = cells.get(at);
            if (cell.isBlank() || !cell.equals(cell.strip()) || cell.contains("\"")) {
                throw new TableFault(TableFault.Kind.CELL, name, line, columns.get(at), cell, NONE);
            }
            row.put(columns.get(at), cell);
        }
        return row;
    }

    private static String key(String name, Map<String, String> headings, Map<String, String> cells) {
        List<String> columns = List.of(headings.getOrDefault("key", "").split(" "));
        if (!cells.keySet().containsAll(columns)) {
            throw new TableFault(name, 0, "the key names columns " + columns + " that are not all there");
        }
        return columns.stream().map(cells::get).collect(Collectors.joining(" "));
    }

    private static Citation citation(String name, Map<String, String> headings, Map<String, String> cells) {
        String whole = headings.get("source") + edition(headings) + number(headings);
        String standing = cells.getOrDefault("standing", headings.getOrDefault("standing", ""));
        return new Citation(cells.getOrDefault("source", whole), standing(name, standing));
    }

    private static String edition(Map<String, String> headings) {
        String edition = headings.getOrDefault("edition", NONE);
        return edition.equals(NONE) ? "" : ":" + edition;
    }

    private static String number(Map<String, String> headings) {
        String number = headings.getOrDefault("number", NONE);
        return number.equals(NONE) ? "" : ", " + number;
    }

    private static Citation.Standing standing(String name, String written) {
        for (Citation.Standing standing : Citation.Standing.values()) {
            if (spelling(standing).equals(written)) {
                return standing;
            }
        }
        throw new TableFault(TableFault.Kind.STANDING, name, 0, "", written, standings());
    }

    private static String standings() {
        return Arrays.stream(Citation.Standing.values()).map(Table::spelling).collect(Collectors.joining(", "));
    }

    static String spelling(Citation.Standing standing) {
        return standing.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void refuseTwins(String name, List<TableRow> rows) {
        Set<String> seen = new HashSet<>();
        for (TableRow row : rows) {
            if (!seen.add(row.key())) {
                throw new TableFault(TableFault.Kind.TWICE, name, row.line(), "", row.key(), "");
            }
        }
    }

    /** The row of this key. */
    TableRow row(String key) {
        return rows.stream()
                .filter(row -> row.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new NotInTable(name, key, keys()));
    }

    /** All keys, for saying what the table holds. */
    String keys() {
        return rows.stream().map(TableRow::key).collect(Collectors.joining(", "));
    }

    /** This table, once every number of the column is greater than the one above it. */
    Table ascending(String column) {
        for (int at = 1; at < rows.size(); at++) {
            if (rows.get(at).number(column) <= rows.get(at - 1).number(column)) {
                throw new TableFault(
                        TableFault.Kind.ORDER,
                        name,
                        rows.get(at).line(),
                        column,
                        rows.get(at).text(column),
                        "");
            }
        }
        return this;
    }
}
