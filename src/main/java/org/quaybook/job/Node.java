package org.quaybook.job;

import java.util.List;
import org.quaybook.diag.Position;

/** A YAML document as a tree that remembers where everything stood. Values stay texts until a record asks for them. */
sealed interface Node {

    /** Where its text begins. */
    Position position();

    /** Keys with values, in the order of the file; a key may stand in it more than once. */
    record Mapping(Position position, List<Entry> entries) implements Node {
        public Mapping {
            entries = List.copyOf(entries);
        }
    }

    /** A key with its value. */
    record Entry(String key, Position position, Node value) {}

    /** A list. */
    record Sequence(Position position, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** A single value; an empty text for a value that is not there. */
    record Scalar(Position position, String text) implements Node {}

    /** Something that cannot be read and has been reported. */
    record Refused(Position position) implements Node {}
}
