package org.quaybook.render;

/**
 * A QR code with its quiet zone, dark on white.
 *
 * @param x left edge of the quiet zone, millimetres
 * @param y top edge of the quiet zone
 * @param module side of one module in millimetres
 */
public record Code(double x, double y, double module, QrCode code) implements Mark {

    @Override
    public Box box() {
        double side = code.sizeWithQuietZone() * module;
        return new Box(x, y, side, side);
    }
}
