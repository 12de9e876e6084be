package org.quaybook.quantity;

/**
 * Temperature in degrees Celsius.
 *
 * @param celsius the value
 */
public record Temperature(double celsius) implements Quantity, Comparable<Temperature> {

    public static final Kind<Temperature> KIND = Kind.of(
            "temperature",
            Temperature::new,
            Unit.of("°C", 1, "C", "degC", "\u2103"),
            new Unit("°F", java.util.List.of("F", "degF", "\u2109"), 5.0 / 9.0, -160.0 / 9.0));

    public Temperature {
        Quantity.finite(celsius, KIND);
    }

    /** How many kelvin this is above the other; negative when below. */
    public double kelvinAbove(Temperature other) {
        return celsius - other.celsius;
    }

    public Temperature plusKelvin(double kelvin) {
        return new Temperature(celsius + kelvin);
    }

    @Override
    public double canonical() {
        return celsius;
    }

    @Override
    public Kind<Temperature> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }
}
