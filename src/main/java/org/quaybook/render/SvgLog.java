package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** What JSVG complains about while it is open: JSVG leaves out what it does not understand and only logs it. */
final class SvgLog extends Handler implements AutoCloseable {

    /** Held here, because the platform forgets loggers that nobody holds. */
    private static final Logger LOGGER = Logger.getLogger("com.github.weisj.jsvg");

    private final List<String> warnings = new ArrayList<>();

    SvgLog() {
        setLevel(Level.WARNING);
        LOGGER.setUseParentHandlers(false);
        LOGGER.addHandler(this);
    }

    List<String> warnings() {
        return warnings;
    }

    @Override
    public void publish(LogRecord entry) {
        if (isLoggable(entry)) {
            Throwable thrown = entry.getThrown();
            warnings.add(entry.getMessage() + (thrown == null ? "" : ": " + thrown.getMessage()));
        }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {
        LOGGER.removeHandler(this);
    }
}
