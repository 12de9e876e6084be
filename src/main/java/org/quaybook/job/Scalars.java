package org.quaybook.job;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.quaybook.diag.Message;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Quantity;

/** Turns the text of a single value into what a record wants. */
final class Scalars {

    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
    private static final Pattern HYPHEN_FOR_MINUS = Pattern.compile("(?<= )-(?=$| = )");
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern TIME_OF_DAY = Pattern.compile("(?:[01]\\d|2[0-3]):[0-5]\\d");
    private static final Pattern MONTH = Pattern.compile("\\d{4}-\\d{2}");

    /** Sizes that exist as cable (common practice, no source). */
    private static final Area LEAST_CONDUCTOR = new Area(0.2);

    private static final Area MOST_CONDUCTOR = new Area(1000);

    private static final Map<Class<?>, Reader> READERS = Map.ofEntries(
            reader(String.class, Scalars::text),
            reader(Boolean.class, Scalars::yesNo),
            reader(Integer.class, Scalars::whole),
            reader(Double.class, Quantities::number),
            reader(LocalDate.class, Scalars::date),
            reader(LocalTime.class, Scalars::timeOfDay),
            reader(YearMonth.class, Scalars::month),
            reader(RecordCode.class, Scalars::recordCode),
            reader(SealKey.class, Scalars::sealKey),
            reader(Conductor.class, Scalars::conductors),
            reader(ConductorSize.class, Scalars::conductor),
            reader(Quantity.class, Quantities::any));

    @FunctionalInterface
    private interface Reader {
        Object read(String text) throws Refusal;
    }

    private static Map.Entry<Class<?>, Reader> reader(Class<?> type, Reader reader) {
        return Map.entry(type, reader);
    }

    private Scalars() {}

    /**
     * Reads a value.
     *
     * @param type the class wanted: a quantity, an enum or one of those above
     * @param text the text, not empty
     * @throws Refusal if the text is no such value
     */
    static Object read(Class<?> type, String text) throws Refusal {
        Reader reader = READERS.get(type);
        if (reader != null) {
            return reader.read(text);
        }
        return type.isEnum() ? constant(type, text) : Quantities.of(type, text);
    }

    /** A pole is typed with the hyphen that a keyboard has, and printed with a minus. */
    private static Object text(String text) {
        return HYPHEN_FOR_MINUS.matcher(text).replaceAll("−");
    }

    private static Object yesNo(String text) throws Refusal {
        return switch (text) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default ->
                throw new Refusal(
                        Message.of(JobMessage.BAD_YES_NO, text), meant(text, List.of("yes", "no", "true", "false")));
        };
    }

    private static Object whole(String text) throws Refusal {
        if (!WHOLE.matcher(text).matches()) {
            throw new Refusal(Message.of(JobMessage.BAD_WHOLE_NUMBER, text));
        }
        return Integer.valueOf(text);
    }

    static LocalDate date(String text) throws Refusal {
        if (DATE.matcher(text).matches()) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeException noSuchDay) {
                throw new Refusal(Message.of(JobMessage.BAD_DATE, text));
            }
        }
        throw new Refusal(Message.of(JobMessage.BAD_DATE, text));
    }

    private static LocalTime timeOfDay(String text) throws Refusal {
        if (!TIME_OF_DAY.matcher(text).matches()) {
            throw new Refusal(Message.of(JobMessage.BAD_TIME_OF_DAY, text));
        }
        return LocalTime.parse(text);
    }

    private static YearMonth month(String text) throws Refusal {
        Matcher month = MONTH.matcher(text);
        if (month.matches()) {
            try {
                return YearMonth.parse(text);
            } catch (DateTimeException noSuchMonth) {
                throw new Refusal(Message.of(JobMessage.BAD_MONTH, text));
            }
        }
        throw new Refusal(Message.of(JobMessage.BAD_MONTH, text));
    }

    private static Object recordCode(String text) throws Refusal {
        try {
            return RecordCode.parse(text);
        } catch (IllegalArgumentException bad) {
            throw new Refusal(Message.of(JobMessage.BAD_RECORD_CODE, text));
        }
    }

    private static Object sealKey(String text) throws Refusal {
        try {
            return SealKey.parse(text);
        } catch (IllegalArgumentException bad) {
            throw new Refusal(Message.of(JobMessage.BAD_SEAL_KEY));
        }
    }

    private static Object conductors(String text) throws Refusal {
        Optional<Conductor> read = Conductor.parse(Quantities.plain(text));
        return sized(text, read, read.map(Conductor::size), Conductor::parse, JobMessage.BAD_CONDUCTORS);
    }

    private static Object conductor(String text) throws Refusal {
        Optional<ConductorSize> read = ConductorSize.parse(Quantities.plain(text));
        return sized(text, read, read, ConductorSize::parse, JobMessage.BAD_CONDUCTOR);
    }

    private static Object sized(
            String text,
            Optional<?> read,
            Optional<ConductorSize> size,
            Function<String, Optional<?>> parser,
            JobMessage bad)
            throws Refusal {
        if (size.isPresent()) {
            Area area = size.get().area();
            if (area.compareTo(LEAST_CONDUCTOR) < 0 || area.compareTo(MOST_CONDUCTOR) > 0) {
                throw new Refusal(Message.of(JobMessage.CONDUCTOR_OUT_OF_RANGE, text, LEAST_CONDUCTOR, MOST_CONDUCTOR));
            }
            return read.orElseThrow();
        }
        List<Message> hints = Stream.of(text.toLowerCase(Locale.ROOT), text.toUpperCase(Locale.ROOT))
                .filter(other -> parser.apply(other).isPresent())
                .map(other -> Message.of(JobMessage.WRITE, other))
                .toList();
        throw new Refusal(Message.of(bad, text), hints);
    }

    private static Object constant(Class<?> type, String text) throws Refusal {
        List<String> names = Names.all(type);
        int index = names.indexOf(text);
        if (index < 0) {
            throw new Refusal(
                    Message.of(JobMessage.NOT_ALLOWED, text, String.join(", ", names)), meant(type, text, names));
        }
        return type.getEnumConstants()[index];
    }

    /** The hint with what the trade means by a word among the allowed values, or else with the likeliest of them. */
    static List<Message> meant(Class<?> type, String typed, List<String> allowed) {
        List<String> meant = TradeWords.meant(type, typed);
        return switch (meant.size()) {
            case 0 -> meant(typed, allowed);
            case 1 -> List.of(Message.of(JobMessage.DID_YOU_MEAN, meant.get(0)));
            default -> List.of(Message.of(JobMessage.DID_YOU_MEAN_ONE_OF, String.join(", ", meant)));
        };
    }

    /** The hint with the likeliest of the allowed words, if one is near. */
    static List<Message> meant(String typed, List<String> allowed) {
        return Spelling.nearest(typed, allowed)
                .map(word -> List.of(Message.of(JobMessage.DID_YOU_MEAN, word)))
                .orElse(List.of());
    }
}
