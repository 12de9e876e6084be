package org.quaybook.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.Job;
import org.quaybook.job.Owner;
import org.quaybook.job.ServiceEntry;
import org.quaybook.job.Setting;
import org.quaybook.text.Words;

/** The settings as left: what they are, what they were, who changed them and when. */
public final class SettingSheet {

    private final Job job;
    private final Words words;

    public SettingSheet(Job job, Words words) {
        this.job = job;
        this.words = words;
    }

    /** All settings, in the order of the job, with those that visits added last. */
    public List<Map<String, Object>> rows() {
        return job.settings().stream().map(this::row).toList();
    }

    /** Those that a visit changed, as it left them. */
    List<Map<String, Object>> rows(ServiceEntry entry) {
        return entry.settings().stream().map(this::row).toList();
    }

    private Map<String, Object> row(Setting setting) {
        Optional<ServiceEntry> visit = visit(setting);
        return new Rows()
                .put("device", setting.device())
                .put("name", setting.name())
                .put("value", setting.value())
                .put("was", setting.was())
                .put("on", setting.on() == null ? "" : words.date(setting.on()))
                .put(
                        "by",
                        who(setting.by() == null ? visit.map(ServiceEntry::firm).orElse(null) : setting.by()))
                .put("season", setting.season())
                .map();
    }

    /** The visit that left a setting so; empty for one as left at handover. */
    private Optional<ServiceEntry> visit(Setting setting) {
        return job.service().stream()
                .filter(entry -> entry.settings().stream()
                        .anyMatch(changed -> changed.place().equals(setting.place())))
                .findFirst();
    }

    /** Who came, or changed something: a name, or the owner's part in words. */
    public String who(@Nullable String name) {
        return name == null ? "" : name.equals(Owner.WORD) ? words.say("record.the-owner") : name;
    }
}
