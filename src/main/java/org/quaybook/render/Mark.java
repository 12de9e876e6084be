package org.quaybook.render;

/** One thing drawn on a label. Marks are drawn in order, the later over the earlier. */
public sealed interface Mark permits Panel, TextBlock, Picture, Code {

    /** The room it takes on the label. */
    Box box();
}
