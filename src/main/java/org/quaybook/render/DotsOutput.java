package org.quaybook.render;

import com.github.weisj.jsvg.renderer.output.Output;
import com.github.weisj.jsvg.renderer.output.impl.Graphics2DOutput;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;

/** Draws with JSVG, the same dots on every JDK. */
final class DotsOutput extends Graphics2DOutput {

    DotsOutput(Graphics2D graphics) {
        super(graphics);
    }

    @Override
    public void drawShape(Shape shape) {
        double dots = Math.sqrt(Math.abs(graphics().getTransform().getDeterminant()));
        if (dots > 0 && stroke() instanceof BasicStroke pen && pen.getDashArray() == null) {
            super.fillShape(Pen.along(shape, pen, GraphicsCanvas.FLATNESS / dots));
        } else {
            super.drawShape(shape);
        }
    }

    @Override
    public Output createChild() {
        return new DotsOutput((Graphics2D) graphics().create());
    }
}
