package org.quaybook.pack.labels;

import org.quaybook.job.DieCutSheet;
import org.quaybook.job.LabelRoll;
import org.quaybook.job.LabelStock;
import org.quaybook.job.PlainSheet;
import org.quaybook.quantity.Length;
import org.quaybook.render.DieCut;
import org.quaybook.render.Dots;
import org.quaybook.render.Medium;
import org.quaybook.render.Printing;
import org.quaybook.render.Roll;
import org.quaybook.render.Sheet;
import org.quaybook.render.Stock;

/** A stock of labels as it was read, in the millimetres that are printed. */
public final class PrintStock {

    private PrintStock() {}

    /** @param read without an error */
    public static Stock of(LabelStock read) {
        Double dots = read.dotsPerMm();
        return new Stock(
                read.id(),
                medium(read),
                Printing.valueOf(read.printing().name()),
                dots == null ? null : new Dots(dots));
    }

    private static Medium medium(LabelStock read) {
        PlainSheet plain = read.plainSheet();
        if (plain != null) {
            return new Sheet(mm(plain.width()), mm(plain.height()), mm(plain.margin()), mm(plain.gap()));
        }
        DieCutSheet cut = read.dieCut();
        if (cut != null) {
            return new DieCut(
                    mm(cut.paperWidth()),
                    mm(cut.paperHeight()),
                    cut.columns(),
                    cut.rows(),
                    mm(cut.labelWidth()),
                    mm(cut.labelHeight()),
                    mm(cut.left()),
                    mm(cut.top()),
                    mm(cut.rightMargin()),
                    mm(cut.bottomMargin()),
                    mm(cut.columnGap()),
                    mm(cut.rowGap()),
                    mm(cut.radius()),
                    mm(cut.edge()));
        }
        LabelRoll roll = read.roll();
        if (roll == null) {
            throw new IllegalArgumentException(read.id() + " has no geometry");
        }
        Length length = roll.length();
        return new Roll(mm(roll.width()), mm(roll.edge()), length == null ? null : mm(length), mm(roll.gap()));
    }

    private static double mm(Length length) {
        return length.metres() * 1000;
    }
}
