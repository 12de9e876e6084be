package org.quaybook.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.intake.Answers;
import org.quaybook.intake.Intake;
import org.quaybook.intake.Question;
import org.quaybook.job.Vocabulary;
import org.quaybook.text.Words;

/** Asks the questions of an intake, one at a time; every answer is held against the rules of the job file at once. */
final class Dialogue {

    private static final String EXPLAIN = "?";
    private static final String LEAVE_OUT = "-";
    private static final String BACK = "<";
    private static final String LEAVE = ".";

    private final BufferedReader in;
    private final PrintWriter out;
    private final Words words;
    private final Vocabulary vocabulary;
    private final Deque<String> asked = new ArrayDeque<>();

    Dialogue(BufferedReader in, PrintWriter out, Words words, Vocabulary vocabulary) {
        this.in = in;
        this.out = out;
        this.words = words;
        this.vocabulary = vocabulary;
    }

    /**
     * Asks until nothing is open.
     *
     * @param wanted which questions are asked
     * @param keep is given the answers after each one, so that nothing is lost
     * @return empty if somebody left or the input ended
     */
    Optional<Intake> ask(Intake begun, Predicate<Question> wanted, Consumer<Answers> keep) throws IOException {
        Intake intake = begun;
        for (Optional<Question> next = intake.next(wanted); next.isPresent(); next = intake.next(wanted)) {
            Question question = next.get();
            String line = prompt(question, intake);
            if (line == null || line.equals(LEAVE)) {
                return Optional.empty();
            }
            if (line.equals(EXPLAIN)) {
                out.println(words.say("start.ask." + question.words() + ".help"));
            } else if (line.equals(BACK)) {
                intake = back(intake);
            } else {
                Optional<String> answer = answer(question, intake, line);
                if (answer.isPresent()) {
                    asked.push(question.path());
                    intake = intake.with(intake.answers().with(question.path(), answer.get()));
                    keep.accept(intake.answers());
                }
            }
        }
        return Optional.of(intake);
    }

    private @org.jspecify.annotations.Nullable String prompt(Question question, Intake intake) throws IOException {
        String ask = words.say("start.ask." + question.words());
        List<String> choices = question.choices();
        if (!choices.isEmpty()) {
            StringBuilder list = new StringBuilder();
            for (int i = 0; i < choices.size(); i++) {
                list.append("  ").append(i + 1).append(' ').append(choices.get(i));
            }
            out.println(words.say("start.choices", list.toString()));
        }
        out.print(question.usual()
                        .apply(intake.answers())
                        .map(usual -> words.say("start.usual", ask, usual))
                        .orElseGet(() -> words.say("start.no-usual", ask))
                + " ");
        out.flush();
        String line = in.readLine();
        return line == null ? null : line.trim();
    }

    private Intake back(Intake intake) {
        return asked.isEmpty() ? intake : intake.with(intake.answers().without(asked.pop()));
    }

    /** The answer to take; empty if it will not do, and the reason has been told. */
    private Optional<String> answer(Question question, Intake intake, String line) {
        if (line.equals(LEAVE_OUT) || line.isEmpty()) {
            Optional<String> usual = line.isEmpty() ? question.usual().apply(intake.answers()) : Optional.empty();
            if (usual.isPresent() || question.optional()) {
                return Optional.of(usual.orElse(""));
            }
            out.println(words.say("start.must"));
            return Optional.empty();
        }
        Optional<String> chosen = chosen(question, line);
        if (chosen.isEmpty()) {
            out.println(words.say("start.no-choice", line));
            intake.faults(question, line, vocabulary).forEach(this::hints);
            return chosen;
        }
        List<Diagnostic> faults = intake.faults(question, chosen.get(), vocabulary);
        for (Diagnostic fault : faults) {
            out.println(words.say(fault.message()));
            hints(fault);
        }
        return faults.isEmpty() ? chosen : Optional.empty();
    }

    private void hints(Diagnostic fault) {
        for (Message hint : fault.hints()) {
            out.println("  " + words.say("cli.hint", words.say(hint)));
        }
    }

    private static Optional<String> chosen(Question question, String line) {
        List<String> choices = question.choices();
        if (choices.isEmpty() || choices.contains(line)) {
            return Optional.of(line);
        }
        return line.matches("\\d{1,2}") && Integer.parseInt(line) >= 1 && Integer.parseInt(line) <= choices.size()
                ? Optional.of(choices.get(Integer.parseInt(line) - 1))
                : choices.stream()
                        .filter(choice -> choice.equalsIgnoreCase(line))
                        .findFirst();
    }
}
