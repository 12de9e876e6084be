package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.diag.Message;

/** Words of the trade lead to the values of the format: common practice, no source, unless one is named. */
class TradeWordsTest {

    /** Laying methods A2, B2 and C as IEC 60364-5-52, table B.52.1, names them (from memory). */
    @ParameterizedTest
    @CsvSource({
        "Chemistry, lifepo4, lithium-iron-phosphate",
        "Chemistry, LiFePO4, lithium-iron-phosphate",
        "Chemistry, LFP, lithium-iron-phosphate",
        "Chemistry, lead, 'flooded, agm, gel'",
        "Chemistry, Lead-Acid, 'flooded, agm, gel'",
        "Chemistry, VRLA, 'agm, gel'",
        "Chemistry, wet, flooded",
        "Wave, pure sine wave, sine",
        "Wave, quasi_sine, modified",
        "BreakerCurve, type C, C",
        "RcdType, Type A, A",
        "CraftKind, narrowboat, boat",
        "CraftKind, camper-van, motorhome",
        "Route, engine room, engine-space",
        "Laid, method B2, in-conduit",
        "FuseFamily, circuit breaker, dc-breaker",
        "ChargeKind, PV, solar",
        "ChangeoverKind, transfer switch, 'automatic, manual'",
        "NeutralBond, floating, none",
        "Pole, +, positive",
        "Pole, -, negative",
        "TestKind, RCD, 'rcd-trip, rcd-button'",
    })
    void leadsToTheValuesMeant(String type, String word, String meant) throws ClassNotFoundException {
        assertThat(String.join(", ", TradeWords.meant(Class.forName("org.quaybook.job." + type), word)))
                .isEqualTo(meant);
    }

    /** Cells with nickel, manganese and cobalt have other voltages than those of lithium iron phosphate. */
    @Test
    void leavesWhatIsSomethingElse() {
        assertThat(TradeWords.meant(Chemistry.class, "NMC")).isEmpty();
        assertThat(TradeWords.meant(Chemistry.class, "li-ion")).isEmpty();
        assertThat(TradeWords.meant(Wave.class, "square")).isEmpty();
        assertThat(TradeWords.meant(BreakerCurve.class, "K")).isEmpty();
        assertThat(TradeWords.meant(RcdType.class, "S")).isEmpty();
    }

    @Test
    void asksForOneOrForOneOfSeveral() {
        assertThat(hints("lifepo4")).containsExactly(Message.of(JobMessage.DID_YOU_MEAN, "lithium-iron-phosphate"));
        assertThat(hints("lead")).containsExactly(Message.of(JobMessage.DID_YOU_MEAN_ONE_OF, "flooded, agm, gel"));
        assertThat(hints("gell")).containsExactly(Message.of(JobMessage.DID_YOU_MEAN, "gel"));
        assertThat(hints("nickel")).isEmpty();
    }

    private static List<Message> hints(String chemistry) {
        return Scalars.meant(Chemistry.class, chemistry, Names.all(Chemistry.class));
    }
}
