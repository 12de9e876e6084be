package org.quaybook.job;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.quaybook.diag.Message;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Kinds;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Unit;

/** Reads numbers with a unit, as people write them: {@code 1.8 m}, {@code -5 °C}, {@code 280Ah}. */
final class Quantities {

    /** A decimal number as the format writes it; also used by the schema. */
    static final String NUMBER = "[+-]?\\d{1,9}(?:\\.\\d{1,9})?";

    private static final Pattern PLAIN = Pattern.compile(NUMBER);
    private static final Pattern WITH_UNIT = Pattern.compile("(" + NUMBER + ") *(.*)");
    private static final Pattern COMMA = Pattern.compile("([+-]?\\d{1,9}),(\\d{1,9})((?: *[^\\d ].*)?)");

    private static final Pattern NUMBER_GOES_ON = Pattern.compile("[\\d.,]");

    private Quantities() {}

    /** A quantity of one kind. */
    static Quantity of(Class<?> quantity, String text) throws Refusal {
        return read(text, Kinds.of(quantity));
    }

    /** A quantity of whatever kind its unit belongs to. */
    static Quantity any(String text) throws Refusal {
        Matcher parts = parts(text);
        String unit = parts.group(2);
        Optional<Kind<?>> kind = kindOf(unit);
        if (kind.isEmpty()) {
            String allowed = Kinds.all().map(Quantities::units).sorted().collect(Collectors.joining(", "));
            throw unit.isEmpty()
                    ? new Refusal(Message.of(JobMessage.NO_UNIT_OF_ANY, text, allowed))
                    : new Refusal(
                            Message.of(JobMessage.UNKNOWN_UNIT, unit, allowed),
                            meantUnit(
                                    parts,
                                    Kinds.all()
                                            .flatMap(any -> any.units().stream())
                                            .toList()));
        }
        return make(kind.get(), parts);
    }

    /** A number without a unit. */
    static Double number(String text) throws Refusal {
        String plain = plain(text);
        if (!PLAIN.matcher(plain).matches()) {
            refuseComma(plain);
            throw new Refusal(Message.of(JobMessage.BAD_NUMBER, text));
        }
        return Double.valueOf(plain);
    }

    /** Spaces and minus signs as a keyboard writes them. */
    static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2212', '-');
    }

    private static Quantity read(String text, Kind<?> kind) throws Refusal {
        Matcher parts = parts(text);
        String unit = parts.group(2);
        if (unit.isEmpty()) {
            throw new Refusal(Message.of(JobMessage.NO_UNIT, text, JobMessage.dimension(kind), units(kind)));
        }
        if (kind.unit(unit).isPresent()) {
            return make(kind, parts);
        }
        Optional<Kind<?>> other = kindOf(unit);
        if (other.isPresent()) {
            throw new Refusal(Message.of(
                    JobMessage.WRONG_DIMENSION,
                    text,
                    JobMessage.dimension(other.get()),
                    JobMessage.dimension(kind),
                    units(kind)));
        }
        throw new Refusal(Message.of(JobMessage.UNKNOWN_UNIT, unit, units(kind)), meantUnit(parts, kind.units()));
    }

    private static Matcher parts(String text) throws Refusal {
        String plain = plain(text);
        Matcher parts = WITH_UNIT.matcher(plain);
        if (!parts.matches() || NUMBER_GOES_ON.matcher(parts.group(2)).lookingAt()) {
            refuseComma(plain);
            throw new Refusal(Message.of(JobMessage.BAD_QUANTITY, text));
        }
        return parts;
    }

    /** A comma may divide decimals or thousands; where both are possible, neither is guessed. */
    private static void refuseComma(String plain) throws Refusal {
        Matcher comma = COMMA.matcher(plain);
        if (comma.matches()) {
            String decimal = comma.group(1) + "." + comma.group(2) + comma.group(3);
            String thousands = comma.group(1) + comma.group(2) + comma.group(3);
            throw new Refusal(
                    Message.of(JobMessage.DECIMAL_COMMA, plain),
                    comma.group(2).length() == 3
                            ? Message.of(JobMessage.WRITE_EITHER, decimal, thousands)
                            : Message.of(JobMessage.WRITE, decimal));
        }
    }

    private static Quantity make(Kind<?> kind, Matcher parts) throws Refusal {
        try {
            return kind.make()
                    .apply(kind.unit(parts.group(2)).orElseThrow().toCanonical(Double.parseDouble(parts.group(1))));
        } catch (IllegalArgumentException impossible) {
            throw new Refusal(Message.of(JobMessage.NEGATIVE, parts.group(), JobMessage.dimension(kind)));
        }
    }

    private static Optional<Kind<?>> kindOf(String unit) {
        return Kinds.all().filter(kind -> kind.unit(unit).isPresent()).findFirst();
    }

    /** The spellings of a kind's units that messages name. */
    static String units(Kind<?> kind) {
        return kind.units().stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }

    /** Only capitals are guessed at: any other guess at one or two letters would be as likely wrong. */
    private static List<Message> meantUnit(Matcher parts, List<Unit> units) {
        List<String> near = units.stream()
                .filter(unit -> unit.symbol().equalsIgnoreCase(parts.group(2)))
                .map(unit -> parts.group(1) + " " + unit.symbol())
                .sorted()
                .toList();
        return switch (near.size()) {
            case 0 -> List.of();
            case 1 -> List.of(Message.of(JobMessage.WRITE, near.get(0)));
            default -> List.of(Message.of(JobMessage.WRITE_EITHER, near.get(0), near.get(1)));
        };
    }
}
