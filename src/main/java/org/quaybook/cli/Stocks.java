package org.quaybook.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.quaybook.job.LabelStock;
import org.quaybook.job.StockReader;
import org.quaybook.job.StockReading;
import org.quaybook.text.Words;

/** Finds the stocks of labels that a command names: one of the program's own by its id, anything else as a file. */
final class Stocks {

    private final Report report;
    private final Words words;

    Stocks(Report report, Words words) {
        this.report = report;
        this.words = words;
    }

    /** The stocks in the order named; empty if one cannot be used, which is then told. */
    Optional<List<LabelStock>> find(List<String> names) {
        List<LabelStock> found = new ArrayList<>();
        boolean whole = true;
        for (String name : names) {
            Optional<LabelStock> read = read(name);
            read.ifPresent(found::add);
            whole &= read.isPresent();
        }
        return whole ? Optional.of(found) : Optional.empty();
    }

    /** One stock; empty if it cannot be used, which is then told. */
    Optional<LabelStock> read(String name) {
        StockReading reading = isFile(name) ? StockReader.read(Path.of(name)) : StockReader.standard(name);
        report.problems(reading.problems());
        return Optional.ofNullable(reading.stock());
    }

    private static boolean isFile(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return small.endsWith(".yaml") || small.endsWith(".yml");
    }

    /** What to know of the print on such stock; empty for stock that lasts. */
    Optional<String> caution(LabelStock stock) {
        return switch (stock.printing()) {
            case DIRECT_THERMAL -> Optional.of(words.say("cli.stock.fades", stock.id()));
            case INKJET -> Optional.of(words.say("cli.stock.runs", stock.id()));
            case LASER, THERMAL_TRANSFER, ENGRAVING -> Optional.empty();
        };
    }
}
