package org.quaybook.job;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.dataformat.yaml.JacksonYAMLParseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.diag.Position;
import org.quaybook.diag.SafeText;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Builds the tree of a YAML text from the parser's events. Only the plain part of YAML is let in: one document of
 * mappings with text keys, lists and scalars, bounded in depth and number; no anchors, aliases or tags.
 */
final class YamlTree {

    static final int MOST_DEPTH = 32;
    static final int MOST_NODES = 20_000;
    static final int LONGEST_TEXT = 10_000;

    private final Problems problems;
    private final YamlEvents events;
    private int nodes;

    private YamlTree(String text, Problems problems) throws IOException {
        this.problems = problems;
        this.events = YamlEvents.of(text);
    }

    /** The root of the text's only document; empty if there is none or it cannot be read, which is reported. */
    static Optional<Node> read(String text, Problems problems) {
        try {
            return new YamlTree(text, problems).document();
        } catch (Stopped stopped) {
            problems.add(problems.place("", stopped.position), stopped.reason);
        } catch (JacksonYAMLParseException bad) {
            syntax(text, problems, bad);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return Optional.empty();
    }

    private static void syntax(String text, Problems problems, JacksonYAMLParseException bad) {
        Position position = Position.START;
        String problem = bad.getOriginalMessage();
        List<Message> hints = List.of();
        if (bad.getCause() instanceof MarkedYAMLException cause) {
            Mark mark = cause.getProblemMark();
            position = new Position(mark.getLine(), mark.getColumn());
            problem = cause.getProblem();
            hints = YamlAdvice.of(text, cause);
        }
        problems.add(problems.place("", position), Message.of(JobMessage.SYNTAX, problem), hints);
    }

    private Optional<Node> document() throws Stopped, IOException {
        Node root = null;
        for (Event event = events.next(); event != null; event = events.next()) {
            if (event instanceof NodeEvent) {
                if (root != null) {
                    throw new Stopped(position(event), Message.of(JobMessage.SEVERAL_DOCUMENTS));
                }
                root = node(event, 1);
            }
        }
        if (root == null) {
            throw new Stopped(Position.START, Message.of(JobMessage.FILE_EMPTY));
        }
        return Optional.of(root);
    }

    private Node node(Event event, int depth) throws Stopped, IOException {
        if (++nodes > MOST_NODES) {
            throw new Stopped(position(event), Message.of(JobMessage.TOO_MANY_VALUES, MOST_NODES));
        }
        if (depth > MOST_DEPTH) {
            throw new Stopped(position(event), Message.of(JobMessage.TOO_DEEP, MOST_DEPTH));
        }
        refuseReferences(event);
        if (event instanceof MappingStartEvent) {
            return mapping(position(event), depth);
        }
        if (event instanceof SequenceStartEvent) {
            return sequence(position(event), depth);
        }
        return event instanceof ScalarEvent scalar ? scalar(scalar) : new Node.Refused(position(event));
    }

    private Node mapping(Position position, int depth) throws Stopped, IOException {
        List<Node.Entry> entries = new ArrayList<>();
        for (Event event = inside(); !(event instanceof MappingEndEvent); event = inside()) {
            ScalarEvent key = (ScalarEvent) event;
            refuseReferences(key);
            Node value = node(inside(), depth + 1);
            if (isReadable(key)) {
                entries.add(new Node.Entry(key.getValue(), position(key), value));
            }
        }
        return new Node.Mapping(position, entries);
    }

    private Node sequence(Position position, int depth) throws Stopped, IOException {
        List<Node> items = new ArrayList<>();
        for (Event event = inside(); !(event instanceof SequenceEndEvent); event = inside()) {
            items.add(node(event, depth + 1));
        }
        return new Node.Sequence(position, items);
    }

    /** The next event inside a mapping or list. Jackson itself refuses a key that is no scalar. */
    private Event inside() throws Stopped, IOException {
        try {
            return events.inside();
        } catch (JacksonYAMLParseException syntax) {
            throw syntax;
        } catch (JsonParseException noKey) {
            throw new Stopped(position(events.last()), Message.of(JobMessage.SYNTAX, "a key must be a word"));
        }
    }

    private Node scalar(ScalarEvent scalar) {
        if (!isReadable(scalar)) {
            return new Node.Refused(position(scalar));
        }
        String text = scalar.getValue().strip();
        boolean empty = scalar.isPlain() && (text.equals("~") || text.equals("null"));
        return new Node.Scalar(position(scalar), empty ? "" : text);
    }

    private boolean isReadable(ScalarEvent scalar) {
        String text = scalar.getValue();
        // An escape inside quotes can write what the text of the file may not hold.
        OptionalInt unsafe = SafeText.firstUnsafe(text);
        if (unsafe.isPresent()) {
            Message reason = Message.of(JobMessage.UNSAFE_CHARACTER, SafeText.nameOf(unsafe.getAsInt()));
            problems.add(problems.place("", position(scalar)), reason);
        }
        if (text.length() > LONGEST_TEXT) {
            Message reason = Message.of(JobMessage.TEXT_TOO_LONG, text.length(), LONGEST_TEXT);
            problems.add(problems.place("", position(scalar)), reason);
        }
        return unsafe.isEmpty() && text.length() <= LONGEST_TEXT;
    }

    /** Reported rather than stopped at: the value beside an anchor or tag can still be read. */
    private void refuseReferences(Event event) {
        JobMessage refused = null;
        String name = "";
        if (event instanceof AliasEvent alias) {
            refused = JobMessage.ALIAS;
            name = "*" + alias.getAnchor();
        } else if (event instanceof NodeEvent node && node.getAnchor() != null) {
            refused = JobMessage.ANCHOR;
            name = "&" + node.getAnchor();
        } else if (tag(event) != null) {
            refused = JobMessage.TAG;
            name = String.valueOf(tag(event)).replace(Tag.PREFIX, "!!");
        }
        if (refused != null) {
            problems.add(problems.place("", position(event)), Message.of(refused, name));
        }
    }

    private static @Nullable String tag(Event event) {
        if (event instanceof ScalarEvent scalar) {
            return scalar.getTag();
        }
        return event instanceof CollectionStartEvent start ? start.getTag() : null;
    }

    private static Position position(Event event) {
        return new Position(event.getStartMark().getLine(), event.getStartMark().getColumn());
    }

    /** The rest of the file is not worth reading. */
    private static final class Stopped extends Exception {
        private final transient Position position;
        private final transient Message reason;

        Stopped(Position position, Message reason) {
            super(reason.key().key(), null, false, false);
            this.position = position;
            this.reason = reason;
        }
    }
}
