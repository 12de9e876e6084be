package org.quaybook.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.quantity.Quantity;

/** Whether a service log belongs to a job, and its visits follow each other. */
final class ServiceChecks {

    private final ServiceLog log;
    private final Job job;
    private final Found found;
    private final Problems problems;

    /** @param job as its file says, without the visits */
    ServiceChecks(ServiceLog log, Job job, Found found, Problems problems) {
        this.log = log;
        this.job = job;
        this.found = found;
        this.problems = problems;
    }

    void check() {
        if (!log.job().equals(job.job().number())) {
            problems.add(
                    log.place(),
                    Message.of(
                            JobMessage.SERVICE_OF_OTHER_JOB,
                            log.job(),
                            job.job().number()));
        }
        List<Setting> known = new ArrayList<>(job.settings());
        for (int i = 0; i < log.entries().size(); i++) {
            ServiceEntry entry = log.entries().get(i);
            afterHandover(entry);
            if (i > 0) {
                follows(log.entries().get(i - 1), entry);
            }
            inTime(entry);
            entry.settings().forEach(setting -> known(setting, known));
            known.addAll(entry.settings());
        }
        Serviced.settings(job.settings(), log.entries()).stream()
                .filter(setting -> !job.settings().contains(setting))
                .forEach(this::inFigures);
    }

    /** A value of the inverter that somebody sets and that the figures are calculated with. */
    private record Calculated(
            String key, String words, @Nullable Given<? extends Quantity> value) {

        boolean isKnown() {
            return Given.maybe(value).isPresent();
        }

        /** What the figures are calculated with; only of a known one. */
        Quantity now() {
            return Given.maybe(value).orElseThrow();
        }

        /** What somebody wrote of a setting; null if it is of another kind. */
        @Nullable Quantity read(@Nullable String text) {
            try {
                return text == null ? null : (Quantity) Scalars.read(now().getClass(), text);
            } catch (Refusal otherKind) {
                return null;
            }
        }
    }

    /** Before a shorter name the longer one that it is part of. */
    private List<Calculated> calculated() {
        Inverter inverter = job.inverter();
        return List.of(
                new Calculated("cut-out-at-once", "cut-out at once", inverter.cutOutAtOnce()),
                new Calculated("cut-out-delay", "cut-out delay", inverter.cutOutDelay()),
                new Calculated("cut-out", "cut-out", inverter.cutOut()),
                new Calculated("restart-delay", "restart delay", inverter.restartDelay()),
                new Calculated("restart", "restart", inverter.restart()),
                new Calculated("alarm-delay", "alarm delay", inverter.alarmDelay()),
                new Calculated("alarm", "alarm", inverter.alarm()),
                new Calculated("input-limit", "input limit", inverter.inputLimit()));
    }

    /** As the last visit left it, a setting may be what the job file still has as it was: then the figures are out of date. */
    private void inFigures(Setting setting) {
        String device = plain(setting.device());
        String name = job.inverter().name();
        boolean inverter = device.contains("inverter") || (name != null && device.equals(plain(name)));
        if (!inverter) {
            return;
        }
        List<Calculated> alike =
                calculated().stream().filter(Calculated::isKnown).toList();
        alike.stream()
                .filter(one -> plain(setting.name()).contains(plain(one.words())))
                .findFirst()
                .or(() -> alike.stream()
                        .filter(one -> one.now().equals(one.read(setting.was())))
                        .findFirst())
                .ifPresent(one -> outOfDate(setting, one));
    }

    private void outOfDate(Setting setting, Calculated one) {
        Quantity left = one.read(setting.value());
        if (left != null && !left.equals(one.now())) {
            problems.add(
                    setting.place(),
                    Message.of(
                            JobMessage.SETTING_IN_FIGURES,
                            setting.device(),
                            setting.name(),
                            setting.value(),
                            "inverter." + one.key(),
                            one.now()));
        }
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT).replace('-', ' ');
    }

    /** A job file of a later revision, as after a sale, is younger than the visits before it. */
    private void afterHandover(ServiceEntry entry) {
        Header header = job.job();
        if (entry.revision() > header.revision() && entry.date().isBefore(header.date())) {
            problems.add(
                    found.placeOf(entry.place().path() + ".date"),
                    Message.of(
                            JobMessage.VISIT_BEFORE_HANDOVER,
                            entry.date().toString(),
                            header.date().toString()));
        }
    }

    private void follows(ServiceEntry before, ServiceEntry entry) {
        if (entry.revision() < before.revision()) {
            problems.add(
                    found.placeOf(entry.place().path() + ".revision"),
                    Message.of(JobMessage.SERVICE_REVISION, entry.revision(), before.revision()));
        }
        if (entry.date().isBefore(before.date())) {
            problems.add(
                    found.placeOf(entry.place().path() + ".date"),
                    Message.of(
                            JobMessage.SERVICE_DATE,
                            entry.date().toString(),
                            before.date().toString()));
        }
    }

    /** Nothing was read or set after the day of its visit. */
    private void inTime(ServiceEntry entry) {
        LocalDate day = entry.date();
        found.done().stream()
                .filter(done -> done.place().path().startsWith(entry.place().path() + "."))
                .filter(done -> done.day().isAfter(day))
                .forEach(done -> problems.add(
                        done.place(), Message.of(JobMessage.DONE_AFTER_VISIT, done.text(), day.toString())));
    }

    /** Names of devices and settings are free, so one that is nearly that of another is told, and taken as it stands. */
    private void known(Setting setting, List<Setting> known) {
        List<Setting> same = known.stream().filter(setting::changes).toList();
        List<String> seasons = same.stream()
                .map(Setting::season)
                .flatMap(Stream::ofNullable)
                .distinct()
                .toList();
        if (setting.season() == null && seasons.size() > 1) {
            problems.add(
                    setting.place(),
                    Message.of(
                            JobMessage.SETTING_SEASON, setting.device(), setting.name(), String.join(", ", seasons)));
        }
        if (!same.isEmpty()) {
            return;
        }
        List<String> names = known.stream()
                .flatMap(other ->
                        other.device().equals(setting.device()) ? Stream.of(other.name()) : Stream.<String>empty())
                .distinct()
                .toList();
        List<String> devices = known.stream().map(Setting::device).distinct().toList();
        boolean newDevice = names.isEmpty();
        List<Message> meant =
                newDevice ? Scalars.meant(setting.device(), devices) : Scalars.meant(setting.name(), names);
        if (!meant.isEmpty() && !names.contains(setting.name())) {
            problems.add(setting.place(), Message.of(JobMessage.SETTING_NEW, setting.device(), setting.name()), meant);
        }
    }
}
