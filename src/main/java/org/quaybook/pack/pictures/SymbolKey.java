package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.pack.pictures.Symbols.Current;
import org.quaybook.pack.pictures.Symbols.Way;

/** What the symbols of the wiring diagrams mean: those that they use, and no others. */
final class SymbolKey {

    private static final int COLUMNS = 3;
    private static final double COLUMN = Drawing.WIDTH / COLUMNS;
    private static final double SYMBOL = 16;
    private static final double TEXT = 33;
    private static final double ROW_APART = 6;
    private static final double LEAST_ROW = 25;

    private static final List<String> ORDER = List.of(
            "battery",
            "fuse",
            "isolator",
            "breaker",
            "rcd",
            "inverter",
            "charger",
            "alternator",
            "solar",
            "wind",
            "generator",
            "shore-inlet",
            "transformer",
            "changeover",
            "choice",
            "socket",
            "earth",
            "frame");

    private final Subject subject;
    private final Set<String> used;

    /** @param used the names of the symbols in the diagrams */
    SymbolKey(Subject subject, Set<String> used) {
        this.subject = subject;
        this.used = used;
    }

    String svg(String id) {
        Drawing drawing = new Drawing(id, subject.look());
        List<String> shown = ORDER.stream().filter(used::contains).toList();
        double y = 0;
        List<String> meanings = new ArrayList<>();
        for (int i = 0; i < shown.size(); i += COLUMNS) {
            List<String> row = shown.subList(i, Math.min(i + COLUMNS, shown.size()));
            List<Note> notes = row.stream().map(this::meaning).toList();
            double height = Math.max(
                    LEAST_ROW, notes.stream().mapToDouble(Note::height).max().orElse(0));
            for (int j = 0; j < row.size(); j++) {
                double x = j * COLUMN;
                draw(new Symbols(drawing), row.get(j), x + SYMBOL, y + height / 2);
                notes.get(j).writeAround(drawing, Anchor.START, x + TEXT, y + height / 2);
                meanings.add(subject.say("symbol." + row.get(j)));
            }
            y += height + ROW_APART;
        }
        return drawing.svg(
                Math.max(1, y), subject.say("symbols.title"), List.of(subject.say("symbols.desc", meanings)));
    }

    private Note meaning(String symbol) {
        return Note.within(COLUMN - TEXT - 5)
                .add(Lettering.SMALL, subject.say("symbol." + symbol))
                .note();
    }

    private static void draw(Symbols symbols, String symbol, double x, double y) {
        switch (symbol) {
            case "battery" -> symbols.battery(x, y, "");
            case "fuse" -> symbols.fuse(x, y, Way.DOWN, "");
            case "isolator" -> symbols.isolator(x, y, Way.DOWN, "");
            case "breaker" -> symbols.breaker(x, y, Way.DOWN, "");
            case "rcd" -> symbols.rcd(x, y - 3, Way.DOWN, "");
            case "inverter" -> symbols.converter(x, y, Symbols.HALF, Current.DC, Current.AC, symbol, "");
            case "charger" -> symbols.converter(x, y, Symbols.HALF, Current.AC, Current.DC, symbol, "");
            case "alternator" -> symbols.machine(x, y, Current.DC, symbol, "");
            case "solar" -> symbols.panels(x, y, "");
            case "wind", "generator" -> symbols.machine(x, y, Current.AC, symbol, "");
            case "shore-inlet" -> symbols.inlet(x, y, "");
            case "transformer" -> symbols.transformer(x, y, "");
            case "changeover" -> symbols.changeover(x, y, x + 9, false, "");
            case "choice" -> symbols.choice(x + 4, y, x - 5, "");
            case "socket" -> symbols.outlet(x, y, "");
            case "earth" -> symbols.earth(x, y - 2, "");
            case "frame" -> symbols.frame(x, y - 2, "");
            default -> throw new IllegalArgumentException("no such symbol: " + symbol);
        }
    }
}
