package org.quaybook.render;

import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    private static final Pattern CSS =
            Pattern.compile("\\((?<sheet>[^)]*)\\) (?<what>.*) at line (?<line>\\d+)\\..*", Pattern.DOTALL);

    private static final String UNKNOWN_PROPERTY = "is an unrecognized CSS property";

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
            String told = thrown == null ? message : message + ": " + thrown;
            if (where.equals(XRLog.CSS_PARSE)) {
                css(told, faults);
            } else {
                faults.add(RenderMessage.LAYOUT_FAILED, told);
            }
        }
    }

    /** The engine names a style sheet and a line in its sentence; what it does then does not matter here, for nothing is printed. */
    private static void css(String told, Faults faults) {
        Matcher parts = CSS.matcher(told);
        if (!parts.matches()) {
            faults.add(RenderMessage.CSS_FAULT, told);
            return;
        }
        String what = parts.group("what");
        // It counts lines from 0 in one of its sentences and from 1 in all others.
        int line = Integer.parseInt(parts.group("line")) - (what.endsWith(UNKNOWN_PROPERTY) ? 0 : 1);
        String sheet = parts.group("sheet");
        if (sheet.startsWith("inline") || sheet.equals("style attribute")) {
            faults.add(RenderMessage.CSS_FAULT_INSIDE, what, line + 1);
        } else {
            faults.addIn(sheet, line, RenderMessage.CSS_FAULT, what);
        }
    }

    @Override
    public void setLevel(String logger, Level level) {
        // Every warning is heard, whatever level the engine's own configuration asks for.
    }
}
