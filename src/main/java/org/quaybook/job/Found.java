package org.quaybook.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.quaybook.diag.Place;

/** What binding has made out so far; the checks across records work on it even when other parts could not be bound. */
final class Found {

    private final List<Object> records = new ArrayList<>();
    private final Map<String, Place> places = new HashMap<>();

    void record(Object record) {
        records.add(record);
    }

    void place(Place at) {
        places.put(at.path(), at);
    }

    /** The place of a path that stands in the file. */
    Place at(String path) {
        return Objects.requireNonNull(places.get(path), path);
    }

    /** All records of a type, in the order of the file. */
    <R> List<R> all(Class<R> type) {
        return records.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
