package org.quaybook.quantity;

/** A value together with the way it must be rounded when it is put into words. */
public record Stated(Quantity value, Rounding rounding) {

    public static Stated up(Quantity value) {
        return new Stated(value, Rounding.UP);
    }

    public static Stated down(Quantity value) {
        return new Stated(value, Rounding.DOWN);
    }

    public static Stated asGiven(Quantity value) {
        return new Stated(value, Rounding.NEAREST);
    }
}
