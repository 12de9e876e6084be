package org.quaybook.pack.labels;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.quaybook.diag.Diagnostic;
import org.quaybook.pack.labels.LabelOrder.Form;
import org.quaybook.pack.labels.LabelSetter.Sized;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.LabelPicture;
import org.quaybook.render.LabelSheet;
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
    private final List<Sized> printed = new ArrayList<>();

    private LabelPress(Labels labels, LabelOrder order) {
        this.labels = labels;
        this.order = order;
    }

    /**
     * Carries out an order.
     *
     * @param editions the job in the languages of its labels: one, or two that stand on each label
     * @param paper plain sheets for the map and the list
     * @return name to content; nothing if the order names no label
     * @throws RenderException if a label finds no room at a size that can be read: all of them at once
     */
    public static Map<String, byte[]> press(
            List<Edition> editions, Branding branding, RecordLink link, LabelOrder order, Sheet paper) {
        LabelPress press = new LabelPress(new Labels(editions, branding, link), order);
        press.sheets();
        if (!press.printed.isEmpty()) {
            press.places(paper);
            press.singly();
        }
        return press.files;
    }

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

    /** On the first stock with room; what the last one has to say is told when none has. */
    private void add(LabelDesign design, Map<Lot, List<Sized>> lots) {
        for (int i = 0; i < order.stocks().size(); i++) {
            Stock stock = order.stocks().get(i);
            try {
                for (Sized sized : labels.size(design, stock, order.dots())) {
                    lots.computeIfAbsent(new Lot(stock, sized.turned()), lot -> new ArrayList<>())
                            .add(sized);
                }
                return;
            } catch (RenderException e) {
                if (i == order.stocks().size() - 1) {
                    throw e;
                }
            }
        }
    }

    private void sheet(Lot lot, List<Sized> there) {
        boolean plain = lot.stock().medium() instanceof Sheet;
        List<Sized> ordered = lot.stock().medium() instanceof Sheet sheet ? Labels.inRows(there, sheet) : there;
        List<Label> marked = new ArrayList<>();
        for (Sized sized : ordered) {
            printed.add(sized);
            Label label = inked(sized.label(), lot.stock());
            marked.add(plain ? label.withCaption(labels.caption(sized, printed.size())) : label);
        }
        PrintSettings settings = lot.turned() ? order.settings().turnedLabels() : order.settings();
        files.put(
                lot.file(),
                LabelSheet.toPdf(marked, lot.stock(), settings, labels.lines(), labels.info())
                        .pdf());
    }

    private Label inked(Label label, Stock stock) {
        return order.oneColour() || stock.printing().oneColour() ? OneColour.of(label) : label;
    }

    private void places(Sheet paper) {
        List<LabelNote> notes = printed.stream().map(one -> one.design().note()).toList();
        List<Label> plain = printed.stream().map(Sized::label).toList();
        Stock list = new Stock("places", paper, Stock.A4.printing(), null);
        List<Label> pages = labels.places(notes, plain, paper);
        files.put(
                "places.pdf",
                LabelSheet.toPdf(pages, list, PrintSettings.USUAL, labels.lines(), labels.info())
                        .pdf());
    }

    /** Each label by itself, for label printers that take pictures and for engravers. */
    private void singly() {
        Dots dots = order.dots();
        for (Sized sized : printed) {
            String id = sized.design().id();
            Label label = order.oneColour() ? OneColour.of(sized.label()) : sized.label();
            for (Form form : order.forms()) {
                switch (form) {
                    case PNG -> files.put("png/" + id + ".png", LabelPicture.png(label, dots));
                    case PNG_ONE_BIT ->
                        files.put("png/" + id + ".png", LabelPicture.oneBit(OneColour.of(sized.label()), dots));
                    case SVG -> files.put("svg/" + id + ".svg", utf8(LabelPicture.svg(OneColour.of(sized.label()))));
                    case TEXT -> files.put("text/" + id + ".txt", utf8(LabelPicture.text(sized.label())));
                }
            }
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
