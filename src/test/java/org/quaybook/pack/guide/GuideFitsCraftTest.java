package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.DemoJobs;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.CraftKind;
import org.quaybook.record.Edition;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/**
 * The guide speaks of no source and no part that the job has not. The words to look for are this project's own choice, by
 * the terms that its languages use.
 */
class GuideFitsCraftTest {

    private enum Thing {
        SHORE,
        GENERATOR,
        ENGINE,
        SOLAR,
        BOAT,
        CHANGEOVER_BY_HAND,
        GALVANIC_ISOLATOR
    }

    private static final Map<Thing, Map<String, String>> WORDS_OF = Map.of(
            Thing.SHORE,
                    Map.of(
                            "en", "\\bshore\\b|without the mains|pedestal|supply point",
                            "de", "Landstrom|Stromsäule|Anschlussstelle|ohne Netz\\b|Ausgesteckt",
                            "fr", "\\bquai\\b|borne de l’emplacement|borne d’alimentation|courant extérieur",
                            "nl", "walstroom|\\bwal\\b|stroompaal|aansluitpunt|zonder net",
                            "es", "corriente exterior|cable exterior|torreta|sin la red|punto de suministro"),
            Thing.GENERATOR,
                    Map.of(
                            "en", "generator",
                            "de", "Generator",
                            "fr", "groupe électrogène|\\bgroupe\\b",
                            "nl", "generator",
                            "es", "generador"),
            Thing.ENGINE,
                    Map.of(
                            "en", "\\bengine|alternator",
                            "de", "\\bMotor|Lichtmaschine",
                            "fr", "\\bmoteur|alternateur",
                            "nl", "\\bmotor|dynamo",
                            "es", "\\bmotor|alternador"),
            Thing.SOLAR,
                    Map.of(
                            "en", "\\bsolar",
                            "de", "\\bSolar",
                            "fr", "solaire",
                            "nl", "zonnepane",
                            "es", "\\bsolar"),
            Thing.BOAT,
                    Map.of(
                            "en", "on board|\\bhatch|\\bbilge|\\bswim|\\bafloat|\\bVHF|\\bboat|\\banode",
                            "de", "an Bord|\\bLuke|\\bBilge|schwimm|UKW|\\bBoot(?!e und Freizeit)|\\bAnode",
                            "fr",
                                    "à bord|\\bquais?\\b|portes et panneaux|\\bcale\\b|\\bnag|\\bVHF|\\bbateau(?!x et de)|\\banode",
                            "nl", "aan boord|\\bluik|lenspomp|zwem|marifoon|\\bboot|\\banode",
                            "es", "a bordo|escotilla|achique|\\bnad[ae]\\b donde|\\bVHF|\\bbarco(?!s y veh)|ánodo"),
            Thing.CHANGEOVER_BY_HAND,
                    Map.of(
                            "en", "turn the changeover",
                            "de", "den Umschalter auf",
                            "fr", "l’inverseur sur",
                            "nl", "zet de omschakelaar",
                            "es", "ponga el conmutador"),
            Thing.GALVANIC_ISOLATOR,
                    Map.of(
                            "en", "galvanic isolator",
                            "de", "galvanische[nr]? Isolator",
                            "fr", "isolateur galvanique",
                            "nl", "galvanische isolator",
                            "es", "aislador galvánico"));

    /** Symptoms of an appliance with a motor, which is no engine. */
    private static final List<String> OTHER_MOTORS =
            List.of("guide.trouble.start", "guide.trouble.start.cause", "guide.trouble.start.do");

    static Stream<Arguments> guides() {
        return DemoJobs.ALL.stream()
                .flatMap(demo -> Words.languages().stream().map(language -> Arguments.of(demo, language)));
    }

    @ParameterizedTest
    @MethodSource("guides")
    void saysNothingOfWhatIsNotThere(String demo, String language) {
        DemoJob job = DemoJob.of(demo);
        Words words = lacking(job).contains(Thing.BOAT) ? Words.of(language).onLand() : Words.of(language);
        String text = text(job, words);
        for (String key : OTHER_MOTORS) {
            text = text.replace(words.say(key), "");
        }
        for (Thing thing : lacking(job)) {
            Pattern pattern = pattern(thing, language);
            String searched = text;
            assertThat(pattern.matcher(searched)
                            .results()
                            .map(found -> around(searched, found))
                            .distinct())
                    .as("%s in %s says of %s", demo, language, thing)
                    .isEmpty();
        }
    }

    /** Where a thing is there, its words are too: else the patterns above would look for nothing. */
    @ParameterizedTest
    @MethodSource("guides")
    void saysSomethingOfWhatIsThere(String demo, String language) {
        DemoJob job = DemoJob.of(demo);
        String text = text(job, Words.of(language));
        Set<Thing> lacking = lacking(job);
        for (Thing thing : List.of(Thing.SHORE, Thing.GENERATOR, Thing.ENGINE, Thing.SOLAR, Thing.BOAT)) {
            if (!lacking.contains(thing)) {
                assertThat(text)
                        .as("%s in %s says nothing of %s", demo, language, thing)
                        .containsPattern(pattern(thing, language));
            }
        }
    }

    private static Pattern pattern(Thing thing, String language) {
        return Pattern.compile(
                Objects.requireNonNull(
                        Objects.requireNonNull(WORDS_OF.get(thing)).get(language.substring(0, 2))),
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    private static String around(String text, MatchResult found) {
        return text.substring(Math.max(0, found.start() - 60), Math.min(text.length(), found.end() + 60));
    }

    private static Set<Thing> lacking(DemoJob job) {
        Equipment has = new Equipment(job.assessment());
        List<Thing> lacking = new ArrayList<>();
        add(lacking, Thing.SHORE, has.shore());
        add(lacking, Thing.GENERATOR, has.generator());
        add(lacking, Thing.ENGINE, has.engine());
        add(lacking, Thing.SOLAR, has.chargedBy(ChargeKind.SOLAR));
        add(lacking, Thing.BOAT, job.assessment().job().craft().kind() == CraftKind.BOAT);
        add(lacking, Thing.CHANGEOVER_BY_HAND, has.changeoverByHand());
        add(lacking, Thing.GALVANIC_ISOLATOR, has.galvanicIsolator());
        return Set.copyOf(lacking);
    }

    private static void add(List<Thing> lacking, Thing thing, boolean there) {
        if (!there) {
            lacking.add(thing);
        }
    }

    /** All that the pages say, the texts of their pictures included. */
    private static String text(DemoJob job, Words words) {
        Edition edition = new Edition(job.assessment(), words);
        Map<String, Object> model = new GuideModel(edition.assessment(), edition.words(), job.branding())
                .printed(PageFormat.A5, new CardSetting(CardDetail.FULL, "9"), Set.of());
        return Templates.builtIn()
                .fill("guide/guide.ftlx", model)
                .replaceAll("(?s)<style.*?</style>", " ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("[\\s\\u00a0]+", " ");
    }
}
