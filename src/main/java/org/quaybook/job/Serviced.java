package org.quaybook.job;

import java.util.ArrayList;
import java.util.List;

/** A job after the visits of its service log: its readings are the job's last tests, its settings the job's settings. */
final class Serviced {

    private Serviced() {}

    /** The last revision of job file and visits, with its last day. */
    static Header header(Header header, List<ServiceEntry> entries) {
        Header last = header;
        for (ServiceEntry entry : entries) {
            boolean next = entry.revision() > last.revision();
            boolean later =
                    entry.revision().equals(last.revision()) && entry.date().isAfter(last.date());
            if (next || later) {
                last = last.as(entry.revision(), entry.date());
            }
        }
        return last;
    }

    static List<TestResult> tests(List<TestResult> tests, List<ServiceEntry> entries) {
        List<TestResult> all = new ArrayList<>(tests);
        entries.forEach(entry -> all.addAll(entry.readings()));
        return all;
    }

    /** The settings as the last visit left them. */
    static List<Setting> settings(List<Setting> settings, List<ServiceEntry> entries) {
        List<Setting> all = new ArrayList<>(settings);
        entries.forEach(entry -> entry.settings().forEach(changed -> set(changed, all)));
        return all;
    }

    /** The visits, each of whose settings says what it was before and since when it is so. */
    static List<ServiceEntry> entries(List<Setting> settings, List<ServiceEntry> entries) {
        List<Setting> all = new ArrayList<>(settings);
        List<ServiceEntry> told = new ArrayList<>();
        for (ServiceEntry entry : entries) {
            List<Setting> changed = entry.settings().stream()
                    .map(setting -> setting.on() == null ? setting.on(entry.date()) : setting)
                    .map(setting -> set(setting, all))
                    .toList();
            told.add(entry.with(changed));
        }
        return told;
    }

    /** Puts a setting in the place of the one that it changes, or at the end, and gives it with what it was. */
    private static Setting set(Setting changed, List<Setting> all) {
        int at = indexOf(changed, all);
        if (at < 0) {
            all.add(changed);
            return changed;
        }
        Setting now = changed.after(all.get(at));
        all.set(at, now);
        return now;
    }

    private static int indexOf(Setting setting, List<Setting> all) {
        for (int i = 0; i < all.size(); i++) {
            if (setting.changes(all.get(i))) {
                return i;
            }
        }
        return -1;
    }
}
