package org.quaybook.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.figures.BaselineFigures;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.figures.BaselineFigures.Reading;
import org.quaybook.figures.Figure;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Stated;
import org.quaybook.text.Words;

/** What was expected, read at handover and read later, as columns on a terminal. */
final class BaselineTable {

    private static final String GAP = "  ";
    private static final String NOTHING = "–";

    private final Words words;

    BaselineTable(Words words) {
        this.words = words;
    }

    void print(BaselineFigures baseline, PrintWriter to) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                words.say("cli.revisit.what"),
                words.say("cli.revisit.expected"),
                words.say("cli.revisit.first"),
                words.say("cli.revisit.latest"),
                words.say("cli.revisit.change"),
                ""));
        baseline.items().stream()
                .filter(item -> item.first().isPresent())
                .map(this::row)
                .forEach(rows::add);
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                int at = column;
                int width = rows.stream()
                        .mapToInt(cells -> cells.get(at).length())
                        .max()
                        .orElse(0);
                String cell = row.get(column);
                line.append(cell).append(" ".repeat(width - cell.length())).append(GAP);
            }
            to.println(line.toString().stripTrailing());
        }
        to.println();
        to.println(words.say("cli.revisit.load", baseline.current().stated()));
        to.println(words.say("cli.revisit.rules"));
    }

    private List<String> row(Item item) {
        return List.of(
                words.say(item.subject()),
                item.predicted().map(figure -> words.word(figure.stated())).orElse(NOTHING),
                item.first().map(this::reading).orElse(NOTHING),
                item.latest().map(this::reading).orElse(NOTHING),
                item.change().map(figure -> words.word(figure.stated())).orElse(NOTHING),
                item.judgement().map(words::term).orElseGet(() -> words.say("cli.revisit.not-read")));
    }

    /** The reading, the load that it was read at, and the resistance that both mean. */
    private String reading(Reading reading) {
        String read = words.word(Stated.asGiven(reading.reading()));
        if (reading.test().at() == null
                || !(reading.test().at().value() instanceof Current current)
                || reading.compared().isEmpty()) {
            return read;
        }
        Optional<Figure<?>> resistance = reading.compared().filter(figure -> figure.value() instanceof Resistance);
        return resistance
                .map(figure ->
                        words.say("cli.revisit.resistance", read, Objects.requireNonNull(current), figure.stated()))
                .orElseGet(() -> words.say("cli.revisit.at", read, current));
    }
}
