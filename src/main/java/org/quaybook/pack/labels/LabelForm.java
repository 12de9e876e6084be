package org.quaybook.pack.labels;

import org.quaybook.render.Label;

/** Draws a label whose size follows from what it is put on, not from the stock. */
@FunctionalInterface
interface LabelForm {

    /**
     * The label, which takes its id and all of its words from a design: in one language or in two.
     *
     * @throws org.quaybook.render.RenderException if the words find no room at a size that can be read
     */
    Label draw(LabelDesign words);
}
