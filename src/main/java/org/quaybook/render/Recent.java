package org.quaybook.render;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What was made of texts lately, not to be made again: no more than so many, those used last. For several threads. */
final class Recent<T> {

    private static final float USUAL_LOAD = 0.75f;

    private final Map<String, T> made;

    /** @param most how many are kept */
    Recent(int most) {
        made = new LinkedHashMap<>(most, USUAL_LOAD, /* accessOrder= */ true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
                return size() > most;
            }
        };
    }

    synchronized Optional<T> find(String text) {
        return Optional.ofNullable(made.get(text));
    }

    synchronized void keep(String text, T thing) {
        made.put(text, thing);
    }
}
