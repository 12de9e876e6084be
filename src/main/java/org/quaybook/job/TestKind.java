package org.quaybook.job;

/** A test of commissioning. */
public enum TestKind {
    @Means("time an RCD takes to trip")
    RCD_TRIP,
    @Means("RCD trips by its test button")
    RCD_BUTTON,
    @Means("voltage lost over named cables at a stated current")
    VOLTAGE_DROP,
    @Means("insulation resistance of the AC circuits")
    INSULATION,
    @Means("resistance of protective conductors")
    EARTH_CONTINUITY,
    @Means("live and neutral the right way round")
    POLARITY,
    @Means("neutral to earth resistance in inverter mode")
    NEUTRAL_BOND,
    @Means("voltage on the shore inlet pins while the inverter runs")
    INLET_DEAD,
    @Means("shore lead pulled, with the owner watching")
    SHORE_LOST,
    @Means("bypass switch operated")
    BYPASS,
    @Means("leakage current of the whole craft")
    LEAKAGE,
    @Means("temperature rise of a joint under load")
    JOINT_TEMPERATURE,
    @Means("rest voltage of the bank")
    REST_VOLTAGE
}
