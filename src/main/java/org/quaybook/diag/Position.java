package org.quaybook.diag;

/** A place in a text, counted from 0; people are shown both numbers plus one. */
public record Position(int line, int column) implements Comparable<Position> {

    public static final Position START = new Position(0, 0);

    public Position {
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException("no position at line " + line + ", column " + column);
        }
    }

    @Override
    public int compareTo(Position other) {
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }

    /** As people count: {@code line:column}, both from 1. */
    @Override
    public String toString() {
        return (line + 1) + ":" + (column + 1);
    }
}
