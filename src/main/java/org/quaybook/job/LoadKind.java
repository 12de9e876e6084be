package org.quaybook.job;

/** What kind of load an appliance is, where it matters. */
public enum LoadKind {
    @Means("makes heat from electricity")
    HEATING,
    @Means("has a motor or compressor")
    MOTOR,
    @Means("has a switched power supply")
    ELECTRONICS,
    @Means("microwave oven")
    MICROWAVE,
    @Means("somebody depends on it")
    MEDICAL
}
