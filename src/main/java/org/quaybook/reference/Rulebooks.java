package org.quaybook.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.ConductorSize.Series;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Frequency;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** Reads the rulebooks from their table. */
final class Rulebooks {

    static final Rulebooks STANDARD = new Rulebooks(TableShelf.standard());

    private final Table table;
    private final TableShelf shelf;
    private final Map<String, Rulebook> byName = new LinkedHashMap<>();

    Rulebooks(TableShelf shelf) {
        this(shelf.table("rulebooks"), shelf);
    }

    Rulebooks(Table table, TableShelf shelf) {
        this.table = table;
        this.shelf = shelf;
        table.rows().stream()
                .map(row -> row.text("rulebook"))
                .distinct()
                .forEach(name -> byName.put(name, rulebook(name)));
    }

    List<String> names() {
        return List.copyOf(byName.keySet());
    }

    Rulebook named(String name) {
        Rulebook rulebook = byName.get(name);
        if (rulebook == null) {
            throw new NotInTable(table.name(), name, String.join(", ", byName.keySet()));
        }
        return rulebook;
    }

    private Rulebook rulebook(String name) {
        Series series = series(row(name, "conductors"));
        return new Rulebook(
                name,
                row(name, "title").text("value"),
                found(name, "mains-voltage", Voltage.KIND),
                found(name, "mains-frequency", Frequency.KIND),
                series,
                AmpacityTable.of(shelf, series, row(name, "ampacity").text("value")),
                drop(row(name, "drop-constant")),
                found(name, "drop-critical", Ratio.KIND),
                found(name, "drop-other", Ratio.KIND),
                found(name, "drop-inverter-feed", Ratio.KIND),
                found(name, "fuse-load", Ratio.KIND),
                found(name, "fuse-over-ampacity-low", Ratio.KIND),
                found(name, "fuse-over-ampacity-high", Ratio.KIND),
                new UnfusedLengths(
                        found(name, "unfused-bare", Length.KIND),
                        maybe(name, "unfused-sheathed", Length.KIND),
                        maybe(name, "unfused-sheathed-at-battery", Length.KIND)),
                size(row(name, "parallel-least")),
                maybe(name, "inlet-to-breaker", Length.KIND),
                new RcdLimits(
                        found(name, "rcd-residual", Current.KIND),
                        found(name, "rcd-time-rated", TimeSpan.KIND),
                        maybe(name, "rcd-time-five-times", TimeSpan.KIND)),
                italics(row(name, "notice-letters")));
    }

    private TableRow row(String name, String item) {
        return table.rows().stream()
                .filter(row -> row.key().equals(name + " " + item))
                .findFirst()
                .orElseThrow(() -> new TableFault(table.name(), 0, "rulebook " + name + " says nothing on " + item));
    }

    private <Q extends Quantity> Found<Q> found(String name, String item, Kind<Q> kind) {
        TableRow row = row(name, item);
        return row.found(row.quantity(kind));
    }

    private <Q extends Quantity> Optional<Found<Q>> maybe(String name, String item, Kind<Q> kind) {
        return row(name, item).text("value").equals(Table.NONE)
                ? Optional.empty()
                : Optional.of(found(name, item, kind));
    }

    private static Series series(TableRow row) {
        for (Series series : Series.values()) {
            if (series.name().toLowerCase(Locale.ROOT).equals(row.text("value"))) {
                return series;
            }
        }
        throw new TableFault(row.table(), row.line(), "no series of conductor sizes: " + row.text("value"));
    }

    private static boolean italics(TableRow row) {
        return switch (row.text("value")) {
            case "italic" -> true;
            case "upright" -> false;
            default -> throw new TableFault(row.table(), row.line(), "no kind of letters: " + row.text("value"));
        };
    }

    private static Found<ConductorSize> size(TableRow row) {
        return row.found(ConductorSize.parse(row.text("value") + " " + row.text("unit"))
                .orElseThrow(() -> new TableFault(row.table(), row.line(), "no size of a conductor")));
    }

    private static DropFormula drop(TableRow row) {
        DropFormula.Form form = switch (row.text("unit")) {
            case "ohm mm2/m" -> DropFormula.Form.SQUARE_MILLIMETRES;
            case "ohm cmil/ft" -> DropFormula.Form.CIRCULAR_MILS;
            default -> throw new TableFault(row.table(), row.line(), "no unit of a drop constant");
        };
        return new DropFormula(form, row.number("value"), row.citation());
    }
}
