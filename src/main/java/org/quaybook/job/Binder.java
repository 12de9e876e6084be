package org.quaybook.job;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;

/**
 * Binds a tree to the records of the format. Goes on after every problem, so that one run finds them all: what cannot be
 * bound comes back empty and has been reported.
 */
final class Binder {

    /** Between braces, YAML takes what follows the comma of {@code 1,5 m} for a key. */
    private static final Pattern COMMA_RESULT = Pattern.compile("\\d");

    private final Problems problems;
    private final Found found;

    Binder(Problems problems, Found found) {
        this.problems = problems;
        this.found = found;
    }

    /** Binds the record that a whole file is. */
    <R extends Record> Optional<R> file(Class<R> type, Node root) {
        return record(type, root, problems.place("", root.position())).map(type::cast);
    }

    private Optional<Object> record(Class<?> type, Node node, Place at) {
        if (!(node instanceof Node.Mapping mapping)) {
            problems.add(at, Message.of(JobMessage.MAPPING_DUE, title(at), keys(type)));
            return Optional.empty();
        }
        Map<String, Node.Entry> entries = entries(mapping, keyList(type), at);
        List<Field> fields = Field.of(type);
        @Nullable Object[] values = new @Nullable Object[fields.size()];
        boolean complete = true;
        for (int i = 0; i < values.length; i++) {
            Field field = fields.get(i);
            Slot slot = switch (field.form()) {
                case PLACE -> Slot.of(at);
                case BESIDE -> Slot.of(List.of());
                case LIST, GIVEN, PLAIN -> slot(field, entries.get(field.key()), at);
            };
            values[i] = slot.value();
            complete &= slot.filled();
        }
        return complete ? construct(type, values, at) : Optional.empty();
    }

    /** What goes into one component of a record, and whether it could be made out; null is a legal value. */
    private record Slot(boolean filled, @Nullable Object value) {
        static final Slot UNFILLED = new Slot(false, null);

        static Slot of(@Nullable Object value) {
            return new Slot(true, value);
        }

        static Slot of(Optional<?> value) {
            return value.isPresent() ? new Slot(true, value.get()) : UNFILLED;
        }
    }

    private Slot slot(Field field, Node.@Nullable Entry entry, Place record) {
        if (entry == null) {
            return absent(field, record);
        }
        Node node = entry.value();
        Place at = within(record, entry);
        if (node instanceof Node.Refused) {
            return Slot.UNFILLED;
        }
        if (node instanceof Node.Scalar scalar && scalar.text().isEmpty()) {
            noValue(field, problems.place(at.path(), entry.position()));
            return Slot.UNFILLED;
        }
        return switch (field.form()) {
            case LIST -> Slot.of(list(field, node, at));
            case GIVEN -> Slot.of(new GivenReader(problems, this, found).read(field, node, at));
            case PLAIN, PLACE, BESIDE ->
                Slot.of(field.isNested() ? record(field.type(), node, at) : plain(field, node, at));
        };
    }

    /** A value stands where its own text is; whatever has parts stands where its key is. */
    private Place within(Place record, Node.Entry entry) {
        String path = record.path().isEmpty() ? entry.key() : record.path() + "." + entry.key();
        return problems.place(path, entry.value() instanceof Node.Scalar scalar ? scalar.position() : entry.position());
    }

    private Slot absent(Field field, Place record) {
        if (!field.required()) {
            return Slot.of(field.form() == Field.Form.LIST ? List.of() : null);
        }
        problems.add(record, Message.of(JobMessage.MISSING_KEY, field.key(), title(record)), example(field));
        return Slot.UNFILLED;
    }

    private void noValue(Field field, Place at) {
        List<Message> hints = new ArrayList<>(example(field));
        if (!field.required()) {
            hints.add(Message.of(JobMessage.LEAVE_OUT, field.key()));
        }
        problems.add(at, Message.of(JobMessage.NO_VALUE, field.key()), hints);
    }

    private static List<Message> example(Field field) {
        return field.sample()
                .map(text -> List.of(Message.of(JobMessage.EXAMPLE, field.key() + ": " + text)))
                .orElse(List.of());
    }

    private Optional<List<Object>> list(Field field, Node node, Place at) {
        if (!(node instanceof Node.Sequence sequence)) {
            problems.add(at, Message.of(JobMessage.LIST_DUE, field.key()));
            return Optional.empty();
        }
        List<Object> items = new ArrayList<>();
        for (int i = 0; i < sequence.items().size(); i++) {
            Node item = sequence.items().get(i);
            Place here = problems.place(at.path() + "[" + i + "]", item.position());
            if (item instanceof Node.Scalar scalar && scalar.text().isEmpty()) {
                problems.add(here, Message.of(JobMessage.NO_VALUE, field.key()));
            } else if (!(item instanceof Node.Refused)) {
                (field.isNested() ? record(field.type(), item, here) : plain(field, item, here)).ifPresent(items::add);
            }
        }
        return items.size() == sequence.items().size() ? Optional.of(items) : Optional.empty();
    }

    private Optional<Object> plain(Field field, Node node, Place at) {
        if (node instanceof Node.Scalar scalar) {
            return value(field, scalar.text(), at);
        }
        problems.add(at, Message.of(JobMessage.VALUE_DUE, field.key()), example(field));
        return Optional.empty();
    }

    /** Reads and judges the text of one value. */
    Optional<Object> value(Field field, String text, Place at) {
        try {
            Object value = Scalars.read(field.type(), text);
            found.name(field, value, at);
            Limits.check(field, value, text);
            found.value(field, value, at);
            return Optional.of(value);
        } catch (Refusal refusal) {
            problems.add(at, refusal.reason(), refusal.hints());
            return Optional.empty();
        }
    }

    /** The entries of a mapping by key; foreign and repeated keys are reported, the first of repeated ones counts. */
    Map<String, Node.Entry> entries(Node.Mapping mapping, List<String> allowed, Place at) {
        Map<String, Node.Entry> byKey = new HashMap<>();
        for (Node.Entry entry : mapping.entries()) {
            Place here = problems.place(at.path(), entry.position());
            Node.Entry first = byKey.putIfAbsent(entry.key(), entry);
            if (first != null) {
                problems.add(
                        here,
                        Message.of(
                                JobMessage.DUPLICATE_KEY,
                                entry.key(),
                                first.position().line() + 1));
            } else if (!allowed.contains(entry.key())) {
                List<Message> hints = new ArrayList<>(Scalars.meant(entry.key(), allowed));
                if (COMMA_RESULT.matcher(entry.key()).lookingAt()) {
                    hints.add(Message.of(JobMessage.COMMA_ENDS_VALUE));
                }
                hints.add(Message.of(JobMessage.ALLOWED, String.join(", ", allowed)));
                problems.add(here, Message.of(JobMessage.UNKNOWN_KEY, entry.key(), title(at)), hints);
            }
        }
        return byKey;
    }

    private Optional<Object> construct(Class<?> type, @Nullable Object[] values, Place at) {
        try {
            Object record = constructor(type).newInstance(values);
            found.record(record);
            return Optional.of(record);
        } catch (InvocationTargetException refused) {
            if (!(refused.getCause() instanceof IllegalArgumentException reason)) {
                throw new IllegalStateException(type + " failed", refused);
            }
            problems.add(at, Message.of(JobMessage.REFUSED, title(at), String.valueOf(reason.getMessage())));
            return Optional.empty();
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(type + " cannot be constructed", impossible);
        }
    }

    private static Constructor<?> constructor(Class<?> type) throws NoSuchMethodException {
        Class<?>[] components = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        return type.getDeclaredConstructor(components);
    }

    private static List<String> keyList(Class<?> type) {
        return Field.written(type).stream().map(Field::key).toList();
    }

    private static String keys(Class<?> type) {
        return String.join(", ", keyList(type));
    }

    /** How a message calls the thing at a path. */
    private static Object title(Place at) {
        return at.path().isEmpty() ? Message.of(JobMessage.WHOLE_FILE) : at.path();
    }
}
