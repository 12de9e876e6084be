package org.quaybook.pack.labels;

import org.quaybook.render.Dots;

/** How large letters, signs and codes must be to be read from where their reader is. */
final class LabelLegibility {

    /** Visual angle of a capital: 16 is the least, 20 to 22 are preferred (NUREG-0700, ISO 9241-3; seen). */
    static final double MINUTES_OF_ARC = 20;

    /** Distance over height of warning, prohibition and mandatory signs (DIN 4844-1; seen). */
    static final double SIGN_DISTANCE_FACTOR = 40;

    private static final double SIGN_AREA_FACTOR = 2000;

    /** Least height of a sign on equipment, millimetres (seen in a trade page: 25 mm). */
    static final double LEAST_SIGN_HEIGHT = 25;

    /** Cap height of a signal word over that of the message (ANSI Z535.2; seen). */
    static final double SIGNAL_OVER_MESSAGE = 1.5;

    /** Distance over side of a QR symbol, common practice of scanning; not in the standard. */
    static final double CODE_DISTANCE_FACTOR = 10;

    /** Least dots along one module of a QR symbol (advice of the symbology's owner; seen). */
    static final int LEAST_DOTS = 4;

    private static final double MINUTES_PER_TURN = 360 * 60;
    private static final double TENTHS = 10;
    private static final double MILLIMETRES = 1000;

    /** A height of so many tenths plus less than this is what binary fractions leave over. */
    private static final double NOISE = 1e-9;

    private LabelLegibility() {}

    /**
     * Height that is seen under an angle: H = 2 π D α / 21600 (NUREG-0700).
     *
     * @param metres from eye to letter
     * @param minutes of arc
     * @return millimetres
     */
    static double heightSeenUnder(double metres, double minutes) {
        return 2 * Math.PI * metres * MILLIMETRES * minutes / MINUTES_PER_TURN;
    }

    /**
     * Height by a distance factor: h = l / Z (DIN 4844-1).
     *
     * @param metres from eye to sign
     * @return millimetres
     */
    static double heightByFactor(double metres, double factor) {
        return metres * MILLIMETRES / factor;
    }

    /** Least cap height of a message in millimetres, to the next tenth. */
    static double messageCap(double metres) {
        return upToTenth(heightSeenUnder(metres, MINUTES_OF_ARC));
    }

    /** Least cap height of the signal word over a message, millimetres to the next tenth. */
    static double signalCap(double messageCap) {
        return upToTenth(messageCap * SIGNAL_OVER_MESSAGE);
    }

    /**
     * Area of a sign: A > L² / 2000, both in metres (92/58/EEC Annex; from memory).
     *
     * @return square millimetres
     */
    static double signArea(double metres) {
        return heightByFactor(metres, 1) * heightByFactor(metres, 1) / SIGN_AREA_FACTOR;
    }

    /** Least height of a safety sign in millimetres: by distance and, for the triangle, the smallest shape, by area. */
    static double signHeight(double metres) {
        double byArea = Math.sqrt(signArea(metres) / SignGeometry.triangleArea()) * SignGeometry.TRIANGLE_HEIGHT;
        return Math.max(LEAST_SIGN_HEIGHT, Math.max(heightByFactor(metres, SIGN_DISTANCE_FACTOR), byArea));
    }

    /** Least side of a QR symbol in millimetres, without its quiet zone. */
    static double codeSide(double metres) {
        return heightByFactor(metres, CODE_DISTANCE_FACTOR);
    }

    /**
     * Side of one module of a QR symbol, in whole printer dots.
     *
     * @param modules along one side, without the quiet zone
     * @param dots of the printer
     * @return millimetres
     */
    static double codeModule(int modules, double metres, Dots dots) {
        double side = codeSide(metres) / modules;
        return dots.length(Math.max(LEAST_DOTS, Math.ceil(side * dots.perMillimetre() - NOISE)));
    }

    static double upToTenth(double millimetres) {
        return Math.ceil(millimetres * TENTHS - NOISE) / TENTHS;
    }
}
