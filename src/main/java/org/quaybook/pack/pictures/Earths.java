package org.quaybook.pack.pictures;

import java.util.List;
import org.quaybook.job.Earth;
import org.quaybook.job.EarthKind;
import org.quaybook.pack.pictures.Drawing.Anchor;

/** Earth and bonding conductors, each from end to end. */
final class Earths {

    private static final double EARTH_FROM = 96;
    private static final double EARTH_TO = 206;
    private static final double LEAST_ROW = 22;

    private final Subject subject;
    private final Drawing drawing;
    private final Symbols symbols;

    Earths(Subject subject, Drawing drawing, Symbols symbols) {
        this.subject = subject;
        this.drawing = drawing;
        this.symbols = symbols;
    }

    /** Draws them below each other; gives the lower edge. */
    double draw(double top) {
        List<Earth> earths = subject.job().earths();
        if (earths.isEmpty()) {
            return top - 8;
        }
        double y = top;
        drawing.text(Lettering.SMALL_BOLD, Anchor.START, 0, y + Lettering.SMALL_BOLD.capitals(), subject.say("earths"));
        y += Lettering.SMALL_BOLD.capitals() + 5;
        for (Earth earth : earths) {
            Note from = Note.within(EARTH_FROM - 6)
                    .add(Lettering.SMALL, earth.from())
                    .note();
            Note to = Note.within(Drawing.WIDTH - EARTH_TO - 22)
                    .add(Lettering.SMALL, earth.to())
                    .note();
            double half = Math.max(LEAST_ROW / 2, Math.max(from.height(), to.height()) / 2);
            double row = y + half;
            from.writeAround(drawing, Anchor.END, EARTH_FROM - 6, row);
            drawing.open("earth", earth.id());
            drawing.line(Pen.EARTH, EARTH_FROM, row, EARTH_TO, row, EARTH_TO, row + 3);
            drawing.close();
            if (earth.kind().known().filter(EarthKind.BOND::equals).isPresent()) {
                symbols.frame(EARTH_TO, row + 3, earth.id());
            } else {
                symbols.earth(EARTH_TO, row + 3, earth.id());
            }
            drawing.text(
                    Lettering.SMALL_BOLD,
                    Anchor.MIDDLE,
                    (EARTH_FROM + EARTH_TO) / 2 - 4,
                    row - 3,
                    String.join(" · ", earth.id(), subject.given(earth.fitted())));
            to.writeAround(drawing, Anchor.START, EARTH_TO + 14, row);
            y = row + half;
        }
        return y;
    }
}
