package org.quaybook.job;

/** The family of a fuse or breaker. */
public enum FuseFamily {
    @Means("class T, fast acting, current limiting")
    CLASS_T,
    @Means("stud-mounted strip, wave type")
    ANL,
    @Means("bolt-in strip, large (ISO 8820-5)")
    MEGA,
    @Means("bolt-in strip, small (ISO 8820-5)")
    MIDI,
    @Means("cube on the battery terminal")
    MRBF,
    @Means("knife-blade NH, gG")
    NH_GG,
    @Means("blade, regular (ISO 8820-3)")
    BLADE,
    @Means("blade, mini")
    BLADE_MINI,
    @Means("blade, maxi")
    BLADE_MAXI,
    @Means("glass tube 6.3 x 32 mm")
    GLASS,
    @Means("circuit breaker for direct current")
    DC_BREAKER
}
