package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    /** What goes where and why, in as many pieces as sheets it needs, none of them to be cut out. */
    List<Label> list(List<LabelNote> notes, Box room) {
        List<Label> lists = new ArrayList<>();
        int from = 0;
        while (from < notes.size()) {
            int to = from + 1;
            Label longest = list(notes.subList(from, to), from, room.width());
            while (to < notes.size()) {
                Label longer = list(notes.subList(from, to + 1), from, room.width());
                if (longer.height() > room.height()) {
                    break;
                }
                longest = longer;
                to++;
            }
            lists.add(longest);
            from = to;
        }
        return lists;
    }

    private Label list(List<LabelNote> notes, int from, double width) {
        List<Mark> marks = new ArrayList<>();
        double cap = LabelReading.PAPER.cap();
        LabelBlocks blocks = new LabelBlocks(cap, Dots.DPI_300, marks);
        TextStyle heading = LabelBlocks.style(LabelPart.Voice.LARGE, cap);
        double y = blocks.text(List.of(words.sentence("labels.sheet.list")), heading, 0, 0, width) + cap;
        if (from == 0) {
            TextStyle caution = LabelBlocks.style(LabelPart.Voice.STRONG, cap);
            y = blocks.text(List.of(words.sentence("labels.sheet.caution")), caution, 0, y, width) + cap;
        }
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            LabelNote note = notes.get(i);
            rows.add(List.of(Integer.toString(from + i + 1), note.title() + "\n" + where(note), why(note)));
        }
        double end = blocks.parts(
                List.of(new LabelPart.Grid(
                        List.of(
                                words.sentence("labels.sheet.number"),
                                words.sentence("labels.sheet.label"),
                                words.sentence("labels.sheet.why")),
                        rows,
                        2,
                        false)),
                0,
                y,
                width);
        return new Label("list-" + (from + 1), width, end, marks).uncut();
    }

    private String why(LabelNote note) {
        Citation citation = note.reason().citation();
        String standing = "labels.standing."
                + citation.standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return words.say(note.reason()) + "\n" + words.say(standing, words.cited(citation.source()));
    }
}
