package org.quaybook.figures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.quantity.Conductor;
import org.quaybook.text.Words;

/**
 * A formula as it is printed, worked out from the inputs that are printed with it, as a reader with a calculator would: in
 * volts, amperes, watts, hours, ampere-hours, watt-hours, square millimetres and degrees Celsius. Of several inputs of one
 * letter each has a place; Σ adds up over the places, and a sum of nothing is 0.
 */
final class WrittenFormula {

    private static final Words WORDS = Words.of("en-GB");

    private static final String SYMBOL = "number|share|limit|round|max|Δ?\\p{L}[₀-₉]*(?:_[a-z]+)?(?:\\(s\\))?";

    private static final Pattern TOKEN = Pattern.compile(" *(the (?:larger|largest|smaller|least) of|and|"
            + SYMBOL
            + "|\\d+(?:\\.\\d+)?(?:[ \u00a0](?:%|°C|h|V)(?!\\p{L}))?|[+−·/()√²Σ,])");

    private static final Pattern IS_SYMBOL = Pattern.compile(SYMBOL);

    /** The result, or a letter that stands for a part of the formula. */
    private static final Pattern NAMED = Pattern.compile("(?:(" + SYMBOL + ") )?[=≤≥] ");

    /** Before what is said behind the formula itself. */
    private static final Pattern PARTED =
            Pattern.compile("[,;] (?=(?:" + SYMBOL + "|0) [=≤≥] |at least 0|not below 0|whole uses)");

    private static final Pattern BOUNDS = Pattern.compile("(0 ≤ )?(" + SYMBOL + ")( ≥ 0| ≤ 1)");

    /** What is said behind a formula and does not change its value. */
    private static final Pattern REMARK = Pattern.compile(
            ", (?:at 20[ \u00a0]°C|full bank, cold conductors|the largest step starting last|U ≥ E / 2)$");

    private final List<Input> inputs;
    private final Measure measure;
    private final Map<String, String> parts = new HashMap<>();
    private final Set<String> notNegative = new HashSet<>();
    private final Set<String> atMostOne = new HashSet<>();
    private List<String> tokens = List.of();
    private int next;
    private int place = -1;

    private WrittenFormula(List<Input> inputs, Measure measure) {
        this.inputs = inputs;
        this.measure = measure;
    }

    /** As a reader of British English sees it; empty where the formula takes a value over. */
    static String written(Formula formula) {
        return formula.words().map(WORDS::say).orElse(formula.symbols());
    }

    /**
     * What a figure's formula makes of its inputs.
     *
     * @throws IllegalArgumentException if the formula cannot be read, or a symbol is not among the inputs, or there several
     *     times outside of a sum
     */
    static double of(Working working) {
        return of(working, Measure.USUAL);
    }

    /** The same counted in other units, those in the formula too. */
    static double of(Working working, Measure measure) {
        String written = REMARK.matcher(written(working.formula())).replaceFirst("");
        if (written.equals("the least of them")) {
            return working.inputs().stream()
                    .mapToDouble(it -> measure.count(it.value()))
                    .min()
                    .orElseThrow();
        }
        return new WrittenFormula(working.inputs(), measure).result(written);
    }

    /** The formula, then what its letters stand for and between what they stay. */
    private double result(String written) {
        List<String> said = PARTED.splitAsStream(written).toList();
        for (String part : said.subList(1, said.size())) {
            Matcher bounds = BOUNDS.matcher(part);
            Matcher named = NAMED.matcher(part);
            if (bounds.matches()) {
                bound(bounds);
            } else if (named.lookingAt() && named.group(1) != null) {
                parts.put(named.group(1), part.substring(named.end()));
            }
        }
        Matcher named = NAMED.matcher(said.get(0));
        boolean isNamed = named.lookingAt();
        double value = value(isNamed ? said.get(0).substring(named.end()) : said.get(0));
        String last = said.get(said.size() - 1);
        if (last.equals("at least 0") || last.equals("not below 0")) {
            return Math.max(0, value);
        }
        if (last.equals("whole uses")) {
            return Math.floor(value);
        }
        return isNamed && named.group(1) != null ? within(named.group(1), value) : value;
    }

    /** "x ≥ 0", "x ≤ 1" or "0 ≤ x ≤ 1". */
    private void bound(Matcher bounds) {
        if (bounds.group(1) != null || bounds.group(3).contains("≥ 0")) {
            notNegative.add(bounds.group(2));
        }
        if (bounds.group(3).contains("≤ 1")) {
            atMostOne.add(bounds.group(2));
        }
    }

    private double within(String symbol, double value) {
        double above = notNegative.contains(symbol) ? Math.max(0, value) : value;
        return atMostOne.contains(symbol) ? Math.min(1, above) : above;
    }

    private double value(String written) {
        List<String> outer = tokens;
        int at = next;
        tokens = tokens(written);
        next = 0;
        double value = sum();
        if (next != tokens.size()) {
            throw new IllegalArgumentException(tokens.subList(next, tokens.size()) + " is left of " + written);
        }
        tokens = outer;
        next = at;
        return value;
    }

    private static List<String> tokens(String written) {
        List<String> tokens = new ArrayList<>();
        Matcher token = TOKEN.matcher(written);
        int at = 0;
        while (token.find() && token.start() == at) {
            tokens.add(token.group(1));
            at = token.end();
        }
        if (at != written.length()) {
            throw new IllegalArgumentException("cannot read " + written.substring(at));
        }
        return tokens;
    }

    private boolean takes(String token) {
        boolean there = next < tokens.size() && tokens.get(next).equals(token);
        if (there) {
            next++;
        }
        return there;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (takes("+")) {
                value += product();
            } else if (takes("−")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = factor();
        while (true) {
            DoubleBinaryOperator operator;
            if (takes("·")) {
                operator = (a, b) -> a * b;
            } else if (takes("/")) {
                operator = (a, b) -> a / b;
            } else {
                return value;
            }
            value = operator.applyAsDouble(value, factor());
        }
    }

    private double factor() {
        double value = plain();
        return takes("²") ? value * value : value;
    }

    private double plain() {
        if (next == tokens.size()) {
            throw new IllegalArgumentException("something is missing behind " + tokens);
        }
        String token = tokens.get(next++);
        if (token.equals("(")) {
            double value = sum();
            if (!takes(")")) {
                throw new IllegalArgumentException("a bracket stays open in " + tokens);
            }
            return value;
        }
        if (token.startsWith("the ")) {
            return chosen(token.contains("larg"));
        }
        return switch (token) {
            case "√" -> Math.sqrt(factor());
            case "Σ" -> total();
            case "round" -> Math.rint(factor());
            case "max" -> larger();
            default -> Character.isDigit(token.charAt(0)) ? constant(token) : input(token);
        };
    }

    private double larger() {
        if (!takes("(")) {
            throw new IllegalArgumentException("max of nothing in " + tokens);
        }
        double value = chosen(true);
        if (!takes(")")) {
            throw new IllegalArgumentException("a bracket stays open in " + tokens);
        }
        return value;
    }

    private double chosen(boolean largest) {
        double value = sum();
        while (takes(",") || takes("and")) {
            double other = sum();
            value = largest ? Math.max(value, other) : Math.min(value, other);
        }
        return value;
    }

    private double constant(String token) {
        String[] written = token.split("[ \u00a0]", 2);
        return Double.parseDouble(written[0]) * (written.length == 1 ? 1 : measure.of(written[1]));
    }

    /** The product behind the sign, once for every place; nothing if one of its letters is not there at all. */
    private double total() {
        int begin = next;
        int end = end(begin);
        int outer = place;
        int places = places(begin, end);
        double sum = 0;
        for (int i = 0; i < places; i++) {
            next = begin;
            place = i;
            sum += product();
        }
        place = outer;
        next = end;
        return sum;
    }

    /** Where a product ends: at a sign or a sum of its own depth, or where its bracket closes. */
    private int end(int begin) {
        int depth = 0;
        for (int i = begin; i < tokens.size(); i++) {
            String token = tokens.get(i);
            depth += token.equals("(") ? 1 : token.equals(")") ? -1 : 0;
            if (depth < 0 || (depth == 0 && token.matches("[+−Σ,]|and"))) {
                boolean operatorBefore = token.equals("Σ") && tokens.get(i - 1).matches("[·/]");
                return operatorBefore ? i - 1 : i;
            }
        }
        return tokens.size();
    }

    /** How often the letter that is there most often is there, sums inside left out; 0 if one is not there at all. */
    private int places(int begin, int end) {
        int most = 0;
        for (int i = begin; i < end; i++) {
            String token = tokens.get(i);
            if (token.equals("Σ")) {
                i = end(i + 1) - 1;
            } else if (IS_SYMBOL.matcher(token).matches()) {
                int many = parts.containsKey(token) ? 1 : all(token).size();
                if (many == 0) {
                    return 0;
                }
                most = Math.max(most, many);
            }
        }
        return most;
    }

    private List<Input> all(String symbol) {
        return symbol.equals("number")
                ? inputs.stream().filter(it -> it.value() instanceof Conductor).toList()
                : inputs.stream().filter(it -> it.symbol().equals(symbol)).toList();
    }

    private double input(String symbol) {
        String part = parts.get(symbol);
        if (part != null) {
            return within(symbol, value(part));
        }
        List<Input> all = all(symbol);
        if (all.size() == 1 || (place >= 0 && place < all.size())) {
            return measure.count(all.get(all.size() == 1 ? 0 : place).value());
        }
        throw new IllegalArgumentException(symbol + " is " + all.size() + " times among " + inputs);
    }
}
