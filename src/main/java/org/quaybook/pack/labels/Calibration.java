package org.quaybook.pack.labels;

import java.time.LocalDate;
import java.util.List;
import org.quaybook.render.CalibrationPage;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.PrintSettings;
import org.quaybook.render.Stock;
import org.quaybook.text.Words;

/** The page to find out by how much a printer is off, for the installer, so in English. */
public final class Calibration {

    private static final String LANGUAGE = "en-GB";

    private Calibration() {}

    /**
     * @param settings with the offset known so far
     * @param by who prints it
     * @param date that the document shows
     */
    public static byte[] page(Stock stock, PrintSettings settings, String by, LocalDate date) {
        Words words = Words.of(LANGUAGE);
        String title = words.say("pack.calibration.title", stock.id());
        List<String> how = List.of(
                title,
                words.sentence("pack.calibration.how"),
                words.sentence("pack.calibration.read"),
                words.sentence("pack.calibration.rule"));
        return CalibrationPage.toPdf(stock, settings, how, new DocumentInfo(title, by, stock.id(), LANGUAGE, date));
    }
}
