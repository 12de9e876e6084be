package org.quaybook.figures;

import org.quaybook.quantity.AirFlow;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Constant;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.CurrentPerCharge;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Frequency;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.PerUnit;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** How many units of some measure a volt, an ampere, an hour, a metre and a kelvin are. */
record Measure(double volt, double ampere, double hour, double metre, double kelvin) {

    static final Measure USUAL = new Measure(1, 1, 1, 1, 1);

    /** A value in units of this measure. An area stays in square millimetres where a metre stays one. */
    double count(Object value) {
        if (value instanceof PerUnit per) {
            return count(per.value()) / of(per.unit());
        }
        if (value instanceof Constant constant) {
            return constant.value() * of(constant.unit());
        }
        if (value instanceof TimeSpan time) {
            return time.hours() * hour;
        }
        if (value instanceof Quantity quantity) {
            return quantity.canonical() * of(quantity);
        }
        if (value instanceof Conductor conductor) {
            return conductor.parallel();
        }
        if (value instanceof Number number) {
            return number.doubleValue();
        }
        throw new IllegalArgumentException(value + " is no number");
    }

    /** A unit as it is printed. */
    double of(String unit) {
        return switch (unit) {
            case "%" -> 0.01;
            case "V" -> volt;
            case "h" -> hour;
            case "m" -> metre;
            case "K", "°C" -> kelvin;
            case "Ω·mm²/m" -> volt / ampere * metre;
            case "A·√s/mm²" -> ampere * Math.sqrt(hour) / (metre * metre);
            default -> throw new IllegalArgumentException("no measure for " + unit);
        };
    }

    private double of(Quantity quantity) {
        if (quantity instanceof Voltage) {
            return volt;
        }
        if (quantity instanceof Current) {
            return ampere;
        }
        if (quantity instanceof Resistance) {
            return volt / ampere;
        }
        if (quantity instanceof Power) {
            return volt * ampere;
        }
        if (quantity instanceof Energy) {
            return volt * ampere * hour;
        }
        if (quantity instanceof Charge) {
            return ampere * hour;
        }
        if (quantity instanceof CurrentPerCharge || quantity instanceof Frequency) {
            return 1 / hour;
        }
        if (quantity instanceof Length) {
            return metre;
        }
        if (quantity instanceof Area) {
            return metre * metre;
        }
        if (quantity instanceof AirFlow) {
            return metre * metre * metre / hour;
        }
        if (quantity instanceof Temperature) {
            return kelvin;
        }
        if (quantity instanceof Ratio || quantity instanceof Count) {
            return 1;
        }
        throw new IllegalArgumentException("no measure for " + quantity);
    }
}
