package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Diagnostic;

class HandbookTest {

    private static final DocumentInfo INFO =
            new DocumentInfo("Bilge pump – handbook", "A. Fitter", "How to", "de-CH", LocalDate.of(2026, 3, 1));
    private static final String CSS =
            "@page { size: 148mm 210mm; margin: 15mm; @bottom-center { content: \"– \" counter(page) \" ⚓ –\" } }";

    private final Handbook handbook = new Handbook();

    @Test
    void laysOutPagesWithTextBookmarksAndLinks() throws IOException {
        String body = """
                <h1 id="one">First</h1><p>See <a href="#two">second</a> or <a href="https://example.org/x">more</a>.</p>
                <h1 id="two" style="page-break-before: always">Se\u00adcond</h1><h2>Below</h2><p>Text.</p>""";
        try (PrintedPdf printed = print(body)) {
            assertThat(printed.pages()).isEqualTo(2);
            PDRectangle page = printed.document().getPage(0).getMediaBox();
            // ISO 216: A5 is 148 x 210 mm.
            assertThat(page.getWidth() / 72 * 25.4).isCloseTo(148, within(0.05));
            assertThat(page.getHeight() / 72 * 25.4).isCloseTo(210, within(0.05));
            assertThat(printed.text()).contains("See second or more.", "Second", "– 1 ⚓ –", "– 2 ⚓ –");
            PDOutlineItem first =
                    printed.document().getDocumentCatalog().getDocumentOutline().getFirstChild();
            assertThat(first.getTitle()).isEqualTo("First");
            assertThat(first.getNextSibling().getTitle()).isEqualTo("Second");
            assertThat(first.getNextSibling().getFirstChild().getTitle()).isEqualTo("Below");
            List<PDAnnotation> links = printed.document().getPage(0).getAnnotations();
            assertThat(links).hasSize(2);
            assertThat(((PDActionURI) ((PDAnnotationLink) links.get(1)).getAction()).getURI())
                    .isEqualTo("https://example.org/x");
        }
    }

    @Test
    void writesALineOnItsOwnPageOnly() throws IOException {
        String low = "<style>@page { margin: 16mm } h1 { font-size: 20pt; line-height: 1.15; margin: 0 }"
                + " body { font-family: 'Source Sans Pro' } div { page-break-before: always }</style>"
                + "<div><p>one</p></div><div><h1>Two</h1><p>x</p></div>";
        try (PrintedPdf printed = print(low)) {
            assertThat(printed.text()).containsOnlyOnce("Two");
        }
    }

    /** Worked out by hand: pages of 100 mm between margins, boxes of 30 mm. */
    @Test
    void tellsWhereThePartsOfADocumentEnd() {
        String page = page("<style>@page { size: 120mm 120mm; margin: 10mm } body { margin: 0 }"
                + " .part p { height: 30mm; margin: 0 } .new { page-break-before: always }</style>"
                + "<div class='part'><p>1</p><p>2</p><p>3</p><p>4</p></div><div class='part'><p>5</p></div>"
                + "<div class='part new'><p>6</p></div><div class='other'><p>7</p></div>");
        List<PartEnd> ends = handbook.layOut(page, INFO, Resources.none(), 1).ends("part");
        assertThat(ends).extracting(PartEnd::firstPage).containsExactly(0, 1, 2);
        assertThat(ends).extracting(PartEnd::lastPage).containsExactly(1, 1, 2);
        assertThat(ends.get(1).filled() - ends.get(0).filled()).isCloseTo(0.3, within(0.005));
        assertThat(ends.get(2).filled()).isCloseTo(0.3, within(0.005));
    }

    /** Worked out by hand: pages of 100 mm between margins, rows of 19 mm and a heading of as much. */
    @Test
    void leavesNoRowOfATableAloneOnAPage() throws IOException {
        String style = "<style>@page { size: 120mm 120mm; margin: 10mm; @bottom-center { content: normal } }"
                + " body { margin: 0 } table { border-spacing: 0; -fs-table-paginate: paginate }"
                + " p, h2, td { height: 19mm; margin: 0; padding: 0; font-size: 10pt } tr { page-break-inside: avoid }"
                + " h2 { page-break-after: avoid }</style>";
        String rows = "<tr><td>%s</td></tr>";
        // Three lines, the heading, and room for one row.
        String foot = style + "<p>p</p><p>p</p><p>p</p><h2>head</h2><table>" + rows.repeat(3) + "</table>";
        assertThat(pages(foot.formatted("a", "b", "c"))).containsExactly("p p p", "head a b c");
        // The heading and room for four rows of five.
        String head = style + "<h2>head</h2><table>" + rows.repeat(5) + "</table>";
        assertThat(pages(head.formatted("a", "b", "c", "d", "e"))).containsExactly("head a b c", "d e");
        // Two rows on each page need nothing.
        String enough = style + "<p>p</p><p>p</p><h2>head</h2><table>" + rows.repeat(4) + "</table>";
        assertThat(pages(enough.formatted("a", "b", "c", "d"))).containsExactly("p p head a b", "c d");
        // Rows that fill a page each stand alone whatever is done.
        String tall = style + "<table>" + "<tr><td style='height: 80mm'>x</td></tr>".repeat(3) + "</table>";
        assertThat(pages(tall)).containsExactly("x", "x", "x");
    }

    private List<String> pages(String body) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PrintedPdf printed = print(body)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= printed.pages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(printed.document()).strip().replaceAll("\\s+", " "));
            }
        }
        return pages;
    }

    /** Wherever a line of 40 mm comes to its end. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1,6 kW",
                "230 V",
                "7 Nm",
                "80 %",
                "25 mm²",
                "2 × 70 mm²",
                "01632 960131",
                "555-0170",
                "+44 1632 960131",
                "10–20 A",
                "37CQ-41SK-A0EF",
                "9 décembre 2026",
                "9. Dezember 2026",
                "9 de junio de 2026",
                "October 2, 2026",
                "mars 2023",
                "l’onduleur",
                "inverter −"
            })
    void endsNoLineInsideWhatIsReadAsOne(String whole) throws IOException {
        StringBuilder body = new StringBuilder();
        IntStream.rangeClosed(1, 24)
                .mapToObj(before -> "<p style='width: 40mm'>" + "n".repeat(before) + " " + whole + " nn</p>")
                .forEach(body::append);
        try (PrintedPdf printed = print(body.toString())) {
            assertThat(printed.text().split(Pattern.quote(whole), -1)).hasSize(25);
        }
    }

    @Test
    void describesItself() throws IOException {
        try (PrintedPdf printed = print("<p>x</p>")) {
            var about = printed.document().getDocumentInformation();
            assertThat(about.getTitle()).isEqualTo("Bilge pump – handbook");
            assertThat(about.getAuthor()).isEqualTo("A. Fitter");
            assertThat(about.getSubject()).isEqualTo("How to");
            assertThat(about.getCreationDate().toInstant())
                    .isEqualTo(OffsetDateTime.parse("2026-03-01T00:00:00Z").toInstant());
            assertThat(about.getModificationDate()).isEqualTo(about.getCreationDate());
            var catalog = printed.document().getDocumentCatalog();
            assertThat(catalog.getLanguage()).isEqualTo("de-CH");
            assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
            assertThat(printed.document().getDocument().getTrailer().getCOSArray(COSName.ID))
                    .hasSize(2);
        }
    }

    @Test
    void embedsEveryFontAndTakesSymbolsFromTheOneThatHasThem() throws IOException {
        String body = """
                <style>.c { font-family: "Roboto Condensed"; font-weight: bold } pre { font-family: monospace }
                li { list-style: none } .b:before { content: "☐ " }</style>
                <p>Text → ⚠ end, <b>bold ⚠</b>, <i>slanted Ω</i>, <span class="c">Tight → ✓</span></p>
                <pre>a\tb</pre><p style="text-align: justify; width: 60mm">A ⚠ paragraph that is long enough to be set
                in several lines ✓ and justified so that the parts must stand where they belong.</p>
                <ul><li class="b">tick</li></ul>""";
        try (PrintedPdf printed = print(body)) {
            assertThat(printed.text())
                    .contains("Text → ⚠ end, bold ⚠, slanted Ω, Tight → ✓", "☐ tick", "lines\n✓ and justified");
            assertThat(printed.fonts().values()).containsOnly(true);
            assertThat(printed.fonts().keySet())
                    .allMatch(name -> name.matches("[A-Z]{6}\\+(SourceSansPro|RobotoCondensed|DejaVuSans).*"));
        }
    }

    @ParameterizedTest
    @CsvSource({"'fish \ud83d\udc1f', U+1F41F", "'\u4e00', U+4E00", "'\u05d0', U+05D0", "'\u0628', U+0628"})
    void namesACharacterThatCannotBePrinted(String text, String codePoint) {
        Diagnostic fault = faults("<p>" + text + "</p>", Resources.none()).get(0);
        assertThat(fault.rule()).isEqualTo("render.glyph-missing");
        assertThat(fault.message().arguments().get(1)).isEqualTo(codePoint);
    }

    @Test
    void softHyphensShowOnlyWhereALineEnds() throws IOException {
        String word = "Strom\u00adver\u00adsor\u00adgungs\u00adein\u00adrich\u00adtung";
        try (PrintedPdf printed = print("<p>" + word + "</p><p style='width: 22mm'>" + word + "</p>")) {
            String text = printed.text();
            assertThat(text).doesNotContain("\u00ad");
            assertThat(text.lines()).contains("Stromversorgungseinrichtung");
            // The hyphens are seen, but whoever searches or listens meets the word as it is.
            assertThat(text).doesNotContain("-");
            assertThat(text.replaceAll("\\s", "")).contains("Stromversorgungseinrichtung".repeat(2));
        }
    }

    @Test
    void drawsSvgAsVectorsInlineAndByName() throws IOException {
        String svg = """
                <svg xmlns="http://www.w3.org/2000/svg" aria-label="A box" width="40mm" height="20mm" viewBox="0 0 40 20">
                <rect width="40" height="20" fill="#9b2423"/>
                <text x="20" y="12" font-size="6" fill="white" text-anchor="middle">%s</text></svg>""";
        Resources resources =
                Resources.none().with("drawing.svg", svg.formatted("By name").getBytes(StandardCharsets.UTF_8));
        String body = "<p>" + svg.formatted("Inline ⚠") + "</p><img src='drawing.svg' style='width: 60mm' alt=''/>";
        try (PrintedPdf printed = print(body, resources)) {
            assertThat(printed.text()).contains("Inline ⚠", "By name");
            assertThat(printed.rasters()).isZero();
            assertThat(printed.fonts().values()).containsOnly(true);
            BufferedImage page = printed.image(1, 254);
            // At 254 dpi a pixel is 0.1 mm: count the dark ones along a line through each drawing.
            assertThat(dark(page, 200)).isCloseTo(400, within(3L));
            assertThat(dark(page, 460)).isCloseTo(600, within(3L));
        }
    }

    private static long dark(BufferedImage page, int y) {
        return IntStream.range(0, page.getWidth())
                .filter(x -> page.getRaster().getSample(x, y, 0) < 128)
                .count();
    }

    @Test
    void printsPicturesHandedInAndCssOfTheTemplates() throws IOException {
        BufferedImage picture = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(3, 3, Color.ORANGE.getRGB());
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", png);
        Resources resources = Resources.of(Templates.builtIn()).with("logo.png", png.toByteArray());
        String body = "<img src='logo.png' alt=''/><img src='logo.png' width='40' alt=''/>";
        String page = page(body).replace("<title>", "<link rel='stylesheet' href='render-test/plain.css'/><title>");
        try (PrintedPdf printed = new PrintedPdf(handbook.toPdf(page, INFO, resources))) {
            assertThat(printed.rasters()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<img src='file:/etc/hostname' alt=''/>",
                "<img src='/etc/hostname' alt=''/>",
                "<img src='../secret.png' alt=''/>",
                "<img src='http://127.0.0.1:9/x.png' alt=''/>",
                "<img src='http://127.0.0.1:9/x.svg' alt=''/>",
                "<img src='jar:file:/x.jar!/y.png' alt=''/>",
                "<img src='data:image/png;base64,iVBORw0KGgo=' alt=''/>",
                "<p style='background-image: url(file:/etc/hostname)'>x</p>",
                "<p style='background-image: url(http://127.0.0.1:9/x.png)'>x</p>",
                "<p style='background-image: url(none.png)'>x</p>",
                "<img src='none.png' alt=''/>",
            })
    void fetchesNothingThatWasNotHandedIn(String body) {
        assertThat(faults(body, Resources.of(Templates.builtIn())))
                .extracting(Diagnostic::rule)
                .contains("render.resource-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"file:/etc/hostname", "http://127.0.0.1:9/x.css", "../x.css", "none.css"})
    void fetchesNoOtherStyleSheet(String name) {
        String page = page("<p>x</p>").replace("<title>", "<link rel='stylesheet' href='" + name + "'/><title>");
        assertThat(faultsOf(page, Resources.of(Templates.builtIn())))
                .extracting(Diagnostic::rule)
                .contains("render.resource-missing");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<a href='javascript:alert(1)'>x</a>|render.link-refused",
                "<a href='file:/etc/hostname'>x</a>|render.link-refused",
                "<a href='other.pdf'>x</a>|render.link-refused",
                "<a href='#nowhere'>x</a>|render.link-target-missing",
                "<p onclick='x()'>x</p>|render.active-content",
                "<script>x</script>|render.active-content",
                "<iframe src='x'></iframe>|render.active-content",
                "<p style='colour: red'>x</p>|render.css-fault-inside",
                "<style>p { color: }</style><p>x</p>|render.css-fault-inside",
                "<style>@import 'x.css';</style><p>x</p>|render.css-fault-inside",
                "<p style='font-family: Helvetica'>x</p>|render.font-unknown",
                "<style>@font-face { font-family: X; src: url(x.ttf) }</style><p>x</p>|render.font-unknown",
                "<svg xmlns='http://www.w3.org/2000/svg'><image href='file:/etc/hostname'/></svg>|render.active-content",
                "<svg xmlns='http://www.w3.org/2000/svg'><use href='x.svg#a'/></svg>|render.svg-fault",
                "<svg xmlns='http://www.w3.org/2000/svg'><rect style='fill: url(http://127.0.0.1:9/#a)'/></svg>|render.svg-fault",
                "<svg xmlns='http://www.w3.org/2000/svg'><text font-family='Arial'>x</text></svg>|render.font-unknown",
                "<svg xmlns='http://www.w3.org/2000/svg'><text>\u4e00</text></svg>|render.glyph-missing",
                "<svg><text>x</text></svg>|render.svg-fault",
                "<svg xmlns='http://www.w3.org/2000/svg'><text>x</text></svg>|render.alternative-missing",
                "<img src='x.svg'/>|render.alternative-missing",
            })
    void tellsWhatItWouldOtherwiseLeaveOut(String body, String rule) {
        assertThat(faults(body, Resources.none())).extracting(Diagnostic::rule).contains(rule);
        assertThat(faults(body, Resources.none()))
                .as("of the next document")
                .extracting(Diagnostic::rule)
                .contains(rule);
    }

    /** Whoever wrote the style sheet finds it by file and line. */
    @Test
    void tellsWhereAStyleSheetHasAFault() {
        Resources sheet = Resources.none()
                .with(
                        "own.css",
                        "h1 { color: red }\np { colour: red;\n  margin: }\nq { width: 3qq }"
                                .getBytes(StandardCharsets.UTF_8));
        String named = page("<p>x</p>").replace("<title>", "<link rel='stylesheet' href='own.css'/><title>");
        assertThat(faultsOf(named, sheet))
                .extracting(fault -> fault.rule() + " " + fault.place())
                .containsExactly(
                        "render.css-fault own.css:2:1", "render.css-fault own.css:3:1", "render.css-fault own.css:4:1");
        Resources importing = Resources.none()
                .with("own.css", "h1 { color: red }\n@import 'x.css';".getBytes(StandardCharsets.UTF_8));
        assertThat(faultsOf(named, importing))
                .extracting(fault -> fault.place() + " " + fault.message().arguments())
                .containsExactly("own.css:2:1 [@import]");
        assertThat(faults("<style>p { colour: red }\nq { width: 3qq }</style>", Resources.none()))
                .extracting(fault -> fault.message().arguments().get(1))
                .containsExactly(1, 2);
    }

    /** Drawings that would take more memory, time or stack than there is, each in less than a kilobyte or deep only. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<filter id='f' x='-1000' y='-1000' width='20000' height='20000'><feGaussianBlur stdDeviation='1e6'/></filter>"
                        + "<rect width='9' height='9' filter='url(#f)'/>|<filter>",
                "<pattern id='p' width='100000' height='100000' patternUnits='userSpaceOnUse'><rect width='1' height='1'/></pattern>"
                        + "<rect width='9' height='9' fill='url(#p)'/>|<pattern>",
                "<mask id='m'><rect width='1e6' height='1e6'/></mask><rect width='1e6' height='1e6' mask='url(#m)'/>|<mask>",
                "<g id='a'><use href='#a'/></g>|Cyclic",
            })
    void refusesDrawingsThatAskForTooMuch(String content, String named) {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'>" + content + "</svg>";
        assertThat(faultsInDrawing(svg)).anySatisfy(fault -> {
            assertThat(fault.rule()).isEqualTo("render.svg-fault");
            assertThat(fault.message().arguments().toString()).contains(named);
        });
    }

    @Test
    void refusesADrawingThatMultipliesItself() {
        StringBuilder tenfold = new StringBuilder("<defs><path id='n0' d='M0 0h1'/>");
        for (int power = 1; power <= 8; power++) {
            tenfold.append("<g id='n").append(power).append("'>");
            tenfold.append(("<use href='#n" + (power - 1) + "'/>").repeat(10)).append("</g>");
        }
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'>" + tenfold
                + "</defs><use href='#n8'/></svg>";
        assertThat(faultsInDrawing(svg)).extracting(Diagnostic::rule).containsExactly("render.svg-fault");
    }

    @ParameterizedTest
    @ValueSource(ints = {2_000, 200_000})
    void refusesNestingThatNoStackBears(int depth) {
        String deep = "<g>".repeat(depth) + "</g>".repeat(depth);
        assertThat(faultsInDrawing("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'>" + deep + "</svg>"))
                .extracting(Diagnostic::rule)
                .containsExactly("render.xml-syntax");
        assertThat(faults(deep.replace("g>", "div>"), Resources.none()))
                .extracting(Diagnostic::rule)
                .containsExactly("render.xml-syntax");
    }

    @ParameterizedTest
    @CsvSource({"0, 9", "9, 0", "-9, 9", "1e30, 1", "1, 1e30"})
    void refusesADrawingWithoutProportions(String width, String height) {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='" + width + "' height='" + height
                + "'><rect width='1' height='1'/></svg>";
        assertThat(faultsInDrawing(svg)).extracting(Diagnostic::rule).containsExactly("render.svg-fault");
    }

    private List<Diagnostic> faultsInDrawing(String svg) {
        return faults(
                "<img alt='x' src='logo.svg'/>",
                Resources.none().with("logo.svg", svg.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void tellsWhereTheXmlIsBroken() {
        Diagnostic fault = faultsOf("<html>\n<p>x</html>", Resources.none()).get(0);
        assertThat(fault.rule()).isEqualTo("render.xml-syntax");
        assertThat(fault.place().position().line()).isEqualTo(1);
        assertThat(fault.excerpt()).isEqualTo("<p>x</html>");
    }

    @Test
    void refusesDocumentTypesAndWithThemEntities() {
        String page = "<!DOCTYPE html [<!ENTITY x SYSTEM 'file:/etc/hostname'>]><html><body>&x;</body></html>";
        assertThat(faultsOf(page, Resources.none()))
                .extracting(Diagnostic::rule)
                .containsExactly("render.xml-syntax");
    }

    @Test
    void sameInputSameBytesOnAnyThread() {
        String page = page(
                "<h1>A</h1><p>Text ⚠ <b>bold</b></p><svg xmlns='http://www.w3.org/2000/svg' aria-label='A word' width='40'"
                        + " height='20'><text y='15'>draw</text></svg>");
        byte[] first = handbook.toPdf(page, INFO, Resources.none());
        List<CompletableFuture<byte[]>> others = IntStream.range(0, 4)
                .mapToObj(i -> CompletableFuture.supplyAsync(() -> new Handbook().toPdf(page, INFO, Resources.none())))
                .toList();
        for (CompletableFuture<byte[]> other : others) {
            assertThat(other.join()).isEqualTo(first);
        }
        DocumentInfo later = new DocumentInfo("t", "", "", "en", LocalDate.of(2026, 3, 2));
        assertThat(handbook.toPdf(page, later, Resources.none())).isNotEqualTo(first);
    }

    /** Selectors as CSS Selectors Level 3 has them, chapters 6 and 8: each tells elements of one name apart. */
    @Test
    void aRuleFindsItsElementsByWhatTheyStandInAndBeside() throws IOException {
        String body = """
                <style>
                li:first-child:before { content: "first " } li + li:before { content: "next " }
                li:last-child:after { content: " last" } td:nth-child(2):after { content: " second" }
                .in p:before { content: "below " } .in > p:after { content: " child" }
                p[title="x"]:before { content: "titled " } #only:before { content: "only " } .a.b:before { content: "both " }
                </style>
                <ul><li>one</li><li>two</li><li>three</li></ul><ul><li>four</li></ul>
                <table><tr><td>five</td><td>six</td></tr><tr><td>seven</td><td>eight</td></tr></table>
                <div class="in"><p>nine</p><div><p>ten</p></div></div><div><p>eleven</p></div><p title="x">twelve</p>
                <p title="y">thirteen</p><p id="only">fourteen</p><p class="a">fifteen</p><p class="a b">sixteen</p>""";
        try (PrintedPdf printed = print(body)) {
            assertThat(printed.text().replaceAll("[•\\s]+", " "))
                    .contains(
                            "first one next two next three last first four last",
                            "five six second seven eight second",
                            "below nine child below ten eleven titled twelve thirteen only fourteen fifteen both sixteen");
        }
    }

    @Test
    void canBeMadeReadyBeforeThereIsADocument() {
        assertThatCode(Handbook::makeReady).doesNotThrowAnyException();
    }

    private PrintedPdf print(String body) throws IOException {
        return print(body, Resources.none());
    }

    private PrintedPdf print(String body, Resources resources) throws IOException {
        return new PrintedPdf(handbook.toPdf(page(body), INFO, resources));
    }

    private List<Diagnostic> faults(String body, Resources resources) {
        return faultsOf(page(body), resources);
    }

    private List<Diagnostic> faultsOf(String page, Resources resources) {
        RenderException thrown =
                catchThrowableOfType(RenderException.class, () -> handbook.toPdf(page, INFO, resources));
        assertThat(thrown).as(page).isNotNull();
        return thrown.diagnostics();
    }

    private static String page(String body) {
        String style =
                body.contains("<style>") ? body.substring(body.indexOf("<style>"), body.indexOf("</style>") + 8) : "";
        return "<html xmlns='http://www.w3.org/1999/xhtml'><head><style>" + CSS + "</style>" + style
                + "<title>t</title></head><body>" + body.replace(style, "") + "</body></html>";
    }
}
