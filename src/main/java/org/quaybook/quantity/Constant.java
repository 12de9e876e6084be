package org.quaybook.quantity;

/**
 * A constant of a formula that has a unit of its own kind, such as 143 A·√s/mm².
 *
 * @param value the number in that unit
 * @param unit as it is printed
 */
public record Constant(double value, String unit) {}
