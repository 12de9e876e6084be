package org.quaybook.quantity;

/**
 * Current for each ampere-hour of rated capacity, in amperes per ampere-hour.
 *
 * @param amperesPerAmpereHour the value, never negative
 */
public record CurrentPerCharge(double amperesPerAmpereHour) implements Quantity {

    public static final Kind<CurrentPerCharge> KIND =
            Kind.of("current per ampere-hour", CurrentPerCharge::new, Unit.of("A/Ah", 1), Unit.of("mA/Ah", 1e-3));

    public CurrentPerCharge {
        Quantity.finiteNotNegative(amperesPerAmpereHour, KIND);
    }

    @Override
    public double canonical() {
        return amperesPerAmpereHour;
    }

    @Override
    public Kind<CurrentPerCharge> kind() {
        return KIND;
    }
}
