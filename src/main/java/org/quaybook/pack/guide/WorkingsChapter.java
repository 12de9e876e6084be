package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Input;
import org.quaybook.figures.Input.FromFigure;
import org.quaybook.figures.Input.FromJob;
import org.quaybook.figures.Input.FromTable;
import org.quaybook.figures.Input.Usual;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** How the main figures were reached: value, formula, and each input with its origin. */
final class WorkingsChapter {

    private static final List<String> BANK = List.of(
            "bank.usable-charge",
            "bank.usable-energy",
            "bank.capacity-worn",
            "bank.resistance",
            "bank.rest-at-reserve",
            "bank.short-circuit",
            "vent.boost-flow",
            "vent.boost-opening");
    private static final List<String> SUPPLY = List.of(
            "inverter.full-input",
            "inverter.worst-current",
            "supply.drop",
            "supply.allowed-drop",
            "supply.joint-resistance",
            "supply.resistance",
            "supply.bank-drop");
    private static final List<String> FUSE = List.of(".least", ".most", ".interrupts");
    private static final List<String> APPLIANCE =
            List.of(".load", ".time", ".time-worn", ".alarm-below", ".running-voltage");
    private static final List<String> ABSENCE =
            List.of("absence.to-reserve", "absence.idle-per-day", "day.use", "day.dark-days");

    private final Briefing brief;
    private final Words words;
    private final FigureNames names;
    private final Map<String, Figure<?>> figures = new LinkedHashMap<>();

    WorkingsChapter(Briefing brief) {
        this.brief = brief;
        this.words = brief.words();
        this.names = new FigureNames(brief.figures(), brief.names(), words);
        brief.figures().all().forEach(figure -> figures.put(figure.key(), figure));
    }

    List<Map<String, Object>> groups() {
        List<Map<String, Object>> groups = new ArrayList<>();
        groups.add(group(words.say("workings.group.bank"), BANK));
        groups.add(group(words.say("workings.group.supply"), SUPPLY));
        groups.add(group(words.say("workings.group.fuses"), fuses()));
        example()
                .ifPresent(appliance -> groups.add(group(
                        words.say(
                                "workings.group.appliance",
                                appliance.appliance().name()),
                        APPLIANCE.stream().map(part -> appliance.key() + part).toList())));
        groups.add(group(words.say("workings.group.absence"), ABSENCE));
        return List.copyOf(groups);
    }

    private List<String> fuses() {
        return brief.figures().fuses().stream()
                .flatMap(fuse -> FUSE.stream().map(part -> "fuse." + fuse.id() + part))
                .toList();
    }

    /** The appliance whose working is shown: the one that takes most, because it shows all effects best. */
    private Optional<ApplianceFigures> example() {
        return brief.figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .max((a, b) -> a.power().value().compareTo(b.power().value()));
    }

    /** The figures of these names that this job has. */
    private Map<String, Object> group(String title, List<String> keys) {
        return new Rows()
                .put("title", title)
                .put(
                        "figures",
                        keys.stream()
                                .map(figures::get)
                                .filter(Objects::nonNull)
                                .map(this::row)
                                .toList())
                .map();
    }

    private Map<String, Object> row(Figure<?> figure) {
        var formula = figure.working().formula();
        return new Rows()
                .put("name", names.of(figure.key()))
                .put("value", brief.say(figure))
                .put("formula", formula.text())
                .put(
                        "source",
                        words.say(
                                "workings.from.usual",
                                formula.citation().source(),
                                formula.citation().standing()))
                .put(
                        "inputs",
                        figure.working().inputs().stream().map(this::input).toList())
                .map();
    }

    private Map<String, Object> input(Input input) {
        return new Rows()
                .put("symbol", input.symbol())
                .put("value", value(input))
                .put("origin", origin(input.origin()))
                .map();
    }

    /** A figure that goes into another one is shown as everywhere else: rounded to its safe side. */
    private String value(Input input) {
        return input.origin() instanceof FromFigure from && figures.containsKey(from.key())
                ? brief.say(Objects.requireNonNull(figures.get(from.key())))
                : words.word(input.value());
    }

    private String origin(Input.Origin origin) {
        if (origin instanceof FromJob job) {
            return words.say("workings.from.job", job.place().path(), job.provenance());
        }
        if (origin instanceof FromTable table) {
            return words.say(
                    "workings.from.table",
                    table.table(),
                    table.row(),
                    table.citation().source(),
                    table.citation().standing());
        }
        if (origin instanceof FromFigure figure) {
            return words.say("workings.from.figure", names.of(figure.key()));
        }
        Usual usual = (Usual) origin;
        return words.say(
                "workings.from.usual",
                usual.citation().source(),
                usual.citation().standing());
    }
}
