package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.quaybook.record.Branding;
import org.quaybook.record.Rows;
import org.quaybook.render.Prose;

/** The chapters that a job has matter for, in the order in which they are needed. */
final class Chapters {

    /** The chapter that the installer adds. */
    private static final String OWN = "own";

    private final Briefing brief;
    private final Optional<Prose> own;

    Chapters(Briefing brief, Branding branding) {
        this.brief = brief;
        this.own = branding.chapter(brief.words().language());
    }

    /** {@code id} names template and place, {@code number} counts from 1, {@code title} is in words. */
    List<Map<String, Object>> rows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (String id : ids()) {
            rows.add(new Rows()
                    .put("id", id)
                    .put("number", rows.size() + 1)
                    .put("title", title(id))
                    .map());
        }
        return List.copyOf(rows);
    }

    private String title(String id) {
        return id.equals(OWN)
                ? own.orElseThrow().title()
                : brief.words()
                        .say("guide.chapter." + id + variant(id), brief.names().craft());
    }

    /** Warnings before steps, using before keeping, keeping before mending, what is looked up last. */
    private List<String> ids() {
        List<String> ids = new ArrayList<>(List.of("card", "safety", "run"));
        addIf(new TogetherChapter(brief).isNeeded(), "together", ids);
        ids.addAll(List.of("volts", "cutout", "normal"));
        addIf(new RechargeChapter(brief).isNeeded(), "recharge", ids);
        addIf(brief.has().shore() || brief.has().generator(), "shore", ids);
        addIf(new SocketsChapter(brief).isNeeded(), "sockets", ids);
        addIf(new RehearsalChapter(brief).isNeeded(), "rehearsal", ids);
        ids.addAll(List.of("away", "seasons", "care", "trouble", "recovery"));
        addIf(own.isPresent(), OWN, ids);
        ids.addAll(List.of("sheet", "workings", "terms", "contact", "notes"));
        return ids;
    }

    private static void addIf(boolean needed, String id, List<String> ids) {
        if (needed) {
            ids.add(id);
        }
    }

    /** What the chapter on outside supplies is about, and whether there is an RCD to test. */
    private String variant(String chapter) {
        return switch (chapter) {
            case "shore" -> !brief.has().shore() ? ".generator" : brief.has().generator() ? ".both" : "";
            case "care" -> brief.has().rcds() ? ".rcd" : "";
            default -> "";
        };
    }
}
