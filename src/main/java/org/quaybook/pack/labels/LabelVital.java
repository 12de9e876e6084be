package org.quaybook.pack.labels;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.figures.FuseFigures;
import org.quaybook.job.Fuse;
import org.quaybook.job.Isolator;
import org.quaybook.job.Shore;
import org.quaybook.record.EnergySource;

/**
 * The facts that matter when nothing else works, as plain text short enough for a QR code without a link. Phones guess
 * encodings wrongly, so it is ASCII.
 */
final class LabelVital {

    /** More would make the modules too small for a worn label. */
    static final int MOST_BYTES = 200;

    private LabelVital() {}

    /**
     * The lines: always job, bank, first fuse, cut-out and record code; of the rest as much as fits, what parts the battery first
     * and last the name, which everybody there knows.
     */
    static List<String> lines(LabelFacts facts) {
        List<String> always = new ArrayList<>();
        always.add(ascii(facts.say(
                "vital.job",
                facts.job().job().number(),
                facts.job().job().revision(),
                facts.job().job().date().toString())));
        always.add(ascii(facts.say(
                "vital.bank",
                facts.given(facts.job().bank().chemistry()).orElse(""),
                facts.volts(facts.figures().bank().nominal().value()),
                facts.say(facts.figures().bank().capacity()))));
        List<String> fuses = fuses(facts);
        fuses.stream().limit(1).forEach(always::add);
        always.add(ascii(cutOut(facts)));
        String code = facts.job().job().record().toString();
        List<Isolator> ofBattery = EnergySource.BATTERY.isolators(facts.job());
        List<String> extras = new ArrayList<>(isolators(facts, ofBattery));
        fuses.stream().skip(1).forEach(extras::add);
        extras.addAll(isolators(
                facts,
                facts.job().isolators().stream()
                        .filter(isolator -> !ofBattery.contains(isolator))
                        .toList()));
        extras.addAll(inlet(facts));
        extras.add(ascii(facts.job().craft().name()));
        return fill(always, extras, code);
    }

    private static List<String> fill(List<String> always, List<String> extras, String code) {
        List<String> lines = new ArrayList<>(always);
        int used = payload(lines).length() + 1 + code.length();
        for (String extra : extras) {
            if (!extra.isEmpty() && used + 1 + extra.length() <= MOST_BYTES) {
                lines.add(extra);
                used += 1 + extra.length();
            }
        }
        lines.add(code);
        return List.copyOf(lines);
    }

    private static List<String> fuses(LabelFacts facts) {
        return facts.figures().fuses().stream()
                .flatMap(figures -> fuse(facts, figures).stream())
                .toList();
    }

    private static Optional<String> fuse(LabelFacts facts, FuseFigures figures) {
        Fuse fuse = figures.fuse();
        if (fuse == null || figures.family().isEmpty() || figures.rating().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(ascii(facts.say(
                "vital.fuse",
                fuse.id(),
                facts.words().term(figures.family().get()),
                facts.say(figures.rating().get()))));
    }

    private static String cutOut(LabelFacts facts) {
        var inverter = facts.figures().inverter();
        return inverter.restart() == null
                ? facts.say("vital.cut-out", facts.say(inverter.cutOut()))
                : facts.say("vital.cut-out-restart", facts.say(inverter.cutOut()), facts.say(inverter.restart()));
    }

    private static List<String> isolators(LabelFacts facts, List<Isolator> isolators) {
        return isolators.stream()
                .map(isolator -> ascii(facts.say("vital.isolator", isolator.id(), isolator.where())))
                .toList();
    }

    private static List<String> inlet(LabelFacts facts) {
        return Optional.ofNullable(facts.job().shore()).map(Shore::inlet).flatMap(facts::given).stream()
                .map(inlet -> ascii(facts.say("vital.shore", inlet)))
                .toList();
    }

    static String payload(List<String> lines) {
        return String.join("\n", lines);
    }

    /** Letters lose their accents; what is left and not ASCII is dropped. */
    static String ascii(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replace('\u2212', '-')
                .replaceAll("[\u2010-\u2015]", "-")
                .replaceAll("[^\\x20-\\x7e]", "");
        return new String(plain.getBytes(StandardCharsets.US_ASCII), StandardCharsets.US_ASCII).strip();
    }
}
