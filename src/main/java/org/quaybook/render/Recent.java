package org.quaybook.render;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

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

    /** What was made of a text, or what is made of it now; two that ask for the same at once both make it. */
    T of(String text, Function<String, T> maker) {
        T known = find(text).orElse(null);
        if (known != null) {
            return known;
        }
        T thing = maker.apply(text);
        keep(text, thing);
        return thing;
    }

    synchronized Optional<T> find(String text) {
        return Optional.ofNullable(made.get(text));
    }

    /** What was made of a text, for one who may change it and keeps it again afterwards. */
    synchronized Optional<T> take(String text) {
        return Optional.ofNullable(made.remove(text));
    }

    synchronized void keep(String text, T thing) {
        made.put(text, thing);
    }
}
