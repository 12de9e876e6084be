package org.quaybook.job;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/**
 * What cannot be true between the values of one job, whatever the rulebook. Values that nobody has seen contradict
 * nothing. Whether an installation is good is not judged here.
 */
final class JobChecks {

    /** Nominal voltages of the banks that the trade fits (common practice, no source). */
    private static final List<Integer> VOLTAGE_CLASSES = List.of(12, 24, 36, 48);

    /**
     * How far the blocks' nominal voltages may lie from their class: 4 lithium iron phosphate cells of 3.2 V make
     * 12.8 V, 7 % above 12 V (common practice, no source).
     */
    private static final double CLASS_BELOW = 0.95;

    private static final double CLASS_ABOVE = 1.10;

    /** Thresholds of an inverter lie between these shares of the bank's nominal voltage (common practice, no source). */
    private static final double THRESHOLD_LEAST = 0.6;

    private static final double THRESHOLD_MOST = 1.2;

    /**
     * Shares of the nominal voltage between which any battery is charged: 12.6 V at 12 V charge nothing, 16.8 V are beyond
     * equalising (common practice, no source). The nominal voltage itself would make a fuse seem to break more than it does.
     */
    private static final double CHARGING_LEAST = 1.05;

    private static final double CHARGING_MOST = 1.4;

    /** More would make labels that nobody reads (common practice, no source). */
    private static final int LABEL_LANGUAGES = 2;

    private final Found found;
    private final Problems problems;

    JobChecks(Found found, Problems problems) {
        this.found = found;
        this.problems = problems;
    }

    void check() {
        found.all(Bank.class).forEach(this::bank);
        found.all(Protection.class).forEach(this::protection);
        found.all(Inverter.class).forEach(this::inverter);
        found.all(Cable.class).stream()
                .filter(Cable::endsDiffer)
                .forEach(cable -> problems.add(
                        cable.place(),
                        Message.of(JobMessage.CABLE_POLES_DIFFER, cable.id(), cable.from(), cable.to())));
        found.all(Fuse.class).forEach(this::fuse);
        found.all(Bank.class).forEach(this::stringFuses);
        found.all(Efficiency.class).forEach(this::efficiency);
        found.all(Appliance.class).forEach(this::appliance);
        found.all(Together.class).forEach(this::together);
        found.all(TestResult.class).forEach(this::test);
        found.all(Bank.class).forEach(bank -> found.all(Inverter.class).forEach(it -> thresholds(bank, it)));
        found.value("job.date", LocalDate.class).ifPresent(this::dates);
        found.all(Socket.class).forEach(this::socket);
        found.all(Header.class).forEach(this::header);
        found.all(Translation.class).forEach(this::translation);
    }

    private void translation(Translation translation) {
        Set<String> texts = found.texts();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < translation.texts().size(); i++) {
            String original = Translation.original(translation.texts().get(i));
            Place at = found.placeOf(translation.place().path() + ".texts[" + i + "]");
            if (!texts.contains(original)) {
                problems.add(
                        at,
                        Message.of(JobMessage.TEXT_NOT_IN_JOB, original),
                        Scalars.meant(original, List.copyOf(texts)));
            } else if (!seen.add(original)) {
                problems.add(at, Message.of(JobMessage.TEXT_TRANSLATED_TWICE, original));
            }
        }
    }

    private void header(Header header) {
        seal(header);
        if (header.languages().isEmpty()) {
            problems.add(header.place(), Message.of(JobMessage.NO_LANGUAGE));
        }
        Set<String> labels = Set.copyOf(header.labelLanguages());
        if (labels.size() > LABEL_LANGUAGES
                || labels.size() < header.labelLanguages().size()) {
            problems.add(
                    found.placeOf(header.place().path() + ".label-languages[1]"),
                    Message.of(
                            JobMessage.LABEL_LANGUAGES, header.labelLanguages().size()));
        }
    }

    /** A key that nobody has decided to use would let a record be read that its owner believes sealed. */
    private void seal(Header header) {
        if (Boolean.TRUE.equals(header.sealed()) && header.sealKey() == null) {
            problems.add(
                    found.placeOf(header.place().path() + ".sealed"),
                    Message.of(JobMessage.SEALED_WITHOUT_KEY),
                    Message.of(JobMessage.MAKE_SEAL_KEY));
        }
        if (header.sealed() == null && header.sealKey() != null) {
            problems.add(
                    found.placeOf(header.place().path() + ".seal-key"),
                    Message.of(JobMessage.SEAL_KEY_UNUSED),
                    Message.of(JobMessage.SAY_SEALED));
        }
    }

    private void dates(LocalDate revision) {
        for (Found.DoneOn done : found.done()) {
            if (done.day().isAfter(revision)) {
                problems.add(done.place(), Message.of(JobMessage.DONE_IN_THE_FUTURE, done.text(), revision.toString()));
            }
        }
    }

    private void bank(Bank bank) {
        int parallel = Given.maybe(bank.parallel()).orElse(1);
        if (parallel > 1 && bank.takeOff() == null) {
            problems.add(bank.place(), Message.of(JobMessage.TAKE_OFF_MISSING, parallel));
        }
        nominal(bank).ifPresent(volts -> {
            boolean usual = VOLTAGE_CLASSES.stream()
                    .anyMatch(it -> volts.volts() >= CLASS_BELOW * it && volts.volts() <= CLASS_ABOVE * it);
            if (!usual) {
                problems.add(bank.block().voltage().place(), Message.of(JobMessage.BANK_VOLTAGE, volts));
            }
            within(bank.chargeVoltage(), volts, CHARGING_LEAST, CHARGING_MOST);
        });
    }

    private void socket(Socket socket) {
        if (Given.maybe(socket.shoreOff()).filter(Source.SHORE::equals).isPresent()) {
            problems.add(
                    placeOf(socket.shoreOff()),
                    Message.of(JobMessage.SHORE_WHILE_OFF, socket.name()),
                    Message.of(JobMessage.WRITE_EITHER, "shore-off: inverter", "shore-off: nothing"));
        }
    }

    private static Optional<Voltage> nominal(Bank bank) {
        return Given.maybe(bank.block().voltage())
                .flatMap(block -> Given.maybe(bank.series()).map(block::times));
    }

    private void protection(Protection protection) {
        below(protection.peak(), protection.discharge(), JobMessage.PEAK_BELOW_DISCHARGE);
    }

    private void efficiency(Efficiency efficiency) {
        below(efficiency.best(), efficiency.full(), JobMessage.EFFICIENCY_ORDER);
    }

    private void inverter(Inverter inverter) {
        below(inverter.alarm(), inverter.cutOut(), JobMessage.ALARM_BELOW_CUT_OUT);
        if (!below(inverter.restart(), inverter.cutOut(), JobMessage.RESTART_BELOW_CUT_OUT)) {
            below(inverter.restart(), inverter.alarm(), JobMessage.RESTART_BELOW_ALARM);
        }
        above(inverter.cutOutAtOnce(), inverter.cutOut(), JobMessage.CUT_OUT_AT_ONCE_ABOVE_CUT_OUT);
        ShortTime shortTime = inverter.shortTime();
        if (shortTime != null) {
            below(shortTime.power(), inverter.continuous(), JobMessage.SHORT_TIME_BELOW_CONTINUOUS);
        }
    }

    private void thresholds(Bank bank, Inverter inverter) {
        nominal(bank).ifPresent(nominal -> {
            threshold(inverter.alarm(), nominal);
            threshold(inverter.cutOut(), nominal);
            threshold(inverter.cutOutAtOnce(), nominal);
            threshold(inverter.restart(), nominal);
        });
    }

    private void threshold(@Nullable Given<Voltage> given, Voltage nominal) {
        within(given, nominal, THRESHOLD_LEAST, THRESHOLD_MOST);
    }

    private void within(@Nullable Given<Voltage> given, Voltage nominal, double leastShare, double mostShare) {
        Voltage least = nominal.times(leastShare);
        Voltage most = nominal.times(mostShare);
        Given.maybe(given)
                .filter(it -> it.compareTo(least) < 0 || it.compareTo(most) > 0)
                .ifPresent(it -> problems.add(
                        placeOf(given), Message.of(JobMessage.THRESHOLD_IMPOSSIBLE, it, nominal, least, most)));
    }

    /** A string's lead among the cables would have the whole current flow through it, in series with the others. */
    private void stringFuses(Bank bank) {
        if (Given.maybe(bank.parallel()).filter(strings -> strings > 1).isEmpty()) {
            return;
        }
        found.all(Fuse.class).stream()
                .filter(fuse -> Given.maybe(fuse.role()).equals(Optional.of(FuseRole.STRING)))
                .filter(fuse -> !fuse.protects().isEmpty())
                .forEach(fuse -> problems.add(
                        found.placeOf(fuse.place().path() + ".protects[0]"),
                        Message.of(JobMessage.STRING_FUSE_PROTECTS, fuse.id(), String.join(", ", fuse.protects()))));
    }

    /** A branch of which nobody wrote the role would be judged, rated and drawn as the main fuse. */
    private void fuse(Fuse fuse) {
        above(fuse.average(), fuse.load(), JobMessage.AVERAGE_ABOVE_LOAD);
        if (Given.maybe(fuse.role()).filter(role -> role != FuseRole.MAIN).isPresent()) {
            return;
        }
        String ofOthers = ofOthers(fuse);
        Message role = Message.of(JobMessage.WRITE_EITHER, "role: branch", "role: string");
        if (ofOthers != null) {
            problems.add(
                    found.placeOf(fuse.place().path() + "." + ofOthers),
                    Message.of(JobMessage.MAIN_FUSE_WITH, fuse.id(), ofOthers),
                    role);
        } else if (fuse.protects().isEmpty() && !found.all(Cable.class).isEmpty()) {
            problems.add(
                    fuse.place(),
                    Message.of(JobMessage.MAIN_FUSE_OF_NOTHING, fuse.id()),
                    Message.of(
                            JobMessage.EXAMPLE,
                            "protects: [" + found.all(Cable.class).get(0).id() + "]"),
                    role);
        }
    }

    /** The first key that a main fuse has no use for. */
    private static @Nullable String ofOthers(Fuse fuse) {
        if (fuse.feeds() != null) {
            return "feeds";
        }
        if (fuse.conductor() != null) {
            return "conductor";
        }
        if (!fuse.through().isEmpty()) {
            return "through";
        }
        if (fuse.average() != null) {
            return "average";
        }
        return fuse.load() == null ? null : "load";
    }

    private void appliance(Appliance appliance) {
        above(appliance.average(), appliance.power(), JobMessage.AVERAGE_ABOVE_POWER);
        if (appliance.average() != null && appliance.duty() != null) {
            problems.add(placeOf(appliance.duty()), Message.of(JobMessage.AVERAGE_AND_DUTY));
        }
        if (appliance.kind() == LoadKind.MICROWAVE || appliance.kind() == LoadKind.HEATING) {
            above(appliance.outputPower(), appliance.power(), JobMessage.OUTPUT_ABOVE_POWER);
        }
        Optional<TimeSpan> perUse = Given.maybe(appliance.perUse());
        double uses = Given.maybe(appliance.usesPerDay())
                .orElse((double) appliance.at().size());
        times(appliance);
        pastInverter(appliance)
                .filter(circuit -> appliance.wishedTime() != null)
                .ifPresent(circuit -> problems.add(
                        placeOf(appliance.wishedTime()),
                        Message.of(JobMessage.WISH_PAST_INVERTER, appliance.name(), circuit.id())));
        perUse.map(it -> it.times(uses))
                .filter(it -> it.compareTo(TimeSpan.ofHours(24)) > 0)
                .ifPresent(it -> problems.add(placeOf(appliance.perUse()), Message.of(JobMessage.MORE_THAN_A_DAY, it)));
    }

    /** Its circuit, where that is one that the inverter never feeds. */
    private Optional<AcCircuit> pastInverter(Appliance appliance) {
        return found.all(AcCircuit.class).stream()
                .filter(it -> it.id().equals(appliance.circuit()) && it.isPastInverter())
                .findFirst();
    }

    private void together(Together group) {
        found.all(Appliance.class).stream()
                .filter(it -> group.appliances().contains(it.name()))
                .forEach(it -> pastInverter(it)
                        .ifPresent(circuit -> problems.add(
                                group.place(),
                                Message.of(JobMessage.TOGETHER_PAST_INVERTER, it.name(), circuit.id()))));
    }

    private void times(Appliance appliance) {
        int times = appliance.at().size();
        if (times > 0 && appliance.perUse() == null) {
            problems.add(appliance.place(), Message.of(JobMessage.TIMES_WITHOUT_PER_USE, appliance.name()));
        }
        Given.maybe(appliance.usesPerDay())
                .filter(uses -> times > Math.ceil(uses))
                .ifPresent(uses -> problems.add(
                        placeOf(appliance.usesPerDay()), Message.of(JobMessage.MORE_TIMES_THAN_USES, times, uses)));
    }

    private void test(TestResult test) {
        kind(test.at(), test.test().at(), test, JobMessage.TEST_AT_KIND);
        kind(test.result(), test.test().reading(), test, JobMessage.TEST_READING_KIND);
        if (test.result() == null && test.outcome() == null) {
            problems.add(test.place(), Message.of(JobMessage.TEST_WITHOUT_RESULT, Names.of(test.test())));
        }
        if (test.test() == TestKind.JOINT_DROP && test.of().stream().distinct().count() != 2) {
            problems.add(
                    test.place(), Message.of(JobMessage.JOINT_PARTS), Message.of(JobMessage.EXAMPLE, "of: [bank, B1]"));
        }
    }

    /** Whether readings belong to a job, and not to a day before it was handed over. */
    static void visit(Readings readings, Job job, Problems problems) {
        if (!readings.job().equals(job.job().number())) {
            problems.add(
                    readings.place(),
                    Message.of(
                            JobMessage.READINGS_OF_OTHER_JOB,
                            readings.job(),
                            job.job().number()));
        }
        if (readings.on().isBefore(job.job().date())) {
            problems.add(
                    readings.place(),
                    Message.of(
                            JobMessage.VISIT_BEFORE_HANDOVER,
                            readings.on().toString(),
                            job.job().date().toString()));
        }
    }

    private void kind(@Nullable Given<Quantity> given, Optional<Kind<?>> due, TestResult test, JobMessage otherKind) {
        Optional<Quantity> value = Given.maybe(given);
        if (given == null || value.isEmpty()) {
            return;
        }
        String name = Names.of(test.test());
        Kind<?> kind = value.get().kind();
        if (due.isEmpty()) {
            problems.add(given.place(), Message.of(JobMessage.TEST_TAKES_NO_VALUE, name));
        } else if (!due.get().equals(kind)) {
            problems.add(
                    given.place(),
                    Message.of(
                            otherKind,
                            name,
                            JobMessage.dimension(kind),
                            JobMessage.dimension(due.get()),
                            Quantities.units(due.get())));
        }
    }

    /** Reports the first value if both are known and it is the smaller, and says whether it was. */
    private <Q extends Quantity & Comparable<Q>> boolean below(
            @Nullable Given<Q> value, @Nullable Given<Q> bound, JobMessage message) {
        Optional<Q> number = Given.maybe(value);
        Optional<Q> least = Given.maybe(bound);
        boolean below = number.isPresent() && least.isPresent() && number.get().compareTo(least.get()) < 0;
        if (below) {
            problems.add(placeOf(value), Message.of(message, number.get(), least.get()));
        }
        return below;
    }

    private <Q extends Quantity & Comparable<Q>> void above(
            @Nullable Given<Q> value, @Nullable Given<Q> bound, JobMessage message) {
        Optional<Q> number = Given.maybe(value);
        Optional<Q> most = Given.maybe(bound);
        if (number.isPresent() && most.isPresent() && number.get().compareTo(most.get()) > 0) {
            problems.add(placeOf(value), Message.of(message, number.get(), most.get()));
        }
    }

    private static Place placeOf(@Nullable Given<?> given) {
        return Objects.requireNonNull(given).place();
    }
}
