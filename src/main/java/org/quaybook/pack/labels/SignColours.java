package org.quaybook.pack.labels;

import org.quaybook.render.Colour;

/**
 * Colours of safety signs and signal words: screen approximations of the RAL colours that ISO 3864-4 names (seen in an
 * encyclopaedia's table). What a printer makes of them proves nothing about the standard.
 */
final class SignColours {

    /** RAL 3001: prohibition and DANGER. */
    static final Colour RED = Colour.of("#9b2423");

    /** RAL 2010: WARNING. */
    static final Colour ORANGE = Colour.of("#d05d29");

    /** RAL 1003: warning signs and CAUTION. */
    static final Colour YELLOW = Colour.of("#f9a800");

    /** RAL 5005: mandatory signs and NOTICE. */
    static final Colour BLUE = Colour.of("#005387");

    /** RAL 9004. */
    static final Colour BLACK = Colour.of("#2b2b2c");

    private SignColours() {}
}
