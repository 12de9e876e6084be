package org.quaybook.record;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A row of a table or a group of facts for a template, keys in the order they were put. */
public final class Rows {

    private final Map<String, Object> cells = new LinkedHashMap<>();

    /** Puts a cell; what is not known is put as an empty text, which templates leave out. */
    public Rows put(String key, @Nullable Object value) {
        cells.put(key, value == null ? "" : value);
        return this;
    }

    /** The cells by their keys. */
    public Map<String, Object> map() {
        return cells;
    }
}
