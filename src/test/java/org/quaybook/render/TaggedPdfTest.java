package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.quaybook.Conformance;

/** What somebody hears who has a PDF read aloud, as PDFBox finds it in the file. Structure types: ISO 32000-1, 14.8.4. */
class TaggedPdfTest {

    private static final DocumentInfo INFO = new DocumentInfo("A & B", "Firm", "", "en", LocalDate.of(2026, 3, 1));
    private static final String CSS = "<style>@page { size: 100mm 60mm; margin: 12mm;"
            + " @top-center { content: element(head) } @bottom-center { font-family: 'Source Sans Pro';"
            + " content: counter(page) } }"
            + " .head { position: running(head) } body { font-family: 'Source Sans Pro'; font-size: 10pt }"
            + " li { list-style: none } li:before { content: '• ' } .q:after { content: '!' }"
            + " .more:after { content: target-counter(attr(href), page) }"
            + " table { -fs-table-paginate: paginate } tr { page-break-inside: avoid }</style>";

    private static final String BOOK = """
            <div class="head">Running</div>
            <h1 id="top">Title</h1>
            <p>One <b>two</b> three, a long line that must be broken into several.<br/>Next.</p>
            <ul><li>first</li><li>second <a href="https://example.org/">site</a></li></ul>
            <div class="q">Plain</div><div>Loose <p>inner</p> end</div>
            <p>See <a class="more" href="#top"></a>.</p>
            <p lang="de">Guten Tag</p>
            <table><caption>Sizes</caption><thead><tr><th>What</th><th>Size</th></tr></thead><tbody>%s</tbody></table>
            <table><tr><td>left</td><td>right</td></tr></table>
            <svg xmlns="http://www.w3.org/2000/svg" width="20" height="10"><title>A box</title><desc>It is red.</desc>
            <rect width="20" height="10" fill="#9b2423"/><text y="8" font-size="6">in</text></svg>
            <svg xmlns="http://www.w3.org/2000/svg" width="20" height="10"><rect width="20" height="10"/></svg>
            """.formatted("<tr><th scope=\"row\">row</th><td>1 m</td></tr>".repeat(12));

    private static byte[] pdf(String body) {
        return new Handbook()
                .toPdf(
                        "<html xmlns='http://www.w3.org/1999/xhtml'><head>" + CSS + "<title>t</title></head><body>"
                                + body + "</body></html>",
                        INFO,
                        Resources.none());
    }

    @Test
    void conformsToBothStandards() {
        byte[] pdf = pdf(BOOK);
        assertThat(Conformance.faultsAsArchive(pdf)).isEmpty();
        assertThat(Conformance.faultsForListening(pdf)).isEmpty();
    }

    /** Guards the checks themselves: a file of another library that claims nothing has faults against both. */
    @Test
    void theValidatorFindsFaults() throws IOException {
        java.io.ByteArrayOutputStream plain = new java.io.ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new org.apache.pdfbox.pdmodel.PDPage());
            document.save(plain);
        }
        assertThat(Conformance.faultsAsArchive(plain.toByteArray())).isNotEmpty();
        assertThat(Conformance.faultsForListening(plain.toByteArray())).isNotEmpty();
    }

    @Test
    void saysEverythingOnceInTheOrderOfTheText() throws IOException {
        String head = "Table<Caption[Sizes]THead<TR<TH[What]TH[Size]>>TBody<";
        String row = "TR<TH[row]TD[1 m]>";
        assertThat(heard(pdf(BOOK)))
                .isEqualTo("Document<H1[Title]"
                        + "P[One two three, a long line that must be broken into several. Next.]"
                        + "L<LI<Lbl[• ]LBody[first]>LI<Lbl[• ]LBody[second Link[site]]>>"
                        + "P[Plain!]Div<P[Loose ]P[inner]P[end]>P[See Link[1].]P[Guten Tag]"
                        + head + row.repeat(12) + ">>Div<P[left]P[right]>P[Figure[in] ]>");
    }

    @Test
    void picturesLinksAndOtherLanguagesHaveTheirWords() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(BOOK))) {
            List<PDStructureElement> all = new ArrayList<>();
            gather(document.getDocumentCatalog().getStructureTreeRoot(), all);
            PDStructureElement figure = find(all, "Figure");
            assertThat(figure.getAlternateDescription()).isEqualTo("A box. It is red.");
            assertThat(figure.getAttributes().getObject(0).getCOSObject().getCOSArray(COSName.BBOX))
                    .hasSize(4);
            assertThat(all.stream().map(PDStructureElement::getLanguage).filter(tag -> tag != null))
                    .containsExactly("de");
            List<String> contents = new ArrayList<>();
            for (var page : document.getPages()) {
                for (var annotation : page.getAnnotations()) {
                    contents.add(annotation.getContents());
                }
            }
            assertThat(contents).containsExactly("site", "Title");
        }
    }

    /** ISO 32000-1, 14.9.4: a word is read as it is, wherever it is divided. */
    @Test
    void aDividedWordIsReadAsOne() throws IOException {
        try (PDDocument document =
                Loader.loadPDF(pdf("<p style='width: 12mm'>Strom\u00adver\u00adsor\u00adgung</p>"))) {
            PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
            extractor.processPage(document.getPage(0));
            StringBuilder seen = new StringBuilder();
            StringBuilder read = new StringBuilder();
            for (PDMarkedContent content : extractor.getMarkedContents()) {
                if (content.getMCID() >= 0) {
                    String letters = letters(content);
                    seen.append(letters);
                    read.append(content.getActualText() == null ? letters : content.getActualText());
                }
            }
            assertThat(seen.toString()).contains("-");
            assertThat(read).hasToString("Stromversorgung");
        }
    }

    private static String letters(PDMarkedContent content) {
        StringBuilder text = new StringBuilder();
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition letter) {
                text.append(letter.getUnicode());
            }
        }
        return text.toString();
    }

    private static PDStructureElement find(List<PDStructureElement> all, String type) {
        return all.stream()
                .filter(tag -> tag.getStructureType().equals(type))
                .findFirst()
                .orElseThrow();
    }

    private static void gather(PDStructureNode node, List<PDStructureElement> all) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                all.add(element);
                gather(element, all);
            }
        }
    }

    /** The structure in short: {@code Type[text]} or {@code Type<children>}. */
    static String heard(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            StringBuilder heard = new StringBuilder();
            write(document, document.getDocumentCatalog().getStructureTreeRoot(), heard);
            return heard.toString();
        }
    }

    private static void write(PDDocument document, PDStructureNode node, StringBuilder heard) throws IOException {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                boolean group = !element.getStructureType().equals("P")
                        && element.getKids().stream().allMatch(part -> part instanceof PDStructureElement);
                heard.append(element.getStructureType()).append(group ? '<' : '[');
                write(document, element, heard);
                heard.append(group ? '>' : ']');
            } else if (kid instanceof PDMarkedContentReference mark) {
                heard.append(text(document, mark));
            } else {
                assertThat(kid).isInstanceOf(PDObjectReference.class);
            }
        }
    }

    private static String text(PDDocument document, PDMarkedContentReference mark) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(mark.getPage());
        StringBuilder text = new StringBuilder();
        for (PDMarkedContent content : extractor.getMarkedContents()) {
            if (content.getMCID() == mark.getMCID()) {
                text.append(letters(content));
            }
        }
        assertThat(document.getPages().indexOf(mark.getPage())).isNotNegative();
        return text.toString();
    }
}
