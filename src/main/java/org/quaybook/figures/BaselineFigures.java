package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import org.quaybook.calc.Drift;
import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.job.Job;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

/**
 * What a later visit can compare: each number predicted, read at handover and, if somebody has been there again, read
 * then.
 *
 * @param current the load that drops are predicted at where no test says another: that of the job's first test of a drop,
 *     otherwise half of what the inverter takes at full output
 * @param jointDrop what a sound joint drops at that load
 * @param items each number, in the order in which they are best read
 */
public record BaselineFigures(Figure<Current> current, Figure<Voltage> jointDrop, List<Item> items) {

    public BaselineFigures {
        items = List.copyOf(items);
    }

    /**
     * One number.
     *
     * @param kind the test that gives it
     * @param key what its figures' names begin with
     * @param of what is tested; empty where the kind says it
     * @param source what feeds it during the test
     * @param predicted what the figures lead one to expect at the load of the first test; empty where only a limit stands
     * @param first the earliest reading
     * @param latest the last reading of a later day
     * @param fullLoad a joint's last reading at the worst current, in the same air; empty for everything else
     * @param change how many times the first one the latest is, both as compared; empty where a ratio says nothing
     * @param rule what a later reading is held against; empty without a first one that it can be held against
     * @param movedFrom from where on a reading has moved, at the load, in the air and with the rest voltage of the first;
     *     empty without a rule, and where no reading can be so low
     * @param judgement whether it has moved; empty without a later reading
     */
    public record Item(
            TestKind kind,
            String key,
            List<String> of,
            Optional<Source> source,
            Optional<Figure<?>> predicted,
            Optional<Reading> first,
            Optional<Reading> latest,
            Optional<Figure<?>> fullLoad,
            Optional<Figure<Ratio>> change,
            Optional<BaselineRule> rule,
            Optional<Figure<?>> movedFrom,
            Optional<Drift.Judgement> judgement) {

        public Item {
            of = List.copyOf(of);
        }

        /** What is read, in words. */
        public Message subject() {
            MessageKey sentence = () -> "workings.test" + (of.isEmpty() ? "" : "-of") + (source.isEmpty() ? "" : "-on");
            return Message.of(
                    sentence, kind, of, source.<Object>map(value -> value).orElse(""));
        }

        /** The reading that tells how it is now; empty if nobody has read it. */
        public Optional<Reading> last() {
            return latest.or(() -> first);
        }

        /** Whether a later reading is worse than the first by the rules. */
        public boolean moved() {
            return judgement.filter(Drift.Judgement.MOVED::equals).isPresent();
        }
    }

    /**
     * A test that was done.
     *
     * @param reading what was read off
     * @param compared the reading in a form that does not hang on the load: drops as resistances, a joint's temperature at
     *     the first load in the first air; empty where something is missing for that
     */
    public record Reading(TestResult test, Quantity reading, Optional<Figure<?>> compared) {}

    static BaselineFigures of(
            Job job, BankFigures bank, InverterFigures inverter, SupplyFigures supply, FigureBook book) {
        return new BaselineReckoning(job, bank, inverter, supply, book).figures();
    }

    /** The number whose first reading is a test. */
    public Optional<Item> startedBy(TestResult test) {
        return items.stream()
                .filter(item ->
                        item.first().filter(first -> first.test().equals(test)).isPresent())
                .findFirst();
    }
}
