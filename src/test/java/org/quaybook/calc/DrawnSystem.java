package org.quaybook.calc;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Batteries;
import org.quaybook.reference.Battery;
import org.quaybook.reference.RestVoltages;

/** A bank, its cables and a load drawn by lot from a seed: the same seed draws the same system. */
record DrawnSystem(SourceBank bank, Resistance supply, Demand demand, Limits limits) {

    private static final List<String> CHEMISTRIES = List.of("flooded", "agm", "gel", "lithium-iron-phosphate");

    /** Seeds 1 to 200. */
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    static DrawnSystem of(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        Battery battery = Batteries.standard().of(CHEMISTRIES.get(lot.nextInt(CHEMISTRIES.size())));
        int blocks = 1 << lot.nextInt(3);
        int cells = battery.cellsPer12VoltBlock() * blocks;
        RestVoltage rest = new RestVoltage(RestVoltages.standard().of(battery.chemistry()), cells);
        SourceBank bank = new SourceBank(
                rest,
                new Charge(logarithmic(lot, 20, 2000)),
                20,
                battery.leadAcid() ? 1 + lot.nextDouble(0.4) : 1,
                new Resistance(logarithmic(lot, 0.3e-3, 20e-3) * blocks),
                battery.resistanceRiseWhenLow(),
                Battery.LOW);
        Resistance supply = new Resistance(logarithmic(lot, 0.1e-3, 10e-3) * blocks);
        Voltage cutOut = rest.full().times(0.75 + lot.nextDouble(0.18));
        double most = (rest.full().volts() - cutOut.volts())
                * cutOut.volts()
                / (bank.resistance().ohms() + supply.ohms());
        double watts = logarithmic(lot, 0.001, 1.1) * most;
        double duty = lot.nextBoolean() ? 1 : 0.05 + lot.nextDouble(0.95);
        return new DrawnSystem(
                bank,
                supply,
                new Demand(new Power(watts), new Power(watts * lot.nextDouble(0.5)), new Ratio(duty)),
                new Limits(
                        new Ratio(lot.nextDouble(0.9)),
                        cutOut,
                        lot.nextInt(3) == 0 ? rest.full().times(0.75 + lot.nextDouble(0.18)) : null));
    }

    /** Between two ends, each decade as likely as the other. */
    static double logarithmic(SplittableRandom lot, double least, double most) {
        return least * Math.pow(most / least, lot.nextDouble());
    }

    Discharge discharge() {
        return new Discharge(bank, supply);
    }

    Discharge.Run run(Discharge.Pauses pauses) {
        return discharge().run(demand, Ratio.WHOLE, limits, pauses);
    }
}
