package org.quaybook.render;

/** The geometry of what labels are printed on, millimetres. */
public sealed interface Medium permits Sheet, DieCut, Roll {

    /**
     * The largest label that can be printed, edges left white taken off. On a sheet it stands where it is on the paper;
     * on a die-cut label or a roll it is measured from the corner of the single label.
     */
    Box room();
}
