package org.quaybook.reference;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.quaybook.quantity.Ratio;

/**
 * How batteries of a chemistry take charge.
 *
 * @param knee state of charge at which the current begins to tail off when charging at the knee rate
 * @param kneeRate the rate that the knee holds at, in capacities per hour; above the tail rate
 * @param bulkEfficiency charge stored for charge put in, below the knee
 * @param absorptionEfficiency the same above the knee
 * @param tailRate current at which charging ends, in capacities per hour
 * @param citation where the row comes from
 */
public record Acceptance(
        String chemistry,
        Ratio knee,
        double kneeRate,
        Ratio bulkEfficiency,
        Ratio absorptionEfficiency,
        double tailRate,
        Citation citation) {

    private static final String TABLE = "acceptance";
    private static final Table ROWS = Table.load(TABLE);
    private static final Map<String, Acceptance> STANDARD = ROWS.rows().stream()
            .map(Acceptance::read)
            .collect(Collectors.toUnmodifiableMap(Acceptance::chemistry, Function.identity()));

    public Acceptance {
        if (tailRate <= 0
                || kneeRate <= tailRate
                || knee.fraction() >= 1
                || bulkEfficiency.fraction() <= 0
                || absorptionEfficiency.fraction() <= 0) {
            throw new IllegalArgumentException("no battery takes charge like " + chemistry);
        }
    }

    /**
     * What is usual for a chemistry.
     *
     * @throws NotInTable if there is no such chemistry
     */
    public static Acceptance of(String chemistry) {
        Acceptance found = STANDARD.get(chemistry);
        if (found == null) {
            throw new NotInTable(TABLE, chemistry, ROWS.keys());
        }
        return found;
    }

    private static Acceptance read(TableRow row) {
        return new Acceptance(
                row.key(),
                new Ratio(row.number("knee")),
                row.number("knee-rate"),
                new Ratio(row.number("bulk-efficiency")),
                new Ratio(row.number("absorption-efficiency")),
                row.number("tail-rate"),
                row.citation());
    }
}
