package org.quaybook.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A visit after handing over as the service log writes it. */
public final class ServiceText {

    private static final String HEAD = "# What was done after handing over.\n";

    private ServiceText() {}

    /**
     * A visit.
     *
     * @param readings each as a test of the job file is written between braces: {@code test: insulation, result: 20 MΩ}
     * @param settings likewise, as settings
     */
    public record Visit(
            int revision,
            String date,
            String firm,
            @Nullable String by,
            String did,
            @Nullable String instrument,
            List<String> readings,
            List<String> settings) {
        public Visit {
            readings = List.copyOf(readings);
            settings = List.copyOf(settings);
        }
    }

    /**
     * The log with a visit at its end; what was there stays as it is, letter by letter. A log that does not end with its
     * entries in block style comes out as something that cannot be read: read it before it replaces anything.
     *
     * @param log text of the log so far; empty for none
     * @param job number of the job
     */
    public static String with(String log, String job, Visit visit) {
        StringBuilder text = new StringBuilder(log);
        if (log.isBlank()) {
            text.append(HEAD).append("job: ").append(scalar(job)).append("\nentries:\n");
        } else if (!log.endsWith("\n")) {
            text.append('\n');
        }
        text.append("  - revision: ").append(visit.revision()).append('\n');
        text.append("    date: ").append(visit.date()).append('\n');
        pair(text, "firm", visit.firm());
        pair(text, "by", visit.by());
        pair(text, "did", visit.did());
        pair(text, "instrument", visit.instrument());
        list(text, "readings", visit.readings());
        list(text, "settings", visit.settings());
        return text.toString();
    }

    private static void pair(StringBuilder text, String key, @Nullable String value) {
        if (value != null) {
            text.append("    ").append(key).append(": ").append(scalar(value)).append('\n');
        }
    }

    private static void list(StringBuilder text, String key, List<String> items) {
        if (!items.isEmpty()) {
            text.append("    ").append(key).append(":\n");
            items.forEach(
                    item -> text.append("      - { ").append(oneLine(item)).append(" }\n"));
        }
    }

    /** Always in quotes: whatever is typed is a text, not a list, a number or nothing. */
    private static String scalar(String value) {
        return "\"" + oneLine(value).replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }
}
