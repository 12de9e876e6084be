package org.quaybook.render;

import com.github.weisj.jsvg.renderer.output.Output;
import com.github.weisj.jsvg.renderer.output.TextOutput;
import com.github.weisj.jsvg.renderer.output.impl.Graphics2DOutput;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;

/** Draws with JSVG, but hands text on as text where JSVG would fill the outlines of its letters. */
final class SvgOutput extends Graphics2DOutput {

    private final SvgText text = new SvgText();

    SvgOutput(Graphics2D graphics) {
        super(graphics);
    }

    @Override
    public TextOutput textOutput() {
        return text;
    }

    @Override
    public void fillShape(Shape shape) {
        if (!text.isOpen()) {
            super.fillShape(shape);
        } else if (!shape.getBounds2D().isEmpty()) {
            text.next().ifPresentOrElse(this::draw, () -> super.fillShape(shape));
        }
    }

    private void draw(SvgText.Segment segment) {
        AffineTransform before = graphics().getTransform();
        for (SvgText.Run run : segment.runs()) {
            graphics().transform(run.transform());
            graphics().setFont(segment.font());
            graphics().drawString(run.text(), 0f, 0f);
            graphics().setTransform(before);
        }
    }

    @Override
    public Output createChild() {
        return new SvgOutput((Graphics2D) graphics().create());
    }
}
