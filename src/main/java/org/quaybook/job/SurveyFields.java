package org.quaybook.job;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Kinds;
import org.quaybook.quantity.Quantity;

/**
 * The values of a job that somebody on board should look at: those that nobody has seen, those that were only told or
 * assumed, and those that the job file leaves out. In the order in which one walks from the shore inlet to the bank.
 */
public final class SurveyFields {

    /** Records of which what is left out is asked too; elsewhere it is a matter of choice. */
    private static final Set<Class<?>> ASKED = Set.of(
            Shore.class,
            Bank.class,
            Block.class,
            Vent.class,
            Cable.class,
            Fuse.class,
            Isolator.class,
            Inverter.class,
            AcCircuit.class,
            Rcd.class,
            Changeover.class,
            Charging.class);

    /** Of a charger only what its conductor is judged by is asked; the rest is of one kind of charger or may be left out. */
    private static final Set<String> OF_CHARGERS = Set.of("charging.current", "charging.cable", "charging.length");

    /** What follows from other values where the job file leaves it out, or matters to few installations. */
    private static final Set<String> USUAL = Set.of(
            "shore.voltage",
            "cable.alike",
            "cable.pole",
            "fuse.role",
            "fuse.conductor",
            "fuse.load",
            "bank.charge-limit-cold");

    private static final Set<Provenance> DOUBTFUL = Set.of(Provenance.NOT_SEEN, Provenance.TOLD, Provenance.ASSUMED);

    private final List<Row> rows = new ArrayList<>();

    private SurveyFields() {}

    /**
     * One value to look at.
     *
     * @param field which field: record and key, {@code cable.length}
     * @param group what is walked up to: {@code shore}, {@code board}, {@code inverter}, {@code cables}, {@code bank},
     *     {@code charging}, {@code appliances}
     * @param of the name of the thing; empty where there is only one
     * @param where its place in the craft; empty if not written
     * @param given what is known; empty if the job file leaves it out
     * @param kind kind of its quantity; empty if it is none
     * @param terms what may be chosen; empty if it is no choice
     * @param yesOrNo whether the answer is yes or no
     */
    public record Row(
            String field,
            String group,
            String of,
            String where,
            Optional<Given<?>> given,
            Optional<Kind<?>> kind,
            List<Enum<?>> terms,
            boolean yesOrNo) {
        public Row {
            terms = List.copyOf(terms);
        }

        /** Whether the job file leaves it out. */
        public boolean leftOut() {
            return given.isEmpty();
        }
    }

    /** What to look at on board. */
    public static List<Row> of(Job job) {
        SurveyFields fields = new SurveyFields();
        fields.walk(job.craft(), "shore", "", "");
        if (job.shore() != null) {
            boolean galvanic =
                    job.craft().kind() == CraftKind.BOAT && job.shore().transformer() == null;
            fields.walk(
                    job.shore(),
                    "shore",
                    "",
                    job.shore().where(),
                    field -> galvanic || !field.equals("shore.galvanic-isolator"));
        }
        if (job.generator() != null) {
            fields.walk(job.generator(), "shore", "", job.generator().where());
        }
        job.rcds().forEach(it -> fields.walk(it, "board", it.id(), it.where()));
        job.acCircuits().forEach(it -> fields.walk(it, "board", it.id(), it.name()));
        job.earths().forEach(it -> fields.walk(it, "board", it.id(), it.from() + " → " + it.to()));
        job.sockets().forEach(it -> fields.walk(it, "board", it.name(), it.where()));
        fields.walk(job.inverter(), "inverter", "", job.inverter().where(), field -> isOfInverter(field, job));
        job.isolators()
                .forEach(it -> fields.walk(
                        it,
                        "cables",
                        it.id(),
                        it.where(),
                        field -> !field.equals("isolator.rating") || it.partsBattery(job.cables(), job.fuses())));
        job.cables().forEach(it -> fields.walk(it, "cables", it.id(), it.from() + " → " + it.to()));
        job.fuses()
                .forEach(it -> fields.walk(
                        it, "cables", it.id(), it.where(), field -> !field.equals("fuse.average") || draws(it, job)));
        fields.walk(job.bank(), "bank", "", job.bank().where(), field -> isOfBank(field, job.bank()));
        job.charging()
                .forEach(it -> fields.walk(
                        it,
                        "charging",
                        Objects.requireNonNullElse(it.name(), Names.of(it.kind())),
                        "",
                        OF_CHARGERS::contains));
        job.appliances().forEach(it -> fields.walk(it, "appliances", it.name(), ""));
        return List.copyOf(fields.rows);
    }

    /** Without something to change over from, and without petrol, some of it cannot be looked at. */
    private static boolean isOfInverter(String field, Job job) {
        return switch (field) {
            case "inverter.pass-through", "inverter.input-limit" -> job.shore() != null || job.generator() != null;
            case "changeover.when-shore-fails" -> job.shore() != null && changesOver(job);
            case "inverter.ignition-protected" ->
                Given.maybe(job.craft().petrolAboard()).orElse(true);
            default -> !field.startsWith("changeover.") || changesOver(job);
        };
    }

    private static boolean changesOver(Job job) {
        Changeover changeover = job.inverter().changeover();
        return changeover == null || changeover.kind().value() != ChangeoverKind.NONE;
    }

    /** One block has no neighbour that it is like or unlike. */
    private static boolean isOfBank(String field, Bank bank) {
        boolean severalStrings = Given.maybe(bank.parallel()).orElse(2) > 1;
        boolean severalBlocks = severalStrings || Given.maybe(bank.series()).orElse(2) > 1;
        return switch (field) {
            case "bank.take-off" -> severalStrings;
            case "bank.blocks-alike", "bank.links-alike" -> severalBlocks;
            default -> true;
        };
    }

    private static boolean draws(Fuse fuse, Job job) {
        return fuse.isBranch() && job.charging().stream().noneMatch(charger -> charger.isFusedBy(fuse));
    }

    private void walk(Record record, String group, String of, @Nullable String where) {
        walk(record, group, of, where, field -> true);
    }

    private void walk(Record record, String group, String of, @Nullable String where, Predicate<String> makesSense) {
        Class<?> type = record.getClass();
        for (Field field : Field.written(type)) {
            @Nullable Object value = value(field, record);
            if (field.isNested() && value instanceof Record nested) {
                walk(nested, group, of, where, makesSense);
            } else if (field.form() == Field.Form.GIVEN) {
                Given<?> given = (Given<?>) value;
                String name = name(type, field);
                boolean asked = given == null
                        ? ASKED.contains(type) && !USUAL.contains(name) && makesSense.test(name)
                        : DOUBTFUL.contains(given.provenance());
                if (asked) {
                    rows.add(row(type, field, group, of, where, given));
                }
            }
        }
    }

    private static Row row(
            Class<?> type, Field field, String group, String of, @Nullable String where, @Nullable Given<?> given) {
        Class<?> holds = field.type();
        List<Enum<?>> terms = new ArrayList<>();
        if (holds.isEnum()) {
            for (Object constant : holds.getEnumConstants()) {
                terms.add((Enum<?>) constant);
            }
        }
        return new Row(
                name(type, field),
                group,
                of,
                Objects.requireNonNullElse(where, ""),
                Optional.ofNullable(given),
                Quantity.class.isAssignableFrom(holds) && holds != Quantity.class
                        ? Optional.of(Kinds.of(holds.asSubclass(Quantity.class)))
                        : Optional.empty(),
                terms,
                holds == Boolean.class);
    }

    /** Record and key: what its words stand under. */
    static String name(Class<?> record, Field field) {
        String name = record.getSimpleName();
        return Names.key(Character.toLowerCase(name.charAt(0)) + name.substring(1)) + "." + field.key();
    }

    private static @Nullable Object value(Field field, Record record) {
        try {
            return field.component().getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
