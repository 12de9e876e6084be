package org.quaybook.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Kinds;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Unit;

/** What is read is never on the dangerous side of what was worked out. */
class NumbersTest {

    private static final String SPACE = "\u00A0";

    private final Numbers numbers = Words.of("en-GB").numbers();

    private static Quantity quantity(String written) {
        int space = written.indexOf(' ');
        String unit = written.substring(space + 1);
        Kind<?> kind = Kinds.all()
                .filter(candidate -> candidate.unit(unit).isPresent())
                .findFirst()
                .orElseThrow();
        return kind.of(
                Double.parseDouble(written.substring(0, space)), kind.unit(unit).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({
        "165.374677 A, UP, 166 A",
        "165.374677 A, DOWN, 165 A",
        "12.5 A, NEAREST, 12.5 A",
        "225 A, NEAREST, 225 A",
        "7.44 A, UP, 7.5 A",
        "13500 A, UP, 13.5 kA",
        "13501 A, UP, 13.6 kA",
        "19999 A, DOWN, 19.9 kA",
        "0.03 A, NEAREST, 30 mA",
        "0.0035 A, UP, 3.5 mA",
        "0 A, UP, 0 A",
        "0 V, NEAREST, 0 V",
        "11.97427 V, DOWN, 11.97 V",
        "12 V, NEAREST, 12.0 V",
        "0.0388 V, UP, 0.04 V",
        "2.3135962e-3 Ω, UP, 2.32 mΩ",
        "0.565e-3 Ω, NEAREST, 0.565 mΩ",
        "0.21 Ω, NEAREST, 0.21 Ω",
        "45e-3 Ω, NEAREST, 45 mΩ",
        "1667 Ω, NEAREST, 1.67 kΩ",
        "48e6 Ω, DOWN, 48 MΩ",
        "1940.5 W, UP, 1.95 kW",
        "3200 W, NEAREST, 3.2 kW",
        "264.33 W, UP, 265 W",
        "17664 Wh, DOWN, 17.6 kWh",
        "950 Wh, DOWN, 950 Wh",
        "485.76 Ah, DOWN, 485 Ah",
        "87.5 %, NEAREST, 87.5 %",
        "63.487 %, UP, 64 %",
        "4.305 %, UP, 4.4 %",
        "38.27 °C, UP, 39 °C",
        "1.6 m, NEAREST, 1.6 m",
        "0.15 m, NEAREST, 150 mm",
        "70 mm², NEAREST, 70 mm²",
        "14112 mm², UP, 142 cm²",
        "5.04 m³/h, UP, 5.1 m³/h",
        "12 Nm, NEAREST, 12 N·m",
        "50 Hz, NEAREST, 50 Hz",
        "2.5 kg, NEAREST, 2.5 kg"
    })
    void roundsToTheSafeSide(String exact, Rounding rounding, String read) {
        assertThat(numbers.say(quantity(exact), rounding)).isEqualTo(read.replace(" ", SPACE));
    }

    @ParameterizedTest
    @CsvSource({
        "0 s, DOWN, 0 s",
        "0.021 s, UP, 21 ms",
        "0.0213 s, UP, 22 ms",
        "7.45 s, DOWN, 7.4 s",
        "59.9 s, DOWN, 59 s",
        "5202 s, DOWN, 86 min",
        "5999 s, DOWN, 99 min",
        "7739 s, DOWN, 2 h 5 min",
        "26802 s, DOWN, 7 h 25 min",
        "26802 s, UP, 7 h 30 min",
        "10800 s, DOWN, 3 h",
        "35999 s, DOWN, 9 h 55 min",
        "35999 s, UP, 10 h",
        "86399 s, DOWN, 23 h",
        "86399 s, UP, 1 day",
        "86400 s, DOWN, 1 day",
        "91000 s, UP, 1 day 2 h",
        "198509 s, DOWN, 2 days 7 h",
        "431999 s, DOWN, 4 days 23 h",
        "432000 s, DOWN, 5 days",
        "1112709 s, DOWN, 12 days",
        "1112709 s, UP, 13 days"
    })
    void timesAreReadInTheUnitsOfDailyLife(String exact, Rounding rounding, String read) {
        assertThat(numbers.say(quantity(exact), rounding)).isEqualTo(read.replace(" ", SPACE));
    }

    /** Factors of NIST SP 811 Appendix B, from memory; read against its rounded tables: 1 m is 3.28 ft, 1 N·m 8.85 lbf·in. */
    @ParameterizedTest
    @CsvSource({
        "1.6 m, NEAREST, 5.25 ft (1.6 m)",
        "0.15 m, NEAREST, 5.91 in (150 mm)",
        "26900 mm², UP, 42 sq in (269 cm²)",
        "70 mm², NEAREST, 70 mm²",
        "5.04 m³/h, UP, 3 cfm (5.1 m³/h)",
        "5 °C, NEAREST, 41 °F (5 °C)",
        "-40 °C, NEAREST, −40 °F (−40 °C)",
        "12 Nm, NEAREST, 106.2 lbf·in (12 N·m)",
        "48 A, NEAREST, 48 A"
    })
    void americansReadTheirUnitsFirst(String exact, Rounding rounding, String read) {
        // Value and second value may part, neither may break inside.
        assertThat(Words.of("en-US").numbers().say(quantity(exact), rounding))
                .isEqualTo(read.replace(" ", SPACE).replace(SPACE + "(", " ("));
    }

    /** Days and hours stand side by side in tables: of two times the longer never reads shorter. */
    @ParameterizedTest
    @EnumSource(names = "NEAREST", mode = EnumSource.Mode.EXCLUDE, value = Rounding.class)
    void theLongerTimeNeverReadsShorter(Rounding rounding) {
        double before = 0;
        for (int minutes = 10 * 60; minutes < 20 * 24 * 60; minutes += 7) {
            String[] read = numbers.say(new TimeSpan(minutes * 60.0), rounding).split(SPACE, -1);
            double hours = 0;
            for (int at = 0; at < read.length; at += 2) {
                hours += Integer.parseInt(read[at]) * (read[at + 1].startsWith("day") ? 24 : 1);
            }
            assertThat(hours).as("%s min", minutes).isGreaterThanOrEqualTo(before);
            before = hours;
        }
    }

    @Test
    void aConductorHasNoPlaceToBreak() {
        assertThat(numbers.conductor(Conductor.parse("2 x 70 mm2").orElseThrow()))
                .isEqualTo("2 × 70 mm²".replace(" ", SPACE));
        assertThat(Words.of("de").numbers().conductor(Conductor.parse("2.5 mm2").orElseThrow()))
                .isEqualTo("2,5 mm²".replace(" ", SPACE));
    }

    /** Binary fractions leave dust behind; 0.1 + 0.2 is 0.3 and an exact limit is not rounded past itself. */
    @Test
    void dustIsNotRounded() {
        assertThat(numbers.say(new Current(2.0000000000000004), Rounding.UP)).isEqualTo("2" + SPACE + "A");
        assertThat(numbers.say(new Current(2.9999999999999996), Rounding.DOWN)).isEqualTo("3" + SPACE + "A");
        assertThat(numbers.plain(0.1 + 0.2)).isEqualTo("0.3");
    }

    /** For values drawn by lot: rounded down is never more, rounded up never less, but for the dust of binary fractions. */
    @ParameterizedTest
    @EnumSource(names = "NEAREST", mode = EnumSource.Mode.EXCLUDE, value = Rounding.class)
    void neverTheDangerousSide(Rounding rounding) {
        SplittableRandom lot = new SplittableRandom(7);
        for (int i = 0; i < 5000; i++) {
            double amperes = Math.pow(10, lot.nextDouble() * 7 - 3);
            String read = numbers.say(new Current(amperes), rounding);
            int space = read.indexOf(SPACE);
            String unit = read.substring(space + 1);
            double factor = unit.equals("kA") ? 1e3 : unit.equals("mA") ? 1e-3 : 1;
            double back = new BigDecimal(read.substring(0, space).replace(",", "")).doubleValue() * factor;
            if (rounding == Rounding.DOWN) {
                assertThat(back).isLessThanOrEqualTo(amperes * (1 + 1e-9));
            } else {
                assertThat(back).isGreaterThanOrEqualTo(amperes * (1 - 1e-9));
            }
        }
    }

    @Test
    void belowZeroUpAndDownKeepTheirMeaning() {
        assertThat(numbers.say(new Temperature(-10.4), Rounding.DOWN)).isEqualTo("\u221211" + SPACE + "°C");
        assertThat(numbers.say(new Temperature(-10.4), Rounding.UP)).isEqualTo("\u221210" + SPACE + "°C");
        assertThat(numbers.say(new Temperature(-0.2), Rounding.UP)).isEqualTo("0" + SPACE + "°C");
    }

    @Test
    void longNumbersAreGrouped() {
        assertThat(numbers.say(new Count(9999), Rounding.NEAREST)).isEqualTo("9999");
        assertThat(numbers.say(new Count(1234567), Rounding.NEAREST)).isEqualTo("1,234,567");
    }

    @Test
    void columnsHaveFixedDecimals() {
        assertThat(numbers.fixed(TimeSpan.ofHours(1.5), "min", 1, Rounding.DOWN))
                .isEqualTo("90.0" + SPACE + "min");
        assertThat(numbers.fixed(new Current(0.03), "mA", 0, Rounding.NEAREST)).isEqualTo("30" + SPACE + "mA");
        // 5429 s are 90.483 min, by division.
        assertThat(numbers.fixed(new TimeSpan(5429), "min", 1, Rounding.DOWN)).isEqualTo("90.4" + SPACE + "min");
        assertThat(numbers.fixed(new TimeSpan(5429), "min", 1, Rounding.UP)).isEqualTo("90.5" + SPACE + "min");
        assertThat(numbers.fixed(new TimeSpan(5429), "min", 1, Rounding.NEAREST))
                .isEqualTo("90.5" + SPACE + "min");
        assertThatIllegalArgumentException().isThrownBy(() -> numbers.fixed(new Current(1), "V", 0, Rounding.UP));
    }

    /** The machine's settings are Turkish here: a decimal comma or a dotless i would show. */
    @Test
    void theMachinesSettingsDoNotMatter() {
        assertThat(Locale.getDefault().getLanguage()).isEqualTo("tr");
        assertThat(numbers.plain(0.125)).isEqualTo("0.125");
    }

    /** Every dimension that a figure can have can be read. */
    @Test
    void everyKindCanBeRead() {
        Kinds.all().forEach(kind -> {
            for (double value : new double[] {0, 1e-4, 0.5, 5, 50, 5e3, 5e6}) {
                Unit unit = kind.mainUnit();
                assertThat(numbers.say(kind.of(value, unit), Rounding.UP)).isNotBlank();
            }
        });
    }
}
