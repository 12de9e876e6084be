package org.quaybook.pack.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.DemoJobs;
import org.quaybook.figures.ChangedDemo;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Formula;
import org.quaybook.figures.Reason;
import org.quaybook.pack.Road;
import org.quaybook.pack.labels.LabelReason;
import org.quaybook.pack.workings.Workings.Places;
import org.quaybook.pack.workings.Workings.Worked;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.AmpacityTable;
import org.quaybook.reference.Batteries;
import org.quaybook.reference.Found;
import org.quaybook.reference.Rulebook;
import org.quaybook.text.Words;

/** Workings in words. */
class WorkingsTest {

    private static final Words WORDS = Words.of("en-GB");

    private static Workings of(String demo, Places places) {
        return new Workings(ChangedDemo.of(demo).figures(), WORDS, places);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void namesEveryFigureAndEveryOrigin(String demo) {
        assertThat(of(demo, Places.PATH).all()).hasSizeGreaterThan(60).allSatisfy(figure -> {
            assertThat(figure.name()).isNotBlank().doesNotContain("{", "null");
            assertThat(figure.value()).isNotBlank();
            assertThat(figure.source()).isNotBlank();
            assertThat(figure.inputs()).allSatisfy(input -> {
                assertThat(input.value()).isNotBlank();
                assertThat(input.origin()).isNotBlank().doesNotContain("{", "null");
            });
        });
    }

    /** The same figure, the place of its input told as far as the reader can use it. */
    @Test
    void tellsPlacesInThreeWays() {
        assertThat(origin(Places.PATH)).isEqualTo("job file, cables[0].length: measured");
        assertThat(origin(Places.LINE)).matches("job file, cables\\[0]\\.length in line \\d+: measured");
        assertThat(origin(Places.FILE)).matches("job: cables\\[0]\\.length \\(lantern-moth:\\d+:\\d+\\), measured");
    }

    /** What was read at a visit stands in another file, and so do its lines. */
    @Test
    void tellsPlacesOfTheServiceLog() throws IOException {
        Path demo = Path.of("demo-jobs", "marmalade-meridian");
        Figures figures = Objects.requireNonNull(Road.judge(demo).assessment()).figures();
        List<String> lines = Files.readAllLines(demo.resolve("service.yaml"));
        int line = 1;
        while (!lines.get(line - 1).contains("result: 61 ms")) {
            line++;
        }
        assertThat(latest(figures, Places.LINE))
                .isEqualTo("service log, entries[2].readings[1].result in line " + line + ": stated");
        assertThat(latest(figures, Places.PATH)).isEqualTo("service log, entries[2].readings[1].result: stated");
    }

    private static String latest(Figures figures, Places places) {
        return new Workings(figures, WORDS, places)
                .of("test.rcd-trip-r2-inverter.latest")
                .orElseThrow()
                .inputs()
                .get(0)
                .origin();
    }

    private static String origin(Places places) {
        return of("lantern-moth", places).of("cable.B1.cold-resistance").orElseThrow().inputs().stream()
                .filter(input -> input.symbol().equals("L"))
                .findFirst()
                .orElseThrow()
                .origin();
    }

    /** An input that is a figure carries that figure's name and reads as that figure does. */
    @Test
    void inputsThatAreFiguresLeadToThem() {
        Workings workings = of("lantern-moth", Places.PATH);
        Worked current = workings.of("inverter.worst-current").orElseThrow();
        assertThat(current.inputs()).isNotEmpty().allSatisfy(input -> {
            Worked figure = workings.of(input.figure().orElseThrow()).orElseThrow();
            assertThat(input.value()).isEqualTo(figure.value());
        });
    }

    /** Stevens and Corey measured lead-acid batteries (title of the paper, from memory): no source for lithium. */
    @ParameterizedTest
    @CsvSource({"hut-seventeen, false", "marmalade-meridian, true"})
    void sourcesFitTheChemistry(String demo, boolean leadAcid) {
        List<String> origins = of(demo, Places.PATH).all().stream()
                .filter(figure -> figure.key().startsWith("back."))
                .flatMap(figure -> figure.inputs().stream())
                .map(Workings.Entry::origin)
                .filter(origin -> origin.contains("battery handbooks"))
                .toList();
        assertThat(origins)
                .isNotEmpty()
                .allSatisfy(origin -> assertThat(origin.contains("lead-acid")).isEqualTo(leadAcid));
    }

    static List<String> languages() {
        return Words.languages();
    }

    static List<String> translations() {
        return languages().stream().filter(it -> !it.startsWith("en")).toList();
    }

    /** A formula is one of symbols, or has words, or takes a value over; and its source always has words. */
    @ParameterizedTest
    @MethodSource("languages")
    void everyFormulaHasItsWords(String language) {
        Words words = Words.of(language);
        for (Formula formula : Formula.values()) {
            assertThat(FormulaWords.text(formula, words).isBlank())
                    .as(formula.name())
                    .isEqualTo(formula.takesOver());
            assertThat(words.say(formula.source())).as(formula.name()).isNotBlank();
        }
        for (Reason reason : Reason.values()) {
            assertThat(words.say(reason)).as(reason.name()).isNotBlank();
        }
    }

    /** What has words that no list knows, or a decimal sign, belongs to the words of a language. */
    @Test
    void symbolsAloneReadAlikeInEveryLanguage() {
        Words german = Words.of("de");
        Set<String> symbols = WORDS.keys().stream()
                .filter(key -> key.startsWith("symbol."))
                .map(WORDS::sentence)
                .collect(Collectors.toSet());
        for (Formula formula : Formula.values()) {
            assertThat(Stream.of(formula.symbols().split("[^\\p{L}\\p{N}_.]+"))
                            .filter(token -> !symbols.contains(token)))
                    .as(formula.name())
                    .noneMatch(token -> token.matches(".*(\\p{L}{3,}|\\d\\.\\d).*"));
        }
        assertThat(FormulaWords.text(Formula.FUSE_LEAST, german)).isEqualTo("I ≥ I_Last / f");
        assertThat(FormulaWords.text(Formula.DROP, german))
                .isEqualTo("ΔU = I · r · L · (1 + 0,00393 · (T − 20 °C)) / Anzahl");
    }

    /** No word is left over that no formula and no input has. */
    @Test
    void everySymbolIsUsed() {
        ChangedDemo withProtectiveConductor = ChangedDemo.of(
                "lantern-moth",
                "earths:\n",
                "earths:\n  - { id: E9, kind: protective, from: a, to: b, of: A1, fitted: 4 mm2 }\n");
        Set<String> used = Stream.concat(
                        Stream.of(Formula.values())
                                .flatMap(formula -> Stream.of(
                                        FormulaWords.text(formula, WORDS).split("[^\\p{L}\\p{N}_]+"))),
                        new Workings(withProtectiveConductor.figures(), WORDS, Places.PATH)
                                .all().stream()
                                        .flatMap(figure -> figure.inputs().stream())
                                        .map(Workings.Entry::symbol))
                .collect(Collectors.toSet());
        assertThat(WORDS.keys().stream()
                        .filter(key -> key.startsWith("symbol."))
                        .map(WORDS::sentence)
                        .filter(symbol -> !used.contains(symbol)))
                .isEmpty();
    }

    /** Where a phrase differs by a letter from what tables, checks and labels say, nothing would be translated. */
    @Test
    void everyPhraseStandsInSomeSource() throws IOException {
        StringBuilder sources = new StringBuilder();
        try (Stream<Path> tables = Files.list(Path.of("shared"))) {
            for (Path table : tables.filter(Files::isRegularFile).sorted().toList()) {
                sources.append(Files.readString(table).replace("# number: ", ", "));
            }
        }
        for (LabelReason reason : LabelReason.values()) {
            sources.append(reason.citation().source()).append('\n');
        }
        for (Found<?> found : foundElsewhere()) {
            sources.append(found.row() + " " + found.citation().source()).append('\n');
        }
        for (String key : WORDS.keys()) {
            if (key.startsWith("citation.")) {
                String phrase = Stream.of(WORDS.sentence(key).split("\\{\\d}", -1))
                        .map(Pattern::quote)
                        .collect(Collectors.joining("[^\\s;,]+"));
                assertThat(sources).as(key).containsPattern(phrase);
            }
        }
    }

    /** What the look-ups themselves say about a row. */
    private static List<Found<?>> foundElsewhere() {
        AmpacityTable ampacity = Rulebook.named("iso-13297").ampacity();
        Temperature insulation = new Temperature(85);
        return List.of(
                ampacity.airFactor(insulation, new Temperature(45)),
                ampacity.spaceFactor(insulation, false),
                ampacity.bundleFactor(5, new Voltage(12)),
                ampacity.bundleFactor(30, new Voltage(12)),
                Rulebook.named("abyc-e11").ampacity().bundleFactor(5, new Voltage(12)),
                Batteries.standard().of("agm").blockResistance(new Voltage(12), new Charge(100)));
    }

    /** Titles of standards stay, the words about them are translated. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "de|IEC 60364-5-52:2009, Tabellen B.52.2 und B.52.3; Verlegeart C; zwei belastete Leiter",
                "fr|IEC 60364-5-52:2009, tableaux B.52.2 et B.52.3\u00A0; méthode C\u00A0; deux conducteurs chargés",
                "nl|IEC 60364-5-52:2009, tabellen B.52.2 en B.52.3; methode C; twee belaste geleiders",
                "es|IEC 60364-5-52:2009, tablas B.52.2 y B.52.3; método C; dos conductores cargados",
                "en-US|IEC 60364-5-52:2009, Tables B.52.2 and B.52.3; method C; two loaded conductors"
            })
    void sourcesKeepTheirTitles(String language, String expected) {
        assertThat(Words.of(language)
                        .cited("IEC 60364-5-52:2009, Tables B.52.2 and B.52.3; method C; two loaded conductors"))
                .isEqualTo(expected);
    }

    /** What a guide prints about a formula or a table has no English words left. */
    @ParameterizedTest
    @MethodSource("translations")
    void noEnglishIsLeft(String language) {
        Pattern english = Pattern.compile(
                "(?<![\\w-])(the|and|with|from|common|law|laws|than|which|nobody|usual practice|conductors|Tables|below|tinned|plain)(?![\\w-])");
        for (String demo : DemoJobs.ALL) {
            Workings workings = new Workings(ChangedDemo.of(demo).figures(), Words.of(language), Places.PATH);
            for (Worked figure : workings.all()) {
                assertThat(figure.formula() + " · " + figure.source()).doesNotContainPattern(english);
                assertThat(figure.inputs().stream()
                                .filter(input -> input.figure().isEmpty())
                                .map(Workings.Entry::origin))
                        .noneMatch(origin -> english.matcher(origin).find());
            }
        }
    }

    @Test
    void knowsNoOthers() {
        assertThat(of("lantern-moth", Places.PATH).of("no.such.figure")).isEmpty();
    }
}
