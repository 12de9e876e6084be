package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import org.quaybook.calc.ChargeIntake;
import org.quaybook.job.Bank;
import org.quaybook.job.Given;
import org.quaybook.job.Protection;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.CurrentPerCharge;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Acceptance;
import org.quaybook.reference.ChargeRates;
import org.quaybook.reference.Found;

/**
 * What the bank takes when it is charged.
 *
 * @param voltage voltage of the bank at the end of full charging current
 * @param limit largest charging current of the bank
 * @param coldLimit the same at its lowest usual temperature; 0 where it must not be charged
 */
public record BankCharging(Figure<Voltage> voltage, Figure<Current> limit, Figure<Current> coldLimit) {

    static BankCharging of(Bank bank, BankFigures figures, FigureBook book) {
        Figure<Current> limit = limit(bank, figures, book);
        return new BankCharging(voltage(figures, book), limit, coldLimit(bank, figures, limit, book));
    }

    private static Figure<Voltage> voltage(BankFigures figures, FigureBook book) {
        int cells = figures.asItIs().rest().cells();
        Voltage perCell = figures.battery()
                .voltages()
                .absorption()
                .dividedBy(figures.battery().cellsPer12VoltBlock());
        return book.enter(
                "bank.charging-voltage",
                perCell.times(cells),
                Rounding.UP,
                Formula.IN_SERIES,
                Input.usual("U₁", perCell, figures.battery().citation()),
                Input.usual("n", cells, figures.battery().citation()));
    }

    /** The hardest worked string takes the same share of a charge as of a load. */
    private static Figure<Current> limit(Bank bank, BankFigures figures, FigureBook book) {
        Optional<Current> block = Given.maybe(bank.chargeLimit());
        if (bank.chargeLimit() != null && block.isPresent()) {
            return book.enter(
                    "bank.charge-limit",
                    block.get().dividedBy(figures.worstShare().value().fraction()),
                    Rounding.DOWN,
                    Formula.CHARGE_LIMIT,
                    Input.of("I₁", bank.chargeLimit()),
                    Input.of("a", figures.worstShare()));
        }
        double rate = figures.battery().maxChargeRate();
        return book.enter(
                "bank.charge-limit",
                atRate(rate, figures),
                Rounding.DOWN,
                Formula.CHARGE_RATE,
                Input.usual("r", new CurrentPerCharge(rate), figures.battery().citation()),
                Input.of("C", figures.capacity()),
                Input.of("u", figures.unevenness()));
    }

    private static Current atRate(double rate, BankFigures figures) {
        return new Current(rate
                * figures.capacity().value().ampereHours()
                / figures.unevenness().value().fraction());
    }

    private static Figure<Current> coldLimit(Bank bank, BankFigures figures, Figure<Current> limit, FigureBook book) {
        Temperature coldest = BankFigures.seen(bank.temperature());
        Optional<Found<Double>> rate =
                ChargeRates.standard().at(figures.battery().chemistry(), coldest);
        Protection protection = bank.protection();
        Optional<Temperature> makers = protection == null ? Optional.empty() : Given.maybe(protection.chargeAbove());
        Temperature least = makers.or(() -> figures.battery().chargeableAbove()).orElse(coldest);
        if (coldest.compareTo(least) < 0) {
            return book.enter(
                    "bank.charge-limit-cold",
                    new Current(0),
                    Rounding.DOWN,
                    Formula.TOO_COLD,
                    Input.of("T", bank.temperature()),
                    makers.isPresent() && protection != null && protection.chargeAbove() != null
                            ? Input.of("T₀", protection.chargeAbove())
                            : Input.usual("T₀", least, figures.battery().citation()));
        }
        Optional<Current> inTheCold = Given.maybe(bank.chargeLimitCold())
                .map(block -> block.dividedBy(figures.worstShare().value().fraction()));
        if (bank.chargeLimitCold() != null && inTheCold.isPresent()) {
            boolean warmIsLess = limit.value().compareTo(inTheCold.get()) <= 0;
            return warmIsLess
                    ? asWarm(limit, book)
                    : book.enter(
                            "bank.charge-limit-cold",
                            inTheCold.get(),
                            Rounding.DOWN,
                            Formula.CHARGE_LIMIT,
                            Input.of("I₁", bank.chargeLimitCold()),
                            Input.of("a", figures.worstShare()));
        }
        if (rate.isEmpty() || limit.value().compareTo(atRate(rate.get().value(), figures)) <= 0) {
            return asWarm(limit, book);
        }
        return book.enter(
                "bank.charge-limit-cold",
                atRate(rate.get().value(), figures),
                Rounding.DOWN,
                Formula.CHARGE_RATE,
                Input.of("r", rate.get().map(CurrentPerCharge::new)),
                Input.of("C", figures.capacity()),
                Input.of("u", figures.unevenness()));
    }

    private static Figure<Current> asWarm(Figure<Current> limit, FigureBook book) {
        return book.enter(
                "bank.charge-limit-cold", limit.value(), Rounding.DOWN, Formula.AS_WARM, Input.of("I", limit));
    }

    /** What the bank takes, warm. */
    ChargeIntake warm(BankFigures figures) {
        return intake(figures, figures.capacityNow(), limit);
    }

    /** What the bank takes at its lowest usual temperature. */
    ChargeIntake cold(BankFigures figures) {
        return intake(figures, figures.capacityNow(), coldLimit);
    }

    /** What the bank takes when worn and cold. */
    ChargeIntake worn(BankFigures figures) {
        return intake(figures, figures.capacityWorn(), coldLimit);
    }

    private static ChargeIntake intake(BankFigures figures, Figure<Charge> capacity, Figure<Current> most) {
        return new ChargeIntake(
                capacity.value(), Acceptance.of(figures.battery().chemistry()), most.value());
    }

    /** What went into an intake. */
    static List<Input> inputs(BankFigures figures) {
        Acceptance acceptance = Acceptance.of(figures.battery().chemistry());
        return List.of(
                Input.usual("s₁", acceptance.knee(), acceptance.citation()),
                Input.usual("r₁", new CurrentPerCharge(acceptance.kneeRate()), acceptance.citation()),
                Input.usual("r_end", new CurrentPerCharge(acceptance.tailRate()), acceptance.citation()),
                Input.usual("η₁", acceptance.bulkEfficiency(), acceptance.citation()),
                Input.usual("η₂", acceptance.absorptionEfficiency(), acceptance.citation()));
    }
}
