package org.quaybook.diag;

/**
 * Where something stood.
 *
 * @param file the file's name as the user gave it
 * @param path the way to the value inside the file: {@code cables[0].length}; empty for the whole file
 * @param position where its text begins
 */
public record Place(String file, String path, Position position) {

    /** A place inside no file: for values that the program or a test made. */
    public static final Place NOWHERE = new Place("", "", Position.START);

    /** {@code file:line:column}, the form that editors make clickable. */
    @Override
    public String toString() {
        return file + ":" + position;
    }
}
