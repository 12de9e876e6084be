package org.quaybook.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.calc.Ending;
import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.diag.Severity;
import org.quaybook.figures.AcFigures;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.BondLogic;
import org.quaybook.figures.SupplyMode;
import org.quaybook.job.BreakerCurve;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Chemistry;
import org.quaybook.job.CraftKind;
import org.quaybook.job.EarthKind;
import org.quaybook.job.FuseFamily;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Height;
import org.quaybook.job.Laid;
import org.quaybook.job.LoadKind;
import org.quaybook.job.NeutralBond;
import org.quaybook.job.Outcome;
import org.quaybook.job.Pole;
import org.quaybook.job.Provenance;
import org.quaybook.job.RcdType;
import org.quaybook.job.Route;
import org.quaybook.job.Side;
import org.quaybook.job.Source;
import org.quaybook.job.TakeOff;
import org.quaybook.job.TestKind;
import org.quaybook.job.Wave;
import org.quaybook.job.WhenShoreFails;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Stated;
import org.quaybook.reference.Citation;

class WordsTest {

    private final Words words = Words.of("en-GB");

    /** The constants that documents and messages may say. */
    static Stream<Enum<?>> terms() {
        return Stream.<Enum<?>[]>of(
                        Chemistry.values(),
                        CraftKind.values(),
                        TakeOff.values(),
                        Wave.values(),
                        NeutralBond.values(),
                        ChangeoverKind.values(),
                        WhenShoreFails.values(),
                        Route.values(),
                        FuseFamily.values(),
                        BreakerCurve.values(),
                        RcdType.values(),
                        Source.values(),
                        ChargeKind.values(),
                        LoadKind.values(),
                        TestKind.values(),
                        Outcome.values(),
                        Side.values(),
                        Laid.values(),
                        Height.values(),
                        EarthKind.values(),
                        FuseRole.values(),
                        Pole.values(),
                        SupplyMode.values(),
                        BondLogic.BondPlace.values(),
                        BondLogic.Verdict.values(),
                        AcFigures.Opener.values(),
                        Provenance.values(),
                        Severity.values(),
                        Ending.values(),
                        ApplianceFigures.Verdict.values(),
                        Citation.Standing.values())
                .flatMap(Stream::of);
    }

    @ParameterizedTest
    @MethodSource("terms")
    void everyConstantHasAWord(Enum<?> constant) {
        assertThat(words.term(constant)).isNotBlank();
    }

    @Test
    void aMissingKeyIsTheProgramsMistake() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> words.sentence("no.such.key"))
                .withMessageContaining("no.such.key");
        assertThatIllegalArgumentException().isThrownBy(() -> Words.of("xx"));
    }

    @Test
    void aPlaceWithoutAnArgumentIsTheProgramsMistake() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> words.say("language.list", "only one"))
                .withMessageContaining("{1}");
    }

    @Test
    void placesAreFilledAsTheyAre() {
        assertThat(words.say("language.list", "a$1", "b\\{0}")).isEqualTo("a$1 and b\\{0}");
    }

    @Test
    void argumentsOfEveryKind() {
        MessageKey list = () -> "language.list";
        assertThat(words.say(Message.of(list, Stated.up(new Current(165.2)), new Current(12.5))))
                .isEqualTo("166\u00A0A and 12.5\u00A0A");
        assertThat(words.word(Message.of(list, 3, FuseFamily.CLASS_T))).isEqualTo("3 and class T");
        assertThat(words.word(LocalDate.of(2026, 5, 14))).isEqualTo("14 May 2026");
        assertThat(words.word(YearMonth.of(2026, 12))).isEqualTo("December 2026");
        assertThat(words.word(List.of("a", "b", "c"))).isEqualTo("a, b and c");
        assertThat(words.word(List.of("a"))).isEqualTo("a");
        assertThat(words.word(List.of())).isEmpty();
    }

    @Test
    void everySentenceSaysSomething() {
        for (String key : words.keys()) {
            assertThat(words.sentence(key)).as(key).isNotBlank().doesNotContain("TODO");
        }
    }

    /** Real Academia Española, Diccionario panhispánico de dudas, "y": e before the sound i, not before hie- (from memory). */
    @Test
    void spanishSaysEBeforeI() {
        Words spanish = Words.of("es");
        assertThat(spanish.list(List.of("verano", "invierno"))).isEqualTo("verano e invierno");
        assertThat(spanish.list(List.of("cobre", "hierro"))).isEqualTo("cobre y hierro");
        assertThat(spanish.list(List.of("cocina", "salón"))).isEqualTo("cocina y salón");
        assertThat(Words.of("nl").list(List.of("a", "inverter"))).isEqualTo("a en inverter");
    }
}
