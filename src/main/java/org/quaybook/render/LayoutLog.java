package org.quaybook.render;

import java.util.logging.Level;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.util.XRLog;
import org.xhtmlrenderer.util.XRLogger;

/**
 * Hears what the layout engine complains about: it leaves out what it does not understand and only logs it. The
 * engine's log is one for the whole program, so each thread's complaints are told apart here.
 */
final class LayoutLog implements XRLogger {

    private static final LayoutLog SHARED = new LayoutLog();
    private static final ThreadLocal<@Nullable Faults> LISTENER = new ThreadLocal<>();

    private LayoutLog() {}

    /** Runs the engine; what it complains about meanwhile, on this thread, goes to the faults. */
    static void hear(Faults faults, Runnable engine) {
        XRLog.setLoggingEnabled(true);
        XRLog.setLoggerImpl(SHARED);
        LISTENER.set(faults);
        try {
            engine.run();
        } finally {
            LISTENER.remove();
        }
    }

    @Override
    public void log(String where, Level level, String message) {
        log(where, level, message, null);
    }

    @Override
    public void log(String where, Level level, String message, @Nullable Throwable thrown) {
        Faults faults = LISTENER.get();
        if (faults != null && level.intValue() >= Level.WARNING.intValue()) {
            boolean css = where.equals(XRLog.CSS_PARSE);
            String told = thrown == null ? message : message + ": " + thrown;
            faults.add(css ? RenderMessage.CSS_FAULT : RenderMessage.LAYOUT_FAILED, told);
        }
    }

    @Override
    public void setLevel(String logger, Level level) {
        // Every warning is heard, whatever level the engine's own configuration asks for.
    }
}
