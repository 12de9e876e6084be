package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.quaybook.Conformance;

/** PDFBox says where everything stands on the small pages and on the larger ones; ISO 216 says how much larger these are. */
class EnlargedTest {

    private static final DocumentInfo INFO = new DocumentInfo("Book", "Firm", "", "en", LocalDate.of(2026, 3, 1));
    private static final double ACROSS = 210.0 / 148;
    private static final double UP = 297.0 / 210;

    /** Points; both files round coordinates to hundredths. */
    private static final double ROUNDING = 0.02;

    private static final List<Attachment> ATTACHED = List.of(new Attachment(
            "job.yaml",
            "application/yaml",
            Attachment.Relation.SOURCE,
            "The job",
            new Attachment.Content("a: 1\n".getBytes(StandardCharsets.UTF_8))));

    private static byte[] small = {};
    private static byte[] larger = {};
    private static PDDocument before = new PDDocument();
    private static PDDocument after = new PDDocument();

    @BeforeAll
    static void make() throws IOException {
        String body = """
                <h1 id="top">First</h1><p>Some text of a page, long enough that it is broken into two lines or three.
                <a href="https://example.org/">A site</a></p>
                <svg xmlns="http://www.w3.org/2000/svg" width="80" height="40" aria-label="box"><rect width="80"
                height="40" fill="#9b2423"/><text y="20" font-size="9">in</text></svg>
                <h1 style="page-break-before: always">Second</h1><p><a href="#top">back</a></p>
                """;
        String xhtml = "<html xmlns='http://www.w3.org/1999/xhtml'><head><title>t</title><style>@page { size: A5;"
                + " margin: 20mm } body { font-family: 'Source Sans Pro'; font-size: 10pt }</style></head><body>"
                + body + "</body></html>";
        small = new Handbook().toPdf(xhtml, INFO, Resources.none(), 1, ATTACHED);
        larger = Enlarged.toPdf(small, PageFormat.A5, PageFormat.A4, INFO);
        before = Loader.loadPDF(small);
        after = Loader.loadPDF(larger);
    }

    @AfterAll
    static void close() throws IOException {
        before.close();
        after.close();
    }

    @Test
    void pagesAreThoseOfTheLargerPaper() {
        assertThat(after.getNumberOfPages()).isEqualTo(2);
        after.getPages().forEach(page -> {
            assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isCloseTo(210, within(0.05));
            assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isCloseTo(297, within(0.05));
        });
    }

    @Test
    void everyLetterStandsWhereItDidAndIsLarger() throws IOException {
        List<TextPosition> were = letters(before);
        List<TextPosition> are = letters(after);
        assertThat(were).hasSizeGreaterThan(80);
        assertThat(are).hasSameSizeAs(were);
        for (int i = 0; i < were.size(); i++) {
            TextPosition was = were.get(i);
            TextPosition is = are.get(i);
            assertThat(is.getUnicode()).isEqualTo(was.getUnicode());
            assertThat(is.getTextMatrix().getTranslateX())
                    .isCloseTo((float) (was.getTextMatrix().getTranslateX() * ACROSS), within((float) ROUNDING));
            assertThat(is.getTextMatrix().getTranslateY())
                    .isCloseTo((float) (was.getTextMatrix().getTranslateY() * UP), within((float) ROUNDING));
            assertThat(is.getYScale() / was.getYScale()).isCloseTo((float) UP, within(0.01f));
        }
    }

    private static List<TextPosition> letters(PDDocument document) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                letters.add(letter);
            }
        }.getText(document);
        return letters;
    }

    @Test
    void linksCoverTheSameWordsAndLeadToTheSamePlaces() throws IOException {
        int links = 0;
        for (int page = 0; page < before.getNumberOfPages(); page++) {
            List<PDAnnotation> were = before.getPage(page).getAnnotations();
            List<PDAnnotation> are = after.getPage(page).getAnnotations();
            assertThat(are).hasSameSizeAs(were);
            for (int i = 0; i < were.size(); i++, links++) {
                enlarged(were.get(i).getRectangle(), are.get(i).getRectangle());
            }
        }
        assertThat(links).isEqualTo(2);
        PDOutlineItem was = second(before);
        PDOutlineItem is = second(after);
        assertThat(is.getTitle()).isEqualTo(was.getTitle()).isEqualTo("Second");
        PDPageXYZDestination from = (PDPageXYZDestination) was.getDestination();
        PDPageXYZDestination to = (PDPageXYZDestination) is.getDestination();
        assertThat(to.retrievePageNumber()).isEqualTo(from.retrievePageNumber()).isEqualTo(1);
        assertThat((double) to.getTop())
                .isCloseTo(from.getTop() * UP, within(1.0))
                .isGreaterThan(700);
    }

    private static PDOutlineItem second(PDDocument document) {
        return document.getDocumentCatalog()
                .getDocumentOutline()
                .getFirstChild()
                .getNextSibling();
    }

    private static void enlarged(PDRectangle was, PDRectangle is) {
        assertThat((double) is.getLowerLeftX()).isCloseTo(was.getLowerLeftX() * ACROSS, within(ROUNDING));
        assertThat((double) is.getLowerLeftY()).isCloseTo(was.getLowerLeftY() * UP, within(ROUNDING));
        assertThat((double) is.getUpperRightX()).isCloseTo(was.getUpperRightX() * ACROSS, within(ROUNDING));
        assertThat((double) is.getUpperRightY()).isCloseTo(was.getUpperRightY() * UP, within(ROUNDING));
    }

    /** ISO 32000-1, 14.8.5.4.3: the box that a picture's tag tells. */
    @Test
    void tagsTellWhereThePicturesAreNow() {
        List<PDRectangle> were = boxes(before.getDocumentCatalog().getStructureTreeRoot());
        List<PDRectangle> are = boxes(after.getDocumentCatalog().getStructureTreeRoot());
        assertThat(were).hasSize(1);
        assertThat(are).hasSize(1);
        enlarged(were.get(0), are.get(0));
    }

    private static List<PDRectangle> boxes(PDStructureNode node) {
        List<PDRectangle> boxes = new ArrayList<>();
        if (node instanceof PDStructureElement element) {
            for (int i = 0; i < element.getAttributes().size(); i++) {
                COSBase box = element.getAttributes()
                        .getObject(i)
                        .getCOSObject()
                        .getDictionaryObject(COSName.getPDFName("BBox"));
                if (box instanceof COSArray corners) {
                    boxes.add(new PDRectangle(corners));
                }
            }
        }
        node.getKids().stream()
                .filter(PDStructureNode.class::isInstance)
                .forEach(kid -> boxes.addAll(boxes((PDStructureNode) kid)));
        return boxes;
    }

    @Test
    void staysWhatTheSmallOneClaims() throws IOException {
        assertThat(Conformance.faultsAsArchive(larger)).isEmpty();
        assertThat(Conformance.faultsForListening(larger)).isEmpty();
        assertThat(after.getDocumentInformation().getTitle()).isEqualTo("Book");
        assertThat(after.getDocumentInformation().getProducer())
                .isEqualTo(before.getDocumentInformation().getProducer());
        assertThat(after.getDocumentInformation().getModificationDate())
                .isEqualTo(before.getDocumentInformation().getModificationDate());
        byte[] attached = after.getDocumentCatalog()
                .getNames()
                .getEmbeddedFiles()
                .getNames()
                .values()
                .iterator()
                .next()
                .getEmbeddedFile()
                .toByteArray();
        assertThat(attached).asString(StandardCharsets.UTF_8).isEqualTo("a: 1\n");
    }

    /** ISO 32000-1, 14.4: the first part stays, the second tells one from the other. */
    @Test
    void isTheSameEachTimeAndHasAnIdentifierOfItsOwn() {
        assertThat(Enlarged.toPdf(small, PageFormat.A5, PageFormat.A4, INFO)).isEqualTo(larger);
        COSArray was = before.getDocument().getDocumentID();
        COSArray is = after.getDocument().getDocumentID();
        assertThat(is.get(0)).isEqualTo(was.get(0));
        assertThat(is.get(1)).isNotEqualTo(was.get(1));
    }

    @Test
    void paperOfAnotherShapeIsRefused() {
        assertThat(PageFormat.A4.enlarges(PageFormat.A5)).isTrue();
        assertThat(PageFormat.A5.enlarges(PageFormat.A4)).isFalse();
        assertThat(PageFormat.LETTER.enlarges(PageFormat.HALF_LETTER)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Enlarged.toPdf(small, PageFormat.HALF_LETTER, PageFormat.LETTER, INFO));
    }
}
