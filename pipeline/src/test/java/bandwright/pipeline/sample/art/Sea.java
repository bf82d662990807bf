package bandwright.pipeline.sample.art;

import java.awt.geom.Path2D;

/** Rows of waves that lean to the right, each with its line of foam. */
final class Sea {
    private Sea() {}

    /** Waves of that length and height from y down to the bottom of the picture. */
    static void row(Canvas c, int ink, int foam, double y, double length, double height, double shift) {
        Path2D water = crest(c.width(), y, length, height, shift);
        water.lineTo(c.width() + 500, c.height() + 100);
        water.lineTo(-500, c.height() + 100);
        water.closePath();
        c.fill(ink, water);
        c.line(foam, 4 + height / 9, crest(c.width(), y, length, height, shift));
    }

    static Path2D crest(double width, double y, double length, double height, double shift) {
        Path2D path = new Path2D.Double();
        double x = -length + shift % length - length;
        path.moveTo(x, y);
        for (; x < width + length; x += length) {
            path.curveTo(
                    x + length * 0.32, y - height * 0.2, x + length * 0.5, y - height, x + length * 0.74, y - height);
            path.curveTo(x + length * 0.66, y - height * 0.5, x + length * 0.8, y, x + length, y);
        }
        return path;
    }
}
