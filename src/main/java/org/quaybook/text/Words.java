package org.quaybook.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.diag.SafeText;
import org.quaybook.quantity.ClockTime;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Constant;
import org.quaybook.quantity.PerUnit;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Stated;

/**
 * The words of one language: every sentence and term that a reader sees, from {@code templates/words/<language>/}.
 * A missing key is the program's mistake and throws.
 */
public final class Words {

    /** The language that is complete, and that the installer reads where his own has no words for him. */
    private static final String FIRST = "en-GB";

    private static final List<String> LANGUAGES = List.of(FIRST, "en-US", "de", "fr", "nl", "es");

    /** Languages written as what differs from another one. */
    private static final Map<String, String> VARIANTS = Map.of("en-US", FIRST);

    /** What is left with the installation. Every language has all of it. */
    private static final List<String> HANDED_OVER =
            List.of("language", "terms", "checks", "guide", "pictures", "sheets", "workings", "labels", "record");

    /** What only the installer sees. */
    private static final List<String> INSTALLERS =
            List.of("job", "figures", "render", "worksheet", "pack", "proof", "cli", "start");

    /** Texts of tables are English: their set phrases and the symbols of formulas stand in this area. */
    private static final String PHRASES = "workings";

    /** What is said otherwise of a craft that does not float: little, where a language's usual words are not those of boats. */
    private static final String ON_LAND = "on-land";

    /** Each language is read once, whoever asks. */
    private static final Map<String, Words> READ = new ConcurrentHashMap<>();

    /** Behind the key of a sentence about several: the same about one. */
    private static final String SINGULAR = ".singular";

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    /** Standards, rules and schemes that are made for boats. */
    private static final Pattern FOR_BOATS =
            Pattern.compile("\\b(?:ISO (?:10133|13297)|ABYC|33 CFR|46 CFR|Boat Safety Scheme)\\b");

    /** What parts the words of a source: some languages want a space before it. */
    private static final Pattern STOP = Pattern.compile("(?<!\\u00A0)[;:](?= )");

    private final String language;
    private final Map<String, String> sentences;
    private final Map<String, String> english;
    private final Numbers numbers;
    private final Phrases citations;
    private final Phrases symbols;

    /** @param english what British English says for the keys of phrases */
    private Words(String language, Map<String, String> sentences, Map<String, String> english) {
        this.language = language;
        this.sentences = sentences;
        this.english = english;
        this.citations = phrases("citation.");
        this.symbols = phrases("symbol.");
        this.numbers = new Numbers(new NumberStyle(
                sentence("language.decimal"),
                sentence("language.group"),
                sentence("language.minus"),
                sentence("language.day"),
                sentence("language.days"),
                sentence("language.units").equals("customary")));
    }

    /** The languages that documents can be made in, by their IETF tag. */
    public static List<String> languages() {
        return LANGUAGES;
    }

    /**
     * The words of a language: all that is handed over. The English ones also hold what only the installer
     * sees.
     *
     * @throws IllegalArgumentException if the language is none of {@link #languages()}
     */
    public static Words of(String language) {
        if (!LANGUAGES.contains(language)) {
            throw new IllegalArgumentException("no words in " + language + ", only in " + LANGUAGES);
        }
        return READ.computeIfAbsent(language, Words::read);
    }

    private static Words read(String language) {
        String base = VARIANTS.getOrDefault(language, language);
        Map<String, String> sentences = new TreeMap<>();
        for (String area : areas(base)) {
            load(base, area)
                    .orElseThrow(() -> new IllegalStateException("no " + area + " in the words of " + base))
                    .forEach((key, sentence) -> {
                        if (sentences.put(key, sentence) != null) {
                            throw new IllegalStateException(key + " stands twice in the words of " + base);
                        }
                    });
        }
        if (!base.equals(language)) {
            areas(base).forEach(area -> load(language, area).ifPresent(sentences::putAll));
        }
        return new Words(language, sentences, load(FIRST, PHRASES).orElseThrow());
    }

    private Phrases phrases(String prefix) {
        Map<String, String> translations = new TreeMap<>();
        english.forEach((key, phrase) -> {
            if (key.startsWith(prefix) && !phrase.equals(sentence(key))) {
                translations.put(phrase, sentence(key));
            }
        });
        return new Phrases(translations);
    }

    /**
     * The words for the installer of documents in these languages: the first of them that has words for him, else British
     * English.
     */
    public static Words forInstaller(List<String> languages) {
        return of(languages.stream()
                .filter(language -> VARIANTS.getOrDefault(language, language).equals(FIRST))
                .findFirst()
                .orElse(FIRST));
    }

    /** The areas that every language has. */
    static List<String> handedOver() {
        return HANDED_OVER;
    }

    private static List<String> areas(String base) {
        return base.equals(FIRST)
                ? Stream.concat(HANDED_OVER.stream(), INSTALLERS.stream()).toList()
                : HANDED_OVER;
    }

    private static Optional<Map<String, String>> load(String language, String area) {
        String resource = "/templates/words/" + language + "/" + area + ".properties";
        try (InputStream in = Words.class.getResourceAsStream(resource)) {
            if (in == null) {
                return Optional.empty();
            }
            Map<String, String> found = new LinkedHashMap<>();
            new OnceOnly(found).load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return Optional.of(found);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Properties keep the last of two equal keys without a word; here the second is refused. */
    private static final class OnceOnly extends Properties {
        private static final long serialVersionUID = 1;
        private final transient Map<String, String> target;

        OnceOnly(Map<String, String> target) {
            this.target = target;
        }

        @Override
        public synchronized Object put(Object key, Object value) {
            String before = target.put((String) key, (String) value);
            if (before != null) {
                throw new IllegalStateException(key + " stands twice in one file of words");
            }
            return value;
        }
    }

    public String language() {
        return language;
    }

    public Numbers numbers() {
        return numbers;
    }

    /**
     * The same language with other words for some keys.
     *
     * @throws IllegalArgumentException if there is no such key, or a sentence has not the places of the one it replaces
     */
    public Words with(Map<String, String> own) {
        Map<String, String> mixed = new TreeMap<>(sentences);
        own.forEach((key, sentence) -> {
            if (!places(sentence(key)).equals(places(sentence))) {
                throw new IllegalArgumentException(key + " has other places than “" + sentence(key) + "”");
            }
            mixed.put(key, sentence);
        });
        return new Words(language, mixed, english);
    }

    /**
     * The same language for what stands on wheels or on the ground: no quay, and a rule for boats as common practice only.
     */
    public Words onLand() {
        return load(VARIANTS.getOrDefault(language, language), ON_LAND)
                .map(this::with)
                .orElseThrow(() -> new IllegalStateException("no " + ON_LAND + " in the words of " + language));
    }

    /** The numbers of the places that a sentence leaves to be filled. */
    public static Set<String> places(String sentence) {
        return PLACE.matcher(sentence).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    /** All keys of this language, sorted. */
    public Set<String> keys() {
        return sentences.keySet();
    }

    /** Whether there are words for a key. */
    public boolean has(String key) {
        return sentences.containsKey(key);
    }

    /** The sentence of a key with its places unfilled. */
    public String sentence(String key) {
        String sentence = sentences.get(key);
        if (sentence == null) {
            throw new IllegalArgumentException("no words for " + key + " in " + language);
        }
        return sentence;
    }

    public String say(Message message) {
        return fill(message.key().key(), message.arguments());
    }

    public String say(MessageKey key, Object... arguments) {
        return fill(key.key(), List.of(arguments));
    }

    /**
     * The sentence of a key with its numbered places filled. Where the first argument is the number 1 and there is a key
     * with {@code .singular} behind it, the sentence of that one.
     */
    public String say(String key, Object... arguments) {
        return fill(key, List.of(arguments));
    }

    private String fill(String key, List<?> arguments) {
        Matcher places = PLACE.matcher(sentence(counted(key, arguments)));
        StringBuilder filled = new StringBuilder();
        while (places.find()) {
            int place = Integer.parseInt(places.group(1));
            if (place >= arguments.size()) {
                throw new IllegalArgumentException(key + " has a place {" + place + "} but " + arguments);
            }
            places.appendReplacement(filled, Matcher.quoteReplacement(word(arguments.get(place))));
        }
        return places.appendTail(filled).toString();
    }

    /** Of a sentence whose first argument is a count, the key for a count of one, where the language says that otherwise. */
    private String counted(String key, List<?> arguments) {
        boolean one = !arguments.isEmpty() && arguments.get(0) instanceof Number count && count.doubleValue() == 1;
        return one && has(key + SINGULAR) ? key + SINGULAR : key;
    }

    /** What a table, a check or a label names as its source or row: set phrases in this language, titles as they are. */
    public String cited(String text) {
        return ruling(STOP.matcher(citations.in(text))
                .replaceAll(stop -> sentence(stop.group().equals(";") ? "language.semicolon" : "language.colon")));
    }

    /** A source in this language; for a craft on land, one that is made for boats is called common practice. */
    public String ruling(String source) {
        return FOR_BOATS.matcher(source).find() ? say("language.boat-rule", source) : source;
    }

    /** A formula or a symbol of one, with those symbols that are words in this language. */
    public String symbols(String formula) {
        return symbols.in(formula);
    }

    /** Any argument of a message in words: texts, quantities, numbers, dates, terms, messages and lists of these. */
    public String word(Object argument) {
        if (argument instanceof Message message) {
            return say(message);
        }
        if (argument instanceof Stated stated) {
            return numbers.say(stated.value(), stated.rounding());
        }
        if (argument instanceof Quantity quantity) {
            return numbers.say(quantity, Rounding.NEAREST);
        }
        if (argument instanceof PerUnit per) {
            return numbers.say(per.value(), Rounding.NEAREST) + "/" + per.unit();
        }
        if (argument instanceof Constant constant) {
            return numbers.plain(constant.value()) + Numbers.SPACE + constant.unit();
        }
        if (argument instanceof Conductor conductor) {
            return numbers.conductor(conductor);
        }
        if (argument instanceof ConductorSize size) {
            return numbers.conductor(new Conductor(1, size));
        }
        if (argument instanceof ClockTime time) {
            return numbers.clock(time);
        }
        if (argument instanceof Enum<?> term) {
            return term(term);
        }
        if (argument instanceof LocalDate date) {
            return date(date);
        }
        if (argument instanceof YearMonth month) {
            return say(
                    "language.month-of-year",
                    sentence("language.month." + month.getMonthValue()),
                    Integer.toString(month.getYear()));
        }
        if (argument instanceof List<?> list) {
            return list(list.stream().map(this::word).toList());
        }
        if (argument instanceof Number number) {
            return numbers.plain(number.doubleValue());
        }
        // What stood in a file or came from a web host: a terminal must not obey it.
        return SafeText.shown(argument.toString());
    }

    /** The word for a constant: {@code Chemistry.AGM} is {@code term.chemistry.agm}. */
    public String term(Enum<?> constant) {
        return sentence("term." + kebab(constant.getDeclaringClass().getSimpleName()) + "."
                + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private static String kebab(String camelCase) {
        return camelCase.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /** A date with its month in words, so that day and month are never mistaken. */
    public String date(LocalDate date) {
        int day = date.getDayOfMonth();
        return say(
                "language.date",
                day == 1 ? sentence("language.date.first") : Integer.toString(day),
                sentence("language.month." + date.getMonthValue()),
                Integer.toString(date.getYear()));
    }

    /** Sounds like i: Spanish then says "e" for "and", but not before hie- and hia- (Real Academia, from memory). */
    private static final Pattern BEFORE_I = Pattern.compile("(?iu)(?:h?[ií])(?![aeo])");

    /** Words in a row: "a, b and c". */
    public String list(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        List<String> first = new ArrayList<>(words.subList(0, words.size() - 1));
        String last = words.get(words.size() - 1);
        return say(
                BEFORE_I.matcher(last).lookingAt() ? "language.list.before-i" : "language.list",
                String.join(", ", first),
                last);
    }
}
