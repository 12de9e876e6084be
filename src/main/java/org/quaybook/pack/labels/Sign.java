package org.quaybook.pack.labels;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Safety signs by their number in ISO 7010, each our own drawing. Used only where a person can be hurt
 * (ISO 3864-1 4.2).
 */
enum Sign {
    /** General warning; stands beside a text that says of what. */
    W001(Shape.TRIANGLE),
    /** Electricity. */
    W012(Shape.TRIANGLE),
    /** Toxic material: at a generator, carbon monoxide. */
    W016(Shape.TRIANGLE),
    /** Flammable material. */
    W021(Shape.TRIANGLE),
    /** Corrosive substance. */
    W023(Shape.TRIANGLE),
    /** Battery charging. */
    W026(Shape.TRIANGLE),
    /** No open flame, no fire, no smoking. */
    P003(Shape.DISC),
    /** No metal objects or watches: over terminals they short the battery. */
    P008(Shape.DISC),
    /** No swimming (number from memory). */
    P049(Shape.DISC),
    /** Read the instructions. */
    M002(Shape.DISC),
    /** Wear eye protection. */
    M004(Shape.DISC),
    /** Disconnect before work. */
    M021(Shape.DISC);

    /** Outer shape of a sign. */
    enum Shape {
        TRIANGLE,
        DISC
    }

    private final Shape shape;

    Sign(Shape shape) {
        this.shape = shape;
    }

    Shape shape() {
        return shape;
    }

    /** Key of the words for what it says. */
    String key() {
        return "labels.sign." + name().toLowerCase(Locale.ROOT);
    }

    String svg() {
        return drawing(name());
    }

    /**
     * Room that a sign needs beyond its own height h, which is d for a round one (DIN 4844-1): its light edge.
     *
     * @param height of the sign, millimetres
     */
    double boxHeight(double height) {
        return shape == Shape.DISC ? height * (1 + 2 * SignGeometry.EDGE) : height;
    }

    /** Width of that room, millimetres. */
    double boxWidth(double height) {
        return shape == Shape.DISC
                ? boxHeight(height)
                : height * SignGeometry.triangleWidth() / SignGeometry.TRIANGLE_HEIGHT;
    }

    /** A drawing of the templates' folder of signs. */
    static String drawing(String name) {
        String resource = "/templates/signs/" + name + ".svg";
        try (InputStream in = Sign.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("missing " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
