package org.quaybook;

import java.util.List;

/** The demo jobs by the names of their folders. */
public final class DemoJobs {

    public static final List<String> ALL = List.of(
            "lantern-moth", "second-biscuit", "persimmon-tug", "long-way-round", "hut-seventeen", "marmalade-meridian");

    private DemoJobs() {}
}
