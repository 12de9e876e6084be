package org.quaybook.job;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Kinds;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** A test of commissioning. */
public enum TestKind {
    @Means("time an RCD takes to trip")
    RCD_TRIP(Current.class, TimeSpan.class),
    @Means("RCD trips by its test button")
    RCD_BUTTON(null, null),
    @Means("voltage lost over named cables at a stated current")
    VOLTAGE_DROP(Current.class, Voltage.class),
    @Means("voltage lost over one joint, between the two parts that it joins")
    JOINT_DROP(Current.class, Voltage.class),
    @Means("voltage that the bank loses inside: rest voltage less that at its terminals under load")
    BANK_DROP(Current.class, Voltage.class),
    @Means("voltage at the DC terminals of the inverter under load")
    INVERTER_VOLTAGE(Current.class, Voltage.class),
    @Means("insulation resistance of the AC circuits")
    INSULATION(Voltage.class, Resistance.class),
    @Means("resistance of protective conductors")
    EARTH_CONTINUITY(Current.class, Resistance.class),
    @Means("live and neutral the right way round")
    POLARITY(null, null),
    @Means("neutral to earth resistance in inverter mode")
    NEUTRAL_BOND(null, Resistance.class),
    @Means("voltage on the shore inlet pins while the inverter runs")
    INLET_DEAD(null, Voltage.class),
    @Means("shore lead pulled, with the owner watching")
    SHORE_LOST(null, null),
    @Means("bypass switch operated")
    BYPASS(null, null),
    @Means("leakage current of the whole craft")
    LEAKAGE(null, Current.class),
    @Means("temperature of a joint under load")
    JOINT_TEMPERATURE(Current.class, Temperature.class),
    @Means("rest voltage of the bank")
    REST_VOLTAGE(null, Voltage.class);

    private final @Nullable Class<? extends Quantity> at;
    private final @Nullable Class<? extends Quantity> reading;

    TestKind(@Nullable Class<? extends Quantity> at, @Nullable Class<? extends Quantity> reading) {
        this.at = at;
        this.reading = reading;
    }

    /** What is set during the test: the load, the test current or the test voltage; empty if nothing is. */
    public Optional<Kind<?>> at() {
        return Optional.ofNullable(at).map(Kinds::of);
    }

    /** What is read off; empty for a test that only passes or fails. */
    public Optional<Kind<?>> reading() {
        return Optional.ofNullable(reading).map(Kinds::of);
    }
}
