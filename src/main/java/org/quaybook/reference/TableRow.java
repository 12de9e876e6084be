package org.quaybook.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Quantity;

/**
 * One row of a table file.
 *
 * @param table name of the table
 * @param line line of the file, counted from 1
 * @param key the cells that name the row, parted by spaces
 * @param cells column name to what is written there
 * @param citation where the row comes from
 */
record TableRow(String table, int line, String key, Map<String, String> cells, Citation citation) {

    /** No NaN, no exponent, no type letter, all of which the language's own reader would let through. */
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new TableFault(TableFault.Kind.COLUMNS, table, line, "", String.join(", ", cells.keySet()), column);
        }
        return cell;
    }

    double number(String column) {
        return number(column, text(column));
    }

    int whole(String column) {
        double number = number(column);
        if (number != Math.rint(number)) {
            throw new TableFault(table, line, "column " + column + " must be a whole number, not " + number);
        }
        return (int) number;
    }

    /** The number, or empty where the cell says that there is none. */
    Optional<Double> maybe(String column) {
        return text(column).equals(Table.NONE) ? Optional.empty() : Optional.of(number(column));
    }

    /** Numbers parted by semicolons, each greater than the one before. */
    List<Double> numbers(String column) {
        List<Double> numbers = Arrays.stream(text(column).split(";", -1))
                .map(cell -> number(column, cell))
                .toList();
        for (int at = 1; at < numbers.size(); at++) {
            if (numbers.get(at) <= numbers.get(at - 1)) {
                throw new TableFault(table, line, "column " + column + " does not ascend");
            }
        }
        return numbers;
    }

    boolean yes(String column) {
        return switch (text(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new TableFault(table, line, "column " + column + " must be yes or no");
        };
    }

    /** The quantity whose number and unit stand in the columns {@code value} and {@code unit}. */
    <Q extends Quantity> Q quantity(Kind<Q> kind) {
        String unit = text("unit");
        return kind.of(
                number("value"),
                kind.unit(unit).orElseThrow(() -> new TableFault(table, line, unit + " is no unit of " + kind)));
    }

    <T> Found<T> found(T value) {
        return new Found<>(value, table, key, citation);
    }

    /** As {@link #found}, with words of the caller's own for the row. */
    <T> Found<T> foundAt(T value, String place) {
        return new Found<>(value, table, place, citation);
    }

    private double number(String column, String cell) {
        if (!NUMBER.matcher(cell).matches()) {
            throw new TableFault(TableFault.Kind.NUMBER, table, line, column, cell, "");
        }
        return Double.parseDouble(cell);
    }
}
