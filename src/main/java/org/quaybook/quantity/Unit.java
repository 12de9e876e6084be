package org.quaybook.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A unit that a value may be written in: {@code canonical = written * factor + offset}.
 *
 * @param symbol the spelling used when printing
 * @param spellings other spellings accepted when reading, for keyboards without the symbol
 * @param factor size of the unit in canonical units
 * @param offset canonical value of the unit's zero; not 0 only for degrees Fahrenheit
 */
public record Unit(String symbol, List<String> spellings, double factor, double offset) {

    public Unit {
        spellings = List.copyOf(spellings);
    }

    static Unit of(String symbol, double factor, String... spellings) {
        return new Unit(symbol, List.of(spellings), factor, 0);
    }

    /** Whether the text is this unit, capitals and small letters told apart (mΩ is not MΩ). */
    public boolean isWritten(String text) {
        return symbol.equals(text) || spellings.contains(text);
    }

    /** The value in canonical units of a number written in this unit; in decimals, so that 7 in are 0.1778 m wherever they stand. */
    public double toCanonical(double written) {
        return BigDecimal.valueOf(written)
                .multiply(BigDecimal.valueOf(factor))
                .add(BigDecimal.valueOf(offset))
                .doubleValue();
    }

    /** The number to write in this unit for a value in canonical units; in decimals, so that 0.29 is 29 % and no trifle less. */
    public double fromCanonical(double canonical) {
        return BigDecimal.valueOf(canonical)
                .subtract(BigDecimal.valueOf(offset))
                .divide(BigDecimal.valueOf(factor), MathContext.DECIMAL64)
                .doubleValue();
    }
}
