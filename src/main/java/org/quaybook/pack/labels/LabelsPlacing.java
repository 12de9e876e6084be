package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.quaybook.reference.Citation;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.Label.Caption;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.TextBlock;
import org.quaybook.render.TextStyle;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.VerticalAlign;
import org.quaybook.text.Words;

/** What the sheets say beside the labels: where each goes, with a box to tick, and at the end the list of all. */
final class LabelsPlacing {

    private static final double TICK = 3.2;
    private static final double GAP = 1.6;

    /** Labels in one row of the list: few enough for any sheet. */
    private static final int MOST_IN_GROUP = 10;

    /** Height of the strip under a label when its text takes one line. */
    static final double STRIP = TICK + 2 * GAP;

    private final Words words;

    LabelsPlacing(Words words) {
        this.words = words;
    }

    /** The strip under a label. */
    Caption caption(LabelNote note, int number, double width) {
        List<Mark> marks = new ArrayList<>();
        double cap = LabelReading.PAPER.cap();
        TextStyle style = LabelBlocks.style(LabelPart.Voice.PLAIN, cap).aligned(Align.LEFT, VerticalAlign.MIDDLE);
        String text = words.say("labels.sheet.caption", number, where(note));
        double room = width - TICK - GAP;
        double height = Math.max(
                TICK, new LabelBlocks(cap, Dots.DPI_300, new ArrayList<>()).measure(List.of(text), style, room));
        marks.add(Panel.outlined(new Box(0, GAP, TICK, TICK), Colour.BLACK, 0.3));
        marks.add(TextBlock.of(new Box(TICK + GAP, GAP, room, height), text, style));
        return new Caption(height + 2 * GAP, marks);
    }

    /** The place, then which side of what. */
    String where(LabelNote note) {
        String spot = words.sentence(note.spot().key());
        return note.place().isEmpty() ? spot : words.say("labels.sheet.where", note.place(), spot);
    }

    /** Labels that are there for the same reason, with their numbers. */
    private record Group(LabelReason reason, List<String> labels) {}

    /** What goes where and why, in as many pieces as sheets it needs, none of them to be cut out. */
    List<Label> list(List<LabelNote> notes, Box room) {
        List<List<Group>> pages = LabelPages.of(
                groups(notes),
                (rows, first) -> page("list", rows, first, room.width()).height() <= room.height());
        List<Label> lists = new ArrayList<>();
        for (List<Group> rows : pages) {
            lists.add(page("list-" + (lists.size() + 1), rows, lists.isEmpty(), room.width()));
        }
        return lists;
    }

    /** In the order of the first label of each; a reason of very many labels is repeated, so that a sheet holds them. */
    private List<Group> groups(List<LabelNote> notes) {
        Map<LabelReason, List<String>> byReason = new LinkedHashMap<>();
        for (int i = 0; i < notes.size(); i++) {
            LabelNote note = notes.get(i);
            byReason.computeIfAbsent(note.reason(), reason -> new ArrayList<>())
                    .add(words.say("labels.sheet.caption", i + 1, note.title()) + "\n" + where(note));
        }
        List<Group> groups = new ArrayList<>();
        byReason.forEach((reason, labels) -> {
            for (int from = 0; from < labels.size(); from += MOST_IN_GROUP) {
                groups.add(new Group(reason, labels.subList(from, Math.min(from + MOST_IN_GROUP, labels.size()))));
            }
        });
        return groups;
    }

    private Label page(String id, List<Group> groups, boolean first, double width) {
        List<Mark> marks = new ArrayList<>();
        double cap = LabelReading.PAPER.cap();
        LabelBlocks blocks = new LabelBlocks(cap, Dots.DPI_300, marks);
        TextStyle heading = LabelBlocks.style(LabelPart.Voice.LARGE, cap);
        double y = blocks.text(List.of(words.sentence("labels.sheet.list")), heading, 0, 0, width) + cap;
        if (first) {
            TextStyle caution = LabelBlocks.style(LabelPart.Voice.STRONG, cap);
            y = blocks.text(List.of(words.sentence("labels.sheet.caution")), caution, 0, y, width) + cap;
        }
        List<List<String>> rows = groups.stream()
                .map(group -> List.of(String.join("\n", group.labels()), why(group.reason())))
                .toList();
        List<String> head = List.of(words.sentence("labels.sheet.label"), words.sentence("labels.sheet.why"));
        double end = blocks.halves(new LabelPart.Grid(head, rows, 1, false), 0, y, width);
        return new Label(id, width, end, marks).uncut();
    }

    private String why(LabelReason reason) {
        Citation citation = reason.citation();
        String standing = "labels.standing."
                + citation.standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return words.say(reason) + "\n" + words.say(standing, words.cited(citation.source()));
    }
}
