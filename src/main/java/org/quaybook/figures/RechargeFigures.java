package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.calc.ChargeIntake;
import org.quaybook.calc.Recharge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;

/**
 * Time back to full with a source, or with several that run together.
 *
 * @param current what it gives the bank at most, warm
 * @param left what is left of that for the bank while the inverter goes on feeding what stays on
 * @param toFull time from the reserve to full; empty if nothing is left for the bank
 * @param toKnee time from the reserve until the current tails off; empty as well
 * @param toFullCold time from the reserve to full at the lowest usual temperature of the bank; empty if it then takes nothing
 * @param afterDay time to full after a usual day on which nothing charged; empty if nothing is left for the bank
 * @param afterUses time to full after one use from full of each appliance
 */
public record RechargeFigures(
        Figure<Current> current,
        Figure<Current> left,
        Optional<Figure<TimeSpan>> toFull,
        Optional<Figure<TimeSpan>> toKnee,
        Optional<Figure<TimeSpan>> toFullCold,
        Optional<Figure<TimeSpan>> afterDay,
        List<AfterUse> afterUses) {

    public RechargeFigures {
        afterUses = List.copyOf(afterUses);
    }

    /** Time back to full after one use of an appliance. */
    public record AfterUse(ApplianceFigures appliance, Figure<TimeSpan> time) {}

    /**
     * What recharging begins from.
     *
     * @param appliances the appliances whose uses it makes good
     * @param afterDay state of charge after a usual day on which nothing charged
     */
    record After(List<ApplianceFigures> appliances, Figure<Ratio> afterDay) {}

    static RechargeFigures of(
            String key,
            Figure<Current> current,
            Figure<Current> left,
            BankFigures bank,
            BankCharging charging,
            After after,
            FigureBook book) {
        Reckoning reckoning = new Reckoning(left, bank, charging, book);
        List<AfterUse> uses = new ArrayList<>();
        for (ApplianceFigures appliance : after.appliances()) {
            appliance
                    .sharePerUse()
                    .filter(share -> share.value().fraction()
                            <= 1 - bank.reserve().value().fraction())
                    .flatMap(share -> reckoning.time(
                            afterUseKey(key, appliance),
                            charging.warm(bank),
                            new Ratio(1 - share.value().fraction()),
                            Input.of("1 − s", share)))
                    .ifPresent(time -> uses.add(new AfterUse(appliance, time)));
        }
        Optional<Recharge> fromReserve =
                Recharge.of(charging.warm(bank), bank.reserve().value(), left.value());
        return new RechargeFigures(
                current,
                left,
                fromReserve.map(it -> reckoning.enter(key + ".to-full", it.whole(), Input.of("s", bank.reserve()))),
                fromReserve.map(it -> reckoning.enter(key + ".to-knee", it.bulk(), Input.of("s", bank.reserve()))),
                reckoning.time(
                        key + ".to-full-cold",
                        charging.cold(bank),
                        bank.reserve().value(),
                        Input.of("s", bank.reserve())),
                reckoning.time(
                        key + ".after-day",
                        charging.warm(bank),
                        after.afterDay().value(),
                        Input.of("s", after.afterDay())),
                uses);
    }

    private static String afterUseKey(String key, ApplianceFigures appliance) {
        return "back." + key.substring(key.indexOf('.') + 1)
                + appliance.key().substring(appliance.key().indexOf('.'));
    }

    private record Reckoning(Figure<Current> left, BankFigures bank, BankCharging charging, FigureBook book) {

        Optional<Figure<TimeSpan>> time(String key, ChargeIntake intake, Ratio from, Input start) {
            return Recharge.of(intake, from, left.value()).map(it -> enter(key, it.whole(), start));
        }

        Figure<TimeSpan> enter(String key, TimeSpan time, Input start) {
            List<Input> inputs =
                    new ArrayList<>(List.of(Input.of("I", left), Input.of("C", bank.capacityNow()), start));
            inputs.add(Input.of("I_most", key.endsWith("-cold") ? charging.coldLimit() : charging.limit()));
            inputs.addAll(BankCharging.inputs(bank));
            return book.enter(key, time, Rounding.UP, Formula.RECHARGE, inputs);
        }
    }
}
