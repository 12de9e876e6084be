package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.quaybook.render.Box;
import org.quaybook.render.Code;
import org.quaybook.render.Colour;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.Picture;
import org.quaybook.render.TextStyle;
import org.quaybook.text.Words;

/**
 * The placing map: one frame for each place, in the order of the walk, with a small picture of each label that goes
 * there, its number and a box to tick.
 */
final class LabelsMap {

    /** Small enough for a walk on one or two sheets, large enough to know a label by its colours and signs. */
    static final double SCALE = 0.17;

    private static final double TICK = 3.2;
    private static final double TICK_ROOM = TICK + 1;
    private static final double GAP = 2.5;

    /** Width under a small picture that its title needs to be read. */
    private static final double LEAST_CELL = 34;

    private final Words words;
    private final LabelsPlacing placing;
    private final double cap = LabelReading.PAPER.cap();
    private final TextStyle heading = LabelBlocks.style(LabelPart.Voice.STRONG, cap * 1.15);
    private final TextStyle caption = LabelBlocks.style(LabelPart.Voice.PLAIN, cap);

    LabelsMap(Words words, LabelsPlacing placing) {
        this.words = words;
        this.placing = placing;
    }

    /** A label with its number on the sheets. */
    private record Numbered(int number, LabelNote note, Label label) {}

    /** A place on the walk, or as many of its labels as a sheet holds. */
    private record Stop(int number, String where, List<Numbered> labels) {}

    /** Places that stand beside each other, and the width of each. */
    private record Row(List<Stop> stops, List<Double> widths) {}

    /** What is drawn and where it ends. */
    private record Piece(List<Mark> marks, double end) {}

    /**
     * Draws the map in as many pieces as sheets it needs, none of them to be cut out.
     *
     * @param notes of the labels, in the order of their numbers, which begin at 1
     * @param labels in the same order
     * @param room on one sheet
     */
    List<Label> pieces(List<LabelNote> notes, List<Label> labels, Box room) {
        List<Stop> stops = stops(notes, labels).stream()
                .flatMap(stop -> onSheets(stop, room).stream())
                .toList();
        List<List<Row>> sheets = LabelPages.of(
                rows(stops, room.width()),
                (rows, first) -> sheet(rows, room.width()).end() <= room.height());
        List<Label> pieces = new ArrayList<>();
        for (List<Row> rows : sheets) {
            Piece sheet = sheet(rows, room.width());
            pieces.add(new Label("map-" + (pieces.size() + 1), room.width(), sheet.end(), sheet.marks()).uncut());
        }
        return pieces;
    }

    /** A place of more labels than a sheet holds goes on over several, which say so. */
    private List<Stop> onSheets(Stop stop, Box room) {
        double width = width(stop, room.width());
        double most = room.height() - title(new ArrayList<>(), room.width());
        if (stop(stop, 0, 0, width).end() <= most) {
            return List.of(stop);
        }
        List<List<Numbered>> sheets = LabelPages.of(
                stop.labels(),
                (labels, first) -> stop(new Stop(stop.number(), stop.where(), labels), 0, 0, width)
                                .end()
                        <= most);
        return IntStream.range(0, sheets.size())
                .mapToObj(i -> new Stop(
                        stop.number(), words.say("labels.part", stop.where(), i + 1, sheets.size()), sheets.get(i)))
                .toList();
    }

    /** What stands on one sheet, below its title. */
    private Piece sheet(List<Row> rows, double width) {
        List<Mark> marks = new ArrayList<>();
        double y = title(marks, width);
        for (Row row : rows) {
            Piece drawn = row(row, y);
            marks.addAll(drawn.marks());
            y = drawn.end() + GAP;
        }
        return new Piece(marks, y - GAP);
    }

    private List<Row> rows(List<Stop> stops, double room) {
        List<Row> rows = new ArrayList<>();
        double left = 0;
        for (Stop stop : stops) {
            double width = width(stop, room);
            if (rows.isEmpty() || width > left + LabelSetter.SLACK) {
                rows.add(new Row(new ArrayList<>(), new ArrayList<>()));
                left = room;
            }
            Row row = rows.get(rows.size() - 1);
            row.stops().add(stop);
            row.widths().add(width);
            left -= width + GAP;
        }
        return rows;
    }

    /** A third, two thirds or the whole of the room, whichever first holds the labels side by side. */
    private double width(Stop stop, double room) {
        double third = (room - 2 * GAP) / 3;
        double needed = GAP
                + stop.labels().stream().mapToDouble(it -> cellWidth(it) + GAP).sum();
        return List.of(third, 2 * third + GAP).stream()
                .filter(width -> needed <= width)
                .findFirst()
                .orElse(room);
    }

    /** As wide as the small picture, and wide enough for the longest word under it. */
    private double cellWidth(Numbered it) {
        double word = Arrays.stream(title(it).replace("\u00ad", "").split("[ \\n]+", -1))
                .mapToDouble(part -> caption.face().widthOf(part, cap))
                .max()
                .orElse(0);
        return Math.max(LEAST_CELL, Math.max(it.label().width() * SCALE, TICK_ROOM + word));
    }

    private String title(Numbered it) {
        return words.say("labels.sheet.caption", it.number(), it.note().title());
    }

    private List<Stop> stops(List<LabelNote> notes, List<Label> labels) {
        Map<LabelSpot, Map<String, List<Numbered>>> walk = new TreeMap<>();
        for (int i = 0; i < notes.size(); i++) {
            LabelNote note = notes.get(i);
            walk.computeIfAbsent(note.spot(), spot -> new LinkedHashMap<>())
                    .computeIfAbsent(placing.where(note), where -> new ArrayList<>())
                    .add(new Numbered(i + 1, note, labels.get(i)));
        }
        List<Stop> stops = new ArrayList<>();
        for (Map<String, List<Numbered>> places : walk.values()) {
            places.forEach((where, there) -> stops.add(new Stop(stops.size() + 1, where, there)));
        }
        return stops;
    }

    private double title(List<Mark> marks, double width) {
        TextStyle style = LabelBlocks.style(LabelPart.Voice.LARGE, cap);
        return new LabelBlocks(cap, Dots.DPI_300, marks)
                        .text(List.of(words.sentence("labels.sheet.map")), style, 0, 0, width)
                + GAP;
    }

    private Piece row(Row row, double top) {
        List<Mark> marks = new ArrayList<>();
        double end = top;
        double x = 0;
        for (int i = 0; i < row.stops().size(); i++) {
            Piece stop = stop(row.stops().get(i), x, top, row.widths().get(i));
            marks.addAll(stop.marks());
            end = Math.max(end, stop.end());
            x += row.widths().get(i) + GAP;
        }
        double left = 0;
        for (double width : row.widths()) {
            marks.add(Panel.outlined(new Box(left, top, width, end - top), Colour.BLACK, 0.3));
            left += width + GAP;
        }
        return new Piece(marks, end);
    }

    /** One place: its number on the walk, where it is, and the labels that go there. */
    private Piece stop(Stop stop, double left, double top, double width) {
        List<Mark> marks = new ArrayList<>();
        LabelBlocks blocks = new LabelBlocks(cap, Dots.DPI_300, marks);
        String name = words.say("labels.sheet.caption", stop.number(), stop.where());
        double y = blocks.text(List.of(name), heading, left + GAP, top + GAP, width - 2 * GAP) + GAP;
        double x = left + GAP;
        double end = y;
        for (Numbered label : stop.labels()) {
            double cell = cellWidth(label);
            if (x + cell > left + width - GAP + LabelSetter.SLACK && x > left + GAP) {
                x = left + GAP;
                y = end + GAP;
            }
            end = Math.max(end, cell(blocks, marks, label, x, y, cell));
            x += cell + GAP;
        }
        return new Piece(marks, end + GAP);
    }

    private double cell(LabelBlocks blocks, List<Mark> marks, Numbered it, double x, double y, double width) {
        marks.addAll(small(it.label(), x, y));
        double below = y + it.label().height() * SCALE + 1;
        marks.add(Panel.outlined(new Box(x, below, TICK, TICK), Colour.BLACK, 0.3));
        return blocks.text(List.of(title(it)), caption, x + TICK_ROOM, below, width - TICK_ROOM);
    }

    /** A label without its letters: they would be too small to be read. */
    private static List<Mark> small(Label label, double x, double y) {
        List<Mark> small = new ArrayList<>();
        for (Mark mark : label.marks()) {
            Box box = mark.box();
            Box to = new Box(x + box.x() * SCALE, y + box.y() * SCALE, box.width() * SCALE, box.height() * SCALE);
            if (mark instanceof Panel panel && panel.fill() != null) {
                small.add(Panel.filled(to, panel.fill()));
            } else if (mark instanceof Picture picture) {
                small.add(new Picture(to, picture.svg()));
            } else if (mark instanceof Code) {
                small.add(Panel.filled(to, LabelBlocks.GREY));
            }
        }
        small.add(Panel.outlined(new Box(x, y, label.width() * SCALE, label.height() * SCALE), LabelBlocks.GREY, 0.2));
        return small;
    }
}
