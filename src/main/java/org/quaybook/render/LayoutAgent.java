package org.quaybook.render;

import com.lowagie.text.Image;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextFSImage;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;
import org.xhtmlrenderer.resource.CSSResource;
import org.xhtmlrenderer.resource.ImageResource;

/** Fetches style sheets and pictures for the layout engine from {@link Resources} and from nowhere else. */
final class LayoutAgent extends ITextUserAgent {

    private final Resources resources;
    private final Faults faults;
    private final int dotsPerPixel;
    private final Map<String, byte[]> used = new TreeMap<>();
    private final Map<String, String> sheets = new TreeMap<>();
    private final Map<String, ImageResource> pictures = new TreeMap<>();

    LayoutAgent(ITextOutputDevice device, int dotsPerPixel, Resources resources, Faults faults) {
        super(device, dotsPerPixel);
        this.resources = resources;
        this.faults = faults;
        this.dotsPerPixel = dotsPerPixel;
    }

    /** The content of everything that was asked for, in the order of the names. */
    Collection<byte[]> used() {
        return used.values();
    }

    Optional<byte[]> find(String name) {
        Optional<byte[]> content = resources.find(name);
        content.ifPresentOrElse(bytes -> used.put(name, bytes), () -> faults.add(RenderMessage.RESOURCE_MISSING, name));
        return content;
    }

    /** Names stay as they are: there is no address that they could be relative to. */
    @Override
    public @Nullable String resolveURI(@Nullable String uri) {
        return uri;
    }

    /** The text of a style sheet. */
    String css(String name) {
        return sheets.computeIfAbsent(name, this::readSheet);
    }

    private String readSheet(String name) {
        String css = find(name)
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .orElse("");
        return XhtmlRules.withoutImport(css, name, faults);
    }

    @Override
    public CSSResource getCSSResource(String name) {
        return new CSSResource(new ByteArrayInputStream(css(name).getBytes(StandardCharsets.UTF_8)));
    }

    @Override
    public ImageResource getImageResource(String name) {
        ImageResource picture = pictures.computeIfAbsent(name, this::read);
        return picture.getImage() instanceof ITextFSImage image
                ? new ImageResource(name, (ITextFSImage) image.clone())
                : picture;
    }

    private ImageResource read(String name) {
        Optional<byte[]> content = find(name);
        if (content.isEmpty()) {
            return new ImageResource(name, null);
        }
        Optional<PixelSize> size = PixelSize.of(content.get());
        if (size.filter(PixelSize::isTooLarge).isPresent()) {
            faults.add(
                    RenderMessage.PICTURE_TOO_LARGE,
                    name,
                    size.get().width(),
                    size.get().height(),
                    PixelSize.MOST_PIXELS);
            return new ImageResource(name, null);
        }
        if (size.isEmpty()) {
            faults.add(RenderMessage.PICTURE_UNREADABLE, name);
            return new ImageResource(name, null);
        }
        try {
            Image image = Image.getInstance(content.get());
            image.scaleAbsolute(image.getPlainWidth() * dotsPerPixel, image.getPlainHeight() * dotsPerPixel);
            return new ImageResource(name, new ITextFSImage(image));
        } catch (IOException | RuntimeException e) {
            faults.add(RenderMessage.PICTURE_UNREADABLE, name);
            return new ImageResource(name, null);
        }
    }

    @Override
    public byte @Nullable [] getBinaryResource(String name) {
        return find(name).orElse(null);
    }

    @Override
    protected InputStream openStream(String uri) throws IOException {
        throw new IOException("nothing is fetched: " + uri);
    }

    @Override
    protected URLConnection openConnection(String uri) throws IOException {
        throw new IOException("nothing is fetched: " + uri);
    }
}
