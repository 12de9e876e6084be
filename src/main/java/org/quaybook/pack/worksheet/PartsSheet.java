package org.quaybook.pack.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.Given;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Length;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** What to bring: cables to cut, lugs, fuses with a spare each, labels. */
final class PartsSheet {

    private final Assessment it;
    private final Words words;

    PartsSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.words = words;
    }

    Map<String, Object> facts(List<LabelNote> labels) {
        List<Map<String, Object>> cables = new ArrayList<>();
        it.figures().supply().runs().forEach(run -> cables.add(cable(run)));
        links(cables);
        return new Rows()
                .put("cables", cables)
                .put("lugHole", given(it.job().bank().lugHole()))
                .put("fuses", it.figures().fuses().stream().map(this::fuse).toList())
                .put(
                        "breakers",
                        it.job().acCircuits().stream()
                                .map(circuit -> new Rows()
                                        .put("id", circuit.id())
                                        .put("name", circuit.name())
                                        .put("breaker", given(circuit.breaker()))
                                        .put("curve", given(circuit.curve()))
                                        .put("cable", given(circuit.cable()))
                                        .put("rcd", circuit.rcd())
                                        .map())
                                .toList())
                .put(
                        "labels",
                        labels.stream()
                                .map(label -> new Rows()
                                        .put("title", label.title())
                                        .put(
                                                "spot",
                                                words.say("labels.spot."
                                                        + label.spot().id()))
                                        .put("place", label.place())
                                        .map())
                                .toList())
                .map();
    }

    private Map<String, Object> cable(RunFigures run) {
        Conductor conductor = run.rating().conductor();
        return row(
                run.cable().id(),
                words.say(
                        "worksheet.parts.from-to",
                        run.cable().from(),
                        run.cable().to()),
                conductor.size().toString(),
                run.fitted(),
                conductor.parallel(),
                run.cable().length(),
                words.say("worksheet.parts.insulation", given(run.cable().insulation())),
                2 * conductor.parallel());
    }

    private Map<String, Object> row(
            String id,
            String path,
            String size,
            boolean fitted,
            int pieces,
            Given<Length> length,
            String insulation,
            int lugs) {
        return new Rows()
                .put("id", id)
                .put("path", path)
                .put("size", size)
                .put("fitted", fitted)
                .put("pieces", pieces)
                .put("length", given(length))
                .put("insulation", insulation)
                .put("lugs", lugs)
                .map();
    }

    /** Between neighbouring strings one link on the plus and one on the minus side; one between blocks in series. */
    private void links(List<Map<String, Object>> cables) {
        Bank bank = it.job().bank();
        int strings = bank.parallel().known().orElse(1);
        int blocks = bank.series().known().orElse(1);
        if (bank.links() != null && strings > 1) {
            link(
                    cables,
                    "worksheet.parts.links",
                    bank.links().size(),
                    bank.links().length(),
                    2 * (strings - 1));
        }
        if (bank.seriesLinks() != null && blocks > 1) {
            link(
                    cables,
                    "worksheet.parts.series-links",
                    bank.seriesLinks().size(),
                    bank.seriesLinks().length(),
                    strings * (blocks - 1));
        }
    }

    private void link(
            List<Map<String, Object>> cables, String path, Given<Conductor> size, Given<Length> length, int links) {
        int parallel = size.known().map(Conductor::parallel).orElse(1);
        cables.add(row(
                "",
                words.say(path),
                size.known().map(it -> it.size().toString()).orElse(given(size)),
                true,
                links * parallel,
                length,
                "",
                2 * links * parallel));
    }

    private Map<String, Object> fuse(FuseFigures fuse) {
        return new Rows()
                .put("id", fuse.id())
                .put("family", fuse.family().map(words::term).orElse(""))
                .put("rating", fuse.rating().map(it -> words.word(it.stated())).orElse(""))
                .put("fitted", fuse.ratingFitted() && fuse.familyFitted())
                .put("mustInterrupt", words.word(fuse.mustInterrupt().stated()))
                .put("where", fuse.fuse() == null ? "" : fuse.fuse().where())
                .put("spare", fuse.fuse() == null ? "" : fuse.fuse().spare())
                .map();
    }

    private String given(@Nullable Given<?> given) {
        return Answers.given(given, words);
    }
}
