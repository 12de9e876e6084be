package org.quaybook.render;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.zip.CRC32;

/**
 * Stands in for the randomness of the six letters before a subset font's name. Without state, so that the second
 * document made with a font gets the same letters as the first.
 */
final class SubsetPrefix extends SecureRandom {

    private final double value;

    SubsetPrefix(String fontName) {
        CRC32 sum = new CRC32();
        sum.update(fontName.getBytes(StandardCharsets.UTF_8));
        this.value = sum.getValue() / (double) (1L << Integer.SIZE);
    }

    @Override
    public double nextDouble() {
        return value;
    }
}
