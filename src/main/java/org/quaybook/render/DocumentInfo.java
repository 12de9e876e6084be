package org.quaybook.render;

import java.time.LocalDate;
import java.util.Locale;

/**
 * What a PDF says about itself.
 *
 * @param title shown in the title bar of a viewer; not blank
 * @param author who made it; may be empty
 * @param subject what it is about; may be empty
 * @param language BCP 47 tag: {@code en}, {@code de-CH}
 * @param date the document's date, written as midnight UTC
 */
public record DocumentInfo(String title, String author, String subject, String language, LocalDate date) {

    public DocumentInfo {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a document without a title");
        }
        if (Locale.forLanguageTag(language).getLanguage().isEmpty()) {
            throw new IllegalArgumentException("no language tag: " + language);
        }
    }
}
