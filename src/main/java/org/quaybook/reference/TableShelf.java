package org.quaybook.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The tables of the rulebooks: the project's own, some of them replaced by an installer's copies of the standards. A copy
 * has the same columns and the same key, and everything in it stands as {@code own-copy}. Where the project's table names
 * a source per row, a copy replaces the rows that it has; any other table it replaces whole.
 */
public final class TableShelf {

    private static final List<String> REPLACEABLE = List.of(
            "rulebooks",
            "ampacity-iso",
            "ampacity-iso-spaces",
            "ampacity-iso-bundles",
            "ampacity-abyc",
            "ampacity-abyc-spaces",
            "ampacity-abyc-bundles",
            "ampacity-iec",
            "ampacity-iec-spaces",
            "ampacity-iec-bundles",
            "ampacity-ac",
            "conductors-metric",
            "conductors-awg",
            "conductors-sae-areas",
            "fuse-selectivity",
            "breaker-ratings",
            "protective-conductors",
            "earths",
            "adiabatic");

    private static final TableShelf STANDARD = new TableShelf(Map.of());

    private final Map<String, Table> own;

    private TableShelf(Map<String, Table> own) {
        this.own = Map.copyOf(own);
    }

    /** The project's own tables. */
    public static TableShelf standard() {
        return STANDARD;
    }

    /** Names of the tables that a copy may replace. */
    public static List<String> replaceable() {
        return REPLACEABLE;
    }

    /**
     * This shelf with a copy in place of a table.
     *
     * @param name of the table
     * @param content of the copy, in the form of the project's tables
     * @throws TableFault if the name is none of {@link #replaceable}, or the copy cannot be trusted
     */
    public TableShelf with(String name, String content) {
        if (!REPLACEABLE.contains(name)) {
            throw new TableFault(TableFault.Kind.TABLE, name, 0, "", name, String.join(", ", REPLACEABLE));
        }
        Table shipped = Table.load(name);
        Table copy = Table.parse(name, content);
        refuseOtherKey(shipped, copy);
        refuseOtherColumns(shipped, copy);
        refuseOtherStandings(copy);
        refuseWords(shipped, copy);
        Map<String, Table> tables = new LinkedHashMap<>(own);
        tables.put(name, isByRow(shipped) ? merged(shipped, copy) : copy);
        return new TableShelf(tables);
    }

    Table table(String name) {
        Table copy = own.get(name);
        return copy == null ? Table.load(name) : copy;
    }

    private static boolean isByRow(Table shipped) {
        return "per row".equals(shipped.headings().get("source"));
    }

    private static Table merged(Table shipped, Table copy) {
        Map<String, TableRow> rows = new LinkedHashMap<>();
        shipped.rows().forEach(row -> rows.put(row.key(), row));
        for (TableRow row : copy.rows()) {
            if (rows.replace(row.key(), row) == null) {
                throw new TableFault(TableFault.Kind.ROW, row.table(), row.line(), "", row.key(), shipped.keys());
            }
        }
        return new Table(shipped.name(), copy.headings(), List.copyOf(rows.values()));
    }

    private static void refuseOtherKey(Table shipped, Table copy) {
        String due = shipped.headings().getOrDefault("key", "");
        String found = copy.headings().getOrDefault("key", "");
        if (!due.equals(found)) {
            throw new TableFault(TableFault.Kind.HEADINGS, copy.name(), 0, "", "key: " + found, "key: " + due);
        }
    }

    /** Columns for ratings of insulation are the standard's own affair. */
    private static void refuseOtherColumns(Table shipped, Table copy) {
        Set<String> found = copy.rows().get(0).cells().keySet();
        List<String> missing = new ArrayList<>();
        for (String column : shipped.rows().get(0).cells().keySet()) {
            boolean free = column.matches("t\\d+|inside105|source|standing");
            if (!free && !found.contains(column)) {
                missing.add(column);
            }
        }
        if (!missing.isEmpty()) {
            throw new TableFault(
                    TableFault.Kind.COLUMNS,
                    copy.name(),
                    copy.rows().get(0).line() - 1,
                    "",
                    String.join(", ", found),
                    String.join(", ", missing));
        }
    }

    private static void refuseOtherStandings(Table copy) {
        for (TableRow row : copy.rows()) {
            if (row.citation().standing() != Citation.Standing.OWN_COPY) {
                boolean ownColumn = row.cells().containsKey("standing");
                throw new TableFault(
                        TableFault.Kind.STANDING,
                        copy.name(),
                        ownColumn ? row.line() : 0,
                        ownColumn ? "standing" : "",
                        Table.spelling(row.citation().standing()),
                        Table.spelling(Citation.Standing.OWN_COPY));
            }
        }
    }

    /** Where every cell of the project's column is a number, every cell of the copy's must be one. */
    private static void refuseWords(Table shipped, Table copy) {
        Set<String> numbers = shipped.rows().get(0).cells().keySet().stream()
                .filter(column ->
                        shipped.rows().stream().allMatch(row -> row.text(column).matches("-?\\d+(\\.\\d+)?")))
                .collect(Collectors.toSet());
        for (TableRow row : copy.rows()) {
            for (String column : row.cells().keySet()) {
                if (numbers.contains(column) || column.matches("t\\d+")) {
                    row.number(column);
                }
            }
        }
    }
}
