package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.job.Job;
import org.quaybook.job.Owner;

/** What travels inside the guide, as PDFBox takes it out. Rules: ISO 19005-3, 6.8 (associated files). */
class AttachedFilesTest {

    private static final COSName AF = COSName.getPDFName("AF");
    private static final COSName RELATION = COSName.getPDFName("AFRelationship");

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theGuideCarriesItsJobAndItsFigures(String demo) throws Exception {
        Path file = Path.of("demo-jobs", demo, "job.yaml");
        Path log = file.resolveSibling("service.yaml");
        Road.Judged judged = Road.judge(file);
        Job job = Objects.requireNonNull(judged.assessment()).job();
        Map<String, byte[]> pack = Road.documents(judged, null, "test");
        List<String> guides = pack.keySet().stream()
                .filter(name -> name.matches("guide(-a4|-letter)?\\.pdf"))
                .toList();
        assertThat(guides).hasSize(2);
        for (String name : guides) {
            Map<String, PDComplexFileSpecification> attached = attached(Objects.requireNonNull(pack.get(name)));
            assertThat(attached)
                    .containsOnlyKeys(
                            Files.exists(log)
                                    ? new String[] {"job.yaml", "service.yaml", "figures.json"}
                                    : new String[] {"job.yaml", "figures.json"});
            PDComplexFileSpecification figures = Objects.requireNonNull(attached.get("figures.json"));
            assertThat(figures.getCOSObject().getNameAsString(RELATION)).isEqualTo("Data");
            assertThat(embedded(figures).toByteArray()).isEqualTo(pack.get("figures.json"));
            assertThat(embedded(figures).getSubtype()).isEqualTo("application/json");
            PDComplexFileSpecification source = Objects.requireNonNull(attached.get("job.yaml"));
            assertThat(source.getCOSObject().getNameAsString(RELATION)).isEqualTo("Source");
            assertThat(embedded(source).getModDate().toInstant())
                    .isEqualTo(job.job()
                            .date()
                            .atStartOfDay(java.time.ZoneOffset.UTC)
                            .toInstant());
            String copy = new String(embedded(source).toByteArray(), StandardCharsets.UTF_8);
            Owner owner = Objects.requireNonNull(job.owner());
            assertThat(copy)
                    .doesNotContain(owner.name())
                    .contains("name: " + job.craft().name());
            assertThat(Files.readAllLines(file))
                    .containsAll(
                            copy.lines().filter(line -> !line.contains("–")).toList());
        }
    }

    private static PDEmbeddedFile embedded(PDComplexFileSpecification file) {
        return Objects.requireNonNull(file.getEmbeddedFile());
    }

    /** Each file is named in the catalogue's list of associated files and in that of embedded files. */
    private static Map<String, PDComplexFileSpecification> attached(byte[] pdf) throws Exception {
        Map<String, PDComplexFileSpecification> files = new LinkedHashMap<>();
        PDDocument document = Loader.loadPDF(pdf);
        COSArray associated = document.getDocumentCatalog().getCOSObject().getCOSArray(AF);
        for (int i = 0; i < associated.size(); i++) {
            PDComplexFileSpecification file = new PDComplexFileSpecification((COSDictionary) associated.getObject(i));
            files.put(file.getFilename(), file);
        }
        assertThat(document.getDocumentCatalog()
                        .getNames()
                        .getEmbeddedFiles()
                        .getNames()
                        .keySet())
                .isEqualTo(files.keySet());
        return files;
    }
}
