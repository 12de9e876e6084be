package org.quaybook.job;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** What binding has made out so far; checks between values work on it even when other parts could not be bound. */
final class Found {

    private static final String TRANSLATIONS = "translations";

    /** A name given to something. */
    record Name(Thing thing, String text, Place place) {}

    /** A name used. */
    record Reference(RefersTo to, String text, Place place) {}

    /** A day on which something was done; the first of a month if only that is known. */
    record DoneOn(LocalDate day, String text, Place place) {}

    /**
     * What is known before a file is read.
     *
     * @param visited the job that readings belong to
     * @param names what that job names
     */
    record Known(Optional<Job> visited, List<Name> names) {}

    /** A file that stands for itself. */
    static Known nothing() {
        return new Known(Optional.empty(), List.of());
    }

    /** A file that may refer to what a job names. */
    static Known of(Job job) {
        List<Name> names = new ArrayList<>();
        job.cables().forEach(it -> names.add(new Name(Thing.CABLE, it.id(), it.place())));
        job.fuses().forEach(it -> names.add(new Name(Thing.FUSE, it.id(), it.place())));
        job.isolators().forEach(it -> names.add(new Name(Thing.ISOLATOR, it.id(), it.place())));
        job.rcds().forEach(it -> names.add(new Name(Thing.RCD, it.id(), it.place())));
        job.acCircuits().forEach(it -> names.add(new Name(Thing.AC_CIRCUIT, it.id(), it.place())));
        job.sockets().forEach(it -> names.add(new Name(Thing.SOCKET, it.name(), it.place())));
        return new Known(Optional.of(job), List.copyOf(names));
    }

    private final List<Object> records = new ArrayList<>();
    private final Map<String, Object> values = new HashMap<>();
    private final Map<String, Place> places = new HashMap<>();
    private final List<Name> names = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();
    private final List<DoneOn> done = new ArrayList<>();

    void record(Object record) {
        records.add(record);
    }

    /** Takes a name or the use of one, even in a wrong form: it is still the name that others refer to. */
    void name(Field field, Object value, Place at) {
        field.annotation(Identifies.class).ifPresent(it -> names.add(new Name(it.value(), value.toString(), at)));
        field.annotation(RefersTo.class).ifPresent(it -> references.add(new Reference(it, value.toString(), at)));
    }

    /** Takes a value that its field allows. */
    void value(Field field, Object value, Place at) {
        values.put(at.path(), value);
        places.put(at.path(), at);
        if (field.annotation(Done.class).isPresent()) {
            LocalDate day = value instanceof YearMonth month ? month.atDay(1) : (LocalDate) value;
            done.add(new DoneOn(day, value.toString(), at));
        }
    }

    /** Takes the day on which a value was found out. */
    void foundOut(@Nullable LocalDate day, Place at) {
        if (day != null) {
            done.add(new DoneOn(day, day.toString(), at));
        }
    }

    /** All records of a type that could be bound, in the order of the file. */
    <R> List<R> all(Class<R> type) {
        return records.stream().filter(type::isInstance).map(type::cast).toList();
    }

    /** The single value at a path, if it stands in the file and could be read. */
    <T> Optional<T> value(String path, Class<T> type) {
        return Optional.ofNullable(values.get(path)).map(type::cast);
    }

    /** All texts of the job, sorted; what they are in other languages is not among them. */
    Set<String> texts() {
        return values.entrySet().stream()
                .filter(entry -> !entry.getKey().startsWith(TRANSLATIONS))
                .map(Map.Entry::getValue)
                .filter(String.class::isInstance)
                .map(String.class::cast)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Where the value at a path stands that could be read. */
    Place placeOf(String path) {
        return Objects.requireNonNull(places.get(path), path);
    }

    List<Name> names() {
        return List.copyOf(names);
    }

    List<Reference> references() {
        return List.copyOf(references);
    }

    List<DoneOn> done() {
        return List.copyOf(done);
    }
}
