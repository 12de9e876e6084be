package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.quaybook.reference.Citation.Standing;
import org.quaybook.reference.Spreads.Subject;

class SpreadsTest {

    private static final Spreads SPREADS = Spreads.standard();

    private static double spread(Subject subject, String known) {
        return SPREADS.of(subject, known).value().fraction();
    }

    /** What is known better is spread less; one that is only stated counts as told. */
    @ParameterizedTest
    @EnumSource(Subject.class)
    void betterKnownIsSpreadLess(Subject subject) {
        assertThat(spread(subject, "measured")).isLessThanOrEqualTo(spread(subject, "plate"));
        assertThat(spread(subject, "plate")).isLessThan(spread(subject, "told"));
        assertThat(spread(subject, "told")).isLessThan(spread(subject, "assumed"));
        assertThat(spread(subject, "stated")).isEqualTo(spread(subject, "told"));
    }

    @Test
    void saysThatItIsCommonPractice() {
        assertThat(SPREADS.of(Subject.RESISTANCE, Spreads.FROM_TABLE).citation().standing())
                .isEqualTo(Standing.COMMON_PRACTICE);
    }

    @Test
    void knowsNothingOfWhatNobodySaid() {
        assertThatThrownBy(() -> SPREADS.of(Subject.POWER, "guessed")).isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> new Spreads(Table.parse("spreads", """
                        # title: x
                        # source: x
                        # edition: -
                        # number: -
                        # units: x
                        # standing: common-practice
                        # publish: yes
                        # caution: x
                        # key: quantity known
                        quantity,known,spread
                        power,plate,1.2
                        """)))
                .isInstanceOf(TableFault.class)
                .hasMessageContaining("between 0 and 1");
    }
}
