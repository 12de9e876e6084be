package org.quaybook.pack.labels;

/** Which side of what a label goes on, in the order in which somebody walks past with the sheets: outside first. */
public enum LabelSpot {
    /** Outside, where somebody comes aboard. */
    OUTSIDE("outside"),
    /** At the swim ladder or where people step aboard from the water. */
    BOARDING("boarding"),
    /** Beside the shore inlet. */
    INLET("inlet"),
    /** Hung on the shore lead. */
    LEAD("lead"),
    /** On the front of the AC board. */
    BOARD("board"),
    /** Along the row of breakers. */
    BREAKERS("breakers"),
    /** Beside a residual current device. */
    RCD("rcd"),
    /** Beside a socket. */
    SOCKET("socket"),
    /** On an appliance. */
    APPLIANCE("appliance"),
    /** Beside the generator. */
    GENERATOR("generator"),
    /** On or beside the inverter. */
    INVERTER("inverter"),
    /** Beside a switch that makes something dead. */
    ISOLATOR("isolator"),
    /** On the outside of the battery's lid or door. */
    BATTERY_LID("battery-lid"),
    /** Beside a fuse. */
    FUSE("fuse"),
    /** On the battery itself, under the lid. */
    BATTERY("battery"),
    /** Beside a terminal of the bank. */
    TERMINAL("terminal"),
    /** Around a cable, near one of its ends. */
    CABLE("cable"),
    /** On an earth or bonding conductor, near one of its ends. */
    EARTH("earth");

    private final String id;

    LabelSpot(String id) {
        this.id = id;
    }

    /** Stable name, for files that programs read. */
    public String id() {
        return id;
    }

    /** Key of the words for it. */
    String key() {
        return "labels.spot." + id;
    }
}
