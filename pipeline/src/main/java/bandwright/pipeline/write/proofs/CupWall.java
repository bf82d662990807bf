package bandwright.pipeline.write.proofs;

import bandwright.rules.blanks.Body;

/**
 * What stands behind each point of a round blank's view, seen a little from above: a place on its wall, its inside beyond
 * the rim, or the ground. It is the same from every side, so it is worked out once for all of them.
 */
final class CupWall {
    static final double TILT = Math.toRadians(9);

    /** Points that are looked up for one pixel, each way. */
    static final int FINE = 2;

    private static final double SIN = Math.sin(TILT);
    private static final double COS = Math.cos(TILT);

    /** Steps towards the height of a point; the third changes nothing that is seen. */
    private static final int STEPS = 5;

    /** Instead of an angle. */
    private static final double INSIDE = Double.POSITIVE_INFINITY;

    private static final double GROUND = Double.NaN;

    private final Body body;
    private final int left;
    private final int first;
    private final int columns;
    private final double[] angles;
    private final double[] fromTop;

    /**
     * Works it out.
     *
     * @param rim how far down the middle of the rim stands, in pixels
     */
    CupWall(Body body, double rim, double perMm) {
        this.body = body;
        int right = (int) Math.ceil(width(body) / 2 * perMm);
        left = (int) Math.floor(-width(body) / 2 * perMm);
        first = (int) Math.floor(rim - rimBelowTop(body) * perMm);
        columns = FINE * (right - left);
        angles = new double[columns * FINE * ((int) Math.ceil(height(body) * perMm) + 1)];
        fromTop = new double[angles.length];
        boolean isStraight = body.rimRadius() == body.footRadius();
        for (int i = 0; i < columns; i++) {
            double x = (left + (i + 0.5) / FINE) / perMm;
            double depth = depth(x, body.rimRadius());
            double angle = Math.atan2(x, depth);
            for (int at = i, row = 0; at < angles.length; at += columns, row++) {
                double down = (first + (row + 0.5) / FINE - rim) / perMm;
                if (isStraight) {
                    look(at, x, down, depth, angle);
                } else {
                    double leaning = leaningDepth(x, down);
                    look(at, x, down, leaning, Math.atan2(x, leaning));
                }
            }
        }
    }

    /** The height of the view of a body in millimetres. */
    static double height(Body body) {
        return body.height() * COS + (body.rimRadius() + body.footRadius()) * SIN;
    }

    /** The width without a handle, in millimetres. */
    static double width(Body body) {
        return 2 * Math.max(body.rimRadius(), body.footRadius());
    }

    /** How far below the top of the view the middle of the rim stands, in millimetres. */
    static double rimBelowTop(Body body) {
        return body.rimRadius() * SIN;
    }

    /** The first column of pixels, from the axis. */
    int left() {
        return left;
    }

    /** The first row of pixels. */
    int first() {
        return first;
    }

    /** How many columns of pixels. */
    int width() {
        return columns / FINE;
    }

    /** How many rows of pixels. */
    int height() {
        return angles.length / columns / FINE;
    }

    /** The number of a point; both counted in points. */
    int number(int column, int row) {
        return row * columns + column;
    }

    boolean isWall(int number) {
        return Math.abs(angles[number]) < INSIDE;
    }

    boolean isInside(int number) {
        return angles[number] == INSIDE;
    }

    /** Of a place on the wall, from the middle of what is seen. */
    double angle(int number) {
        return angles[number];
    }

    /** How far a place on the wall lies below the top of what is printed; not a number where nothing is printed. */
    double fromTop(int number) {
        return fromTop[number];
    }

    private void look(int number, double x, double down, double depth, double angle) {
        double y = heightAt(down, depth);
        double back = down / SIN;
        angles[number] = GROUND;
        if (y >= 0 && y <= body.height() && Math.abs(x) <= body.radius(y)) {
            angles[number] = angle;
            fromTop[number] = body.fromTop(y);
        } else if (x * x + back * back <= body.rimRadius() * body.rimRadius()) {
            angles[number] = INSIDE;
        }
    }

    private double leaningDepth(double x, double down) {
        double y = heightAt(down, 0);
        double depth = 0;
        for (int i = 0; i < STEPS; i++) {
            depth = depth(x, body.radius(Math.max(0, Math.min(body.height(), y))));
            y = heightAt(down, depth);
        }
        return depth;
    }

    /** How far before its axis a wall of that radius stands. */
    private static double depth(double x, double radius) {
        return Math.sqrt(Math.max(0, radius * radius - x * x));
    }

    private double heightAt(double down, double depth) {
        return body.height() - (down - depth * SIN) / COS;
    }
}
