package org.quaybook.figures;

import java.util.Optional;
import org.quaybook.calc.GasVentilation;
import org.quaybook.quantity.AirFlow;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.CurrentPerCharge;
import org.quaybook.quantity.Rounding;
import org.quaybook.reference.Ventilation;

/**
 * Ventilation that the bank needs.
 *
 * @param boostFlow air flow while it is charged hard
 * @param boostOpening free area of each opening for that
 * @param floatFlow air flow while it is kept full
 * @param floatOpening free area of each opening for that
 */
public record VentFigures(
        Figure<AirFlow> boostFlow, Figure<Area> boostOpening, Figure<AirFlow> floatFlow, Figure<Area> floatOpening) {

    /** Empty for a chemistry that needs no gas led away. */
    static Optional<VentFigures> of(BankFigures bank, FigureBook book) {
        return bank.battery().gassing().map(gassing -> {
            GasVentilation boost = need(bank, gassing.boost());
            GasVentilation floating = need(bank, gassing.floating());
            Figure<AirFlow> boostFlow = flow("vent.boost-flow", boost, gassing.boost(), bank, book);
            Figure<AirFlow> floatFlow = flow("vent.float-flow", floating, gassing.floating(), bank, book);
            return new VentFigures(
                    boostFlow,
                    opening("vent.boost-opening", boost, boostFlow, book),
                    floatFlow,
                    opening("vent.float-opening", floating, floatFlow, book));
        });
    }

    private static GasVentilation need(BankFigures bank, Current gassing) {
        return GasVentilation.of(
                bank.asItIs().rest().cells(), gassing, bank.capacity().value(), Ventilation.standard());
    }

    private static Figure<AirFlow> flow(
            String key, GasVentilation need, Current gassing, BankFigures bank, FigureBook book) {
        return book.enter(
                key,
                need.flow(),
                Rounding.UP,
                Formula.VENTILATION,
                Input.usual("n", bank.asItIs().rest().cells(), bank.battery().citation()),
                Input.usual(
                        "I_gas",
                        new CurrentPerCharge(gassing.amperes()),
                        bank.battery().citation()),
                Input.of("C", bank.capacity()));
    }

    private static Figure<Area> opening(String key, GasVentilation need, Figure<AirFlow> flow, FigureBook book) {
        return book.enter(key, need.opening(), Rounding.UP, Formula.OPENING, Input.of("Q", flow));
    }
}
