package org.quaybook.figures;

import java.util.Optional;
import org.quaybook.job.Bank;
import org.quaybook.job.Block;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Protection;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.CurrentPerCharge;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;

/**
 * What all that draws on the bank at once asks of it and of its blocks, and what all that charges gives.
 *
 * @param most the most that the bank gives for long: the inverter at full output and its cut-out, and every branch with its
 *     largest lasting current
 * @param hardestBlock what the hardest worked block gives of it
 * @param fairShare of each string, if all shared alike
 * @param otherBlocks what each of the others gives once one has opened; empty in a bank of one string
 * @param usable what a block's own protection carries all the time; empty if its limit is not known
 * @param usualDischarge what a block of this chemistry is made for
 * @param charged what all that charges gives at once; empty where nothing does
 * @param shortByResistance a block's short-circuit current by its inner resistance; empty unless the job states another
 */
public record BankLoad(
        Figure<Current> most,
        Figure<Current> hardestBlock,
        Figure<Ratio> fairShare,
        Optional<Figure<Current>> otherBlocks,
        Optional<Figure<Current>> usable,
        Figure<Current> usualDischarge,
        Optional<Figure<Current>> charged,
        Optional<Figure<Current>> shortByResistance) {

    static BankLoad of(Job job, BankFigures figures, InverterFigures inverter, SharedWay way, FigureBook book) {
        Bank bank = job.bank();
        int strings = figures.sharing().shares().size();
        Figure<Current> most = SharedWay.drawn("bank", way.branches(), inverter.worstCurrent(), book);
        Figure<Current> hardest = book.enter(
                "bank.hardest-block",
                most.value().times(figures.worstShare().value().fraction()),
                Rounding.UP,
                Formula.SHARE_OF_STRING,
                Input.of("I₁", most),
                Input.of("share", figures.worstShare()));
        Figure<Ratio> fair = book.enter(
                "bank.fair-share",
                new Ratio(1.0 / strings),
                Rounding.NEAREST,
                Formula.FAIR_SHARE,
                Input.of("m", bank.parallel()));
        Optional<Figure<Current>> others = strings == 1
                ? Optional.empty()
                : Optional.of(book.enter(
                        "bank.other-blocks",
                        most.value().dividedBy(strings - 1),
                        Rounding.UP,
                        Formula.OTHER_BLOCKS,
                        Input.of("I₁", most),
                        Input.of("m", bank.parallel())));
        return new BankLoad(
                most,
                hardest,
                fair,
                others,
                usable(bank, book),
                usualDischarge(bank.block().capacity(), figures, book),
                SharedWay.charged("bank.charged", job.charging(), figures, book),
                shortByResistance(bank, figures, book));
    }

    private static Optional<Figure<Current>> usable(Bank bank, FigureBook book) {
        return Optional.ofNullable(bank.protection())
                .map(Protection::discharge)
                .filter(limit -> limit.value() != null)
                .map(limit -> book.enter(
                        "bank.protection-usable",
                        BankFigures.seen(limit).times(Practice.PROTECTION_LOAD.fraction()),
                        Rounding.DOWN,
                        Formula.PART_OF_CURRENT,
                        Input.of("I₁", limit),
                        Input.usual("f", Practice.PROTECTION_LOAD, Reason.PROTECTION_LOAD)));
    }

    private static Figure<Current> usualDischarge(Given<Charge> capacity, BankFigures figures, FigureBook book) {
        double rate = figures.battery().maxDischargeRate();
        return book.enter(
                "bank.usual-discharge",
                new Current(rate * BankFigures.seen(capacity).ampereHours()),
                Rounding.DOWN,
                Formula.DISCHARGE_RATE,
                Input.usual("r", new CurrentPerCharge(rate), figures.battery().citation()),
                Input.of("C", capacity));
    }

    private static Optional<Figure<Current>> shortByResistance(Bank bank, BankFigures figures, FigureBook book) {
        return Optional.of(bank.block())
                .map(Block::shortCircuit)
                .filter(stated -> stated.value() != null)
                .map(stated -> book.enter(
                        "bank.short-by-resistance",
                        figures.restFull()
                                .value()
                                .dividedBy(BankFigures.seen(bank.series()))
                                .over(figures.blockResistance().value()),
                        Rounding.UP,
                        Formula.SHORT_BY_RESISTANCE,
                        Input.of("E", figures.restFull()),
                        Input.of("n", bank.series()),
                        Input.of("r", figures.blockResistance())));
    }
}
