package org.quaybook.cli;

import java.util.List;
import org.quaybook.render.PrintSettings;
import picocli.CommandLine.Option;

/** What makes up for a printer that is off. */
final class PrintMove {

    @Option(
            names = "--move",
            paramLabel = "MM",
            split = ",",
            arity = "1",
            description = "Moves the print to the right and down by so many millimetres, such as 0.5,-1.2.")
    private List<Double> move = List.of();

    /** @throws IllegalArgumentException unless there are two lengths or none */
    PrintSettings settings() {
        if (move.isEmpty()) {
            return PrintSettings.USUAL;
        }
        if (move.size() != 2) {
            throw new IllegalArgumentException("two lengths are due");
        }
        return PrintSettings.USUAL.movedBy(move.get(0), move.get(1));
    }

    boolean isWhole() {
        return move.isEmpty() || move.size() == 2;
    }
}
