package org.quaybook.pack.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.quaybook.checks.Alike;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Severity;
import org.quaybook.job.Job;
import org.quaybook.pack.Paper;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.pack.workings.Workings;
import org.quaybook.pack.workings.Workings.Worked;
import org.quaybook.record.AlikeWords;
import org.quaybook.record.Rows;
import org.quaybook.reference.Rulebook;
import org.quaybook.render.TemplateFunction;
import org.quaybook.text.Words;

/** What the templates of the worksheet see. */
final class WorksheetModel {

    /** The end of names that are alike but for one number: a charge in per cent or an hour. */
    private static final Pattern SERIES = Pattern.compile("(?<=-(?:at|from))-\\d+$");

    /** What a reader sees of a figure's family, in this order. */
    private static final List<String> FAMILIES = List.of(
            "bank",
            "inverter",
            "cable",
            "supply",
            "fuse",
            "selectivity",
            "isolator",
            "ac",
            "shore",
            "circuit",
            "rcd",
            "earth",
            "appliance",
            "together",
            "pair",
            "branch",
            "absence",
            "vent",
            "charging",
            "day",
            "back",
            "return",
            "generator",
            "baseline",
            "test");

    private final Job job;
    private final Rulebook rules;
    private final Words words;

    WorksheetModel(Job job, Rulebook rules, Words words) {
        this.job = job;
        this.rules = rules;
        this.words = words;
    }

    Words words() {
        return words;
    }

    String title() {
        return words.say(
                "worksheet.document-title", job.job().number(), job.craft().name());
    }

    /** The survey sheet alone. */
    Map<String, Object> survey() {
        return common(false, List.of("survey")).map();
    }

    /** The sheet of changes alone. */
    Map<String, Object> changes(Map<String, Object> sheet) {
        return common(false, List.of("changes"))
                .put("complete", true)
                .put("changes", sheet)
                .map();
    }

    Map<String, Object> whole(Assessment it, List<LabelNote> labels) {
        return common(
                        it.forbidsHandover(),
                        List.of("survey", "findings", "parts", "order", "tests", "baseline", "workings"))
                .put("findings", findings(it))
                .put("parts", new PartsSheet(it, words).facts(labels))
                .put("order", new OrderSheet(it, words).facts())
                .put("tests", new TestsSheet(it, words).facts())
                .put("baseline", new BaselineSheet(it, words).facts())
                .put("workings", workings(it))
                .map();
    }

    private Rows common(boolean blocked, List<String> sheets) {
        List<Map<String, Object>> titled = new ArrayList<>();
        for (String id : sheets) {
            titled.add(new Rows()
                    .put("id", id)
                    .put("number", titled.size() + 1)
                    .put("title", words.say("worksheet.sheet." + id))
                    .map());
        }
        boolean letter = Paper.of(job, rules) == Paper.LETTER;
        return new Rows()
                .put("language", words.language())
                .put("title", title())
                .put("paper", letter ? "8.5in 11in" : "210mm 297mm")
                .put("blocked", blocked)
                .put("complete", sheets.size() > 1)
                .put("sheets", titled)
                .put("number", job.job().number())
                .put("revision", job.job().revision().toString())
                .put("date", words.date(job.job().date()))
                .put("craft", job.craft().name())
                .put("rulebook", rules.title())
                .put("fitter", job.job().fitter())
                .put("survey", new SurveySheet(job, words).facts())
                .put("say", (TemplateFunction) this::say);
    }

    private String say(List<Object> arguments) {
        return words.say(
                arguments.get(0).toString(),
                arguments.subList(1, arguments.size()).toArray());
    }

    /** Worst first, as everywhere. */
    private List<Map<String, Object>> findings(Assessment it) {
        List<Map<String, Object>> groups = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Map<String, Object>> rows = Alike.of(it.findings()).stream()
                    .filter(alike -> alike.finding().severity() == severity)
                    .map(this::finding)
                    .toList();
            if (!rows.isEmpty()) {
                groups.add(new Rows()
                        .put("title", words.term(severity))
                        .put("rows", rows)
                        .map());
            }
        }
        return groups;
    }

    private Map<String, Object> finding(Alike alike) {
        Finding finding = alike.finding();
        return new Rows()
                .put("id", finding.check().id())
                .put("message", AlikeWords.of(alike, words.say(finding.message()), words))
                .put("remedy", words.say(finding.remedy()))
                .put(
                        "source",
                        words.say(
                                "workings.from.usual",
                                words.cited(finding.check().citation().source()),
                                finding.check().citation().standing()))
                .put(
                        "accepted",
                        finding.accepted()
                                .map(deviation -> words.say(
                                        "worksheet.findings.accepted", deviation.by(), deviation.on(), deviation.why()))
                                .orElse(""))
                .map();
    }

    private List<Map<String, Object>> workings(Assessment it) {
        Map<String, List<Worked>> series = new LinkedHashMap<>();
        for (Worked worked : new Workings(it.figures(), words, Workings.Places.LINE).all()) {
            series.computeIfAbsent(SERIES.matcher(worked.key()).replaceFirst(""), first -> new ArrayList<>())
                    .add(worked);
        }
        Map<String, List<Map<String, Object>>> groups = new LinkedHashMap<>();
        FAMILIES.forEach(family -> groups.put(family, new ArrayList<>()));
        series.forEach(
                (key, alike) -> groups.computeIfAbsent(key.substring(0, key.indexOf('.')), other -> new ArrayList<>())
                        .add(worked(alike)));
        return groups.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group -> new Rows()
                        .put("title", words.say("worksheet.workings." + group.getKey()))
                        .put("figures", group.getValue())
                        .map())
                .toList();
    }

    /** One working for figures that differ in one number only, and the values of the others. */
    private Map<String, Object> worked(List<Worked> alike) {
        Map<String, Object> row = new LinkedHashMap<>(alike.get(0).row());
        row.put(
                "likewise",
                alike.stream()
                        .skip(1)
                        .map(other -> words.say(
                                "worksheet.workings.likewise-one",
                                other.key().substring(other.key().lastIndexOf('-') + 1),
                                other.value()))
                        .collect(Collectors.joining(" · ")));
        return row;
    }
}
