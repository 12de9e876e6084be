package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The example of the template authors' guide does what the guide says. */
class ExampleTemplatesTest {

    private static final Path EXAMPLE = Path.of("docs/example-templates");

    private static String text(Map<String, byte[]> pack, String document) throws Exception {
        try (PDDocument read = Loader.loadPDF(Objects.requireNonNull(pack.get(document), document))) {
            return new PDFTextStripper().getText(read).replaceAll("[\\s\u00A0]+", " ");
        }
    }

    private static Map<String, byte[]> pack(@org.jspecify.annotations.Nullable Path templates) throws Exception {
        Road.Judged judged = Road.judge(Path.of("demo-jobs/second-biscuit"));
        return Road.documents(judged, templates, "test");
    }

    @Test
    void wordsLayoutAndChapterAreTheInstallersOwn() throws Exception {
        Map<String, byte[]> built = pack(null);
        Map<String, byte[]> own = pack(EXAMPLE);

        assertThat(text(built, "guide.pdf"))
                .contains("Our advice for this boat", "Two minutes on, two minutes off.", "I have received this guide.")
                .doesNotContain("Ring us first");
        assertThat(text(own, "guide.pdf"))
                .contains("Our advice for this boat", "Ring us first", "at hand, or the record code.")
                .doesNotContain("I have received this guide.");
        assertThat(text(own, "guide-fr.pdf"))
                .contains("Nos conseils pour ce bateau", "Appelez-nous d’abord", "Décapeur thermique")
                .doesNotContain("Heat gun");
    }
}
