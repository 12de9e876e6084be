package org.quaybook.figures;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.job.Given;
import org.quaybook.quantity.Constant;
import org.quaybook.quantity.PerUnit;
import org.quaybook.quantity.Quantity;
import org.quaybook.reference.Citation;
import org.quaybook.reference.Found;

/**
 * One value that went into a formula.
 *
 * @param symbol its letter in the formula
 * @param value a quantity, one for each unit of another, a number, a constant with a unit, a conductor or a term
 * @param origin where it came from
 */
public record Input(String symbol, Object value, Origin origin) {

    /** Where an input came from. */
    public sealed interface Origin {}

    /** Written in the job file. */
    public record FromJob(Place place, org.quaybook.job.Provenance provenance) implements Origin {}

    /** Looked up. */
    public record FromTable(String table, String row, Citation citation) implements Origin {}

    /** Another figure of this job. */
    public record FromFigure(String key) implements Origin {}

    /** Usual by a table. */
    public record Usual(Citation citation) implements Origin {}

    /** Usual practice or a constant of the formula. */
    public record Taken(Reason reason) implements Origin {}

    public static Input of(String symbol, Figure<? extends Quantity> figure) {
        return new Input(symbol, figure.value(), new FromFigure(figure.key()));
    }

    /**
     * A value of the job file.
     *
     * @throws IllegalArgumentException if nobody has seen it
     */
    public static Input of(String symbol, Given<?> given) {
        Object value = given.value();
        if (value == null) {
            throw new IllegalArgumentException(given.place().path() + " was not seen");
        }
        return new Input(symbol, value, new FromJob(given.place(), given.provenance()));
    }

    /** A value of the job file where somebody has seen it, else the usual one with its source. */
    static Input ofOr(String symbol, @Nullable Given<?> given, Object usual, Reason reason) {
        return given != null && given.value() != null ? of(symbol, given) : usual(symbol, usual, reason);
    }

    public static Input of(String symbol, Found<?> found) {
        return new Input(symbol, found.value(), new FromTable(found.table(), found.row(), found.citation()));
    }

    /** The same for each unit of something else. */
    Input per(String unit) {
        return new Input(symbol, new PerUnit((Quantity) value, unit), origin);
    }

    /** The same number in the unit that the formula is made for. */
    Input in(String unit) {
        return new Input(symbol, new Constant(((Number) value).doubleValue(), unit), origin);
    }

    public static Input usual(String symbol, Object value, Citation citation) {
        return new Input(symbol, value, new Usual(citation));
    }

    public static Input usual(String symbol, Object value, Reason reason) {
        return new Input(symbol, value, new Taken(reason));
    }
}
