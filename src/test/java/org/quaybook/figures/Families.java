package org.quaybook.figures;

/** Names of figures that go the same way, as patterns, and what makes them go. */
final class Families {

    static final String LOAD = "(appliance|together)\\.[^.]+\\.";

    /**
     * How long a load lasts. The ends of its range are not among these: a root of a sum of squares can narrow where the time
     * itself grows shorter, because the reserve ends it before what is uncertain does.
     */
    static final String LASTING = LOAD + "(time|time-worn|time-from-\\d+|uses|uses-worn)";

    static final String LASTING_AS_IT_IS = LOAD + "(time|time-from-\\d+|uses)";
    static final String LASTING_WORN = LOAD + "(time-worn|uses-worn)";
    static final String HOLDING = LOAD + "(alarm-below|cut-out-below|starts-down-to)";
    static final String VOLTS = LOAD + "(running-voltage|voltage-at-\\d+)";
    static final String AWAY = "absence\\.(to-reserve|to-empty|idle-to-reserve|idle-to-empty)(-worn)?";
    static final String OFF = "absence\\.off-to-.*";
    static final String DAYS = "day\\.(summer|winter|dark)-days(-worn)?";
    static final String CHARGE_OF_DAY = "day\\.(summer|winter|dark)-(charge-at-\\d+|lowest)";
    static final String FILLING = "charging\\..*\\.(to-full|to-full-cold|after-day)";
    static final String ALLOWED = "cable\\..*\\.(allowed|margin)";
    static final String DROPS = "supply\\.(drop-by-rule|drop|deciding-drop|deciding-share)";
    static final String LEAST = "cable\\..*\\.least-(area|parallel)";

    static final String OHM = "physics: Ohm’s and Kirchhoff’s laws";
    static final String KIRCHHOFF = "physics: Kirchhoff’s current law";
    static final String ENERGY = "physics: conservation of charge and energy";
    static final String JOULE = "physics: Joule’s law, and IEC 60364-5-52: derating factors are at most 1";
    static final String SAFE = "the safe direction";

    private Families() {}
}
