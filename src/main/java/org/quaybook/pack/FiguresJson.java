package org.quaybook.pack;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Place;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Input;
import org.quaybook.job.Given;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.job.ServiceEntry;
import org.quaybook.job.Setting;
import org.quaybook.job.TestResult;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.pack.workings.FormulaWords;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Fingerprint;
import org.quaybook.proof.JsonText;
import org.quaybook.quantity.Constant;
import org.quaybook.quantity.PerUnit;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Unit;
import org.quaybook.reference.Citation;
import org.quaybook.text.Words;

/**
 * Every figure of a job for machines: exact value, unit, the text that documents print, formula, inputs with their origin,
 * source. Places are given inside the job file, so that the file's whereabouts do not matter.
 */
final class FiguresJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Words words;

    private FiguresJson(Words words) {
        this.words = words;
    }

    static byte[] of(Assessment it, Words words, List<LabelNote> labels, String version) {
        FiguresJson json = new FiguresJson(words);
        ObjectNode root = NODES.objectNode();
        root.put("program", "quaybook " + version);
        root.set("job", job(it.job(), it.installer()));
        ArrayNode figures = root.putArray("figures");
        it.figures().all().forEach(figure -> figures.add(json.figure(figure)));
        ArrayNode findings = root.putArray("findings");
        it.findings()
                .forEach(finding -> findings.add(
                        FindingsJson.finding(finding, name(finding.place().file()), words)));
        ArrayNode settings = root.putArray("settings");
        it.job().settings().forEach(setting -> settings.add(setting(setting)));
        ArrayNode service = root.putArray("service");
        it.job().service().forEach(entry -> service.add(json.visit(entry)));
        ArrayNode notes = root.putArray("labels");
        labels.forEach(note -> notes.add(json.label(note)));
        return JsonText.of(root);
    }

    /** Reads what {@link #of} has made. */
    static JsonNode read(byte[] figures) {
        try {
            return new ObjectMapper().readTree(figures);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode setting(Setting setting) {
        ObjectNode node = NODES.objectNode()
                .put("device", setting.device())
                .put("name", setting.name())
                .put("value", setting.value());
        if (setting.was() != null) {
            node.put("was", setting.was());
        }
        if (setting.on() != null) {
            node.put("on", setting.on().toString());
        }
        return node;
    }

    private ObjectNode visit(ServiceEntry entry) {
        ObjectNode node = NODES.objectNode()
                .put("revision", entry.revision())
                .put("date", entry.date().toString())
                .put("firm", entry.firm())
                .put("did", entry.did());
        ArrayNode readings = node.putArray("readings");
        entry.readings().forEach(test -> readings.add(reading(test)));
        ArrayNode settings = node.putArray("settings");
        entry.settings().forEach(setting -> settings.add(setting(setting)));
        return node;
    }

    /** What was read, without the name of who tested. */
    private ObjectNode reading(TestResult test) {
        ObjectNode node = NODES.objectNode().put("test", word(test.test()));
        ArrayNode of = node.putArray("of");
        test.of().forEach(of::add);
        Given.maybe(test.source()).ifPresent(source -> node.put("source", word(source)));
        measured(node, "at", test.at());
        measured(node, "result", test.result());
        measured(node, "ambient", test.ambient());
        if (test.outcome() != null) {
            node.put("outcome", word(test.outcome()));
        }
        if (test.on() != null) {
            node.put("on", test.on().toString());
        }
        if (test.instrument() != null) {
            node.put("instrument", test.instrument());
        }
        return node;
    }

    private void measured(ObjectNode node, String key, @Nullable Given<? extends Quantity> given) {
        Given.maybe(given).ifPresent(quantity -> {
            ObjectNode value = node.putObject(key);
            value(value, quantity);
            value.put("printed", words.word(quantity));
        });
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Without the folders: they say where the installer keeps his jobs, and nothing of the job. */
    private static String name(String file) {
        return file.substring(file.lastIndexOf('/') + 1);
    }

    private static ObjectNode job(Job job, Installer installer) {
        ObjectNode node = NODES.objectNode()
                .put("number", job.job().number())
                .put("record", job.job().record().toString())
                .put("revision", job.job().revision())
                .put("date", job.job().date().toString())
                .put("rulebook", job.job().rulebook())
                .put("craft", job.craft().name())
                .put("link", installer.records() + job.job().record().symbols());
        if (installer.publicKey() != null) {
            node.put("key", Fingerprint.of(installer.publicKey()).toString());
        }
        return node;
    }

    private ObjectNode figure(Figure<? extends Quantity> figure) {
        ObjectNode node = NODES.objectNode().put("name", figure.key());
        value(node, figure.value());
        node.put("printed", words.word(figure.stated()))
                .put("rounding", figure.rounding().name().toLowerCase(Locale.ROOT))
                .put("formula", FormulaWords.text(figure.working().formula(), words));
        cite(
                node,
                words.say(figure.working().formula().source()),
                figure.working().formula().standing());
        ArrayNode inputs = node.putArray("inputs");
        figure.working().inputs().forEach(input -> inputs.add(input(input)));
        return node;
    }

    private static void value(ObjectNode node, Object value) {
        if (value instanceof Quantity quantity) {
            value(node, quantity, "");
        } else if (value instanceof PerUnit per) {
            value(node, per.value(), "/" + per.unit());
        } else if (value instanceof Constant constant) {
            node.put("value", constant.value()).put("unit", constant.unit());
        } else if (value instanceof Number number) {
            node.put("value", number.doubleValue());
        } else {
            node.put("value", value.toString());
        }
    }

    private static void value(ObjectNode node, Quantity quantity, String per) {
        Unit unit = quantity.kind().mainUnit();
        node.put("value", unit.fromCanonical(quantity.canonical())).put("unit", unit.symbol() + per);
    }

    private ObjectNode input(Input input) {
        ObjectNode node = NODES.objectNode().put("symbol", input.symbol());
        value(node, input.value());
        if (input.origin() instanceof Input.FromJob job) {
            node.put("from", "job")
                    .put("at", at(job.place()))
                    .put(
                            "known",
                            job.provenance().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        } else if (input.origin() instanceof Input.FromTable table) {
            node.put("from", "table").put("table", table.table()).put("row", table.row());
            cite(node, table.citation());
        } else if (input.origin() instanceof Input.FromFigure figure) {
            node.put("from", "figure").put("figure", figure.key());
        } else if (input.origin() instanceof Input.Usual usual) {
            node.put("from", "usual");
            cite(node, usual.citation());
        } else if (input.origin() instanceof Input.Taken taken) {
            node.put("from", "usual");
            cite(node, words.say(taken.reason()), taken.reason().standing());
        }
        return node;
    }

    private void cite(ObjectNode node, Citation citation) {
        FindingsJson.citation(node, words.cited(citation.source()), citation.standing());
    }

    private void cite(ObjectNode node, String source, Citation.Standing standing) {
        FindingsJson.citation(node, words.ruling(source), standing);
    }

    private static String at(Place place) {
        return place.path() + " " + place.position();
    }

    private ObjectNode label(LabelNote note) {
        ObjectNode node = NODES.objectNode()
                .put("label", note.id())
                .put("title", note.title())
                .put("reason", words.say(note.reason()))
                .put("spot", note.spot().id())
                .put("place", note.place())
                .put("sha256", Digest.of(note.content()));
        cite(node, note.reason().citation());
        return node;
    }
}
