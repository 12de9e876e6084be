package org.quaybook.reference;

import java.util.List;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;

/** What appliances usually draw. */
public final class Appliances {

    private static final Appliances STANDARD = new Appliances(Table.load("appliances"));

    private final Table table;
    private final List<TypicalAppliance> appliances;

    Appliances(Table table) {
        this.table = table;
        this.appliances = table.rows().stream().map(Appliances::appliance).toList();
    }

    /** The project's own table. */
    public static Appliances standard() {
        return STANDARD;
    }

    /** All appliances, in the order of the table. */
    public List<TypicalAppliance> all() {
        return appliances;
    }

    /**
     * The appliance of a name.
     *
     * @throws NotInTable if there is none
     */
    public TypicalAppliance of(String name) {
        return appliances.stream()
                .filter(appliance -> appliance.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotInTable(table.name(), name, table.keys()));
    }

    private static TypicalAppliance appliance(TableRow row) {
        double least = row.number("least-w");
        double usual = row.number("usual-w");
        double most = row.number("most-w");
        if (least > usual || usual > most || row.number("surge-factor") < 1) {
            throw new TableFault(row.table(), row.line(), "power outside its span or a surge below 1");
        }
        return new TypicalAppliance(
                row.key(),
                row.text("kind"),
                row.text("bus").equals("dc"),
                new Battery.Usual<>(new Power(least), new Power(usual), new Power(most)),
                row.number("surge-factor"),
                new TimeSpan(row.number("surge-s")),
                row.number("power-factor"),
                new TimeSpan(row.number("minutes-per-use") * 60),
                row.number("uses-per-day"),
                new Ratio(row.number("duty")),
                row.citation());
    }
}
