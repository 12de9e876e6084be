package org.quaybook.render;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;

/** The faults of one document, gathered so that all are told at once and none twice. */
final class Faults {

    private final Place place;
    private final Set<Diagnostic> found = new LinkedHashSet<>();

    /** @param document what a reader knows the document by */
    Faults(String document) {
        this.place = new Place(document, "", Position.START);
    }

    Place place() {
        return place;
    }

    void add(RenderMessage key, Object... arguments) {
        found.add(RenderException.fault(place, key, arguments));
    }

    /** One in a file that the document names. */
    void addIn(String file, int line, RenderMessage key, Object... arguments) {
        found.add(RenderException.fault(new Place(file, "", new Position(line, 0)), key, arguments));
    }

    void add(Diagnostic fault) {
        found.add(fault);
    }

    List<Diagnostic> found() {
        return List.copyOf(found);
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    void throwIfAny() {
        if (!found.isEmpty()) {
            throw new RenderException(found());
        }
    }
}
