package org.quaybook.job;

/** How an AC cable is laid, by how well it cools (reference methods of IEC 60364-5-52). */
public enum Laid {
    @Means("inside an insulated wall or lining, in conduit or not (method A2)")
    IN_INSULATION,
    @Means("in conduit or trunking on a wall (method B2)")
    IN_CONDUIT,
    @Means("clipped to a surface, open to the air (method C)")
    ON_SURFACE
}
