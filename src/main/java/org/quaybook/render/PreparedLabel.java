package org.quaybook.render;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** A label whose texts are fitted and whose drawings are read, ready to draw any number of times. */
final class PreparedLabel {

    private static final char SOFT_HYPHEN = '\u00ad';

    private final List<Consumer<Canvas>> strokes = new ArrayList<>();

    /** What is told of it to those who listen, in the order of its marks. */
    private final List<Tag> tags = new ArrayList<>();

    /** A text that stands on a tag several times, so that it is seen from any side, is told once. */
    private final Set<List<String>> saidTexts = new HashSet<>();

    private final Label label;
    private final Faults faults;
    private final double bleed;
    private final boolean told;

    private PreparedLabel(Label label, double bleed, Faults faults, boolean told) {
        this.label = label;
        this.bleed = bleed;
        this.faults = faults;
        this.told = told;
    }

    /** Prepares a label without its caption; what is wrong with it goes to the faults. */
    static PreparedLabel bare(Label label, Faults faults) {
        return bare(label, 0, faults);
    }

    private static PreparedLabel bare(Label label, double bleed, Faults faults) {
        PreparedLabel prepared = new PreparedLabel(label, bleed, faults, true);
        prepared.prepare(label.marks());
        return prepared;
    }

    /** The same for what was told before: all of it is decoration to those who listen. */
    static PreparedLabel untold(Label label, Faults faults) {
        PreparedLabel prepared = new PreparedLabel(label, 0, faults, false);
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
            PreparedLabel below = new PreparedLabel(label, 0, faults, true);
            below.prepare(caption.marks());
            prepared.tags.addAll(below.tags);
            prepared.strokes.add(canvas -> below.draw(canvas.at(0, label.height() + bleed)));
        }
        return prepared;
    }

    /** Its part of the structure of a PDF; asked for once. */
    Tag structure() {
        return new Tag("Sect", tags);
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
                    .ifPresent(
                            drawing -> figure(picture.alternative(), canvas -> canvas.drawing(drawing, picture.box())));
        } else if (mark instanceof Code code) {
            figure(code.code().text(), canvas -> canvas.code(code.code(), code.x(), code.y(), code.module()));
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
            if (saidTexts.add(text.paragraphs())) {
                tell("P", "ActualText", words(text), canvas -> draw(text, fits, canvas));
            } else {
                strokes.add(canvas -> draw(text, fits, canvas));
            }
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

    private void figure(String alternative, Consumer<Canvas> drawing) {
        if (alternative.isEmpty()) {
            strokes.add(drawing);
        } else {
            tell("Figure", "Alt", alternative, drawing);
        }
    }

    private void tell(String type, String entry, String words, Consumer<Canvas> drawing) {
        if (told) {
            TagSlot slot = new TagSlot();
            tags.add(new Tag(type, List.of(slot)).with(entry, PdfIdentity.text(words)));
            strokes.add(canvas -> canvas.told(slot, drawing));
        } else {
            strokes.add(drawing);
        }
    }

    /** The words of a text without its line breaks: those who listen have no lines. */
    private static String words(TextBlock text) {
        List<String> said = new ArrayList<>();
        for (int i = 0; i < text.paragraphs().size(); i++) {
            String number = text.style().listing() == TextStyle.Listing.NUMBERS ? (i + 1) + ". " : "";
            said.add(number + text.paragraphs().get(i).replace("\n", " ").replace(String.valueOf(SOFT_HYPHEN), ""));
        }
        return String.join(" ", said);
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
