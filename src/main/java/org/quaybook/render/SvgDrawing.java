package org.quaybook.render;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** An SVG drawing, ready to be drawn into a PDF as vectors, its text as text. */
final class SvgDrawing {

    /** JSVG's caches are plain maps without a lock of their own. */
    private static final Object JSVG = new Object();

    private static final double FLATTEST = 1000;

    /** Characters that XML cannot hold. */
    private static final char MARK = '\u0001';

    private static final char END = '\u0002';

    /** Those of one pack in two languages, which show up in each form of the guide, and then some. */
    private static final Recent<SvgDrawing> READ = new Recent<>(128);

    private static final Lazy<Boolean> FONTS = new Lazy<>(SvgDrawing::registerFonts);

    private final SVGDocument document;
    private final Element source;

    private SvgDrawing(SVGDocument document, Element source) {
        this.document = document;
        this.source = source;
    }

    /** Reads a drawing; empty when it is faulty, and the faults say why. */
    static Optional<SvgDrawing> read(String svg, Faults faults) {
        try {
            return read(Xml.parse(svg, faults.place().file()).getDocumentElement(), faults);
        } catch (RenderException e) {
            e.diagnostics().forEach(faults::add);
            return Optional.empty();
        }
    }

    /** Reads a drawing that stands inside another document, which stays as it is. */
    static Optional<SvgDrawing> read(Element svg, Faults faults) {
        String content = content(svg);
        Optional<SvgDrawing> known = READ.find(content);
        if (known.isPresent()) {
            return known;
        }
        if (!SvgRules.NAMESPACE.equals(svg.getNamespaceURI()) || !"svg".equals(svg.getLocalName())) {
            faults.add(RenderMessage.SVG_FAULT, "<" + svg.getNodeName() + "> outside " + SvgRules.NAMESPACE);
            return Optional.empty();
        }
        Element own = Xml.alone(svg);
        Faults here = new Faults(faults.place().file());
        SvgRules.apply(own, here);
        Optional<SvgDrawing> drawing = here.isEmpty() ? load(own, here) : Optional.empty();
        here.found().forEach(faults::add);
        drawing.filter(faultless -> here.isEmpty()).ifPresent(faultless -> READ.keep(content, faultless));
        return drawing;
    }

    /** Two elements with the same content are the same drawing. */
    private static String content(Element svg) {
        StringBuilder content = new StringBuilder();
        addContent(svg, content);
        return content.toString();
    }

    private static void addContent(Node node, StringBuilder content) {
        content.append(MARK).append(node.getNodeName());
        if (node instanceof Element element) {
            content.append(MARK).append(element.getNamespaceURI());
            for (Node attribute : Xml.attributes(element)) {
                content.append(MARK)
                        .append(attribute.getNodeName())
                        .append(MARK)
                        .append(attribute.getNodeValue());
            }
            for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
                addContent(child, content);
            }
        } else {
            content.append(MARK).append(node.getNodeValue());
        }
        content.append(END);
    }

    private static Optional<SvgDrawing> load(Element own, Faults faults) {
        FONTS.get();
        LoaderContext closed = LoaderContext.builder()
                .externalResourcePolicy(ResourcePolicy.DENY_ALL)
                .build();
        synchronized (JSVG) {
            try (SvgLog log = new SvgLog()) {
                SVGDocument document = new SVGLoader()
                        .load(new ByteArrayInputStream(Xml.write(own).getBytes(StandardCharsets.UTF_8)), null, closed);
                log.warnings().forEach(warning -> faults.add(RenderMessage.SVG_FAULT, warning));
                if (document == null && log.warnings().isEmpty()) {
                    faults.add(RenderMessage.SVG_FAULT, "cannot be read");
                }
                return Optional.ofNullable(document)
                        .map(read -> new SvgDrawing(read, own))
                        .filter(drawing -> drawing.hasSize(faults));
            }
        }
    }

    /** What has no size, or is next to a line, cannot be scaled into a box with its proportions kept. */
    private boolean hasSize(Faults faults) {
        double proportion = width() / height();
        boolean sized = width() > 0 && height() > 0 && proportion <= FLATTEST && proportion >= 1 / FLATTEST;
        if (!sized) {
            faults.add(
                    RenderMessage.SVG_FAULT,
                    "size " + Millimetres.plain(width()) + " × " + Millimetres.plain(height()));
        }
        return sized;
    }

    /** JSVG measures with AWT's fonts: those must be the ones that get embedded. */
    private static Boolean registerFonts() {
        GraphicsEnvironment environment = GraphicsEnvironment.getLocalGraphicsEnvironment();
        for (Typeface face : List.of(Typeface.values())) {
            try {
                environment.registerFont(Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes())));
            } catch (FontFormatException e) {
                throw new IllegalStateException("not a font: " + face, e);
            } catch (IOException e) {
                throw Typeface.unwritten(e);
            }
        }
        return true;
    }

    /** Width it asks for, in CSS pixels. */
    double width() {
        return document.size().getWidth();
    }

    /** Height it asks for, in CSS pixels. */
    double height() {
        return document.size().getHeight();
    }

    /** Draws it scaled into a rectangle at 0, 0, proportions kept; sizes in dots. */
    void draw(Graphics2D graphics, float width, float height) {
        synchronized (JSVG) {
            DotsOutput output = new DotsOutput(graphics);
            document.renderWithPlatform(NullPlatformSupport.INSTANCE, output, new ViewBox(0, 0, width, height));
            output.dispose();
        }
    }

    /** The drawing as a part of another SVG, scaled into a box there, proportions kept. */
    String inside(Box box) {
        Element part = copy();
        if (part.getAttribute("viewBox").isEmpty()) {
            part.setAttribute("viewBox", "0 0 " + Millimetres.plain(width()) + " " + Millimetres.plain(height()));
        }
        part.setAttribute("x", Millimetres.plain(box.x()));
        part.setAttribute("y", Millimetres.plain(box.y()));
        part.setAttribute("width", Millimetres.plain(box.width()));
        part.setAttribute("height", Millimetres.plain(box.height()));
        return Xml.write(part);
    }

    /** The platform's documents are not even read by two threads at once. */
    private synchronized Element copy() {
        return Xml.alone(source);
    }

    /** The drawing scaled into a rectangle, proportions kept; sizes in points. */
    PdfTemplate template(PdfContentByte page, float width, float height) {
        PdfTemplate template = page.createTemplate(width, height);
        synchronized (JSVG) {
            Graphics2D graphics = template.createGraphics(width, height, new SvgFonts());
            SvgOutput output = new SvgOutput(graphics);
            document.renderWithPlatform(NullPlatformSupport.INSTANCE, output, new ViewBox(0, 0, width, height));
            output.dispose();
        }
        return template;
    }
}
