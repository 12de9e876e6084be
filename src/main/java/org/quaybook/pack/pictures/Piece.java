package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a drawing is made of, in the order of drawing. */
sealed interface Piece {

    /** All of it; empty if nothing is drawn. */
    default String svg() {
        return "";
    }

    /** What of it stands in a part of the drawing; empty if nothing does. */
    default String svg(Part part) {
        return "";
    }

    /** The stretches from top to bottom that no cut may lie in. */
    default Stream<Span> held() {
        return Stream.empty();
    }

    /** The lines that a cut may lie across. */
    default Stream<Line> lines() {
        return Stream.empty();
    }

    /** A stretch from top to bottom. */
    record Span(double top, double bottom) {

        /** Around a middle. */
        static Span around(double y, double half) {
            return new Span(y - half, y + half);
        }

        Span with(Span other) {
            return new Span(Math.min(top, other.top), Math.max(bottom, other.bottom));
        }
    }

    /**
     * A part of a drawing, from cut to cut.
     *
     * @param beyond how far lines that go on are drawn beyond a cut
     */
    record Part(double top, double bottom, double beyond) {}

    /** Where a drawing is best cut: between two things that stand for themselves. */
    record Seam(double y) implements Piece {}

    /** What is never cut: a text, a shape, a symbol. */
    record Whole(Span span, String svg) implements Piece {

        @Override
        public String svg(Part part) {
            double middle = (span.top() + span.bottom()) / 2;
            return middle >= part.top() && middle < part.bottom() ? svg : "";
        }

        @Override
        public Stream<Span> held() {
            return Stream.of(span);
        }
    }

    /** The room of several pieces that must stay together. */
    record Held(Span span) implements Piece {

        @Override
        public Stream<Span> held() {
            return Stream.of(span);
        }
    }

    /** Where a line turns. */
    record Corner(double x, double y) {}

    /** A line from corner to corner. */
    record Line(Pen pen, String colour, List<Corner> corners) implements Piece {

        /** How near to a level stretch a cut may lie. */
        private static final double CLEAR = 1;

        public Line {
            corners = List.copyOf(corners);
        }

        @Override
        public String svg() {
            return path(corners);
        }

        /** A straight line has no corner to round, and the record's page stays light without saying so. */
        private String path(List<Corner> path) {
            StringBuilder svg = new StringBuilder();
            for (Corner corner : path) {
                svg.append(svg.isEmpty() ? "M" : "L").append(Drawing.point(corner.x(), corner.y()));
            }
            return "<path d=\"" + svg + "\" fill=\"none\"" + Drawing.stroke(pen, colour)
                    + (path.size() > 2 ? " stroke-linejoin=\"round\"/>\n" : "/>\n");
        }

        @Override
        public String svg(Part part) {
            StringBuilder svg = new StringBuilder();
            List<Corner> path = new ArrayList<>();
            for (int i = 1; i < corners.size(); i++) {
                Corner from = corners.get(i - 1);
                Corner to = corners.get(i);
                if (Math.max(from.y(), to.y()) <= part.top() || Math.min(from.y(), to.y()) >= part.bottom()) {
                    continue;
                }
                Corner begin = within(from, to, part);
                if (!path.isEmpty() && !path.get(path.size() - 1).equals(begin)) {
                    svg.append(path(path));
                    path.clear();
                }
                if (path.isEmpty()) {
                    path.add(begin);
                }
                path.add(within(to, from, part));
            }
            return path.isEmpty() ? svg.toString() : svg.append(path(path)).toString();
        }

        /** The end of a stretch, or where it leaves the part. */
        private static Corner within(Corner end, Corner other, Part part) {
            if (end.y() < part.top()) {
                return at(end, other, part.top() - part.beyond());
            }
            return end.y() > part.bottom() ? at(end, other, part.bottom() + part.beyond()) : end;
        }

        private static Corner at(Corner end, Corner other, double y) {
            double x = end.x() + (other.x() - end.x()) * (y - end.y()) / (other.y() - end.y());
            return new Corner(x, y);
        }

        /** Where it runs across a height; nowhere for most lines. */
        Stream<Double> across(double y) {
            return IntStream.range(1, corners.size())
                    .filter(i -> (corners.get(i - 1).y() < y) != (corners.get(i).y() < y))
                    .mapToObj(i -> at(corners.get(i - 1), corners.get(i), y).x());
        }

        @Override
        public Stream<Span> held() {
            return IntStream.range(1, corners.size())
                    .filter(i -> corners.get(i - 1).x() != corners.get(i).x())
                    .mapToObj(i -> new Span(
                            Math.min(corners.get(i - 1).y(), corners.get(i).y()) - CLEAR,
                            Math.max(corners.get(i - 1).y(), corners.get(i).y()) + CLEAR));
        }

        @Override
        public Stream<Line> lines() {
            return Stream.of(this);
        }

        /** The same as a piece that is never cut. */
        Whole whole() {
            return new Whole(extent(), svg());
        }

        private Span extent() {
            return corners.stream()
                    .map(corner -> new Span(corner.y(), corner.y()))
                    .reduce(Span::with)
                    .orElseThrow();
        }
    }

    /** Pieces that stand for something. */
    record Group(String opening, List<Piece> pieces) implements Piece {

        private static final String CLOSING = "</g>\n";

        public Group {
            pieces = List.copyOf(pieces);
        }

        @Override
        public String svg() {
            StringBuilder svg = new StringBuilder(opening);
            pieces.forEach(piece -> svg.append(piece.svg()));
            return svg.append(CLOSING).toString();
        }

        @Override
        public String svg(Part part) {
            StringBuilder svg = new StringBuilder();
            pieces.forEach(piece -> svg.append(piece.svg(part)));
            return svg.isEmpty() ? "" : opening + svg + CLOSING;
        }

        @Override
        public Stream<Span> held() {
            return pieces.stream().flatMap(Piece::held);
        }

        @Override
        public Stream<Line> lines() {
            return pieces.stream().flatMap(Piece::lines);
        }

        /** The same as one piece that is never cut. */
        Whole whole() {
            Span span =
                    pieces.stream().flatMap(Group::extent).reduce(Span::with).orElse(new Span(0, 0));
            return new Whole(span, svg());
        }

        private static Stream<Span> extent(Piece piece) {
            return piece instanceof Line line ? Stream.of(line.extent()) : piece.held();
        }
    }
}
