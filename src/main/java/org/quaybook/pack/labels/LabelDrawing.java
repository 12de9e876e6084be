package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.render.Box;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;

/** Draws a small label that does not take its size from the stock: as wide as its longest word asks. */
@FunctionalInterface
interface LabelDrawing {

    /** Strength of the frame, millimetres. */
    double FRAME = 0.3;

    /** Less than a printer can show. */
    double SLACK = 1e-3;

    /**
     * Draws what stands on the label.
     *
     * @param words what it says
     * @param blocks puts texts
     * @param marks where everything else goes
     * @param width of the label, millimetres
     * @return its height
     */
    double draw(LabelDesign words, LabelBlocks blocks, List<Mark> marks, double width);

    /**
     * This drawing in a frame.
     *
     * @param least width that the label has at least, millimetres
     */
    default LabelForm from(double least) {
        return words -> {
            double width = least;
            while (true) {
                List<Mark> marks = new ArrayList<>();
                LabelBlocks blocks = new LabelBlocks(words.reading().cap(), Dots.DPI_300, marks);
                double height = draw(words, blocks, marks, width);
                if (blocks.tooWide().isEmpty()) {
                    marks.add(Panel.outlined(new Box(0, 0, width, height), SignColours.BLACK, FRAME));
                    return new Label(words.id(), width, height, marks);
                }
                LabelBlocks.TooWide text = blocks.tooWide().get();
                width += text.least() - text.room() + SLACK;
                if (width > LabelRoom.WIDTHS.get(LabelRoom.WIDTHS.size() - 1)) {
                    throw LabelBlocks.refusal(words.id(), text, height);
                }
            }
        };
    }
}
