package org.quaybook.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.quaybook.diag.Place;

/** What the texts of this job are in another language of its documents. */
@Means("What the texts of this job are in another language of its documents.")
public record Translation(
        @Means(value = "the language", example = "de") @RefersTo(Thing.LANGUAGE)
        String language,

        @Means(
                value = "a text of this job as it stands there, an equals sign, and the same in that language",
                example = "[Galley sockets = Steckdosen Pantry]")
        @Matches(
                value = "[^=]*[^= ] = [^= ][^=]*",
                form = "a text of this job, \" = \" and the same in that language, such as Galley = Pantry")
        List<String> texts,

        Place place) {

    private static final String IS = " = ";

    public Translation {
        texts = List.copyOf(texts);
    }

    /** A text of the job. */
    static String original(String text) {
        return text.substring(0, text.indexOf(IS));
    }

    /** Texts of the job and what they are in this language. */
    Map<String, String> byText() {
        Map<String, String> byText = new LinkedHashMap<>();
        texts.forEach(text -> byText.put(original(text), text.substring(text.indexOf(IS) + IS.length())));
        return byText;
    }
}
