package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.figures.FuseFigures;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseRole;
import org.quaybook.record.ChargerName;

/**
 * Labels at the DC fuses: one for each fuse in the feed of the inverter, a small tag for each branch, and where there
 * are branches the list of all DC circuits.
 */
final class LabelsFuses {

    private static final double TAG_WIDTH = 40;
    private static final double EDGE = 2;

    private final LabelFacts facts;

    LabelsFuses(LabelFacts facts) {
        this.facts = facts;
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        List<FuseFigures> fitted = facts.figures().fuses().stream()
                .filter(figures -> figures.fuse() != null)
                .toList();
        if (fitted.stream().anyMatch(figures -> figures.role() == FuseRole.BRANCH)) {
            designs.add(circuits(fitted));
        }
        for (FuseFigures figures : fitted) {
            Optional.ofNullable(figures.fuse())
                    .map(fuse -> figures.role() == FuseRole.BRANCH ? tag(fuse, figures) : label(fuse, figures))
                    .ifPresent(designs::add);
        }
        return designs;
    }

    private String family(FuseFigures figures) {
        return figures.family().map(kind -> facts.words().term(kind)).orElse("");
    }

    private Optional<String> rating(FuseFigures figures) {
        return figures.rating().map(rating -> facts.say("fuse.rating", family(figures), facts.say(rating)));
    }

    private LabelDesign label(Fuse fuse, FuseFigures figures) {
        List<LabelPart> parts = new ArrayList<>();
        rating(figures).ifPresent(rating -> parts.add(LabelPart.large(rating)));
        if (!fuse.protects().isEmpty()) {
            parts.add(LabelPart.plain(facts.say("fuse.protects", facts.runs(fuse.protects()))));
        }
        figures.interrupts()
                .ifPresent(most -> parts.add(LabelPart.plain(
                        facts.say("fuse.interrupts", facts.say(most), facts.say(figures.mustInterrupt())))));
        parts.add(LabelPart.strong(facts.say("fuse.replace")));
        if (fuse.spare() != null) {
            parts.add(LabelPart.plain(facts.say("fuse.spare", fuse.spare())));
        }
        return at(
                        "fuse-" + fuse.id(),
                        LabelReason.FUSE,
                        LabelFacts.place(fuse.where()),
                        facts.say(mains() == 1 ? "fuse.title-main" : "fuse.title", fuse.id()))
                .with(parts);
    }

    private long mains() {
        return facts.figures().fuses().stream()
                .filter(figures -> figures.fuse() != null && figures.role() != FuseRole.BRANCH)
                .count();
    }

    private static LabelDesign at(String id, LabelReason reason, String place, String title) {
        return LabelDesign.of(id, reason, LabelSpot.FUSE, place, LabelReading.HAND, title);
    }

    /** So small that it goes beside a fuse in a row of fuses. */
    private LabelDesign tag(Fuse fuse, FuseFigures figures) {
        String id = "fuse-" + fuse.id();
        List<LabelPart> parts = new ArrayList<>();
        rating(figures).ifPresent(rating -> parts.add(LabelPart.strong(rating)));
        String behind = chargers(fuse).isEmpty() ? fuse.feeds() : charger(fuse);
        if (behind != null) {
            parts.add(LabelPart.plain(behind));
        }
        parts.add(LabelPart.plain(facts.say("fuse.same")));
        LabelDesign design = at(
                        id, LabelReason.FUSE, LabelFacts.place(fuse.where()), facts.say("fuse.title", fuse.id()))
                .with(parts);
        double cap = design.reading().cap();
        LabelDrawing drawing = (said, blocks, marks, width) -> {
            double room = width - 2 * EDGE;
            double y = blocks.text(List.of(fuse.id()), LabelBlocks.style(LabelPart.Voice.LARGE, cap), EDGE, EDGE, room);
            y = blocks.parts(said.parts(), EDGE, y + cap, room);
            return blocks.stamp(facts.stamp(said.id()), EDGE, y + cap, room) + EDGE;
        };
        return design.drawnBy(drawing.from(TAG_WIDTH));
    }

    private LabelDesign circuits(List<FuseFigures> fitted) {
        List<String> head = List.of(
                facts.say("dc-circuits.fuse"),
                facts.say("dc-circuits.feeds"),
                facts.say("dc-circuits.rating"),
                facts.say("dc-circuits.conductor"),
                facts.say("dc-circuits.load"));
        String place = fitted.stream()
                .filter(figures -> figures.role() == FuseRole.BRANCH)
                .flatMap(figures -> Optional.ofNullable(figures.fuse()).map(Fuse::where).stream())
                .findFirst()
                .orElse("");
        return at(
                        "dc-circuits",
                        LabelReason.DC_CIRCUITS,
                        place,
                        facts.say(
                                "dc-circuits.title",
                                facts.volts(facts.figures().bank().system().value())))
                .with(new LabelPart.Grid(
                        head,
                        fitted.stream()
                                .flatMap(figures ->
                                        Optional.ofNullable(figures.fuse()).map(fuse -> row(fuse, figures)).stream())
                                .toList(),
                        1,
                        true))
                .listing();
    }

    private List<String> row(Fuse fuse, FuseFigures figures) {
        return List.of(
                fuse.id(),
                feeds(fuse, figures),
                rating(figures).orElse(""),
                conductor(fuse),
                figures.role() == FuseRole.BRANCH ? facts.given(fuse.load()).orElse("") : facts.say(figures.load()));
    }

    /** The conductor behind a fuse: its own, else those of the cables it protects. */
    private String conductor(Fuse fuse) {
        List<String> runs = facts.figures().supply().runs().stream()
                .filter(run -> fuse.protects().contains(run.cable().id()))
                .map(run -> run.rating().conductor().toString())
                .distinct()
                .toList();
        return facts.given(fuse.conductor()).orElseGet(() -> String.join(", ", runs));
    }

    private List<String> chargers(Fuse fuse) {
        return facts.figures().way().chargers(fuse).stream()
                .map(it -> ChargerName.of(it, facts.words()))
                .toList();
    }

    /** It feeds nothing: what has to be said is whose cable it is in. */
    private String charger(Fuse fuse) {
        return facts.say("dc-circuits.charger", facts.words().list(chargers(fuse)));
    }

    private String feeds(Fuse fuse, FuseFigures figures) {
        if (!chargers(fuse).isEmpty()) {
            return charger(fuse);
        }
        if (fuse.feeds() != null) {
            return fuse.feeds();
        }
        return switch (figures.role()) {
            case MAIN -> facts.runs(fuse.protects());
            case STRING -> facts.say("dc-circuits.string");
            case BRANCH -> facts.say("dc-circuits.branch");
        };
    }
}
