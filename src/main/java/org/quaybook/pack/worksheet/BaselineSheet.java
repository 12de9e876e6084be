package org.quaybook.pack.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.figures.BaselineFigures.Reading;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Given;
import org.quaybook.job.TestKind;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** The numbers that a later visit compares, with columns for two visits. */
final class BaselineSheet {

    private final Assessment it;
    private final Words words;

    BaselineSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.words = words;
    }

    Map<String, Object> facts() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Item item : it.figures().baseline().items()) {
            rows.add(row(item));
        }
        return new Rows()
                .put("rows", rows)
                .put("joints", joints())
                .put("load", words.word(it.figures().baseline().current().stated()))
                .map();
    }

    private Map<String, Object> row(Item item) {
        return new Rows()
                .put("what", words.say(item.subject()))
                .put(
                        "expected",
                        item.predicted()
                                .map(figure -> words.word(figure.stated()))
                                .orElse(""))
                .put("first", item.first().map(this::reading).orElse(""))
                .put("latest", item.latest().map(this::reading).orElse(""))
                .put("judgement", item.judgement().map(words::term).orElse(""))
                .map();
    }

    private String reading(Reading reading) {
        String value = words.word(reading.reading());
        Optional<Current> load = Given.maybe(reading.test().at())
                .filter(Current.class::isInstance)
                .map(Current.class::cast);
        if (load.isEmpty()) {
            return value;
        }
        return reading.compared()
                .filter(figure -> figure.value() instanceof Resistance)
                .map(figure -> words.say("worksheet.baseline.resistance", value, load.get(), figure.stated()))
                .orElseGet(() -> words.say("worksheet.baseline.at", value, load.get()));
    }

    /** A line for each joint of each run that no test names yet. */
    private List<Map<String, Object>> joints() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (RunFigures run : it.figures().supply().runs()) {
            long named = it.figures().baseline().items().stream()
                    .filter(item -> item.kind() == TestKind.JOINT_DROP && belongs(item, run))
                    .count();
            for (long joint = named + 1; joint <= run.joints(); joint++) {
                rows.add(new Rows()
                        .put(
                                "what",
                                words.say(
                                        "worksheet.baseline.joint", run.cable().id(), joint, run.joints()))
                        .put(
                                "expected",
                                words.word(it.figures().baseline().jointDrop().stated()))
                        .map());
            }
        }
        return rows;
    }

    private boolean belongs(Item item, RunFigures run) {
        return item.of().contains(run.cable().id())
                || it.job().fuses().stream()
                        .anyMatch(fuse -> item.of().contains(fuse.id())
                                && fuse.protects().contains(run.cable().id()));
    }
}
