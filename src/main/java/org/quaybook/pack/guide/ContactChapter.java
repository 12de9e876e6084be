package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import org.quaybook.job.Given;
import org.quaybook.job.Rehearsal;
import org.quaybook.record.RecordLink;
import org.quaybook.record.Rows;
import org.quaybook.record.SettingSheet;
import org.quaybook.render.QrCode;

/** Whom to call, where the record is, and that the guide was handed over. */
final class ContactChapter {

    /** A module of 0.8 mm is read from half a metre away by a telephone (common practice, no source). */
    private static final double MODULE_MILLIMETRES = 0.8;

    private final Briefing brief;

    ContactChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        RecordLink link = RecordLink.of(brief.it());
        return new Rows()
                .put("qr", QrCode.of(link.address()).toSvg(MODULE_MILLIMETRES))
                .put("address", link.base() + link.folder())
                .put("key", link.printedKey())
                .put("shown", shown())
                .put("shownOn", shownOn())
                .put("service", service())
                .map();
    }

    private List<Map<String, Object>> service() {
        SettingSheet names = new SettingSheet(brief.job(), brief.words());
        return brief.job().service().stream()
                .map(entry -> new Rows()
                        .put("on", brief.words().date(entry.date()))
                        .put("firm", names.who(entry.firm()))
                        .put("did", entry.did())
                        .map())
                .toList();
    }

    private String shownOn() {
        Rehearsal rehearsal = brief.job().rehearsal();
        return rehearsal == null ? "" : brief.words().say("guide.contact.handover.shown", rehearsal.on());
    }

    private List<String> shown() {
        Rehearsal rehearsal = brief.job().rehearsal();
        if (rehearsal == null) {
            return List.of();
        }
        return brief.lines("contact.handover")
                .sayIf(Given.isYes(rehearsal.started()), "started")
                .sayIf(Given.isYes(rehearsal.allOff()), "all-off")
                .sayIf(Given.isYes(rehearsal.shoreLost()), "shore-lost")
                .list();
    }
}
