package org.quaybook.render;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;

/** Something cannot be rendered as it stands. Carries every fault that was found, in the order of finding. */
public final class RenderException extends RuntimeException {

    private final transient List<Diagnostic> diagnostics;

    /** @param diagnostics at least one */
    public RenderException(List<Diagnostic> diagnostics) {
        this(diagnostics, null);
    }

    /** @param cause what a library threw; null when none did */
    public RenderException(List<Diagnostic> diagnostics, @Nullable Throwable cause) {
        super(diagnostics.stream().map(RenderException::plain).collect(Collectors.joining("\n")), cause);
        if (diagnostics.isEmpty()) {
            throw new IllegalArgumentException("an exception without a fault");
        }
        this.diagnostics = List.copyOf(diagnostics);
    }

    static RenderException of(Place place, @Nullable Throwable cause, RenderMessage key, Object... arguments) {
        return new RenderException(List.of(fault(place, key, arguments)), cause);
    }

    static Diagnostic fault(Place place, RenderMessage key, Object... arguments) {
        return new Diagnostic(Severity.ERROR, key.key(), place, "", Message.of(key, arguments), List.of());
    }

    /**
     * The same faults, that of too many pages with the file that the document was to become: whoever lays it out knows its
     * title only.
     *
     * @param file its name
     */
    public RenderException whileMaking(String file) {
        return new RenderException(
                diagnostics.stream().map(fault -> told(fault, file)).toList(), this);
    }

    private static Diagnostic told(Diagnostic fault, String file) {
        return fault.rule().equals(RenderMessage.TOO_MANY_PAGES.key())
                ? new Diagnostic(
                        fault.severity(),
                        fault.rule(),
                        new Place(file, fault.place().path(), fault.place().position()),
                        fault.excerpt(),
                        fault.message(),
                        fault.hints())
                : fault;
    }

    /** Every fault, at least one. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /** For logs and developers; readers get a sentence made from the message. */
    private static String plain(Diagnostic diagnostic) {
        return diagnostic.place() + ": " + diagnostic.rule() + " "
                + diagnostic.message().arguments();
    }
}
