package org.quaybook.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.quaybook.diag.Message;
import org.quaybook.diag.Position;

/** Reads stocks of labels: those that come with the program by their id, an installer's own from a file. */
public final class StockReader {

    private static final List<String> STANDARD = List.of(
            "a4",
            "letter",
            "a4-2x4",
            "a4-2x5",
            "a4-3x8",
            "a4-5x13",
            "letter-2x5",
            "letter-3x10",
            "roll-12",
            "roll-24",
            "roll-38",
            "roll-62",
            "roll-62-fine",
            "roll-102",
            "roll-102-fine",
            "roll-62-direct");

    private static final Vocabulary NO_NAMES = new Vocabulary(List.of(), List.of());

    private StockReader() {}

    /** Ids of the stocks that come with the program. */
    public static List<String> standard() {
        return STANDARD;
    }

    /** A stock that comes with the program; another id is reported with the likeliest one. */
    public static StockReading standard(String id) {
        if (STANDARD.contains(id)) {
            return parse(shipped(id), id + ".yaml");
        }
        Problems problems = new Problems("", "");
        List<Message> hints = new ArrayList<>(Scalars.meant(id, STANDARD));
        hints.add(Message.of(JobMessage.ALLOWED, String.join(", ", STANDARD)));
        problems.add(problems.place("", Position.START), Message.of(JobMessage.STOCK_UNKNOWN, id), hints);
        return new StockReading(null, problems.sorted());
    }

    /** Reads an installer's own stock. Never throws for something wrong with the file. */
    public static StockReading read(Path file) {
        return of(JobReader.file(LabelStock.class, file, NO_NAMES, Found.nothing()));
    }

    /** Reads the text of a stock, without reading or writing anything. */
    public static StockReading parse(String text, String fileName) {
        return of(JobReader.text(LabelStock.class, text, fileName, NO_NAMES, Found.nothing()));
    }

    private static StockReading of(JobReader.Reading<LabelStock> reading) {
        return new StockReading(reading.value(), reading.problems());
    }

    private static String shipped(String id) {
        try (InputStream in = StockReader.class.getResourceAsStream("/shared/stock/" + id + ".yaml")) {
            if (in == null) {
                throw new IllegalStateException("no stock " + id + " on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
