package org.quaybook.pack.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Cable;
import org.quaybook.job.Job;
import org.quaybook.record.EnergySource;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** The order of work, AC finished and proved dead before DC, and the torque list. */
final class OrderSheet {

    private final Assessment it;
    private final Job job;
    private final Words words;

    OrderSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.job = assessment.job();
        this.words = words;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("cautions", cautions())
                .put("steps", steps())
                .put("torques", torques())
                .put("stack", Answers.given(job.bank().stack(), words))
                .map();
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        cautions.add(words.say("worksheet.order.caution.licence"));
        cautions.add(words.say(
                "worksheet.order.caution.short",
                it.figures().bank().shortCircuit().stated()));
        if (it.figures().bank().battery().leadAcid()) {
            cautions.add(words.say("worksheet.order.caution.gas"));
        }
        cautions.add(words.say("worksheet.order.caution.alone"));
        return cautions;
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        boolean shore = job.shore() != null;
        steps.add(words.say("worksheet.order.photos"));
        if (shore) {
            steps.add(words.say("worksheet.order.unplug"));
        }
        if (EnergySource.GENERATOR.isOf(job)) {
            steps.add(words.say("worksheet.order.generator", words.say("term.stop.generator")));
        }
        steps.add(sources());
        steps.add(words.say("worksheet.order.battery-off"));
        steps.add(words.say("worksheet.order.dead"));
        steps.add(words.say("worksheet.order.ac"));
        steps.add(words.say("worksheet.order.ac-tests"));
        steps.add(words.say("worksheet.order.dc-runs"));
        it.figures().fuses().forEach(fuse -> steps.add(words.say("worksheet.order.fuse", fuse.id())));
        if (job.bank().parallel().known().orElse(1) > 1) {
            steps.add(words.say("worksheet.order.equal"));
        }
        steps.add(words.say("worksheet.order.minus"));
        steps.add(words.say("worksheet.order.precharge"));
        steps.add(words.say("worksheet.order.plus"));
        steps.add(words.say("worksheet.order.torque"));
        steps.add(words.say("worksheet.order.insert"));
        steps.add(words.say("worksheet.order.start"));
        steps.add(words.say("worksheet.order.measure"));
        if (shore) {
            steps.add(words.say("worksheet.order.shore"));
        }
        steps.add(words.say("worksheet.order.labels"));
        return steps;
    }

    private String sources() {
        List<String> sentences = new ArrayList<>();
        sentences.add(words.say("worksheet.order.sources"));
        for (EnergySource source : List.of(EnergySource.ALTERNATOR, EnergySource.SOLAR, EnergySource.WIND)) {
            if (source.isOf(job)) {
                sentences.add(words.say("worksheet.order.sources." + source.id()));
            }
        }
        return String.join(" ", sentences);
    }

    private List<Map<String, Object>> torques() {
        List<Map<String, Object>> rows = new ArrayList<>();
        rows.add(new Rows()
                .put("what", words.say("worksheet.order.terminals"))
                .put("torque", Answers.given(job.bank().torque(), words))
                .map());
        for (Cable cable : job.cables()) {
            for (String end : List.of(cable.from(), cable.to())) {
                rows.add(new Rows()
                        .put("what", words.say("worksheet.order.end", cable.id(), end))
                        .put("torque", Answers.given(cable.torque(), words))
                        .map());
            }
        }
        it.figures()
                .fuses()
                .forEach(fuse -> rows.add(new Rows()
                        .put("what", words.say("worksheet.order.fuse-ends", fuse.id()))
                        .put("torque", "")
                        .map()));
        job.isolators()
                .forEach(isolator -> rows.add(new Rows()
                        .put("what", words.say("worksheet.order.isolator-ends", isolator.id(), isolator.name()))
                        .put("torque", "")
                        .map()));
        return rows;
    }
}
