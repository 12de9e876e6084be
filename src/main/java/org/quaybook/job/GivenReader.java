package org.quaybook.job;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;

/** Reads a value with how it is known, short ({@code 21 ms (measured, J. Fen, 2026-05-13)}) or long. */
final class GivenReader {

    static final String NOT_SEEN = "not seen";
    static final List<String> LONG_KEYS = List.of("value", "known", "by", "on");

    /** The words for how a value is known that go with a value. */
    static final List<String> KNOWN = Arrays.stream(Provenance.values())
            .filter(word -> word != Provenance.STATED && word != Provenance.NOT_SEEN)
            .map(Names::of)
            .toList();

    private static final Pattern WITH_NOTE = Pattern.compile("(.*\\S) *\\(([^()]*)\\)");
    private static final Pattern LOOKS_LIKE_DATE = Pattern.compile("[\\d./-]{6,10}");

    private final Problems problems;
    private final Binder binder;
    private final Found found;

    GivenReader(Problems problems, Binder binder, Found found) {
        this.problems = problems;
        this.binder = binder;
        this.found = found;
    }

    Optional<Object> read(Field field, Node node, Place at) {
        if (node instanceof Node.Scalar scalar) {
            return brief(field, scalar.text(), at);
        }
        if (node instanceof Node.Mapping mapping) {
            return full(field, mapping, at);
        }
        problems.add(at, Message.of(JobMessage.VALUE_DUE, field.key()));
        return Optional.empty();
    }

    private Optional<Object> brief(Field field, String text, Place at) {
        if (text.equals(NOT_SEEN)) {
            return Optional.of(new Given<>(null, Provenance.NOT_SEEN, null, null, at));
        }
        Matcher noted = WITH_NOTE.matcher(text);
        if (!noted.matches() || (field.type() == String.class && !startsWithKnown(noted.group(2)))) {
            return binder.value(field, text, at).map(value -> new Given<>(value, Provenance.STATED, null, null, at));
        }
        Optional<Object> value = binder.value(field, noted.group(1), at);
        try {
            Note note = Note.read(noted.group(2));
            found.foundOut(note.on, at);
            return value.map(it -> new Given<>(it, note.known, note.by, note.on, at));
        } catch (Refusal refusal) {
            problems.add(at, refusal.reason(), refusal.hints());
            return Optional.empty();
        }
    }

    /** A text may end in a bracket of its own. */
    private static boolean startsWithKnown(String note) {
        return KNOWN.contains(note.split(",", 2)[0].strip());
    }

    private Optional<Object> full(Field field, Node.Mapping mapping, Place at) {
        Map<String, Node.Entry> entries = binder.entries(mapping, LONG_KEYS, at);
        Part<String> text = part(entries, "value", at, whole -> whole);
        Part<String> knownWord = part(entries, "known", at, whole -> whole);
        Part<String> by = part(entries, "by", at, whole -> whole);
        Part<LocalDate> on = part(entries, "on", at, Scalars::date);
        if (!(text.sound && knownWord.sound && by.sound && on.sound)) {
            return Optional.empty();
        }
        found.foundOut(on.value, on.place);
        if (NOT_SEEN.equals(knownWord.value)) {
            return notSeen(text, by, on, at);
        }
        if (text.value == null) {
            problems.add(at, Message.of(JobMessage.MISSING_KEY, "value", at.path()));
            return Optional.empty();
        }
        Optional<Object> value = binder.value(field, text.value, text.place);
        try {
            Provenance known = knownWord.value == null ? Provenance.STATED : known(knownWord.value);
            return value.map(it -> new Given<>(it, known, by.value, on.value, at));
        } catch (Refusal refusal) {
            problems.add(knownWord.place, refusal.reason(), refusal.hints());
            return Optional.empty();
        }
    }

    private Optional<Object> notSeen(Part<String> text, Part<String> by, Part<LocalDate> on, Place at) {
        if (text.value != null) {
            problems.add(text.place, Message.of(JobMessage.NOT_SEEN_WITH_VALUE, text.value));
            return Optional.empty();
        }
        return Optional.of(new Given<>(null, Provenance.NOT_SEEN, by.value, on.value, at));
    }

    /** One key of the long form: absent and sound, read and sound, or reported and not sound. */
    private record Part<T>(@Nullable T value, boolean sound, Place place) {}

    @FunctionalInterface
    private interface PartReader<T> {
        T read(String text) throws Refusal;
    }

    private <T> Part<T> part(Map<String, Node.Entry> entries, String key, Place at, PartReader<T> reader) {
        Node.Entry entry = entries.get(key);
        if (entry == null) {
            return new Part<>(null, true, at);
        }
        Place here = problems.place(at.path() + "." + key, entry.value().position());
        if (entry.value() instanceof Node.Refused) {
            return new Part<>(null, false, here);
        }
        if (!(entry.value() instanceof Node.Scalar scalar)) {
            problems.add(here, Message.of(JobMessage.VALUE_DUE, key));
            return new Part<>(null, false, here);
        }
        if (scalar.text().isEmpty()) {
            problems.add(here, Message.of(JobMessage.NO_VALUE, key));
            return new Part<>(null, false, here);
        }
        try {
            return new Part<>(reader.read(scalar.text()), true, here);
        } catch (Refusal refusal) {
            problems.add(here, refusal.reason(), refusal.hints());
            return new Part<>(null, false, here);
        }
    }

    private static Provenance known(String word) throws Refusal {
        if (!KNOWN.contains(word)) {
            throw new Refusal(
                    Message.of(JobMessage.BAD_PROVENANCE, word, String.join(", ", KNOWN)),
                    Scalars.meant(Provenance.class, word, KNOWN));
        }
        return Arrays.stream(Provenance.values())
                .filter(constant -> Names.of(constant).equals(word))
                .findFirst()
                .orElseThrow();
    }

    /** The bracket behind a value: how it is known, then by whom and when, in either order. */
    private record Note(
            Provenance known, @Nullable String by, @Nullable LocalDate on) {

        static Note read(String text) throws Refusal {
            String[] parts = text.split(",", -1);
            Provenance known = GivenReader.known(parts[0].strip());
            String by = null;
            LocalDate on = null;
            for (int i = 1; i < parts.length; i++) {
                String part = parts[i].strip();
                if (LOOKS_LIKE_DATE.matcher(part).matches() && on == null) {
                    on = Scalars.date(part);
                } else if (by == null && !part.isEmpty()) {
                    by = part;
                } else {
                    throw new Refusal(Message.of(JobMessage.BAD_PROVENANCE_DETAIL, text));
                }
            }
            return new Note(known, by, on);
        }
    }
}
