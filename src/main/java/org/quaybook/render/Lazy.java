package org.quaybook.render;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value made at its first use, once, whoever asks. */
public final class Lazy<T> implements Supplier<T> {

    private final Supplier<T> maker;
    private volatile @Nullable T value;

    public Lazy(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public T get() {
        T made = value;
        return made == null ? make() : made;
    }

    private synchronized T make() {
        T made = value;
        if (made == null) {
            made = maker.get();
            value = made;
        }
        return made;
    }
}
