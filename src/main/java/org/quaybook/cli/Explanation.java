package org.quaybook.cli;

import java.io.PrintWriter;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Formula;
import org.quaybook.figures.Input;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Stated;
import org.quaybook.text.Words;

/** Prints how a figure was reached: formula, source, inputs with their origin, and under each input that is a figure its own working. */
final class Explanation {

    private static final String INDENT = "    ";

    private final Map<String, Figure<?>> figures = new HashMap<>();
    private final Set<String> told = new HashSet<>();
    private final PrintWriter to;
    private final Words words;

    Explanation(List<Figure<?>> figures, PrintWriter to, Words words) {
        figures.forEach(figure -> this.figures.put(figure.key(), figure));
        this.to = to;
        this.words = words;
    }

    void print(Figure<?> figure) {
        print(figure, "");
    }

    private void print(Figure<?> figure, String indent) {
        to.println(indent + figure.key() + " = " + words.word(figure.stated()));
        String inside = indent + INDENT;
        if (!told.add(figure.key())) {
            to.println(inside + words.say("cli.explain.above"));
            return;
        }
        Formula formula = figure.working().formula();
        if (!formula.text().isEmpty()) {
            to.println(inside + formula.text());
            to.println(inside
                    + words.say(
                            "cli.source",
                            formula.citation().source(),
                            formula.citation().standing()));
        }
        figure.working().inputs().forEach(input -> input(input, inside));
    }

    private void input(Input input, String indent) {
        String value = input.value() instanceof Quantity quantity
                ? words.word(new Stated(quantity, Rounding.NEAREST))
                : words.word(input.value());
        String name = input.symbol().isEmpty() ? value : input.symbol() + " = " + value;
        if (input.origin() instanceof Input.FromFigure from && figures.containsKey(from.key())) {
            to.println(indent + name);
            print(figures.get(from.key()), indent + INDENT);
            return;
        }
        to.println(indent + name + "   " + origin(input.origin()));
    }

    private String origin(Input.Origin origin) {
        if (origin instanceof Input.FromJob job) {
            return words.say("cli.explain.job", job.place().path(), job.place().toString(), job.provenance());
        }
        if (origin instanceof Input.FromTable table) {
            return words.say(
                    "cli.explain.table",
                    table.table(),
                    table.row(),
                    table.citation().source(),
                    table.citation().standing());
        }
        if (origin instanceof Input.Usual usual) {
            return words.say(
                    "cli.explain.usual",
                    usual.citation().source(),
                    usual.citation().standing());
        }
        return "";
    }
}
