package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** A label whose texts are fitted and whose drawings are read, ready to draw any number of times. */
final class PreparedLabel {

    private final List<Consumer<Canvas>> strokes = new ArrayList<>();
    private final Label label;
    private final Faults faults;
    private final double bleed;

    private PreparedLabel(Label label, double bleed, Faults faults) {
        this.label = label;
        this.bleed = bleed;
        this.faults = faults;
    }

    /** Prepares a label without its caption; what is wrong with it goes to the faults. */
    static PreparedLabel bare(Label label, Faults faults) {
        return bare(label, 0, faults);
    }

    private static PreparedLabel bare(Label label, double bleed, Faults faults) {
        PreparedLabel prepared = new PreparedLabel(label, bleed, faults);
        prepared.prepare(label.marks());
        return prepared;
    }

    /**
     * Prepares a label with what stands under it.
     *
     * @param bleed how far filled panels go beyond its edge, millimetres; its caption stands below that
     */
    static PreparedLabel captioned(Label label, double bleed, Faults faults) {
        PreparedLabel prepared = bare(label, bleed, faults);
        Label.Caption caption = label.caption();
        if (caption != null) {
            PreparedLabel below = new PreparedLabel(label, 0, faults);
            below.prepare(caption.marks());
            prepared.strokes.add(canvas -> below.draw(canvas.at(0, label.height() + bleed)));
        }
        return prepared;
    }

    void draw(Canvas canvas) {
        strokes.forEach(stroke -> stroke.accept(canvas));
    }

    private void prepare(List<Mark> marks) {
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof TextBlock text) {
                checkContrast(text, marks.subList(0, i));
            }
            prepare(marks.get(i));
        }
    }

    private void checkContrast(TextBlock text, List<Mark> below) {
        Colour ink = text.style().colour();
        Colour ground = Ground.worst(ink, Ground.of(text.box(), below));
        double ratio = Contrast.ratio(ink, ground);
        if (ratio < Contrast.TEXT) {
            faults.add(
                    RenderMessage.LABEL_CONTRAST_LOW,
                    label.id(),
                    text.text(),
                    ink.toString(),
                    ground.toString(),
                    ratio,
                    Contrast.TEXT);
        }
    }

    private void prepare(Mark mark) {
        if (mark instanceof Panel panel) {
            strokes.add(canvas -> draw(panel, canvas));
        } else if (mark instanceof TextBlock text) {
            prepare(text);
        } else if (mark instanceof Picture picture) {
            SvgDrawing.read(picture.svg(), faults)
                    .ifPresent(drawing -> strokes.add(canvas -> canvas.drawing(drawing, picture.box())));
        } else if (mark instanceof Code code) {
            strokes.add(canvas -> canvas.code(code.code(), code.x(), code.y(), code.module()));
        }
    }

    private void draw(Panel panel, Canvas canvas) {
        if (panel.fill() != null) {
            canvas.fill(panel.box().beyond(bleed, label.width(), label.height()), panel.cornerRadius(), panel.fill());
        }
        if (panel.stroke() != null && panel.strokeWidth() > 0) {
            double half = panel.strokeWidth() / 2;
            canvas.stroke(
                    panel.box().inside(half),
                    Math.max(0, panel.cornerRadius() - half),
                    panel.stroke(),
                    panel.strokeWidth());
        }
    }

    private void prepare(TextBlock text) {
        Integer missing = TextFitter.missing(text).orElse(null);
        if (missing != null) {
            faults.add(RenderMessage.GLYPH_MISSING, Typeface.describeMissing(missing, text.text()));
            return;
        }
        Fitting fitting = TextFitter.fit(text);
        if (fitting instanceof Fitting.Fits fits) {
            strokes.add(canvas -> draw(text, fits, canvas));
        } else if (fitting instanceof Fitting.DoesNotFit tooBig) {
            faults.add(
                    RenderMessage.LABEL_TEXT_DOES_NOT_FIT,
                    label.id(),
                    text.text(),
                    text.box().width(),
                    text.box().height(),
                    tooBig.leastWidth(),
                    tooBig.leastHeight());
        }
    }

    private static void draw(TextBlock text, Fitting.Fits fits, Canvas canvas) {
        Face face = text.style().face();
        for (Fitting.Line line : fits.lines()) {
            canvas.text(
                    line,
                    text.turn(),
                    face.typeface(),
                    face.sizeFor(fits.capHeight()),
                    text.style().colour());
        }
    }
}
