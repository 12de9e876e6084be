package org.quaybook.reference;

import java.util.function.Function;

/**
 * A value together with the place where it was found.
 *
 * @param value what was looked up
 * @param table name of the table, as its file under {@code shared/} without the ending
 * @param row the row (and column) that gave the value
 * @param citation where the row comes from
 */
public record Found<T>(T value, String table, String row, Citation citation) {

    /** The same place for a value derived from this one. */
    public <R> Found<R> map(Function<? super T, ? extends R> derive) {
        return new Found<>(derive.apply(value), table, row, citation);
    }
}
