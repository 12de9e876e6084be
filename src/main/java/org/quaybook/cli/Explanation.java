package org.quaybook.cli;

import java.io.PrintWriter;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.quaybook.pack.workings.Workings;
import org.quaybook.pack.workings.Workings.Entry;
import org.quaybook.pack.workings.Workings.Worked;
import org.quaybook.text.Words;

/** Prints how a figure was reached: formula, source, inputs with their origin, and under each input that is a figure its own working. */
final class Explanation {

    private static final String INDENT = "    ";

    private final Workings workings;
    private final Set<String> told = new HashSet<>();
    private final PrintWriter to;
    private final Words words;

    Explanation(Workings workings, PrintWriter to, Words words) {
        this.workings = workings;
        this.to = to;
        this.words = words;
    }

    /** @param key name of a figure that the job has */
    void print(String key) {
        print(workings.of(key).orElseThrow(), "");
    }

    private void print(Worked figure, String indent) {
        to.println(indent + figure.key() + " = " + figure.value());
        String inside = indent + INDENT;
        if (!told.add(figure.key())) {
            to.println(inside + words.say("cli.explain.above"));
            return;
        }
        if (!figure.formula().isEmpty()) {
            to.println(inside + figure.formula());
            to.println(inside + words.say("cli.explain.source", figure.source()));
        }
        figure.inputs().forEach(input -> input(input, inside));
    }

    private void input(Entry input, String indent) {
        String name = input.symbol().isEmpty() ? input.value() : input.symbol() + " = " + input.value();
        Optional<Worked> figure = input.figure().flatMap(workings::of);
        if (figure.isPresent()) {
            to.println(indent + name);
            print(figure.get(), indent + INDENT);
        } else {
            to.println(indent + name + "   " + input.origin());
        }
    }
}
