package org.quaybook.reference;

import org.quaybook.quantity.Current;

/**
 * Charging current that makes gas, per ampere-hour of rated capacity (IEC 62485-2).
 *
 * @param floating while the battery is kept full
 * @param boost while it is charged at a raised voltage, as any charger with several stages does
 * @param citation where the row comes from
 */
public record Gassing(Current floating, Current boost, Citation citation) {}
