package org.quaybook.job;

/** The warmest space that a cable runs through. */
public enum Route {
    @Means("living space, lockers")
    OUTSIDE_ENGINE_SPACE,
    @Means("engine space or beside a heat source")
    ENGINE_SPACE
}
