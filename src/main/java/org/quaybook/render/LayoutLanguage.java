package org.quaybook.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.css.sheet.StylesheetInfo.Origin;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/** XHTML as the layout engine sees it. */
final class LayoutLanguage extends XhtmlNamespaceHandler {

    private static final String ENGINE_CSS = "/resources/css/XhtmlNamespaceHandler.css";

    /** Otherwise the engine prints the text inside a drawing instead of asking for the drawing. */
    private static final String DRAWINGS = "\nsvg { display: inline-block }\n";

    private static final Lazy<StylesheetInfo> BASE = new Lazy<>(LayoutLanguage::read);

    private static StylesheetInfo read() {
        try (InputStream in = XhtmlNamespaceHandler.class.getResourceAsStream(ENGINE_CSS)) {
            if (in == null) {
                throw new IllegalStateException("not on the class path: " + ENGINE_CSS);
            }
            String css = new String(in.readAllBytes(), StandardCharsets.UTF_8) + DRAWINGS;
            return new StylesheetInfo(Origin.USER_AGENT, "base.css", StylesheetInfo.mediaTypes("all"), css);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@link LayoutPaper} makes the links. */
    @Override
    public @Nullable String getLinkUri(Element element) {
        return null;
    }

    @Override
    public Optional<StylesheetInfo> getDefaultStylesheet() {
        return Optional.of(BASE.get());
    }
}
