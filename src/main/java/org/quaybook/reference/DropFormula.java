package org.quaybook.reference;

import org.quaybook.quantity.Area;

/**
 * How a rulebook reckons the voltage drop of a conductor: drop = constant × current × length ÷ size, the length out and
 * back.
 *
 * @param form the units that the constant is meant for
 * @param constant as printed
 * @param citation where it comes from
 */
public record DropFormula(Form form, double constant, Citation citation) {

    /** The units of a drop formula. */
    public enum Form {
        /** E = constant × A × m ÷ mm²: the constant in Ω·mm²/m. */
        SQUARE_MILLIMETRES,
        /** E = constant × A × ft ÷ circular mils: the constant in Ω·circular mil/ft. */
        CIRCULAR_MILS
    }

    private static final double METRES_PER_FOOT = 0.3048;

    /** The constant in Ω·mm²/m, whatever the form. */
    public double ohmSquareMillimetresPerMetre() {
        if (form == Form.SQUARE_MILLIMETRES) {
            return constant;
        }
        Area perCircularMil = CircularMils.toArea(constant);
        return perCircularMil.squareMillimetres() / METRES_PER_FOOT;
    }
}
