package org.quaybook.render;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.PageBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A drawing among the boxes of the layout engine; sizes in its dots. */
final class LayoutDrawing implements ITextReplacedElement {

    private final SvgDrawing drawing;
    private final int width;
    private final int height;
    private Point location = new Point();

    LayoutDrawing(SvgDrawing drawing, int width, int height) {
        this.drawing = drawing;
        this.width = width;
        this.height = height;
    }

    @Override
    public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
        PdfWriter writer = device.getWriter();
        PageBox sheet = context.getPage();
        if (writer == null || sheet == null || width <= 0 || height <= 0) {
            return;
        }
        PdfContentByte page = writer.getDirectContent();
        Rectangle place = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
        Point2D foot = device.getTransform()
                .transform(new Point2D.Double(place.getX(), place.getY() + place.getHeight()), null);
        float pageHeight = sheet.getHeight(context) / device.getDotsPerPoint();
        page.addTemplate(
                drawing.template(page, device.getDeviceLength(width), device.getDeviceLength(height)),
                (float) foot.getX(),
                (float) (pageHeight - foot.getY()));
    }

    @Override
    public int getIntrinsicWidth() {
        return width;
    }

    @Override
    public int getIntrinsicHeight() {
        return height;
    }

    @Override
    public Point getLocation() {
        return location;
    }

    @Override
    public void setLocation(int x, int y) {
        location = new Point(x, y);
    }

    @Override
    public void detach(LayoutContext context) {
        // Nothing outside knows of a drawing.
    }

    @Override
    public boolean isRequiresInteractivePaint() {
        return false;
    }

    @Override
    public boolean hasBaseline() {
        return false;
    }

    @Override
    public int getBaseline() {
        return 0;
    }
}
