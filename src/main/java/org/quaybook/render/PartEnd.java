package org.quaybook.render;

/**
 * Where one part of a laid-out document begins and ends.
 *
 * @param firstPage on which it begins, from 0
 * @param lastPage on which it ends
 * @param filled how far down that last page it ends, from 0 to 1
 */
public record PartEnd(int firstPage, int lastPage, double filled) {}
