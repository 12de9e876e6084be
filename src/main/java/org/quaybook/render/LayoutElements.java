package org.quaybook.render;

import java.nio.charset.StandardCharsets;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.FSImage;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextImageElement;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;

/** Puts drawings and pictures in the place of {@code svg} and {@code img}. */
final class LayoutElements extends ITextReplacedElementFactory {

    private final LayoutAgent agent;
    private final int dotsPerPixel;
    private final Faults faults;
    private final Map<String, Optional<SvgDrawing>> drawings = new TreeMap<>();

    /** The engine asks again each time it lays out. */
    private final IdentityHashMap<Element, Optional<SvgDrawing>> inline = new IdentityHashMap<>();

    LayoutElements(ITextOutputDevice device, LayoutAgent agent, int dotsPerPixel, Faults faults) {
        super(device);
        this.agent = agent;
        this.dotsPerPixel = dotsPerPixel;
        this.faults = faults;
    }

    @Override
    public @Nullable ReplacedElement createReplacedElement(
            LayoutContext context, BlockBox box, UserAgentCallback ignored, int cssWidth, int cssHeight) {
        Element element = box.getElement();
        if (element == null) {
            return null;
        }
        String name = Xml.localName(element);
        if (name.equals("svg")) {
            return inline.computeIfAbsent(element, svg -> SvgDrawing.read(svg, faults))
                    .map(drawing -> sized(drawing, cssWidth, cssHeight))
                    .orElse(null);
        }
        return name.equals("img") ? picture(element.getAttribute("src"), cssWidth, cssHeight) : null;
    }

    private @Nullable ReplacedElement picture(String source, int cssWidth, int cssHeight) {
        if (source.toLowerCase(Locale.ROOT).endsWith(".svg")) {
            return drawings.computeIfAbsent(source, this::read)
                    .map(drawing -> sized(drawing, cssWidth, cssHeight))
                    .orElse(null);
        }
        FSImage image = agent.getImageResource(source).getImage();
        if (image == null) {
            return null;
        }
        boolean asItIs = cssWidth < 0 && cssHeight < 0;
        return new ITextImageElement(asItIs ? image : image.scale(cssWidth, cssHeight));
    }

    private Optional<SvgDrawing> read(String source) {
        return agent.find(source).flatMap(bytes -> SvgDrawing.read(new String(bytes, StandardCharsets.UTF_8), faults));
    }

    /** As in CSS: what is not given follows from the drawing's own size and proportions. */
    private ReplacedElement sized(SvgDrawing drawing, int cssWidth, int cssHeight) {
        double proportion = drawing.width() / drawing.height();
        double width =
                cssWidth >= 0 ? cssWidth : cssHeight >= 0 ? cssHeight * proportion : drawing.width() * dotsPerPixel;
        double height = cssHeight >= 0 ? cssHeight : width / proportion;
        return new LayoutDrawing(drawing, (int) Math.round(width), (int) Math.round(height));
    }
}
