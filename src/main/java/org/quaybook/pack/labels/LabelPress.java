package org.quaybook.pack.labels;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.quaybook.diag.Diagnostic;
import org.quaybook.pack.labels.LabelOrder.Form;
import org.quaybook.pack.labels.LabelSetter.Sized;
import org.quaybook.render.DieCut;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.LabelPicture;
import org.quaybook.render.LabelSheet;
import org.quaybook.render.Medium;
import org.quaybook.render.PrintSettings;
import org.quaybook.render.RenderException;
import org.quaybook.render.Sheet;
import org.quaybook.render.Stock;

/**
 * Prints the labels of a job that an order names on the stock that it names: each on the first stock that has room for it
 * at a size that can be read, in walking order, with a map and a list of their places on plain paper.
 */
public final class LabelPress {

    private final Labels labels;
    private final LabelOrder order;
    private final Map<String, byte[]> files = new TreeMap<>();
    private final List<Printed> printed = new ArrayList<>();

    /** First unused label of the last sheet of a die-cut stock, by its id: turned labels go on after the others. */
    private final Map<String, Integer> next = new HashMap<>();

    private LabelPress(Labels labels, LabelOrder order) {
        this.labels = labels;
        this.order = order;
    }

    /**
     * What came out.
     *
     * @param files name to content
     * @param count of the labels: some of a job become several
     */
    public record Pressed(Map<String, byte[]> files, int count) {}

    /**
     * Carries out an order.
     *
     * @param labels of the job
     * @param paper plain sheets for the map and the list
     * @return nothing if the order names no label
     * @throws RenderException if a label finds no room at a size that can be read: all of them at once
     */
    public static Pressed press(Labels labels, LabelOrder order, Sheet paper) {
        LabelPress press = new LabelPress(labels, order);
        press.sheets();
        if (!press.printed.isEmpty()) {
            press.places(paper);
            press.singly();
        }
        return new Pressed(press.files, press.printed.size());
    }

    /** A label and what it is printed on. */
    private record Printed(Sized sized, Stock stock) {}

    /** What lies the same way on one stock. */
    private record Lot(Stock stock, boolean turned) {

        String file() {
            return stock.id() + (turned ? "-turned" : "") + ".pdf";
        }
    }

    private void sheets() {
        Map<Lot, List<Sized>> lots = new LinkedHashMap<>();
        List<Diagnostic> refused = new ArrayList<>();
        for (LabelDesign design : labels.designs()) {
            if (order.only().contains(design.id())) {
                try {
                    add(design, lots);
                } catch (RenderException e) {
                    refused.addAll(e.diagnostics());
                }
            }
        }
        if (!refused.isEmpty()) {
            throw new RenderException(refused);
        }
        lots.forEach(this::sheet);
    }

    private void add(LabelDesign design, Map<Lot, List<Sized>> lots) {
        Labels.Placed placed = labels.placed(design, order.stocks(), order.dots());
        for (Sized sized : placed.labels()) {
            lots.computeIfAbsent(new Lot(placed.stock(), sized.turned()), lot -> new ArrayList<>())
                    .add(sized);
        }
    }

    private void sheet(Lot lot, List<Sized> there) {
        boolean plain = lot.stock().medium() instanceof Sheet;
        List<Sized> ordered = lot.stock().medium() instanceof Sheet sheet ? Labels.inRows(there, sheet) : there;
        List<Label> marked = new ArrayList<>();
        for (Sized sized : ordered) {
            printed.add(new Printed(sized, lot.stock()));
            Label label = inked(sized.label(), lot.stock());
            marked.add(plain ? label.withCaption(labels.caption(sized, printed.size())) : label);
        }
        files.put(
                lot.file(),
                LabelSheet.toPdf(marked, lot.stock(), settings(lot, marked.size()), labels.lines(), labels.info())
                        .pdf());
    }

    /** What does not concern a stock is left out where it concerns another one of the order. */
    private PrintSettings settings(Lot lot, int count) {
        PrintSettings settings = lot.turned() ? order.settings().turnedLabels() : order.settings();
        if (lot.stock().medium() instanceof DieCut sheet) {
            int start = next.getOrDefault(lot.stock().id(), settings.start());
            next.put(lot.stock().id(), (start - 1 + count) % sheet.count() + 1);
            settings = settings.startingAt(start);
        } else if (has(DieCut.class)) {
            settings = settings.startingAt(1);
        }
        boolean plain = lot.stock().medium() instanceof Sheet;
        return !plain && has(Sheet.class) ? settings.withBleed(0) : settings;
    }

    private boolean has(Class<? extends Medium> kind) {
        return order.stocks().stream().map(Stock::medium).anyMatch(kind::isInstance);
    }

    private Label inked(Label label, Stock stock) {
        return order.oneColour() || stock.printing().oneColour() ? OneColour.of(label) : label;
    }

    private void places(Sheet paper) {
        List<LabelNote> notes =
                printed.stream().map(one -> one.sized().design().note()).toList();
        List<Label> plain = printed.stream().map(one -> one.sized().label()).toList();
        Stock list = new Stock("places", paper, Stock.A4.printing(), null);
        List<Label> pages = labels.places(notes, plain, paper);
        files.put(
                "places.pdf",
                LabelSheet.toPdf(pages, list, PrintSettings.USUAL, labels.lines(), labels.info())
                        .pdf());
    }

    /** Each label by itself, for label printers that take pictures and for engravers. */
    private void singly() {
        for (Printed one : printed) {
            Label label = one.sized().label();
            Label black = OneColour.of(label);
            String id = label.id();
            Dots dots = Objects.requireNonNullElse(one.stock().dots(), order.dots());
            for (Form form : order.forms()) {
                switch (form) {
                    case PNG -> files.put("png/" + id + ".png", LabelPicture.png(inked(label, one.stock()), dots));
                    case PNG_ONE_BIT -> files.put("one-bit/" + id + ".png", LabelPicture.oneBit(black, dots));
                    case SVG -> files.put("svg/" + id + ".svg", utf8(LabelPicture.svg(black)));
                    case TEXT -> files.put("text/" + id + ".txt", utf8(LabelPicture.text(label)));
                }
            }
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
