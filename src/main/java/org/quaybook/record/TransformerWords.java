package org.quaybook.record;

import org.jspecify.annotations.Nullable;
import org.quaybook.job.Given;
import org.quaybook.job.Shore;
import org.quaybook.job.Transformer;
import org.quaybook.text.Words;

/** How documents tell of an isolating transformer behind the inlet. */
public final class TransformerWords {

    private TransformerWords() {}

    /** What is known of the neutral behind it; empty where there is none. */
    public static String neutral(@Nullable Shore shore, Words words) {
        Transformer transformer = shore == null ? null : shore.transformer();
        if (transformer == null) {
            return "";
        }
        return words.say("term.transformer."
                + Given.maybe(transformer.neutralTied())
                        .map(tied -> tied ? "tied" : "not-tied")
                        .orElse("unknown"));
    }
}
