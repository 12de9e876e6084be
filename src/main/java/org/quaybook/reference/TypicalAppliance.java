package org.quaybook.reference;

import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;

/**
 * What an appliance of one kind usually draws. The rating plate of the real one goes before it.
 *
 * @param name the key
 * @param kind the appliance in a few words
 * @param onDirectCurrent whether it hangs on the battery and not on the inverter
 * @param power electrical input while running, with its usual span
 * @param surgeFactor what the input is multiplied by at starting, at least 1
 * @param surgeTime how long that lasts
 * @param powerFactor active by apparent power; 1 on direct current
 * @param perUse how long one use usually lasts
 * @param usesPerDay how often it is usually used
 * @param duty share of that time in which it draws its power
 * @param citation where the row comes from
 */
public record TypicalAppliance(
        String name,
        String kind,
        boolean onDirectCurrent,
        Battery.Usual<Power> power,
        double surgeFactor,
        TimeSpan surgeTime,
        double powerFactor,
        TimeSpan perUse,
        double usesPerDay,
        Ratio duty,
        Citation citation) {

    /** Electrical input of one use: power × duty × time. */
    public Energy energyPerUse() {
        return new Energy(power.value().watts() * duty.fraction() * perUse.hours());
    }
}
