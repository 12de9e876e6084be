package org.quaybook.pack;

import org.quaybook.render.PrintSettings;

/**
 * What makes up for a printer that is off.
 *
 * @param right millimetres
 * @param down millimetres
 */
public record PrintMove(double right, double down) {

    public static final PrintMove NONE = new PrintMove(0, 0);

    PrintSettings settings() {
        return PrintSettings.USUAL.movedBy(right, down);
    }
}
