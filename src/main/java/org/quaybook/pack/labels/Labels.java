package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.LabelSheet;
import org.quaybook.render.RenderException;
import org.quaybook.render.Sheet;
import org.quaybook.render.SheetLines;
import org.quaybook.render.Stock;
import org.quaybook.text.Words;

/**
 * The warning and information labels of an installation: only those that the job calls for, each as large as its reader
 * is far, in the order of a walk from the outside to the battery.
 */
public final class Labels {

    /** Of the language that stands first. */
    private final LabelFacts facts;

    private final Branding branding;
    private final RecordLink link;
    private final SignalLetters letters;
    private final List<LabelDesign> designs;

    /** The sheets for each paper that was asked for. */
    private final Map<Sheet, LabelsPrinted> printed = new ConcurrentHashMap<>();

    /**
     * Designs the labels of a job.
     *
     * @param editions the job in the languages of its labels: one, or two that stand on each label
     * @param link what the QR of the record holds
     * @throws RenderException if the words of a cable's tag find no room at a size that can be read
     */
    public Labels(List<Edition> editions, Branding branding, RecordLink link) {
        this.facts = facts(editions.get(0));
        this.branding = branding;
        this.link = link;
        this.letters = new SignalLetters(
                editions.stream().map(Edition::words).toList(),
                facts.it().tables().rules().noticeInItalics());
        this.designs = List.copyOf(designs(editions));
    }

    private static LabelFacts facts(Edition edition) {
        return new LabelFacts(edition.assessment(), edition.words());
    }

    /**
     * Makes the label sheets to be cut apart, the map and the list of places behind them; asked again, by whatever thread,
     * gives the same.
     *
     * @param paper the sheets
     * @throws RenderException if a text of the job is too long for any label or has a character that no font has
     */
    public LabelsPrinted sheets(Sheet paper) {
        return printed.computeIfAbsent(paper, this::print);
    }

    /** Whether its sheets are those of another job or edition, letter for letter. */
    public boolean printLike(Labels other) {
        return matter().equals(other.matter());
    }

    /** All that the sheets of a paper follow from. */
    private record Matter(
            List<LabelDesign> designs,
            List<String> stamps,
            SignalLetters letters,
            Words words,
            SheetLines lines,
            DocumentInfo info) {}

    private Matter matter() {
        List<String> stamps =
                designs.stream().map(design -> facts.stamp(design.id())).toList();
        List<LabelDesign> done = designs.stream().map(LabelDesign::done).toList();
        return new Matter(done, stamps, letters, facts.words(), lines(), info());
    }

    /** Which labels the job asks for, before they have a size, in walking order. */
    public List<LabelNote> notes() {
        return designs.stream().map(LabelDesign::note).toList();
    }

    /** All labels of the job before they have a size, in walking order. */
    List<LabelDesign> designs() {
        return designs;
    }

    private List<LabelDesign> designs(List<Edition> editions) {
        List<LabelDesign> first = designs(facts);
        if (editions.size() == 1) {
            return first;
        }
        List<String> languages =
                editions.stream().map(edition -> edition.words().language()).toList();
        return LabelsBilingual.of(languages, first, designs(facts(editions.get(1))));
    }

    private List<LabelDesign> designs(LabelFacts facts) {
        List<LabelDesign> designs = new ArrayList<>();
        LabelsBoard board = new LabelsBoard(facts);
        designs.addAll(new LabelsOutside(facts, board.place()).designs());
        designs.addAll(board.designs());
        designs.addAll(new LabelsMainSwitch(facts, board.place()).designs());
        designs.addAll(new LabelsBreakers(facts, board.place()).designs());
        designs.addAll(new LabelsRecord(facts, branding, link).designs(board.place()));
        designs.addAll(new LabelsUse(facts).designs());
        designs.addAll(new LabelsInverter(facts).designs());
        designs.addAll(new LabelsEngines(facts).designs());
        designs.addAll(new LabelsBattery(facts).designs());
        designs.addAll(new LabelsFuses(facts).designs());
        designs.addAll(new LabelsTerminals(facts).designs());
        designs.addAll(new LabelsCables(facts).designs());
        designs.sort(Comparator.comparing(LabelDesign::spot));
        return designs;
    }

    /** All labels of the job with the size that they have on plain sheets, in the order of these. */
    List<LabelSetter.Sized> sized(Sheet paper) {
        Stock stock = new Stock(Stock.A4.id(), paper, Stock.A4.printing(), null);
        List<LabelSetter.Sized> walk = new ArrayList<>();
        List<Diagnostic> refused = new ArrayList<>();
        for (LabelDesign design : designs) {
            try {
                walk.addAll(placed(design, List.of(stock), Dots.DPI_300).labels());
            } catch (RenderException e) {
                refused.addAll(e.diagnostics());
            }
        }
        if (!refused.isEmpty()) {
            throw new RenderException(refused);
        }
        return inRows(walk, paper);
    }

    /** What a design became on a stock. */
    record Placed(Stock stock, List<LabelSetter.Sized> labels) {}

    /**
     * A design with its size on the first stock that has room for it: one label, or two if it bears two languages that do
     * not fit together. A list that has room on none of them is parted, on the stock where it makes the fewest labels; a
     * table that finds no room even so is folded.
     *
     * @param stocks at least one
     * @param usual dots of the printer where a stock does not say them
     * @throws RenderException if there is no room on any of them: what the last one has to say
     */
    Placed placed(LabelDesign design, List<Stock> stocks, Dots usual) {
        List<RenderException> refused = new ArrayList<>();
        return placed(design, stocks, usual, refused)
                .or(() -> LabelFolding.of(design).flatMap(folded -> placed(folded, stocks, usual, new ArrayList<>())))
                .orElseThrow(() -> refused.get(refused.size() - 1));
    }

    private Optional<Placed> placed(LabelDesign design, List<Stock> stocks, Dots usual, List<RenderException> refused) {
        for (Stock stock : stocks) {
            try {
                List<LabelRoom> rooms = LabelRoom.of(stock, usual);
                return Optional.of(new Placed(stock, LabelSetter.size(design, facts::stamp, letters, rooms)));
            } catch (RenderException e) {
                refused.add(e);
            }
        }
        return stocks.stream()
                .flatMap(stock -> LabelParting.of(design, facts::stamp, letters, LabelRoom.of(stock, usual)).stream()
                        .map(parts -> new Placed(stock, parts)))
                .min(Comparator.comparingInt(placed -> placed.labels().size()));
    }

    /** Wide ones of a spot come first, so that narrow ones share a row. */
    static List<LabelSetter.Sized> inRows(List<LabelSetter.Sized> labels, Sheet paper) {
        List<LabelSetter.Sized> walk = new ArrayList<>(labels);
        walk.sort(
                Comparator.comparing((LabelSetter.Sized sized) -> sized.design().spot())
                        .thenComparing(sized -> -sized.label().width()));
        return LabelsOrder.fill(walk, paper);
    }

    private LabelsPrinted print(Sheet paper) {
        List<LabelSetter.Sized> sized = sized(paper);
        List<LabelNote> notes = sized.stream().map(one -> one.design().note()).toList();
        List<Label> sheets = new ArrayList<>();
        for (LabelSetter.Sized one : sized) {
            sheets.add(one.label().withCaption(caption(one, sheets.size() + 1)));
        }
        List<Label> plain = sized.stream().map(LabelSetter.Sized::label).toList();
        sheets.addAll(places(notes, plain, paper));
        return new LabelsPrinted(LabelSheet.toPdf(sheets, paper, lines(), info()), notes);
    }

    /** The strip under a label on a plain sheet. */
    Label.Caption caption(LabelSetter.Sized sized, int number) {
        return new LabelsPlacing(facts.words())
                .caption(sized.design().note(), number, sized.label().width());
    }

    /** The map and the list of places, as pages that are not cut. */
    List<Label> places(List<LabelNote> notes, List<Label> labels, Sheet paper) {
        LabelsPlacing placing = new LabelsPlacing(facts.words());
        List<Label> pages = new ArrayList<>(new LabelsMap(facts.words(), placing).pieces(notes, labels, paper.room()));
        pages.addAll(placing.list(notes, paper.room()));
        return pages;
    }

    SheetLines lines() {
        String job = facts.say(
                "sheet.header",
                facts.job().job().number(),
                facts.job().craft().name(),
                facts.job().job().revision(),
                facts.job().job().date());
        long forbidding =
                facts.it().findings().stream().filter(Finding::forbids).count();
        return new SheetLines(
                forbidding == 0 ? job : facts.say("sheet.forbidden", forbidding, job),
                facts.say("sheet.footer"),
                facts.say("sheet.rule"));
    }

    DocumentInfo info() {
        return new DocumentInfo(
                facts.say("sheet.title", facts.job().craft().name()),
                facts.it().installer().firm(),
                facts.job().job().number(),
                facts.words().language(),
                facts.job().job().date());
    }
}
