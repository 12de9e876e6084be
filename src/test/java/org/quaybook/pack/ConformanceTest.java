package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.Conformance;

/** Every document but those that are folded can be archived and read aloud. */
class ConformanceTest {

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void documentsConformToPdfA3aAndPdfUa1(String demo) throws Exception {
        Road.Judged judged = Road.judge(Path.of("demo-jobs", demo));
        Map<String, byte[]> pack = Road.documents(judged, null, "test");
        assertThat(pack.keySet()).contains("guide.pdf", "worksheet.pdf", "labels.pdf");
        assertThat(claims(Objects.requireNonNull(pack.get("labels.pdf")))).isTrue();
        pack.forEach((name, content) -> {
            if (claims(content)) {
                assertThat(Conformance.faultsAsArchive(content)).as(name).isEmpty();
                assertThat(Conformance.faultsForListening(content)).as(name).isEmpty();
            } else {
                assertThat(name).matches("guide-booklet.*\\.pdf|.*\\.(json|html|js|ics)");
            }
        });
    }

    private static boolean claims(byte[] content) {
        return new String(content, StandardCharsets.ISO_8859_1).contains("<pdfuaid:part>1</pdfuaid:part>");
    }
}
