package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.figures.GroupFigures;
import org.quaybook.job.Socket;
import org.quaybook.quantity.Ratio;

/** Stickers where power is used: beside sockets and on appliances. */
final class LabelsUse {

    private final LabelFacts facts;

    LabelsUse(LabelFacts facts) {
        this.facts = facts;
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        List<Socket> sockets = facts.job().sockets();
        for (int i = 0; i < sockets.size(); i++) {
            designs.add(socket(sockets.get(i), i + 1));
        }
        List<ApplianceFigures> appliances = facts.figures().appliances();
        for (int i = 0; i < appliances.size(); i++) {
            appliance(appliances.get(i), i + 1).ifPresent(designs::add);
        }
        return designs;
    }

    private LabelDesign socket(Socket socket, int number) {
        List<List<String>> rows = new ArrayList<>();
        boolean shore = facts.job().shore() != null;
        if (shore) {
            facts.given(socket.shoreOn()).ifPresent(fed -> rows.add(List.of(facts.say("socket.shore-on"), fed)));
        }
        String off = facts.say(shore ? "socket.shore-off" : "socket.fed-by");
        facts.given(socket.shoreOff()).ifPresent(fed -> rows.add(List.of(off, fed)));
        facts.given(socket.generatorOn()).ifPresent(fed -> rows.add(List.of(facts.say("socket.generator-on"), fed)));
        LabelDesign design = LabelDesign.of(
                "socket-" + number,
                LabelReason.SOCKET,
                LabelSpot.SOCKET,
                LabelFacts.place(socket.where()),
                LabelReading.HAND,
                socket.name());
        return rows.isEmpty() ? design : design.with(LabelPart.facts(rows));
    }

    /** What one use costs and when the alarm will sound; for what cannot run, that it cannot. */
    private Optional<LabelDesign> appliance(ApplianceFigures figures, int number) {
        LabelDesign design = LabelDesign.of(
                "appliance-" + number,
                LabelReason.APPLIANCE,
                LabelSpot.APPLIANCE,
                figures.appliance().name(),
                LabelReading.HAND,
                figures.appliance().name());
        boolean runs = figures.runs();
        if (!runs) {
            return Optional.of(design.with(LabelPart.strong(
                    facts.say(facts.job().shore() == null ? "appliance.never" : "appliance.shore-only"))));
        }
        return figures.sharePerUse().map(share -> design.with(use(figures, facts.say(share))));
    }

    private List<LabelPart> use(ApplianceFigures figures, String share) {
        List<String> lines = new ArrayList<>();
        lines.add(facts.say(
                "appliance.use", facts.given(figures.appliance().perUse()).orElse(""), share));
        lines.add(figures.verdict() == Verdict.NOT_WHEN_WORN ? facts.say("appliance.not-worn") : planOn(figures));
        Ratio reserve = facts.figures().bank().reserve().value();
        if (figures.alarmBelow().isEmpty()) {
            lines.add(facts.say("appliance.always-alarms"));
        } else if (figures.alarmBelow().get().value().compareTo(reserve) > 0) {
            lines.add(
                    facts.say("appliance.alarm", facts.say(figures.alarmBelow().get())));
        }
        return List.of(LabelPart.plain(lines.toArray(String[]::new)));
    }

    /** What somebody depends on, or wished a time for, is not alone: what stays on draws beside it. */
    private String planOn(ApplianceFigures figures) {
        Optional<GroupFigures> withLeftOn = facts.figures().withLeftOn(figures);
        if (withLeftOn.isEmpty()) {
            return facts.say("appliance.most", facts.say(figures.wornTime()));
        }
        GroupFigures all = withLeftOn.get();
        return all.verdict() == Verdict.RUNS
                ? facts.say("appliance.most.left-on", facts.say(all.running().wornTime()))
                : facts.say("appliance.none.left-on");
    }
}
