package org.quaybook.pack;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.job.Spelling;
import org.quaybook.pack.labels.LabelNote;
import org.quaybook.pack.labels.LabelOrder;
import org.quaybook.pack.labels.LabelPress;
import org.quaybook.pack.labels.Labels;
import org.quaybook.pack.labels.PrintStock;
import org.quaybook.proof.Digest;
import org.quaybook.proof.JsonText;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.Dots;
import org.quaybook.render.Printing;
import org.quaybook.render.RenderException;
import org.quaybook.render.RenderMessage;
import org.quaybook.render.Stock;

/**
 * Labels printed by themselves: on stock of one's own, some of them, or those that an earlier issue had not.
 *
 * @param files name to content; nothing if no label is to be printed
 * @param printed the labels of the job, in walking order
 * @param count of what was printed of them: a label becomes several where a list, or two languages, find no room on one
 * @param gone ids of labels of the earlier issue that come off
 */
public record LabelJob(Map<String, byte[]> files, List<LabelNote> printed, int count, List<String> gone) {

    /** Tells what lies in a folder of labels. */
    public static final String MARK = "labels.json";

    public LabelJob {
        files = new TreeMap<>(files);
        printed = List.copyOf(printed);
        gone = List.copyOf(gone);
    }

    /**
     * Prints labels.
     *
     * @param judged a job that came as far as an assessment
     * @param ownTemplates folder whose words take the place of the built-in ones; null for none
     * @param version of the program, for the file that programs read
     * @throws NotPrinted if a label is unknown, finds no room at a size that can be read, or the stock or the earlier pack
     *     cannot be used: every reason at once as far as they can be found
     */
    public static LabelJob of(Road.Judged judged, @Nullable Path ownTemplates, LabelWish wish, String version)
            throws NotPrinted {
        Assessment it = Objects.requireNonNull(judged.assessment());
        List<Edition> editions = Editions.ofLabels(it, ownTemplates);
        try {
            Labels labels = new Labels(editions, judged.branding(), RecordLink.of(it));
            List<LabelNote> notes = labels.notes();
            IssuedLabels issued = wish.issued() == null
                    ? new IssuedLabels(Map.of())
                    : IssuedLabels.read(
                            wish.issued(), wish.issuedAt(), it.job().job().number());
            List<LabelNote> wanted = wanted(notes, wish, issued);
            LabelOrder order = new LabelOrder(
                    wish.stocks().isEmpty()
                            ? List.of(paper(it))
                            : wish.stocks().stream().map(PrintStock::of).toList(),
                    wish.move().settings().startingAt(wish.start()).withBleed(wish.bleed()),
                    wish.oneColour(),
                    ids(wanted),
                    wish.forms(),
                    dots(wish.dpi()));
            LabelPress.Pressed pressed =
                    LabelPress.press(labels, order, Paper.of(it).sheet());
            Map<String, byte[]> files = pressed.files();
            List<String> gone = issued.gone(notes);
            if (!files.isEmpty()) {
                files.put(MARK, json(it, wanted, gone, version));
            }
            return new LabelJob(files, wanted, pressed.count(), gone);
        } catch (RenderException e) {
            throw new NotPrinted(e);
        }
    }

    /**
     * The stock that has room for what others lack it for: sheets of the job's paper, to be cut apart.
     *
     * @param refused why no labels were printed
     * @return its id; empty if no label lacked room
     */
    public static Optional<String> roomier(NotPrinted refused, Assessment it) {
        return refused.diagnostics().stream()
                .filter(one -> one.message().key() == RenderMessage.LABEL_NEEDS_MORE_ROOM)
                .findFirst()
                .map(one -> paper(it).id().toLowerCase(Locale.ROOT));
    }

    private static Dots dots(int dpi) {
        return switch (dpi) {
            case 203 -> Dots.DPI_203;
            case 300 -> Dots.DPI_300;
            case 600 -> Dots.DPI_600;
            default -> throw new IllegalArgumentException("dots an inch: " + dpi);
        };
    }

    private static Set<String> ids(List<LabelNote> notes) {
        return notes.stream().map(LabelNote::id).collect(Collectors.toSet());
    }

    private static Stock paper(Assessment it) {
        Paper paper = Paper.of(it);
        return new Stock(paper.full().name(), paper.sheet(), Printing.LASER, null);
    }

    private static List<LabelNote> wanted(List<LabelNote> notes, LabelWish wish, IssuedLabels issued)
            throws NotPrinted {
        Set<String> ids = ids(notes);
        List<Diagnostic> unknown = new ArrayList<>();
        for (String id : wish.only()) {
            if (!ids.contains(id)) {
                unknown.add(unknown(id, notes));
            }
        }
        if (!unknown.isEmpty()) {
            throw new NotPrinted(unknown);
        }
        return notes.stream()
                .filter(note -> wish.only().isEmpty() || wish.only().contains(note.id()))
                .filter(note -> !issued.says(note))
                .toList();
    }

    private static Diagnostic unknown(String id, List<LabelNote> notes) {
        List<String> ids = notes.stream().map(LabelNote::id).toList();
        Message message = Message.of(PackMessage.LABEL_UNKNOWN, id, String.join(", ", ids));
        List<Message> meant = Spelling.nearest(id, ids)
                .map(near -> List.of(Message.of(PackMessage.WORDS_MEANT, near)))
                .orElse(List.of());
        return new Diagnostic(Severity.ERROR, message.key().key(), Place.NOWHERE, id, message, meant);
    }

    private static byte[] json(Assessment it, List<LabelNote> printed, List<String> gone, String version) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("program", "quaybook " + version)
                .put("number", it.job().job().number())
                .put("revision", it.job().job().revision())
                .put("date", it.job().job().date().toString());
        ArrayNode labels = root.putArray("labels");
        for (LabelNote note : printed) {
            labels.addObject()
                    .put("label", note.id())
                    .put("title", note.title())
                    .put("spot", note.spot().id())
                    .put("place", note.place())
                    .put("sha256", Digest.of(note.content()));
        }
        ArrayNode off = root.putArray("gone");
        gone.forEach(off::add);
        return JsonText.of(root);
    }
}
