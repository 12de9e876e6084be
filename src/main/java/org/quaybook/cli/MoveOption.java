package org.quaybook.cli;

import java.util.List;
import org.quaybook.pack.PrintMove;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The option that makes up for a printer that is off. */
final class MoveOption {

    @Option(
            names = "--move",
            paramLabel = "MM",
            split = ",",
            arity = "1",
            description = "Moves the print to the right and down by so many millimetres, such as 0.5,-1.2.")
    private List<Double> move = List.of();

    /** @throws ParameterException unless there are two lengths or none */
    PrintMove read(CommandLine line, Words words) {
        if (move.isEmpty()) {
            return PrintMove.NONE;
        }
        if (move.size() != 2) {
            throw new ParameterException(line, words.say("cli.labels.move"));
        }
        return new PrintMove(move.get(0), move.get(1));
    }
}
