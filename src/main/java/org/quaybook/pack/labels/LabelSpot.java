package org.quaybook.pack.labels;

/** Which side of what a label goes on, in the order in which somebody walks past with the sheets: outside first. */
public enum LabelSpot {
    /** Outside, where somebody comes aboard. */
    OUTSIDE("outside"),
    /** Beside the shore inlet. */
    INLET("inlet"),
    /** Hung on the shore lead. */
    LEAD("lead"),
    /** On the front of the AC board. */
    BOARD("board"),
    /** Beside a residual current device. */
    RCD("rcd"),
    /** Beside a socket. */
    SOCKET("socket"),
    /** On an appliance. */
    APPLIANCE("appliance"),
    /** On or beside the inverter. */
    INVERTER("inverter"),
    /** Beside a switch that makes something dead. */
    ISOLATOR("isolator"),
    /** On the outside of the battery's lid or door. */
    BATTERY_LID("battery-lid"),
    /** Beside a fuse. */
    FUSE("fuse"),
    /** On the battery itself, under the lid. */
    BATTERY("battery");

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
