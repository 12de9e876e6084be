package org.quaybook.render;

import org.jspecify.annotations.Nullable;

/**
 * Something to print labels on.
 *
 * @param id what it is called for, such as {@code a4-2x4}
 * @param medium its geometry
 * @param printing how it is printed
 * @param dots those of the printer; null where they do not matter
 */
public record Stock(
        String id,
        Medium medium,
        Printing printing,
        @Nullable Dots dots) {

    /** A4 to be cut apart. */
    public static final Stock A4 = new Stock("a4", Sheet.A4, Printing.LASER, null);

    /** The largest label that can be printed on it: see {@link Medium#room}. */
    public Box room() {
        return medium.room();
    }
}
