package org.quaybook.job;

import org.jspecify.annotations.Nullable;

/** Colours of the documents. */
@Means("Colours of the documents.")
public record Colours(
        @Means(value = "headings and bars", example = "#17425f")
        @Matches(value = "#[0-9a-fA-F]{6}", form = "# and six hexadecimal digits, such as #17425f")
        String main,

        @Means(value = "lines and highlights", example = "#c7791a")
        @Matches(value = "#[0-9a-fA-F]{6}", form = "# and six hexadecimal digits, such as #c7791a")
        @Nullable String accent) {}
