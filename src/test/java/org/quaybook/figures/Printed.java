package org.quaybook.figures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;

/** Reads back what was printed of a figure. */
final class Printed {

    /** Half of the last digit of the coarsest that is printed of a value that nobody rounds to a side: two digits. */
    static final double COARSEST = 0.05;

    private static final Pattern PART = Pattern.compile(
            "([−-]?)([0-9][0-9 .,'’\u202F]*?)\u00A0([^0-9()\u00A0]+(?:\u00A0in)?)(?=\u00A0|$| \\(|\\))");

    private static final Map<String, Double> UNITS = units();

    private Printed() {}

    private static Map<String, Double> units() {
        Map<String, Double> units = new HashMap<>();
        units.put("V", 1.0);
        units.put("A", 1.0);
        units.put("mA", 1e-3);
        units.put("kA", 1e3);
        units.put("Ω", 1.0);
        units.put("mΩ", 1e-3);
        units.put("kΩ", 1e3);
        units.put("MΩ", 1e6);
        units.put("W", 1.0);
        units.put("kW", 1e3);
        units.put("Wh", 1.0);
        units.put("kWh", 1e3);
        units.put("Ah", 1.0);
        units.put("%", 1e-2);
        units.put("mm", 1e-3);
        units.put("m", 1.0);
        units.put("in", 0.0254);
        units.put("ft", 0.3048);
        units.put("mm²", 1.0);
        units.put("cm²", 100.0);
        units.put("sq\u00A0in", 25.4 * 25.4);
        units.put("m³/h", 1.0);
        units.put("cfm", 0.3048 * 0.3048 * 0.3048 * 60);
        units.put("s", 1.0);
        units.put("ms", 1e-3);
        units.put("min", 60.0);
        units.put("h", 3600.0);
        for (String day : List.of("day", "days", "Tag", "Tage", "dag", "dagen")) {
            units.put(day, 86400.0);
        }
        return units;
    }

    /** All values that it says, one behind the other in brackets; nothing for what bears no unit. */
    static List<Double> canonical(String printed, Quantity of, String language) {
        List<Double> read = new ArrayList<>();
        for (String part : printed.split(" \\(", -1)) {
            Matcher found = PART.matcher(part.replace(")", ""));
            double sum = 0;
            boolean any = false;
            while (found.find()) {
                double number =
                        number(found.group(2), language) * (found.group(1).isEmpty() ? 1 : -1);
                String unit = found.group(3);
                if (of instanceof Temperature) {
                    sum = unit.equals("°F") ? (number - 32) / 1.8 : number;
                } else if (UNITS.containsKey(unit)) {
                    sum += number * UNITS.get(unit);
                } else {
                    throw new IllegalStateException("what is " + unit + " in “" + printed + "”?");
                }
                any = true;
                if (!(of instanceof TimeSpan)) {
                    break;
                }
            }
            if (any) {
                read.add(sum);
            }
        }
        return read;
    }

    private static double number(String digits, String language) {
        boolean comma = !language.startsWith("en");
        String plain = comma ? digits.replace(".", "").replace(',', '.') : digits.replace(",", "");
        return Double.parseDouble(plain.replaceAll("[ '’\u202F]", ""));
    }
}
