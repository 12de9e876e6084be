package org.quaybook.render;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/**
 * What a pen leaves that is drawn along an outline, as a shape to fill: JDKs agree to the dot on how a shape is filled, but
 * not on where a curved pen stroke ends.
 */
final class Pen {

    /** Cosine of the turn below which two pieces are pieces of one curve, for which any join looks the same: 10°. */
    private static final double STRAIGHT_ON = 0.985;

    private final double half;
    private final BasicStroke stroke;
    private final double flatness;
    private final Path2D left = new Path2D.Double(Path2D.WIND_NON_ZERO);

    private Pen(BasicStroke stroke, double flatness) {
        this.half = stroke.getLineWidth() / 2.0;
        this.stroke = stroke;
        this.flatness = flatness;
    }

    private record Point(double x, double y) {

        Point plus(Point other, double times) {
            return new Point(x + times * other.x, y + times * other.y);
        }

        /** From here to there, 1 long. */
        Point towards(Point there) {
            double away = Math.sqrt((there.x - x) * (there.x - x) + (there.y - y) * (there.y - y));
            return new Point((there.x - x) / away, (there.y - y) / away);
        }

        Point across() {
            return new Point(-y, x);
        }

        double dot(Point other) {
            return x * other.x + y * other.y;
        }

        double cross(Point other) {
            return x * other.y - y * other.x;
        }
    }

    /**
     * What a pen leaves.
     *
     * @param stroke its width, ends and joins; dashes are not drawn here
     * @param flatness most that a straight piece may keep from a curve
     */
    static Shape along(Shape outline, BasicStroke stroke, double flatness) {
        Pen pen = new Pen(stroke, flatness);
        List<Point> points = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator path = outline.getPathIterator(null, flatness); !path.isDone(); path.next()) {
            int step = path.currentSegment(at);
            if (step == PathIterator.SEG_CLOSE) {
                pen.draw(points, true);
                Point first = points.isEmpty() ? new Point(0, 0) : points.get(0);
                points.clear();
                points.add(first);
            } else {
                if (step == PathIterator.SEG_MOVETO) {
                    pen.draw(points, false);
                    points.clear();
                }
                points.add(new Point(at[0], at[1]));
            }
        }
        pen.draw(points, false);
        return pen.left;
    }

    private void draw(List<Point> drawn, boolean closed) {
        List<Point> points = new ArrayList<>();
        for (Point point : drawn) {
            if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                points.add(point);
            }
        }
        if (closed && points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        int count = points.size();
        if (count == 1 && drawn.size() > 1) {
            dot(points.get(0));
        }
        if (count < 2) {
            return;
        }
        int pieces = closed ? count : count - 1;
        for (int i = 0; i < pieces; i++) {
            piece(points.get(i), points.get((i + 1) % count));
        }
        for (int i = closed ? 0 : 1; i < pieces; i++) {
            join(points.get((i + count - 1) % count), points.get(i), points.get((i + 1) % count));
        }
        if (!closed) {
            end(points.get(1), points.get(0));
            end(points.get(count - 2), points.get(count - 1));
        }
    }

    private void piece(Point from, Point to) {
        Point aside = from.towards(to).across();
        add(from.plus(aside, half), from.plus(aside, -half), to.plus(aside, -half), to.plus(aside, half));
    }

    private void join(Point before, Point at, Point after) {
        Point in = before.towards(at);
        Point out = at.towards(after);
        boolean corner = in.dot(out) < STRAIGHT_ON;
        if (corner && stroke.getLineJoin() == BasicStroke.JOIN_ROUND) {
            round(at);
            return;
        }
        double outer = in.cross(out) > 0 ? -half : half;
        Point one = at.plus(in.across(), outer);
        Point other = at.plus(out.across(), outer);
        // Of the angle between the two pieces, halved: the tip is 1 / sine times half the width away.
        double sine = Math.sqrt(Math.max(0, (1 + in.dot(out)) / 2));
        if (corner && stroke.getLineJoin() == BasicStroke.JOIN_MITER && sine * stroke.getMiterLimit() >= 1) {
            Point middle = new Point((one.x() + other.x()) / 2, (one.y() + other.y()) / 2);
            add(at, one, at.plus(at.towards(middle), half / sine), other);
        } else {
            add(at, one, other);
        }
    }

    private void end(Point before, Point at) {
        if (stroke.getEndCap() == BasicStroke.CAP_ROUND) {
            round(at);
        } else if (stroke.getEndCap() == BasicStroke.CAP_SQUARE) {
            piece(at, at.plus(before.towards(at), half));
        }
    }

    /** A line of no length. */
    private void dot(Point at) {
        if (stroke.getEndCap() == BasicStroke.CAP_ROUND) {
            round(at);
        } else if (stroke.getEndCap() == BasicStroke.CAP_SQUARE) {
            piece(new Point(at.x() - half, at.y()), new Point(at.x() + half, at.y()));
        }
    }

    private void round(Point at) {
        List<Point> circle = new ArrayList<>();
        double[] point = new double[6];
        Shape shape = new Ellipse2D.Double(at.x() - half, at.y() - half, 2 * half, 2 * half);
        for (PathIterator path = shape.getPathIterator(null, flatness); !path.isDone(); path.next()) {
            if (path.currentSegment(point) != PathIterator.SEG_CLOSE) {
                circle.add(new Point(point[0], point[1]));
            }
        }
        add(circle.toArray(Point[]::new));
    }

    /** All in one sense of rotation, so that where pieces overlap they do not cancel each other. */
    private void add(Point... corners) {
        double area = 0;
        for (int i = 0; i < corners.length; i++) {
            area += corners[i].cross(corners[(i + 1) % corners.length]);
        }
        for (int i = 0; i < corners.length; i++) {
            Point corner = corners[area < 0 ? corners.length - 1 - i : i];
            if (i == 0) {
                left.moveTo(corner.x(), corner.y());
            } else {
                left.lineTo(corner.x(), corner.y());
            }
        }
        left.closePath();
    }
}
