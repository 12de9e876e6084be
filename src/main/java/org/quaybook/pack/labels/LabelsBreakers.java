package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.quaybook.job.AcBoard;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Given;
import org.quaybook.job.Rcd;
import org.quaybook.render.Box;
import org.quaybook.render.Dots;
import org.quaybook.render.Fitting;
import org.quaybook.render.Label;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.RenderException;
import org.quaybook.render.TextBlock;
import org.quaybook.render.TextFitter;
import org.quaybook.render.TextStyle;
import org.quaybook.render.Turn;

/**
 * The strip along the breakers of the AC board, each field as wide as its breaker, so that it cannot slip against them.
 * The order is that of the job: each RCD with its circuits, then circuits without one.
 */
final class LabelsBreakers {

    /** Width of one way, millimetres (DIN 43880 module, from memory). */
    private static final double USUAL_PITCH = 17.5;

    /** An RCD, and a breaker that opens neutral too, takes two ways. Common practice, no source. */
    private static final int TWO_WAYS = 2;

    private static final double LOWEST = 15;

    /** Free above a row of breakers: rows are some 125 mm apart, fronts 45 mm high. Common practice, no source. */
    private static final double HIGHEST = 75;

    private static final double STEP = 0.5;

    /** Between text and the edge of its way. */
    private static final double EDGE = 1;

    private static final double GAP = 1.2;
    private static final double HAIR = 0.1;
    private static final double GREATEST_PITCH = 60;
    private static final double MILLIMETRES = 1000;

    private final LabelFacts facts;
    private final String board;

    LabelsBreakers(LabelFacts facts, String board) {
        this.facts = facts;
        this.board = board;
    }

    /**
     * What one breaker has over it.
     *
     * @param ways how many ways it takes
     */
    private record Way(String id, String what, String rating, int ways) {}

    List<LabelDesign> designs() {
        List<Way> ways = ways();
        if (ways.isEmpty()) {
            return List.of();
        }
        double pitch = pitch();
        double height = height(ways, pitch);
        List<List<Way>> pieces = pieces(ways, pitch);
        List<LabelDesign> designs = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            designs.add(piece(pieces.size() == 1 ? "breakers" : "breakers-" + (i + 1), pieces.get(i), pitch, height));
        }
        return designs;
    }

    private double pitch() {
        AcBoard acBoard = facts.job().acBoard();
        return acBoard == null
                ? USUAL_PITCH
                : Given.maybe(acBoard.wayPitch())
                        .map(length -> length.metres() * MILLIMETRES)
                        .orElse(USUAL_PITCH);
    }

    private List<Way> ways() {
        List<Way> ways = new ArrayList<>();
        List<AcCircuit> circuits = facts.job().acCircuits();
        for (Rcd rcd : facts.job().rcds()) {
            String type = facts.say(
                    "rcd.what",
                    facts.given(rcd.rating()).orElse(""),
                    facts.given(rcd.type()).orElse(""));
            ways.add(new Way(rcd.id(), facts.say("breakers.rcd"), type, TWO_WAYS));
            circuits.stream()
                    .filter(circuit -> rcd.id().equals(circuit.rcd()))
                    .map(this::way)
                    .forEach(ways::add);
        }
        circuits.stream()
                .filter(circuit -> circuit.rcd() == null)
                .map(this::way)
                .forEach(ways::add);
        return ways;
    }

    private Way way(AcCircuit circuit) {
        String rating = facts.given(circuit.curve()).orElse("")
                + facts.given(circuit.breaker()).orElse("");
        return new Way(circuit.id(), circuit.name(), rating, Given.isYes(circuit.twoPole()) ? TWO_WAYS : 1);
    }

    private static TextStyle style(LabelPart.Voice voice) {
        return LabelBlocks.style(voice, LabelReading.HAND.cap());
    }

    /** Least height at which a way can be read, upright or with its name turned; more than the highest strip if none. */
    private static double least(Way way, double pitch) {
        return Math.min(upright(way, pitch), turned(way, pitch));
    }

    private static double upright(Way way, double pitch) {
        LabelBlocks blocks = new LabelBlocks(LabelReading.HAND.cap(), Dots.DPI_300, new ArrayList<>());
        double end = upright(blocks, way, 0, way.ways() * pitch);
        return blocks.tooWide().isEmpty() ? end : Double.MAX_VALUE;
    }

    private static double upright(LabelBlocks blocks, Way way, double x, double width) {
        double room = width - 2 * EDGE;
        double y = blocks.text(List.of(way.id()), style(LabelPart.Voice.STRONG), x + EDGE, EDGE, room) + GAP;
        y = blocks.text(List.of(way.what()), style(LabelPart.Voice.PLAIN), x + EDGE, y, room) + GAP;
        return blocks.text(List.of(way.rating()), style(LabelPart.Voice.STRONG), x + EDGE, y, room) + EDGE;
    }

    private static double turned(Way way, double pitch) {
        return DoubleStream.iterate(LOWEST, height -> height <= HIGHEST, height -> height + STEP)
                .filter(height -> turned(way, pitch, height))
                .findFirst()
                .orElse(Double.MAX_VALUE);
    }

    private static boolean turned(Way way, double pitch, double height) {
        return TextFitter.fit(id(way, 0, way.ways() * pitch)) instanceof Fitting.Fits
                && TextFitter.fit(name(way, 0, way.ways() * pitch, height)) instanceof Fitting.Fits;
    }

    private static TextBlock id(Way way, double x, double width) {
        double cap = LabelReading.HAND.cap();
        return TextBlock.of(
                new Box(x + EDGE, EDGE, width - 2 * EDGE, cap * 1.5), way.id(), style(LabelPart.Voice.STRONG));
    }

    private static TextBlock name(Way way, double x, double width, double height) {
        double top = EDGE + LabelReading.HAND.cap() * 1.5 + GAP;
        Box box = new Box(x + EDGE, top, width - 2 * EDGE, height - top - EDGE);
        return new TextBlock(
                box, List.of(way.what() + "\n" + way.rating()), style(LabelPart.Voice.PLAIN), Turn.QUARTER);
    }

    /**
     * Height of the whole strip.
     *
     * @throws RenderException if a way cannot be read at this pitch; it names the least pitch that would do
     */
    private static double height(List<Way> ways, double pitch) {
        double height = LOWEST;
        for (Way way : ways) {
            double least = least(way, pitch);
            if (least > HIGHEST) {
                throw refusal(way, pitch);
            }
            height = Math.max(height, least);
        }
        return height;
    }

    private static RenderException refusal(Way way, double pitch) {
        double enough = DoubleStream.iterate(pitch, wider -> wider <= GREATEST_PITCH, wider -> wider + STEP)
                .filter(wider -> least(way, wider) <= HIGHEST)
                .findFirst()
                .orElse(GREATEST_PITCH);
        LabelBlocks.TooWide text = new LabelBlocks.TooWide(way.what(), pitch, enough);
        return LabelBlocks.refusal("breakers, " + way.id(), text, HIGHEST);
    }

    /** As many ways on each piece as the widest label has room for; the joints lie between ways. */
    private static List<List<Way>> pieces(List<Way> ways, double pitch) {
        double widest = LabelRoom.WIDTHS.get(LabelRoom.WIDTHS.size() - 1);
        List<List<Way>> pieces = new ArrayList<>();
        List<Way> piece = new ArrayList<>();
        double width = 0;
        for (Way way : ways) {
            if (width + way.ways() * pitch > widest) {
                pieces.add(List.copyOf(piece));
                piece.clear();
                width = 0;
            }
            piece.add(way);
            width += way.ways() * pitch;
        }
        pieces.add(List.copyOf(piece));
        return pieces;
    }

    private LabelDesign piece(String id, List<Way> ways, double pitch, double height) {
        List<List<String>> rows = ways.stream()
                .map(way -> List.of(way.id(), way.what(), way.rating()))
                .toList();
        String first = ways.get(0).id();
        String last = ways.get(ways.size() - 1).id();
        return LabelDesign.of(
                        id,
                        LabelReason.BREAKERS,
                        LabelSpot.BREAKERS,
                        board,
                        LabelReading.HAND,
                        facts.say("breakers.title", first, last))
                .with(new LabelPart.Grid(List.of(), rows, 1, true))
                .drawnBy(words -> draw(words, ways, pitch, height));
    }

    /** @param least height that it has at least: that of the other pieces */
    private static Label draw(LabelDesign words, List<Way> widths, double pitch, double least) {
        List<Way> ways = said(words, widths);
        double height = Math.max(least, height(ways, pitch));
        List<Mark> marks = new ArrayList<>();
        double x = 0;
        for (Way way : ways) {
            double width = way.ways() * pitch;
            if (upright(way, pitch) <= height) {
                upright(new LabelBlocks(LabelReading.HAND.cap(), Dots.DPI_300, marks), way, x, width);
            } else {
                marks.add(id(way, x, width));
                marks.add(name(way, x, width, height));
            }
            x += width;
            if (x < ways.stream().mapToInt(Way::ways).sum() * pitch - HAIR) {
                marks.add(Panel.filled(new Box(x - HAIR / 2, 0, HAIR, height), SignColours.BLACK));
            }
        }
        marks.add(Panel.outlined(new Box(0, 0, x, height), SignColours.BLACK, HAIR));
        return new Label(words.id(), x, height, marks);
    }

    /** The same ways in the words of a design. */
    private static List<Way> said(LabelDesign words, List<Way> ways) {
        LabelPart.Grid grid = (LabelPart.Grid) words.parts().get(0);
        return IntStream.range(0, ways.size())
                .mapToObj(i -> {
                    List<String> row = grid.rows().get(i);
                    return new Way(
                            row.get(0), row.get(1), row.get(2), ways.get(i).ways());
                })
                .toList();
    }
}
