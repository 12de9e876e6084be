package org.quaybook.pack;

import java.time.LocalDate;
import java.util.List;
import org.quaybook.job.LabelStock;
import org.quaybook.pack.labels.PrintStock;
import org.quaybook.render.CalibrationPage;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.RenderException;
import org.quaybook.text.Words;

/** The page from which somebody reads by how much his printer is off. */
public final class StockProof {

    private StockProof() {}

    /**
     * Makes the page.
     *
     * @param words of the installer
     * @throws NotPrinted if the print is moved too far
     */
    public static byte[] pdf(LabelStock stock, PrintMove move, Words words) throws NotPrinted {
        String title = words.say("pack.calibration.title", stock.title());
        List<String> how = List.of(
                title,
                words.sentence("pack.calibration.how"),
                words.sentence("pack.calibration.read"),
                words.sentence("pack.calibration.rule"));
        // A proof is of no job: a fixed date keeps the same page the same.
        DocumentInfo info = new DocumentInfo(title, "", "", words.language(), LocalDate.EPOCH);
        try {
            return CalibrationPage.toPdf(PrintStock.of(stock), move.settings(), how, info);
        } catch (RenderException e) {
            throw new NotPrinted(e);
        }
    }
}
