package org.quaybook.pack.worksheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.changes.Changes;
import org.quaybook.pack.workings.Workings;
import org.quaybook.record.Rows;
import org.quaybook.record.SettingSheet;
import org.quaybook.text.Words;

/** What a revision changes, for whoever puts on labels and swaps pages. */
final class ChangesSheet {

    private final Words words;
    private final SettingSheet names;
    private final Workings workings;

    ChangesSheet(Assessment it, Words words) {
        this.words = words;
        this.names = new SettingSheet(it.job(), words);
        this.workings = new Workings(it.figures(), words, Workings.Places.PATH);
    }

    Map<String, Object> facts(Changes changes, List<String> chapters) {
        return new Rows()
                .put("since", words.say("worksheet.changes.since", changes.from(), words.date(changes.date())))
                .put("visits", changes.visits().stream().map(this::visit).toList())
                .put("labels", changes.labels().stream().map(this::label).toList())
                .put(
                        "settings",
                        changes.settings().stream()
                                .map(setting -> value(setting, setting.name()))
                                .toList())
                .put("findings", changes.findings().stream().map(this::finding).toList())
                .put("chapters", chapters)
                .put("figures", changes.figures().stream().map(this::figure).toList())
                .map();
    }

    private Map<String, Object> visit(Changes.Visit visit) {
        return new Rows()
                .put("on", words.date(visit.date()))
                .put("firm", names.who(visit.firm()))
                .put("did", visit.did())
                .map();
    }

    private Map<String, Object> label(Changes.Label label) {
        return new Rows()
                .put(
                        "task",
                        words.say("worksheet.changes.task."
                                + label.task().name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .put("id", label.id())
                .put("title", label.title())
                .put("place", label.place())
                .map();
    }

    private Map<String, Object> finding(Changes.Found found) {
        return new Rows()
                .put("what", words.say(found.gone() ? "worksheet.changes.gone" : "worksheet.changes.come"))
                .put("check", found.check())
                .put("message", found.message())
                .map();
    }

    /** An earlier version of the program may have had a figure that this one cannot name. */
    private Map<String, Object> figure(Changes.Value figure) {
        return value(figure, workings.name(figure.name()).orElse(figure.name()));
    }

    private Map<String, Object> value(Changes.Value value, String name) {
        return new Rows()
                .put("name", name)
                .put("before", value.before().orElse("–"))
                .put("now", value.now().orElse("–"))
                .map();
    }
}
