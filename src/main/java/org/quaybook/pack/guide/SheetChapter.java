package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.quaybook.checks.Alike;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Severity;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Protection;
import org.quaybook.record.AlikeWords;
import org.quaybook.record.Rows;
import org.quaybook.record.SettingSheet;

/** What the data sheet of the installation shows beyond the facts that all documents share. */
final class SheetChapter {

    /** What an isolator can make dead besides things with an id. */
    private static final Set<String> SOURCES =
            Set.of("bank", "inverter", "shore", "generator", "alternator", "solar", "wind");

    private final Briefing brief;

    SheetChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("sources", brief.words().list(brief.names().sources()))
                .put("protection", protection())
                .put(
                        "isolators",
                        brief.job().isolators().stream().map(this::isolator).toList())
                .put("settings", new SettingSheet(brief.job(), brief.words()).rows())
                .put("generator", generator())
                .put("accepted", accepted())
                .put("open", open(false))
                .put("notes", open(true))
                .map();
    }

    private String protection() {
        Protection protection = brief.job().bank().protection();
        if (protection == null) {
            return "";
        }
        Lines parts = brief.lines("sheet.protection");
        Given.maybe(protection.discharge()).ifPresent(limit -> parts.say("discharge", limit));
        Given.maybe(protection.cutOut()).ifPresent(limit -> parts.say("cut-out", limit));
        Given.maybe(protection.chargeAbove()).ifPresent(limit -> parts.say("cold", limit));
        return brief.words().list(parts.list());
    }

    private Map<String, Object> isolator(Isolator isolator) {
        return new Rows()
                .put("id", isolator.id())
                .put("name", isolator.name())
                .put("where", isolator.where())
                .put(
                        "dead",
                        brief.words()
                                .list(isolator.isolates().stream()
                                        .map(this::isolated)
                                        .toList()))
                .map();
    }

    private String isolated(String what) {
        return SOURCES.contains(what) ? brief.words().say("guide.sheet.source." + what) : what;
    }

    private List<String> accepted() {
        return Alike.of(brief.it().findings()).stream()
                .flatMap(alike -> alike.finding().accepted().stream()
                        .map(deviation -> AlikeWords.of(
                                alike,
                                brief.words()
                                        .say(
                                                "guide.sheet.accepted.point",
                                                alike.finding().message(),
                                                deviation.why(),
                                                deviation.on()),
                                brief.words())))
                .toList();
    }

    /** Findings that nobody accepted: what is only worth knowing, or what should be settled. */
    private List<String> open(boolean onlyNotes) {
        return Alike.of(brief.it().findings()).stream()
                .filter(alike -> alike.finding().accepted().isEmpty())
                .filter(alike -> (alike.finding().severity() == Severity.NOTE) == onlyNotes)
                .map(alike -> AlikeWords.of(alike, point(alike.finding()), brief.words()))
                .toList();
    }

    /** What the owner can do about it; a remedy that is none of the owner's work is handed on to the installer. */
    private String point(Finding finding) {
        String forThisRemedy = finding.remedy().key().key().replace(".remedy", ".owner");
        return Stream.of(forThisRemedy, finding.check().key() + ".owner")
                .filter(brief.words()::has)
                .findFirst()
                .map(owner -> brief.words()
                        .say(
                                "guide.sheet.open.point",
                                finding.message(),
                                brief.words()
                                        .say(owner, finding.remedy().arguments().toArray())))
                .orElseGet(() -> brief.words().say("guide.sheet.open.installer", finding.message(), finding.remedy()));
    }

    private String generator() {
        return brief.job().generator() == null
                ? ""
                : brief.job()
                        .generator()
                        .power()
                        .known()
                        .map(brief.words()::word)
                        .orElse("");
    }
}
