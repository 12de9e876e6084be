package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.Conformance;

/** Every document that is read, not cut up or pasted on, can be archived and read aloud. */
class ConformanceTest {

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void guidesAndWorksheetsConformToPdfA3aAndPdfUa1(String demo) throws Exception {
        Road.Judged judged = Road.judge(Path.of("demo-jobs", demo));
        Map<String, byte[]> pack = Road.documents(judged, null, "test");
        assertThat(pack.keySet()).contains("guide.pdf", "worksheet.pdf");
        pack.forEach((name, content) -> {
            if (claims(content)) {
                assertThat(Conformance.faultsAsArchive(content)).as(name).isEmpty();
                assertThat(Conformance.faultsForListening(content)).as(name).isEmpty();
            } else {
                // The others are cut up, pasted on or folded.
                assertThat(name).matches("(.*/)?labels\\.pdf|guide-booklet.*\\.pdf|.*\\.(json|html|js)");
            }
        });
    }

    private static boolean claims(byte[] content) {
        return new String(content, StandardCharsets.ISO_8859_1).contains("<pdfuaid:part>1</pdfuaid:part>");
    }
}
