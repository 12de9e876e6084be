package org.quaybook.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One question of the intake.
 *
 * @param path where the answer goes in the job file
 * @param words end of the message key: {@code start.ask.<words>}
 * @param usual what is taken when the answer is empty; empty if there is nothing usual
 * @param asked whether it is asked, given the answers so far
 * @param optional whether it may be left out
 * @param choices what may be answered; empty for free answers
 */
public record Question(
        String path,
        String words,
        Function<Answers, Optional<String>> usual,
        Predicate<Answers> asked,
        boolean optional,
        List<String> choices) {

    public Question {
        choices = List.copyOf(choices);
    }

    static Question of(String path, String words) {
        return new Question(path, words, answers -> Optional.empty(), answers -> true, false, List.of());
    }

    Question usually(String answer) {
        return usually(answers -> Optional.of(answer));
    }

    Question usually(Function<Answers, Optional<String>> answer) {
        return new Question(path, words, answer, asked, optional, choices);
    }

    Question when(Predicate<Answers> condition) {
        return new Question(path, words, usual, condition, optional, choices);
    }

    Question mayBeLeftOut() {
        return new Question(path, words, usual, asked, true, choices);
    }

    Question among(List<String> answers) {
        return new Question(path, words, usual, asked, optional, answers);
    }
}
