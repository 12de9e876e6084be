package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;
import org.quaybook.job.Appliance;
import org.quaybook.job.Cable;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.job.Job;

/** Finds the values that calculation cannot do without and that nobody has seen. */
final class Needs {

    private final List<Diagnostic> missing = new ArrayList<>();

    static List<Diagnostic> of(Job job) {
        Needs needs = new Needs();
        needs.need(job.bank().chemistry());
        needs.need(job.bank().block().voltage());
        needs.need(job.bank().block().capacity());
        needs.need(job.bank().series());
        needs.need(job.bank().parallel());
        needs.need(job.bank().temperature());
        needs.need(job.bank().reserve());
        Inverter inverter = job.inverter();
        needs.need(inverter.continuous());
        needs.need(inverter.alarm());
        needs.need(inverter.cutOut());
        for (Cable cable : job.cables()) {
            needs.need(cable.length());
            needs.need(cable.insulation());
            needs.need(cable.route());
        }
        if (job.cables().isEmpty()) {
            needs.missing.add(new Diagnostic(
                    Severity.ERROR,
                    FiguresMessage.NO_CABLES.key(),
                    job.place(),
                    "",
                    Message.of(FiguresMessage.NO_CABLES),
                    List.of()));
        }
        for (Appliance appliance : job.appliances()) {
            needs.need(appliance.power());
        }
        return List.copyOf(needs.missing);
    }

    private void need(@Nullable Given<?> given) {
        if (given != null && given.value() == null) {
            missing.add(new Diagnostic(
                    Severity.ERROR,
                    FiguresMessage.NEEDS_VALUE.key(),
                    given.place(),
                    "",
                    Message.of(FiguresMessage.NEEDS_VALUE, given.place().path()),
                    List.of(Message.of(FiguresMessage.NEEDS_VALUE_HINT))));
        }
    }
}
