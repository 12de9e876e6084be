package org.quaybook.reference;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The voltage of a rested battery against its state of charge, for each chemistry. */
public final class RestVoltages {

    private static final RestVoltages STANDARD = new RestVoltages(Batteries.standard());

    private final Batteries batteries;
    private final Map<String, RestVoltageCurve> byChemistry;

    private RestVoltages(Batteries batteries) {
        this.batteries = batteries;
        this.byChemistry = batteries.chemistries().stream()
                .collect(Collectors.toUnmodifiableMap(
                        Function.identity(),
                        chemistry -> new RestVoltageCurve(
                                batteries.of(chemistry), Table.load("rest-voltage-" + chemistry))));
    }

    /** The project's own tables. */
    public static RestVoltages standard() {
        return STANDARD;
    }

    /**
     * The curve of a chemistry.
     *
     * @throws NotInTable if there is no such chemistry
     */
    public RestVoltageCurve of(String chemistry) {
        RestVoltageCurve curve = byChemistry.get(chemistry);
        if (curve == null) {
            throw new NotInTable("rest-voltage", chemistry, String.join(", ", batteries.chemistries()));
        }
        return curve;
    }
}
