package org.quaybook.quantity;

/**
 * A quantity for each unit of another: a resistance for each metre, a voltage for each kelvin.
 *
 * @param value how much for each
 * @param unit the symbol of the other unit
 */
public record PerUnit(Quantity value, String unit) {}
