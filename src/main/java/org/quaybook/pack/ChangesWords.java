package org.quaybook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.pack.changes.Changes;
import org.quaybook.pack.workings.Workings;
import org.quaybook.record.Edition;
import org.quaybook.record.SettingSheet;
import org.quaybook.text.Words;

/** What a revision changes, in a few sentences for whoever opens the record. */
final class ChangesWords {

    /** More names than this say nothing to anybody. */
    private static final int MOST = 8;

    private final Words words;
    private final SettingSheet names;
    private final Workings workings;

    ChangesWords(Edition edition) {
        this.words = edition.words();
        this.names = new SettingSheet(edition.assessment().job(), words);
        this.workings = new Workings(edition.assessment().figures(), words, Workings.Places.PATH);
    }

    /**
     * The sentences; one that says so if nothing has changed.
     *
     * @param chapters headings of the guide's chapters that read otherwise
     */
    List<String> lines(Changes changes, List<String> chapters) {
        List<String> lines = new ArrayList<>();
        add(
                lines,
                "visits",
                changes.visits().stream()
                        .map(visit -> words.say(
                                "record.changes.visit", words.date(visit.date()), names.who(visit.firm()), visit.did()))
                        .toList());
        add(lines, "labels-on", labels(changes, Changes.Task.PUT_ON));
        add(lines, "labels-new", labels(changes, Changes.Task.REPLACE));
        add(lines, "labels-off", labels(changes, Changes.Task.TAKE_OFF));
        add(lines, "settings", changes.settings().stream().map(this::setting).toList());
        add(
                lines,
                "figures",
                changes.figures().stream()
                        .flatMap(figure -> workings.name(figure.name()).stream())
                        .toList());
        add(lines, "chapters", chapters);
        return lines.isEmpty() ? List.of(words.say("record.changes.none")) : lines;
    }

    private static List<String> labels(Changes changes, Changes.Task task) {
        return changes.labels().stream()
                .filter(label -> label.task() == task)
                .map(Changes.Label::id)
                .toList();
    }

    private String setting(Changes.Value setting) {
        Optional<String> before = setting.before();
        Optional<String> now = setting.now();
        return before.isPresent() && now.isPresent()
                ? words.say("record.changes.setting", setting.name(), now.get(), before.get())
                : setting.name();
    }

    private void add(List<String> lines, String what, List<String> names) {
        if (names.isEmpty()) {
            return;
        }
        String list = String.join("; ", names.subList(0, Math.min(MOST, names.size())));
        lines.add(
                names.size() > MOST
                        ? words.say(
                                "record.changes." + what, words.say("record.changes.more", list, names.size() - MOST))
                        : words.say("record.changes." + what, list));
    }
}
