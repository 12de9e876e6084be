package org.quaybook.pack.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Provenance;
import org.quaybook.job.SurveyFields;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Resistance;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** What to look at on board, in walking order, with blanks. */
final class SurveySheet {

    /** What may be written in one of two ways. */
    private static final Set<String> CONDUCTORS = Set.of(
            "shore.cable",
            "ac-circuit.cable",
            "earth.fitted",
            "cable.fitted",
            "fuse.conductor",
            "link.size",
            "charging.cable");

    /** Where nobody would write the unit that the rest of its kind is written in. */
    private static final Map<String, String> UNITS = Map.of(
            "cable.diameter", "mm",
            "bank.lug-hole", "mm",
            "fuse.distance", "mm",
            "charging.per-day", "h",
            "charging.summer-sun", "h",
            "charging.winter-sun", "h");

    /** Printed on the thing itself, in °C everywhere: 105 °C on a cable's insulation. */
    private static final Set<String> AS_MARKED = Set.of(
            "shore.insulation", "ac-circuit.insulation", "earth.insulation", "cable.insulation", "charging.insulation");

    private final Job job;
    private final Words words;

    SurveySheet(Job job, Words words) {
        this.job = job;
        this.words = words;
    }

    Map<String, Object> facts() {
        Map<String, List<Map<String, Object>>> groups = new LinkedHashMap<>();
        for (SurveyFields.Row row : SurveyFields.of(job)) {
            groups.computeIfAbsent(row.group(), group -> new ArrayList<>()).add(row(row));
        }
        return new Rows()
                .put(
                        "groups",
                        groups.entrySet().stream()
                                .map(group -> new Rows()
                                        .put("title", words.say("worksheet.survey.group." + group.getKey()))
                                        .put("rows", group.getValue())
                                        .map())
                                .toList())
                .put(
                        "photos",
                        job.photos().stream()
                                .map(photo -> new Rows()
                                        .put("file", photo.file())
                                        .put("shows", photo.shows())
                                        .map())
                                .toList())
                .map();
    }

    private Map<String, Object> row(SurveyFields.Row row) {
        return new Rows()
                .put("what", words.say("survey." + row.field()))
                .put("of", row.of())
                .put("where", row.where())
                .put("known", row.given().map(this::known).orElseGet(() -> words.say("worksheet.survey.not-written")))
                .put("unit", unit(row))
                .map();
    }

    private String known(Given<?> given) {
        if (given.provenance() == Provenance.NOT_SEEN) {
            return words.term(Provenance.NOT_SEEN);
        }
        Object value = Objects.requireNonNull(given.value());
        String text =
                value instanceof Boolean yes ? words.say(yes ? "worksheet.yes" : "worksheet.no") : words.word(value);
        return words.say(
                "worksheet.survey.known",
                text,
                words.say("worksheet.letter." + given.provenance().name().toLowerCase(Locale.ROOT)));
    }

    /** What the answer is written in: a unit, or what may be ringed. */
    private String unit(SurveyFields.Row row) {
        if (row.yesOrNo()) {
            return words.say("worksheet.survey.yes-no");
        }
        if (!row.terms().isEmpty()) {
            return row.terms().size() > 4
                    ? ""
                    : String.join(" / ", row.terms().stream().map(words::term).toList());
        }
        if (CONDUCTORS.contains(row.field())) {
            return words.say("worksheet.survey.conductor");
        }
        return row.kind().map(kind -> unit(row.field(), kind)).orElse("");
    }

    /** The metric unit, and before it what is measured in customary units in the country of the reader. */
    private String unit(String field, Kind<?> kind) {
        String metric = Objects.requireNonNullElse(UNITS.get(field), unit(kind));
        return AS_MARKED.contains(field)
                ? metric
                : kind.unit(metric)
                        .flatMap(unit -> words.numbers().customaryUnit(kind.of(1, unit)))
                        .map(customary -> customary + " / " + metric)
                        .orElse(metric);
    }

    /** What a meter or a rule shows; the canonical unit of a resistance would ask for three noughts. */
    private static String unit(Kind<?> kind) {
        if (kind.equals(Resistance.KIND)) {
            return "mΩ";
        }
        return kind.equals(Area.KIND) ? "cm²" : kind.mainUnit().symbol();
    }
}
