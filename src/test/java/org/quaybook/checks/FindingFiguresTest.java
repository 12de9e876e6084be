package org.quaybook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.quaybook.diag.Message;
import org.quaybook.figures.ChangedDemo;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.figures.VariedJobs;
import org.quaybook.job.Job;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Stated;

/** What a finding tells is written in the job, or a figure whose working can be read: a check reckons nothing of its own. */
class FindingFiguresTest {

    /** These tell a limit of a table or of common practice, or the next size of a series, as their sources say. */
    private static final Set<Check> WITH_LIMITS = EnumSet.of(
            Check.CHARGE_VOLTAGE_HIGH,
            Check.ENGINE_SPACE_INSULATION,
            Check.FUSE_OVER_CABLE,
            Check.FUSE_UNDER_LOAD,
            Check.INLET_LIVE,
            Check.INSULATION_LOW,
            Check.INVERTER_FAR,
            Check.JOINT_HIGH,
            Check.MICROWAVE_INPUT,
            Check.MICROWAVE_POWER,
            Check.RCD_SLOW,
            Check.SHORE_BREAKER_DISTANCE,
            Check.SHORE_BREAKER_DISTANCE_UNKNOWN);

    private record Judged(Job job, Figures figures, Tables tables) {}

    private static Stream<Judged> jobs() {
        return Stream.concat(
                FindingsTest.cases()
                        .flatMap(it -> Stream.of(it.fails(), it.passes()))
                        .map(FindingFiguresTest::judged),
                VariedJobs.calculated().stream().map(it -> new Judged(it.job(), it.figures(), it.tables())));
    }

    private static Judged judged(ChangedDemo demo) {
        return new Judged(demo.job(), demo.figures(), demo.tables());
    }

    @Test
    void whatAFindingTellsIsAFigureOrInTheJob() {
        Map<String, String> reckoned = new TreeMap<>();
        jobs().forEach(it -> {
            Set<String> known = new HashSet<>();
            Consumer<Quantity> know = value -> known.add(spelled(value));
            quantities(it.job(), new HashSet<>(), know);
            for (Figure<?> figure : it.figures().all()) {
                know.accept(figure.value());
                figure.working().inputs().forEach(input -> quantities(input.value(), new HashSet<>(), know));
            }
            Findings.of(it.job(), it.figures(), it.tables()).stream()
                    .filter(finding -> !WITH_LIMITS.contains(finding.check()))
                    .forEach(finding -> told(finding, value -> {
                        if (!known.contains(spelled(value))) {
                            reckoned.put(finding.check().toString(), value.toString());
                        }
                    }));
        });
        assertThat(reckoned).isEmpty();
    }

    private static void told(Finding finding, Consumer<Quantity> found) {
        arguments(finding.message(), found);
        arguments(finding.remedy(), found);
    }

    private static void arguments(Object argument, Consumer<Quantity> found) {
        if (argument instanceof Message message) {
            message.arguments().forEach(it -> arguments(it, found));
        } else if (argument instanceof Collection<?> several) {
            several.forEach(it -> arguments(it, found));
        } else if (argument instanceof Stated stated) {
            found.accept(stated.value());
        }
    }

    /** All that a record holds, however deep. */
    private static void quantities(Object holder, Set<Integer> seen, Consumer<Quantity> found) {
        if (holder instanceof Quantity quantity) {
            found.accept(quantity);
        } else if (holder instanceof Optional<?> maybe) {
            maybe.ifPresent(it -> quantities(it, seen, found));
        } else if (holder instanceof Collection<?> several) {
            several.forEach(it -> quantities(it, seen, found));
        } else if (holder.getClass().isRecord() && seen.add(System.identityHashCode(holder))) {
            for (RecordComponent component : holder.getClass().getRecordComponents()) {
                try {
                    Object value = component.getAccessor().invoke(holder);
                    if (value != null) {
                        quantities(value, seen, found);
                    }
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
    }

    private static String spelled(Quantity value) {
        return value.getClass().getSimpleName() + " " + (float) value.canonical();
    }
}
