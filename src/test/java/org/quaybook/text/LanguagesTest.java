package org.quaybook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** Every language says all that is handed over, with the same places filled, and nothing in English that need not be. */
class LanguagesTest {

    private static final Path WORDS = Path.of("templates/words");
    private static final String FIRST = "en-GB";
    private static final Pattern PLACE = Pattern.compile("\\{\\d}");
    private static final Pattern WORD = Pattern.compile("\\p{L}{4,}");

    /** Letters with an index, single capitals, numbers and signs: what no language has in its words. */
    private static final Pattern SYMBOL =
            Pattern.compile("\\p{L}[₀-₉ᵢ]+|\\p{L}_[a-z-]+|(?<![\\p{L}’'])\\p{Lu}(?![\\p{L}’'])"
                    + "|\\d+(?:\\.\\d+)?|[·/+−=≤≥<>√Σ∫²±^]");

    static List<String> translations() {
        return Words.languages().stream()
                .filter(language -> !language.startsWith("en"))
                .toList();
    }

    private static Map<String, String> file(String language, String area) {
        Path file = WORDS.resolve(language).resolve(area + ".properties");
        Properties properties = new Properties();
        if (Files.exists(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                properties.load(reader);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
        return properties.entrySet().stream()
                .collect(Collectors.toMap(
                        entry -> entry.getKey().toString(),
                        entry -> entry.getValue().toString(),
                        (a, b) -> b,
                        TreeMap::new));
    }

    private static final Pattern QUAY = Pattern.compile("(?iu)(?<!\\p{L})quais?(?!\\p{L})");

    private static Set<String> areas(String language) throws IOException {
        try (Stream<Path> files = Files.list(WORDS.resolve(language))) {
            return files.map(file -> file.getFileName().toString().replace(".properties", ""))
                    .filter(area -> !area.equals("on-land"))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static Map<String, String> handedOver(String language) {
        Map<String, String> all = new TreeMap<>();
        Words.handedOver().forEach(area -> all.putAll(file(language, area)));
        return all;
    }

    private static List<String> places(String sentence) {
        return PLACE.matcher(sentence)
                .results()
                .map(MatchResult::group)
                .distinct()
                .sorted()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("translations")
    void noKeyIsMissingAndNoneIsLeftOver(String language) throws IOException {
        assertThat(areas(language)).containsExactlyInAnyOrderElementsOf(Words.handedOver());
        for (String area : Words.handedOver()) {
            assertThat(file(language, area).keySet())
                    .as(language + " " + area)
                    .isEqualTo(file(FIRST, area).keySet());
        }
    }

    @ParameterizedTest
    @MethodSource("translations")
    void theSamePlacesAreFilled(String language) {
        Map<String, String> english = handedOver(FIRST);
        handedOver(language)
                .forEach((key, sentence) -> assertThat(places(sentence))
                        .as(language + " " + key)
                        .isEqualTo(places(english.getOrDefault(key, ""))));
    }

    /** What a language may share with English, word for word, stands in the file beside this test with its key. */
    /** What is worked out in the English one is what a reader of another language sees; only the order of words may differ. */
    @ParameterizedTest
    @MethodSource("translations")
    void formulasHaveTheSameSymbolsAndSigns(String language) {
        Map<String, String> english = file(FIRST, "workings");
        Map<String, String> formulas = new TreeMap<>(file(language, "workings"));
        formulas.keySet().removeIf(key -> !key.startsWith("formula.") || key.startsWith("formula.source."));
        assertThat(formulas)
                .isNotEmpty()
                .allSatisfy((key, formula) -> assertThat(symbols(formula))
                        .as(language + " " + key)
                        .isEqualTo(symbols(english.getOrDefault(key, ""))));
    }

    private static List<String> symbols(String formula) {
        return SYMBOL.matcher(formula.replaceAll("(\\d),(\\d)", "$1.$2"))
                .results()
                .map(MatchResult::group)
                .sorted()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("translations")
    void nothingIsLeftInEnglish(String language) throws IOException {
        Map<String, String> english = handedOver(FIRST);
        Set<String> allowed = Set.copyOf(Files.readAllLines(Path.of("src/test/resources/words/same-as-english.txt")));
        assertThat(handedOver(language).entrySet().stream()
                        .filter(entry -> WORD.matcher(entry.getValue()).find())
                        .filter(entry -> entry.getValue().equals(english.get(entry.getKey())))
                        .map(entry -> language + " " + entry.getKey())
                        .filter(entry -> !allowed.contains(entry)))
                .isEmpty();
    }

    /** A slip of the pen; languages that may say a word twice do so with short ones only. */
    @ParameterizedTest
    @MethodSource("org.quaybook.text.Words#languages")
    void noLongWordIsSaidTwiceInARow(String language) {
        assertThat(handedOver(language))
                .allSatisfy((key, sentence) -> assertThat(sentence)
                        .as(key)
                        .doesNotContainPattern("(?iu)(?<!\\p{L})(\\p{L}{4,}) \\1(?!\\p{L})"));
    }

    @Test
    void aVariantSaysOnlyWhatItSaysOtherwise() throws IOException {
        for (String area : areas("en-US")) {
            Map<String, String> british = file(FIRST, area);
            file("en-US", area).forEach((key, sentence) -> {
                assertThat(british).as(area).containsKey(key);
                assertThat(sentence).as(key).isNotEqualTo(british.get(key));
                assertThat(places(sentence)).as(key).isEqualTo(places(british.getOrDefault(key, "")));
            });
        }
    }

    /** Imprimerie nationale, Lexique des règles typographiques (from memory): no line begins with these signs or ends with «. */
    @Test
    void frenchSignsStayWithTheirWords() {
        Map<String, String> said = new TreeMap<>(handedOver("fr"));
        file("fr", "on-land").forEach((key, sentence) -> said.put("on land: " + key, sentence));
        assertThat(said)
                .allSatisfy((key, sentence) -> assertThat(sentence).as(key).doesNotContainPattern(" [:;!?»]|« "));
    }

    /** The same Lexique (from memory): a space before them where sources stand in a row, too. */
    @Test
    void sourcesInARowKeepToTheLanguage() {
        String sources = "battery handbooks; common practice: ISO 13297:2020";
        assertThat(Words.of("fr").cited(sources))
                .isEqualTo("manuels de batteries\u00A0; usage courant\u00A0: ISO 13297:2020");
        assertThat(Words.of("de").cited(sources)).isEqualTo("Batteriehandbücher; übliche Praxis: ISO 13297:2020");
        assertThat(Words.of("en-GB").cited(sources)).isEqualTo(sources);
    }

    /** ISO 80000-1, 7.1.4 (from memory) asks for a space; that no line ends between number and unit is common practice, no source. */
    @ParameterizedTest
    @MethodSource("translations")
    void unitsStayWithTheirNumbers(String language) {
        assertThat(handedOver(language).entrySet().stream()
                        .filter(entry -> !entry.getKey().startsWith("formula."))
                        .toList())
                .allSatisfy(entry -> assertThat(entry.getValue())
                        .as(entry.getKey())
                        .doesNotContainPattern("[\\d}] (%|mV|kA|mA|V|A|K|°C)(?![\\p{L}’])"));
    }

    /** Nouns that a count stands before. */
    private static final Pattern COUNTED = Pattern.compile(
            "\\{0} (?:[a-z]+ )?(?:sources|switches|strings|blocks|labels|answers|languages|times|spaces|cells|columns|batteries|circuits|jobs|visits|lamps)\\b");

    /** Said of two or more only, or of a fixed number: nothing else says them. */
    private static final Set<String> NEVER_ONE = Set.of(
            "check.string-fuses",
            "check.strings-many",
            "would-do.strings",
            "would-do.strings-or-larger",
            "guide.card.on.isolators-all",
            "guide.card.leave.isolators-all",
            "guide.card.leave.isolators-then-all",
            "guide.off.switches",
            "guide.off.switches-listed",
            "guide.off.switches-counted.solar",
            "guide.off.switches-counted.wind",
            "guide.off.switches-counted.battery",
            "pictures.layout.series",
            "pictures.layout.both",
            "labels.responder.switches",
            "labels.responder.switches-listed",
            "labels.sources.title",
            "labels.switches.all",
            "labels.switches.all-listed",
            "labels.live.avoid",
            "job.label-languages",
            "job.take-off-missing");

    @Test
    void whatCanBeOneIsSaidOfOneToo() {
        Words english = Words.of(FIRST);
        assertThat(english.keys().stream()
                        .filter(key -> COUNTED.matcher(english.sentence(key)).find())
                        .filter(key -> !NEVER_ONE.contains(key) && !english.has(key + ".singular")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en-GB|One source: shore. It must be off.|2 sources: shore. All must be off.",
                "en-US|One source: shore. It must be off.|2 sources: shore. All must be off.",
                "de|Eine Quelle: shore. Sie muss aus sein.|2 Quellen: shore. Alle müssen aus sein.",
                "fr|Une source\u00A0: shore. Elle doit être coupée.|2 sources\u00A0: shore. Toutes doivent être coupées.",
                "nl|Eén bron: shore. Die moet uit.|2 bronnen: shore. Ze moeten allemaal uit.",
                "es|Una fuente de corriente: shore. Debe quedar cortada.|Fuentes de corriente (2): shore. Todas deben quedar cortadas."
            })
    void oneAndTwoAreSaidAsTheLanguageHasIt(String language, String one, String two) {
        Words words = Words.of(language);
        assertThat(words.say("record.danger.sources", 1, List.of("shore"))).isEqualTo(one);
        assertThat(words.say("record.danger.sources", 2, List.of("shore"))).isEqualTo(two);
    }

    /** ISO 13297 is for small craft (its title): a cabin that is wired by a rule of it follows common practice. */
    @ParameterizedTest
    @MethodSource("org.quaybook.text.Words#languages")
    void aBoatStandardIsCommonPracticeOnLand(String language) {
        Words words = Words.of(language);
        String practice = words.cited("common practice");
        for (String source : List.of("ISO 13297:2020 6.8", "ISO 10133:2012 4.7", "ABYC E-11", "46 CFR 111.30-15")) {
            assertThat(words.cited(source)).isEqualTo(source);
            assertThat(words.onLand().cited(source)).startsWith(source).contains(practice);
        }
        assertThat(words.onLand().cited("IEC 60364-6 6.4.3.6")).isEqualTo("IEC 60364-6 6.4.3.6");
    }

    /** A cabin has no board to be on. */
    @Test
    void frenchChecksOnLandAreNotAboard() {
        Words onLand = Words.of("fr").onLand();
        assertThat(onLand.keys().stream()
                        .filter(key -> key.startsWith("check."))
                        .filter(key -> onLand.sentence(key).contains("à bord")))
                .isEmpty();
    }

    /**
     * An almost full bank takes less than a usual day brings: every language says at most, in the sentences for land too.
     * Own requirement.
     */
    @ParameterizedTest
    @MethodSource("org.quaybook.text.Words#languages")
    void whatADayBringsIsAtMost(String language) {
        Pattern most = Pattern.compile("\\b(up to|bis zu|au plus|hasta|hoogstens) \\{0}");
        Words onLand = Words.of(language).onLand();
        assertThat(onLand.keys().stream()
                        .filter(key -> key.matches("guide\\.seasons\\.(summer|winter)\\.brings.*"
                                + "|guide\\.run\\.day\\.(summer|winter)\\.(covers|falls-short).*")))
                .isNotEmpty()
                .allSatisfy(key -> assertThat(onLand.sentence(key)).as(key).containsPattern(most));
    }

    /** A motorhome and a cabin have no board to be on; what is told of boats alone may name it. */
    @ParameterizedTest
    @MethodSource("org.quaybook.text.Words#languages")
    void nothingOnLandIsAboard(String language) {
        Pattern aboard =
                Pattern.compile("(?iu)(?<!\\p{L})(aboard|on board|an Bord|à bord|a bordo|aan boord)(?!\\p{L})");
        Words onLand = Words.of(language).onLand();
        assertThat(onLand.keys().stream()
                        .filter(key -> aboard.matcher(onLand.sentence(key)).find()))
                .containsExactlyInAnyOrder("guide.aboard.boat", "guide.trouble.anodes.cause");
    }

    /** One thing has one name: what the guide calls old and cold is nowhere worn and cold. */
    @Test
    void theOldAndColdBatteryHasOneName() {
        Words english = Words.of(FIRST);
        assertThat(english.keys().stream()
                        .filter(key -> english.sentence(key)
                                .matches("(?i).*\\bworn(,| and) cold\\b.*|.*\\bworn battery\\b.*")))
                .isEmpty();
    }

    /** Only boats lie at a quay: by the plain sense of the word. What only boats are told may name it. */
    @Test
    void frenchOnLandNamesNoQuay() {
        Words onLand = Words.of("fr").onLand();
        Map<String, String> said = file("fr", "on-land");
        assertThat(said)
                .allSatisfy((key, sentence) ->
                        assertThat(sentence).as(key).isNotEqualTo(Words.of("fr").sentence(key)));
        assertThat(onLand.keys().stream()
                        .filter(key -> QUAY.matcher(onLand.sentence(key)).find())
                        .filter(key -> !key.startsWith("labels.swim."))
                        .toList())
                .containsExactlyInAnyOrder(
                        "guide.post.boat",
                        "guide.trouble.anodes.cause",
                        "guide.trouble.anodes.do",
                        "guide.trouble.anodes.do.isolator",
                        "guide.trouble.anodes.do.transformer",
                        "check.galvanic-isolator",
                        "check.galvanic-isolator.remedy");
    }

    /** German speaks of a supply on land anyway: only boat standards are said otherwise, and nobody is told not to swim. */
    @Test
    void aLanguageWhoseWordsServeOnLandKeepsThem() {
        Words german = Words.of("de");
        Words onLand = german.onLand();
        assertThat(german.keys().stream().filter(key -> !german.sentence(key).equals(onLand.sentence(key))))
                .containsExactlyInAnyOrder(
                        "language.boat-rule", "check.leakage-measured.remedy", "check.leakage-measured.owner");
    }

    /** What the British say and Americans do not, by common practice of American yards and dictionaries (from memory). */
    @Test
    void theAmericanGuideSpeaksAmerican() {
        Words american = Words.of("en-US");
        Pattern british = Pattern.compile(
                "(?i)\\b(colours?|harbours?|neighbours?|grey|metres?|centres?|earth(ed|ing)?|mains|RCDs?|shore post|berths?|sockets?|torch|spanner|aluminium)\\b");
        assertThat(handedOver(FIRST).keySet().stream()
                        .filter(key -> british.matcher(american.sentence(key)).find())
                        .map(key -> key + " = " + american.sentence(key)))
                .isEmpty();
    }

    /** No hyphenation is at work in the layout: a word must fit a column of a label or a table. */
    @ParameterizedTest
    @MethodSource("translations")
    void wordsAreNotTooLongForAColumn(String language) {
        assertThat(handedOver(language).values().stream()
                        .flatMap(sentence -> Arrays.stream(sentence.split("[\\s\\u00A0\\u202F/–-]+")))
                        .filter(word -> word.length() > 30))
                .isEmpty();
    }

    /**
     * Decimal sign and grouping by the rules of each language: Duden and DIN 1333 (de), Lexique de l’Imprimerie nationale
     * (fr), Taaladvies (nl), Ortografía de la RAE 2010 (es); all from memory. Space before % in de, fr and es: DIN 5008,
     * Lexique, RAE, from memory; Dutch and English would do without, but SI (ISO 80000-1, 7.1.4) asks for the space.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en-GB|12.85\u00A0V|17.7\u00A0kWh|20\u00A0%|−5\u00A0°C|14 May 2026",
                "en-US|12.85\u00A0V|17.7\u00A0kWh|20\u00A0%|23\u00A0°F (−5\u00A0°C)|May 14, 2026",
                "de|12,85\u00A0V|17,7\u00A0kWh|20\u00A0%|−5\u00A0°C|14.\u00A0Mai 2026",
                "fr|12,85\u00A0V|17,7\u00A0kWh|20\u00A0%|−5\u00A0°C|14 mai 2026",
                "nl|12,85\u00A0V|17,7\u00A0kWh|20\u00A0%|−5\u00A0°C|14 mei 2026",
                "es|12,85\u00A0V|17,7\u00A0kWh|20\u00A0%|−5\u00A0°C|14 de mayo de 2026"
            })
    void numbersAndDatesFollowTheLanguage(
            String language, String volts, String energy, String share, String cold, String date) {
        Words words = Words.of(language);
        Numbers numbers = words.numbers();
        assertThat(List.of(
                        numbers.say(new Voltage(12.85), Rounding.NEAREST),
                        numbers.say(new Energy(17_700), Rounding.NEAREST),
                        numbers.say(new Ratio(0.2), Rounding.NEAREST),
                        numbers.say(new Temperature(-5), Rounding.NEAREST),
                        words.date(LocalDate.of(2026, 5, 14))))
                .containsExactly(volts, energy, share, cold, date);
    }

    /** French alone counts the first day of a month as an ordinal (Lexique de l’Imprimerie nationale, from memory). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en-GB|1 March 2031",
                "en-US|March 1, 2031",
                "de|1.\u00A0März 2031",
                "fr|1er mars 2031",
                "nl|1 maart 2031",
                "es|1 de marzo de 2031"
            })
    void theFirstOfAMonthFollowsTheLanguage(String language, String date) {
        assertThat(Words.of(language).date(LocalDate.of(2031, 3, 1))).isEqualTo(date);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"en-GB|12,345", "en-US|12,345", "de|12.345", "fr|12\u00A0345", "nl|12.345", "es|12\u00A0345"})
    void longNumbersAreGrouped(String language, String grouped) {
        assertThat(Words.of(language).numbers().plain(12_345)).isEqualTo(grouped);
        assertThat(Words.of(language).numbers().plain(1234)).isEqualTo("1234");
    }

    @ParameterizedTest
    @CsvSource({"en-GB,days", "de,Tage", "fr,jours", "nl,dagen", "es,días"})
    void manyHoursAreDays(String language, String days) {
        assertThat(Words.of(language).numbers().say(new TimeSpan(240 * 3600.0), Rounding.DOWN))
                .isEqualTo("10\u00A0" + days);
    }

    /** ISO 3864-2 and ANSI Z535.4 words as technical manuals print them; see docs/check-values.md for where each was seen. */
    @ParameterizedTest
    @CsvSource({
        "en-GB,DANGER,WARNING,CAUTION,NOTICE",
        "de,GEFAHR,WARNUNG,VORSICHT,HINWEIS",
        "fr,DANGER,AVERTISSEMENT,ATTENTION,AVIS",
        "nl,GEVAAR,WAARSCHUWING,VOORZICHTIG,LET OP",
        "es,PELIGRO,ADVERTENCIA,PRECAUCIÓN,AVISO"
    })
    void signalWordsAreTheEstablishedOnes(
            String language, String danger, String warning, String caution, String notice) {
        Words words = Words.of(language);
        assertThat(Stream.of("danger", "warning", "caution", "notice")
                        .map(level -> words.sentence("guide.signal." + level)))
                .containsExactly(danger, warning, caution, notice);
    }

    @Test
    void theInstallerReadsHisEnglish() {
        assertThat(Words.forInstaller(List.of("de", "fr")).language()).isEqualTo("en-GB");
        assertThat(Words.forInstaller(List.of("fr", "en-US")).language()).isEqualTo("en-US");
        assertThat(Words.forInstaller(List.of("en-US", "en-GB")).has("worksheet.head"))
                .isTrue();
    }
}
