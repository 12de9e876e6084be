package org.quaybook.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import org.quaybook.quantity.AirFlow;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.ClockTime;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.CurrentPerCharge;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Frequency;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Mass;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Torque;
import org.quaybook.quantity.Unit;
import org.quaybook.quantity.Voltage;

/**
 * Quantities as people read them. Rounding happens here and nowhere else, towards the side that the value's
 * {@link Rounding} calls safe. Between number and unit stands a no-break space; a second value in brackets may go to the
 * next line as a whole.
 */
public final class Numbers {

    /** Ten significant digits: less than any table here claims, and enough to drop what binary fractions leave over. */
    private static final MathContext NOISE = new MathContext(10, RoundingMode.HALF_EVEN);

    /** From here on an area is an opening and no conductor, in mm². */
    private static final double SMALLEST_OPENING = 300;

    /** Days are told without hours from so many on; a whole number, so that no longer time reads shorter. */
    private static final int WHOLE_DAYS_FROM = 5;

    static final String SPACE = "\u00A0";

    private final NumberStyle style;

    Numbers(NumberStyle style) {
        this.style = style;
    }

    /** A quantity with a fitting unit and as many digits as the kind deserves. */
    public String say(Quantity quantity, Rounding rounding) {
        if (quantity instanceof TimeSpan time) {
            return time(time, rounding);
        }
        if (quantity instanceof Count count) {
            return number(count.number(), 0, 0, rounding);
        }
        String said = say(Shape.of(quantity), quantity, rounding);
        return (style.customary() ? Shape.customary(quantity) : Optional.<Shape>empty())
                .map(shape -> say(shape, quantity, rounding) + " (" + said + ")")
                .orElse(said);
    }

    private String say(Shape shape, Quantity quantity, Rounding rounding) {
        // What somebody else stated is not blurred: 12.5 A on a fuse is not 13 A.
        int most = rounding == Rounding.NEAREST ? shape.most + 1 : shape.most;
        double value = (quantity.canonical() - shape.zero) / shape.divisor;
        // Decimals behind nothing would claim a reading finer than anybody took.
        return number(value, value == 0 ? 0 : shape.fewest, most, rounding) + SPACE + shape.unit;
    }

    /** The customary unit that a reader of these numbers would measure in what is about as large as this; empty if metric. */
    public Optional<String> customaryUnit(Quantity quantity) {
        return style.customary() ? Shape.customary(quantity).map(Shape::unit) : Optional.empty();
    }

    /** A quantity in a stated unit with a fixed number of decimals, for columns of a table. */
    public String fixed(Quantity quantity, String unit, int decimals, Rounding rounding) {
        double value = quantity.kind()
                .unit(unit)
                .orElseThrow(() -> new IllegalArgumentException(quantity.kind() + " is not counted in " + unit))
                .fromCanonical(quantity.canonical());
        return number(value, decimals, decimals, rounding) + SPACE + unit;
    }

    /** A bare number, at most three decimals; a small one, such as a constant of a rulebook, at most five. */
    public String plain(double value) {
        return number(value, 0, Math.abs(value) < 0.1 ? 5 : 3, Rounding.NEAREST);
    }

    /** How a kind and size of value is written: unit, its size and zero in canonical units, fewest and most decimals. */
    private record Shape(String unit, double divisor, double zero, int fewest, int most) {

        Shape(String unit, double divisor, int fewest, int most) {
            this(unit, divisor, 0, fewest, most);
        }

        private static Shape in(Kind<?> kind, String unit, int most) {
            Unit written = kind.unit(unit).orElseThrow();
            return new Shape(unit.replace(" ", SPACE), written.factor(), written.offset(), 0, most);
        }

        /** The U.S. customary unit of what Americans do not measure in metric units. */
        static Optional<Shape> customary(Quantity quantity) {
            double size = Math.abs(quantity.canonical());
            if (quantity instanceof Length) {
                return Optional.of(in(Length.KIND, size < 0.3 ? "in" : "ft", 1));
            }
            if (quantity instanceof Area && size >= SMALLEST_OPENING) {
                return Optional.of(in(Area.KIND, "sq in", 0));
            }
            if (quantity instanceof AirFlow) {
                return Optional.of(in(AirFlow.KIND, "cfm", 1));
            }
            if (quantity instanceof Temperature) {
                return Optional.of(in(Temperature.KIND, "°F", 0));
            }
            if (quantity instanceof Torque) {
                return Optional.of(in(Torque.KIND, "lbf·in", 0));
            }
            return quantity instanceof Mass ? Optional.of(in(Mass.KIND, "lb", 0)) : Optional.empty();
        }

        static Shape of(Quantity quantity) {
            double size = Math.abs(quantity.canonical());
            if (quantity instanceof Voltage) {
                return size < 1 ? new Shape("V", 1, 2, 2) : new Shape("V", 1, size < 100 ? 1 : 0, 2);
            }
            if (quantity instanceof Current) {
                if (size < 1 && size > 0) {
                    return new Shape("mA", 1e-3, 0, size < 0.01 ? 1 : 0);
                }
                return size >= 1000 ? new Shape("kA", 1e3, 1, 1) : new Shape("A", 1, 0, size < 10 ? 1 : 0);
            }
            if (quantity instanceof Resistance) {
                return resistance(size);
            }
            if (quantity instanceof Power) {
                return size >= 1000 ? new Shape("kW", 1e3, 1, 2) : new Shape("W", 1, 0, size < 10 ? 1 : 0);
            }
            if (quantity instanceof Energy) {
                return size >= 1000 ? new Shape("kWh", 1e3, 1, 1) : new Shape("Wh", 1, 0, 0);
            }
            if (quantity instanceof Length) {
                return size < 0.3 ? new Shape("mm", 1e-3, 0, 0) : new Shape("m", 1, 1, 2);
            }
            if (quantity instanceof Area) {
                return size >= SMALLEST_OPENING
                        ? new Shape("cm²", 100, 0, size < 1000 ? 1 : 0)
                        : new Shape("mm²", 1, 0, 2);
            }
            return ofTheRest(quantity, size);
        }

        private static Shape resistance(double ohms) {
            if (ohms < 0.1) {
                return ohms < 0.01 ? new Shape("mΩ", 1e-3, 2, 2) : new Shape("mΩ", 1e-3, 0, 1);
            }
            if (ohms < 1e3) {
                return new Shape("Ω", 1, ohms < 1 ? 2 : 0, 2);
            }
            return ohms < 1e6 ? new Shape("kΩ", 1e3, 0, 1) : new Shape("MΩ", 1e6, 0, 1);
        }

        private static Shape ofTheRest(Quantity quantity, double size) {
            if (quantity instanceof Charge) {
                return new Shape("Ah", 1, 0, size < 10 ? 1 : 0);
            }
            if (quantity instanceof CurrentPerCharge) {
                return size < 0.1 ? new Shape("mA/Ah", 1e-3, 0, 1) : new Shape("A/Ah", 1, 0, 2);
            }
            if (quantity instanceof Ratio) {
                return new Shape("%", 0.01, 0, size < 0.1 ? 1 : 0);
            }
            if (quantity instanceof Temperature) {
                return new Shape("°C", 1, 0, 0);
            }
            if (quantity instanceof Frequency) {
                return new Shape("Hz", 1, 0, 1);
            }
            if (quantity instanceof AirFlow) {
                return new Shape("m³/h", 1, 1, 1);
            }
            if (quantity instanceof Torque) {
                return new Shape("N·m", 1, 0, 1);
            }
            if (quantity instanceof Mass) {
                return new Shape("kg", 1, 0, 1);
            }
            throw new IllegalArgumentException("no way to write " + quantity.kind());
        }
    }

    private String time(TimeSpan time, Rounding rounding) {
        double seconds = time.seconds();
        if (seconds == 0) {
            return "0" + SPACE + "s";
        }
        if (seconds < 1) {
            return number(seconds * 1000, 0, 0, rounding) + SPACE + "ms";
        }
        if (seconds < 100) {
            return number(seconds, 0, seconds < 10 ? 1 : 0, rounding) + SPACE + "s";
        }
        double minutes = seconds / 60;
        if (minutes < 100) {
            return number(minutes, 0, 0, rounding) + SPACE + "min";
        }
        if (time.hours() < 10) {
            long fives = round(minutes / 5, 0, rounding).longValueExact();
            long rest = fives * 5 % 60;
            return fives * 5 / 60 + SPACE + "h" + (rest == 0 ? "" : SPACE + rest + SPACE + "min");
        }
        if (time.hours() < 24 * WHOLE_DAYS_FROM) {
            long hours = round(time.hours(), 0, rounding).longValueExact();
            long rest = hours % 24;
            return hours < 24
                    ? hours + SPACE + "h"
                    : days(Long.toString(hours / 24)) + (rest == 0 ? "" : SPACE + rest + SPACE + "h");
        }
        return days(number(time.hours() / 24, 0, 0, rounding));
    }

    private String days(String number) {
        return number + SPACE + (number.equals("1") ? style.day() : style.days());
    }

    /** A time of day to the last full five minutes, on the 24-hour clock: 18:25. */
    public String clock(ClockTime time) {
        long fives =
                round(time.sinceMidnight().seconds() / 300, 0, Rounding.DOWN).longValueExact();
        long minutes = fives * 5 % (24 * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    /** A conductor as its trade size, with the decimal sign of the language and without a place to break: 2 × 2,5 mm². */
    String conductor(Conductor conductor) {
        return conductor.toString().replace(".", style.decimal()).replace(" ", SPACE);
    }

    private static BigDecimal round(double value, int decimals, Rounding rounding) {
        return new BigDecimal(value, NOISE)
                .setScale(
                        decimals,
                        switch (rounding) {
                            case DOWN -> RoundingMode.FLOOR;
                            case UP -> RoundingMode.CEILING;
                            case NEAREST -> RoundingMode.HALF_UP;
                        });
    }

    private String number(double value, int fewest, int most, Rounding rounding) {
        BigDecimal rounded = round(value, most, rounding);
        while (rounded.scale() > fewest && rounded.stripTrailingZeros().scale() < rounded.scale()) {
            rounded = rounded.setScale(rounded.scale() - 1, RoundingMode.UNNECESSARY);
        }
        String digits = rounded.abs().toPlainString();
        int point = digits.indexOf('.');
        String whole = point < 0 ? digits : digits.substring(0, point);
        String fraction = point < 0 ? "" : style.decimal() + digits.substring(point + 1);
        return (rounded.signum() < 0 ? style.minus() : "") + grouped(whole) + fraction;
    }

    private String grouped(String whole) {
        if (whole.length() < 5) {
            return whole;
        }
        StringBuilder grouped = new StringBuilder(whole);
        for (int at = whole.length() - 3; at > 0; at -= 3) {
            grouped.insert(at, style.group());
        }
        return grouped.toString();
    }
}
