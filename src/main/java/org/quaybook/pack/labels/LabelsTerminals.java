package org.quaybook.pack.labels;

import java.util.Arrays;
import java.util.List;
import org.quaybook.job.Pole;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;

/** The two labels at the terminals of the bank. The sign and the word tell the pole, the colour only repeats them. */
final class LabelsTerminals {

    private static final double WIDTH = 60;
    private static final double EDGE = 2;

    /** Side of the square that the sign stands in, and the strength of its bars; common practice, no source. */
    private static final double SQUARE = 18;

    private static final double BAR = 3.5;
    private static final double BAR_LENGTH = 13;

    private final LabelFacts facts;

    LabelsTerminals(LabelFacts facts) {
        this.facts = facts;
    }

    List<LabelDesign> designs() {
        return Arrays.stream(Pole.values()).map(this::terminal).toList();
    }

    private LabelDesign terminal(Pole pole) {
        boolean positive = pole == Pole.POSITIVE;
        String id = positive ? "terminal-plus" : "terminal-minus";
        String volts = facts.volts(facts.figures().bank().system().value());
        LabelPart words = LabelPart.strong(facts.say(positive ? "pole.positive" : "pole.negative"), volts);
        LabelDesign design = LabelDesign.of(
                        id,
                        LabelReason.TERMINAL,
                        LabelSpot.TERMINAL,
                        LabelFacts.place(facts.job().bank().where()),
                        LabelReading.PANEL,
                        facts.say(positive ? "terminal.plus" : "terminal.minus", volts))
                .with(words);
        LabelDrawing drawing = (said, blocks, marks, width) -> {
            Box square = new Box(EDGE, EDGE, SQUARE, SQUARE);
            marks.add(Panel.filled(square, colour(pole)));
            sign(positive, square, marks);
            double x = EDGE + SQUARE + EDGE;
            double y = blocks.parts(said.parts(), x, EDGE + 1, width - x - EDGE);
            return blocks.stamp(facts.stamp(said.id()), EDGE, Math.max(y, EDGE + SQUARE) + EDGE, width - 2 * EDGE)
                    + EDGE;
        };
        return design.drawnBy(drawing.from(WIDTH));
    }

    /** Positive is red in both rulebooks; negative black (ISO 13297 from memory, ABYC E-11 seen second-hand). */
    static Colour colour(Pole pole) {
        return pole == Pole.POSITIVE ? SignColours.RED : SignColours.BLACK;
    }

    /** Plus or minus out of bars, so that it stands in the middle of its square whatever the font has. */
    static void sign(boolean positive, Box square, List<Mark> marks) {
        double share = square.width() / SQUARE;
        double across = BAR_LENGTH * share;
        double thick = BAR * share;
        double middleX = square.x() + square.width() / 2;
        double middleY = square.y() + square.height() / 2;
        marks.add(Panel.filled(new Box(middleX - across / 2, middleY - thick / 2, across, thick), Colour.WHITE));
        if (positive) {
            marks.add(Panel.filled(new Box(middleX - thick / 2, middleY - across / 2, thick, across), Colour.WHITE));
        }
    }
}
