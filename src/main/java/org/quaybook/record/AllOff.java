package org.quaybook.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.text.Words;

/**
 * How the whole installation goes off: every source that can make something live, and the steps in the order of
 * {@link EnergySource}. The shore post is switched off before the lead comes out, since a shore breaker aboard leaves the
 * inlet live: marina and boat safety guidance, seen.
 */
final class AllOff {

    /** What nobody can stop where no switch parts it. */
    private static final Set<EnergySource> STAYING =
            Set.of(EnergySource.BATTERY, EnergySource.SOLAR, EnergySource.WIND);

    private final Job job;
    private final Words words;

    AllOff(Job job, Words words) {
        this.job = job;
        this.words = words;
    }

    /**
     * One row a source, the bank first: {@code name}, {@code where} it is, {@code by} what it is switched off,
     * {@code stays} whether nothing switches it off.
     */
    List<Map<String, Object>> sources() {
        List<Map<String, Object>> sources = new ArrayList<>();
        sources.add(source(
                EnergySource.BATTERY,
                words.say("record.source.bank"),
                job.bank().where()));
        if (job.shore() != null) {
            sources.add(source(
                    EnergySource.SHORE,
                    words.say("record.source.shore"),
                    job.shore().where()));
        }
        if (EnergySource.GENERATOR.isOf(job)) {
            sources.add(source(EnergySource.GENERATOR, words.say("record.source.generator"), generatorPlace()));
        }
        for (Charging charging : job.charging()) {
            ownSource(charging.kind())
                    .ifPresent(kind -> sources.add(source(kind, ChargerName.of(charging, words), null)));
        }
        return sources;
    }

    private @Nullable String generatorPlace() {
        return job.generator() == null ? null : job.generator().where();
    }

    /** Chargers that live on shore or generator power are no sources of their own. */
    private static Optional<EnergySource> ownSource(ChargeKind kind) {
        return switch (kind) {
            case ALTERNATOR -> Optional.of(EnergySource.ALTERNATOR);
            case SOLAR -> Optional.of(EnergySource.SOLAR);
            case WIND -> Optional.of(EnergySource.WIND);
            case SHORE_CHARGER, GENERATOR -> Optional.empty();
        };
    }

    private Map<String, Object> source(EnergySource kind, String name, @Nullable String where) {
        List<String> isolators = kind.isolators(job).stream().map(Isolator::id).toList();
        return new Rows()
                .put("name", name)
                .put("where", where)
                .put("by", isolators.isEmpty() ? byItself(kind) : words.say("record.off-by-switch", isolators))
                .put("stays", isolators.isEmpty() && STAYING.contains(kind))
                .map();
    }

    private String byItself(EnergySource kind) {
        return kind == EnergySource.GENERATOR
                ? words.say("term.stop.generator-briefly")
                : words.say("record.off-by." + kind.id());
    }

    /** What to do, in order: {@code do} is the sentence, {@code id} the name on the switch or empty, {@code where} its place. */
    List<Map<String, Object>> steps() {
        List<Map<String, Object>> steps = new ArrayList<>();
        for (EnergySource source : EnergySource.values()) {
            steps.addAll(stop(source));
            job.isolators().stream()
                    .filter(isolator -> lastOf(isolator) == source)
                    .forEach(isolator -> steps.add(
                            step(isolator.id(), words.say("record.step.switch", isolator.name()), isolator.where())));
        }
        return steps;
    }

    /** How a source stops by itself, before its switch parts it; empty for one that only a switch parts. */
    private List<Map<String, Object>> stop(EnergySource source) {
        return switch (source) {
            case SHORE -> {
                if (job.shore() == null) {
                    yield List.of();
                }
                String inlet = job.shore().where();
                yield List.of(step(
                        "",
                        words.say("record.step.shore"),
                        inlet == null ? null : words.say("record.step.inlet", inlet)));
            }
            case GENERATOR ->
                source.isOf(job) ? List.of(step("", words.say("term.stop.generator"), generatorPlace())) : List.of();
            case ALTERNATOR -> source.isOf(job) ? List.of(step("", words.say("record.step.engine"), null)) : List.of();
            case SOLAR, WIND, BATTERY -> List.of();
        };
    }

    /** The last source that it parts: a switch of several must not take the bank from a charger. */
    private EnergySource lastOf(Isolator isolator) {
        return Stream.of(EnergySource.values())
                .filter(source -> source.isolators(job).contains(isolator))
                .reduce((earlier, later) -> later)
                .orElse(EnergySource.BATTERY);
    }

    private static Map<String, Object> step(String id, String what, @Nullable String where) {
        return new Rows().put("id", id).put("do", what).put("where", where).map();
    }
}
