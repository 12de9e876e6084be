package org.quaybook.pack.workings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.diag.Place;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Input;
import org.quaybook.figures.Input.FromFigure;
import org.quaybook.figures.Input.FromJob;
import org.quaybook.figures.Input.FromTable;
import org.quaybook.figures.Input.Taken;
import org.quaybook.figures.Input.Usual;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Stated;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** The workings of a job's figures in the words of one language. */
public final class Workings {

    /** How the place of a value in the job file is told. */
    public enum Places {
        /** The way to the value inside the file: for paper that outlives the file. */
        PATH,
        /** That, with the line: for whoever has the file open beside the paper. */
        LINE,
        /** File, line and column, the form that terminals make clickable. */
        FILE
    }

    private final Map<String, Figure<?>> figures = new LinkedHashMap<>();
    private final FigureNames names;
    private final Words words;
    private final Places places;

    public Workings(Figures figures, Words words, Places places) {
        figures.all().forEach(figure -> this.figures.put(figure.key(), figure));
        this.names = new FigureNames(figures, words);
        this.words = words;
        this.places = places;
    }

    /**
     * One figure worked out.
     *
     * @param key its name
     * @param name what it is
     * @param value as documents print it
     * @param formula in symbols; empty where a value is only taken over
     * @param source of the formula, with its standing
     * @param inputs what went into it
     */
    public record Worked(String key, String name, String value, String formula, String source, List<Entry> inputs) {
        public Worked {
            inputs = List.copyOf(inputs);
        }

        /** For templates. */
        public Map<String, Object> row() {
            return new Rows()
                    .put("key", key)
                    .put("name", name)
                    .put("value", value)
                    .put("formula", formula)
                    .put("source", source)
                    .put("inputs", inputs.stream().map(Entry::row).toList())
                    .map();
        }
    }

    /**
     * One input.
     *
     * @param symbol its letter in the formula; may be empty
     * @param origin where it came from, in words
     * @param figure name of the figure that it is; empty if it is none
     */
    public record Entry(String symbol, String value, String origin, Optional<String> figure) {

        private Map<String, Object> row() {
            return new Rows()
                    .put("symbol", symbol)
                    .put("value", value)
                    .put("origin", origin)
                    .map();
        }
    }

    /** All figures in the order they were reached. */
    public List<Worked> all() {
        return figures.values().stream().map(this::worked).toList();
    }

    /** The figure of a name, if this job has it. */
    public Optional<Worked> of(String key) {
        return Optional.ofNullable(figures.get(key)).map(this::worked);
    }

    /** What a figure is, also one that this job has no longer; empty if this program knows none of that name. */
    public Optional<String> name(String key) {
        return names.find(key);
    }

    private Worked worked(Figure<?> figure) {
        var formula = figure.working().formula();
        return new Worked(
                figure.key(),
                names.of(figure.key()),
                words.word(figure.stated()),
                FormulaWords.text(formula, words),
                words.say("workings.from.usual", words.ruling(words.say(formula.source())), formula.standing()),
                figure.working().inputs().stream().map(this::entry).toList());
    }

    private Entry entry(Input input) {
        return new Entry(
                words.symbols(input.symbol()),
                value(input),
                origin(input.origin()),
                input.origin() instanceof FromFigure from && figures.containsKey(from.key())
                        ? Optional.of(from.key())
                        : Optional.empty());
    }

    /** A figure that goes into another one is shown as everywhere else: rounded to its safe side. */
    private String value(Input input) {
        if (input.origin() instanceof FromFigure from && figures.containsKey(from.key())) {
            return words.word(Objects.requireNonNull(figures.get(from.key())).stated());
        }
        return input.value() instanceof Quantity quantity
                ? words.word(new Stated(quantity, Rounding.NEAREST))
                : words.word(input.value());
    }

    /** Only the service log has entries at its top. */
    private static boolean ofVisit(Place place) {
        return place.path().startsWith("entries[");
    }

    private String origin(Input.Origin origin) {
        if (origin instanceof FromJob job) {
            return switch (places) {
                case PATH ->
                    words.say(
                            ofVisit(job.place()) ? "workings.from.visit" : "workings.from.job",
                            job.place().path(),
                            job.provenance());
                case LINE ->
                    words.say(
                            ofVisit(job.place()) ? "workings.from.visit-line" : "workings.from.line",
                            job.place().path(),
                            job.place().position().line() + 1,
                            job.provenance());
                case FILE ->
                    words.say(
                            "workings.from.file",
                            job.place().path(),
                            job.place().toString(),
                            job.provenance());
            };
        }
        if (origin instanceof FromTable table) {
            return words.say(
                    "workings.from.table",
                    table.table(),
                    words.cited(table.row()),
                    words.cited(table.citation().source()),
                    table.citation().standing());
        }
        if (origin instanceof FromFigure figure) {
            return words.say("workings.from.figure", names.of(figure.key()));
        }
        if (origin instanceof Taken taken) {
            return words.say(
                    "workings.from.usual",
                    words.say(taken.reason()),
                    taken.reason().standing());
        }
        Usual usual = (Usual) origin;
        return words.say(
                "workings.from.usual",
                words.cited(usual.citation().source()),
                usual.citation().standing());
    }
}
