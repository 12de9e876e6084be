package org.quaybook.figures;

import java.util.Optional;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.reference.AmpacityTable;
import org.quaybook.reference.Found;
import org.quaybook.reference.Rulebook;

/**
 * What the cable between a charging source and the bank bears, and what a fuse in it may be.
 *
 * @param allowed current that it may carry where it runs
 * @param allowedElsewhere the same outside of an engine space
 * @param mostFuse the largest rating that protects it
 * @param leastFuse the least rating that the source does not wear out; empty where nobody wrote what it gives
 */
public record ChargeCircuit(
        Figure<Current> allowed,
        Current allowedElsewhere,
        Figure<Current> mostFuse,
        Optional<Figure<Current>> leastFuse) {

    /** Empty where the job does not state a conductor that the rulebook's ampacity table holds. */
    static Optional<ChargeCircuit> of(
            Charging charging,
            String key,
            Optional<Figure<Current>> most,
            BankFigures bank,
            Rulebook rules,
            FigureBook book) {
        Given<Conductor> cable = charging.cable();
        if (cable == null || ChargeCable.judged(charging, rules).isEmpty()) {
            return Optional.empty();
        }
        Figure<Current> allowed = allowed(charging, cable, key, rules, book);
        Found<Ratio> over = rules.fuseOverAmpacity(bank.system().value());
        Found<Ratio> load = rules.fuseLoad();
        return Optional.of(new ChargeCircuit(
                allowed,
                current(charging, BankFigures.seen(cable), false, rules),
                book.enter(
                        key + ".most-fuse",
                        allowed.value().times(over.value().fraction()),
                        Rounding.DOWN,
                        Formula.FUSE_MOST,
                        Input.of("I_cable", allowed),
                        Input.of("q", over)),
                most.map(gives -> book.enter(
                        key + ".least-fuse",
                        gives.value().dividedBy(load.value().fraction()),
                        Rounding.UP,
                        Formula.FUSE_LEAST,
                        Input.of("I_load", gives),
                        Input.of("f", load)))));
    }

    private static Figure<Current> allowed(
            Charging charging, Given<Conductor> cable, String key, Rulebook rules, FigureBook book) {
        Temperature insulation = ChargeCable.insulation(charging, rules);
        boolean engineSpace = ChargeCable.inEngineSpace(charging);
        AmpacityTable table = rules.ampacity();
        return book.enter(
                key + ".allowed",
                current(charging, BankFigures.seen(cable), engineSpace, rules),
                Rounding.DOWN,
                Formula.ALLOWED_ALONE,
                Input.of("S", cable),
                Input.of("I₁", table.base(BankFigures.seen(cable).size(), insulation)),
                Input.of("k₁", table.spaceFactor(insulation, engineSpace)),
                Input.ofOr("T₁", charging.insulation(), insulation, Reason.CHARGE_INSULATION));
    }

    private static Current current(Charging charging, Conductor cable, boolean engineSpace, Rulebook rules) {
        Temperature insulation = ChargeCable.insulation(charging, rules);
        return rules.ampacity()
                .base(cable.size(), insulation)
                .value()
                .times(cable.parallel()
                        * rules.ampacity().spaceFactor(insulation, engineSpace).value());
    }
}
