package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.quaybook.checks.Check;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.pack.workings.Workings;
import org.quaybook.pack.workings.Workings.Worked;
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
    private final Workings workings;

    WorkingsChapter(Briefing brief) {
        this.brief = brief;
        this.words = brief.words();
        this.workings = new Workings(brief.figures(), words, Workings.Places.PATH);
    }

    List<Map<String, Object>> groups() {
        List<Map<String, Object>> groups = new ArrayList<>();
        groups.add(group(words.say("workings.group.bank"), BANK));
        groups.add(group(words.say("workings.group.supply"), SUPPLY));
        groups.add(withNotes(group(words.say("workings.group.fuses"), fuses()), fuseNotes()));
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

    /** Where load and cable leave a fuse no rating: the two figures alone would look like a mistake. */
    private List<String> fuseNotes() {
        boolean accepted = brief.it().findings().stream()
                .anyMatch(finding -> finding.check() == Check.FUSE_UNDER_LOAD
                        && finding.accepted().isPresent());
        return brief.figures().fuses().stream()
                .filter(fuse -> fuse.least().value().compareTo(fuse.most().value()) > 0)
                .map(fuse -> words.say("workings.fuse-conflict", fuse.id())
                        + (accepted ? " " + words.say("workings.fuse-conflict.accepted") : ""))
                .toList();
    }

    private static Map<String, Object> withNotes(Map<String, Object> group, List<String> notes) {
        Map<String, Object> noted = new LinkedHashMap<>(group);
        noted.put("notes", notes);
        return noted;
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
                                .map(workings::of)
                                .flatMap(Optional::stream)
                                .map(Worked::row)
                                .toList())
                .map();
    }
}
