package org.quaybook.reference;

/**
 * Constants of the ventilation rule for batteries of IEC 62485-2: air flow Q = v q s n I C in m³/h, for n cells in
 * series, gassing current I in A/Ah and capacity C in Ah; area of each opening A = k Q.
 *
 * @param dilution v, air needed for one part of hydrogen to stay at 4 %
 * @param hydrogenCubicMetresPerAmpereHour q, hydrogen at 0 °C that one ampere-hour makes in one cell
 * @param safety s, the general safety factor
 * @param flowCubicMetresPerAmpereHour v q s as the standard rounds it
 * @param openingSquareCentimetresPerFlow k, cm² of each opening for each m³/h
 */
public record Ventilation(
        Found<Double> dilution,
        Found<Double> hydrogenCubicMetresPerAmpereHour,
        Found<Double> safety,
        Found<Double> flowCubicMetresPerAmpereHour,
        Found<Double> openingSquareCentimetresPerFlow) {

    private static final Ventilation STANDARD = read(Table.load("ventilation"));

    /** The project's own table. */
    public static Ventilation standard() {
        return STANDARD;
    }

    static Ventilation read(Table table) {
        return new Ventilation(
                found(table, "dilution"),
                found(table, "hydrogen"),
                found(table, "safety"),
                found(table, "flow"),
                found(table, "opening"));
    }

    private static Found<Double> found(Table table, String item) {
        TableRow row = table.row(item);
        return row.found(row.number("value"));
    }
}
