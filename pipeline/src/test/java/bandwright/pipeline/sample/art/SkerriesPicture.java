package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Canvas.round;
import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.blob;
import static bandwright.pipeline.sample.art.Shapes.box;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.path;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Locale;
import java.util.SplittableRandom;

/** A chart of the skerries off Quillmoor with soundings, drawn anew for the shape of the cup. */
final class SkerriesPicture {
    private static final int MIDDLE = 0x3B7F89;

    /** Middle as share of the sheet, half axes in units, wildness in hundredths, seed. */
    private static final double[][] ISLANDS = {
        {0.22, 0.42, 235, 165, 11, 2},
        {0.43, 0.66, 120, 90, 12, 5},
        {0.50, 0.24, 95, 62, 10, 11},
        {0.66, 0.50, 150, 118, 13, 8},
        {0.60, 0.86, 70, 46, 10, 4},
        {0.86, 0.22, 130, 84, 12, 14},
        {0.08, 0.84, 92, 60, 11, 6},
        {0.30, 0.88, 44, 32, 8, 9},
        {0.37, 0.12, 42, 30, 8, 3},
    };

    private final Canvas c;
    private final double grown;
    private final Path2D land = new Path2D.Double();
    private final Shape wading;
    private final Shape near;
    private final Shape far;

    private SkerriesPicture(Canvas c) {
        this.c = c;
        grown = Math.sqrt(c.width() * c.height() / 2_250_000);
        for (double[] island : ISLANDS) {
            land.append(
                    blob(
                            island[0] * c.width(),
                            island[1] * c.height(),
                            island[2] * grown,
                            island[3] * grown,
                            island[4] / 100,
                            (int) island[5]),
                    false);
        }
        wading = shelf(62);
        near = shelf(150);
        far = shelf(260);
    }

    static Canvas draw(double width, double height, double scale) {
        SkerriesPicture picture = new SkerriesPicture(Canvas.on(Ink.SEA, width, height, scale));
        picture.depths();
        picture.islands();
        picture.soundings();
        picture.ferry();
        picture.light(0.22, 0.42);
        picture.compass(0.86, 0.72);
        picture.whale(0.675, 0.14);
        return picture.c;
    }

    private void depths() {
        c.dots(Ink.NIGHT, 16, c.all(), (x, y) -> 0.16);
        c.line(Ink.CREAM, 260 * grown + 5, land).line(MIDDLE, 260 * grown, land);
        c.line(Ink.CREAM, 150 * grown + 5, land).line(Ink.SHALLOW, 150 * grown, land);
        c.line(Ink.CREAM, 62 * grown + 5, land).line(Ink.HAZE, 62 * grown, land);
        for (int i = 1; i < 6; i++) {
            c.fill(Ink.SHALLOW, box(c.width() * i / 6, 0, 2, c.height()));
        }
        for (int i = 1; i < 3; i++) {
            c.fill(Ink.SHALLOW, box(0, c.height() * i / 3, c.width(), 2));
        }
    }

    /** The land and the water round it, as far out as half that width. */
    private Shape shelf(double wide) {
        Path2D shelf = new Path2D.Double(round(wide * grown).createStrokedShape(land));
        shelf.append(land, false);
        return shelf;
    }

    private void islands() {
        c.fill(Ink.CREAM, land);
        for (double[] island : ISLANDS) {
            for (double part : new double[] {0.7, 0.4}) {
                Shape hill = blob(
                        island[0] * c.width() - 6,
                        island[1] * c.height() - 6,
                        island[2] * grown * part,
                        island[3] * grown * part,
                        island[4] / 110,
                        (int) island[5]);
                c.dots(Ink.LAMP, 12, hill, (x, y) -> part == 0.7 ? 0.35 : 0.2);
                c.line(Ink.LAMP, 4, hill);
            }
        }
        c.line(Ink.NIGHT, 8, land);
    }

    private void soundings() {
        SplittableRandom random = new SplittableRandom(1873);
        double step = 118 * grown;
        for (double y = step / 2; y < c.height(); y += step) {
            for (double x = step / 2; x < c.width(); x += step) {
                double px = x + (random.nextDouble() - 0.5) * step * 0.7;
                double py = y + (random.nextDouble() - 0.5) * step * 0.7;
                int chance = random.nextInt(10);
                if (wading.intersects(px - 40, py - 30, 80, 60) || taken(px, py)) {
                    continue;
                }
                boolean shallow = near.contains(px, py);
                if (chance == 0) {
                    c.line(Ink.CORAL, 6, at(px, py, 1, 0, path("M-12 0 L12 0 M0 -12 L0 12")));
                } else {
                    int fathoms = shallow ? 2 + chance : far.contains(px, py) ? 9 + chance : 17 + 2 * chance;
                    Numerals.draw(c, shallow ? Ink.NIGHT : Ink.HAZE, String.valueOf(fathoms), px, py, 23, 0);
                }
            }
        }
    }

    private boolean taken(double x, double y) {
        return Point2D.distance(x, y, 0.86 * c.width(), 0.72 * c.height()) < 225 * grown
                || Point2D.distance(x, y, 0.675 * c.width(), 0.14 * c.height()) < 130 * grown;
    }

    private void ferry() {
        double w = c.width();
        double h = c.height();
        Shape course = path(String.format(
                Locale.ROOT,
                "M%.0f %.0f C%.0f %.0f %.0f %.0f %.0f %.0f",
                w * 0.335,
                h * 0.46,
                w * 0.41,
                h * 0.34,
                w * 0.48,
                h * 0.44,
                w * 0.585,
                h * 0.52));
        c.fill(Ink.CORAL, new BasicStroke(9, 1, 1, 1, new float[] {2, 22}, 0).createStrokedShape(course));
    }

    private void light(double across, double down) {
        double x = across * c.width();
        double y = down * c.height();
        for (int i = 0; i < 24; i++) {
            c.line(Ink.LAMP, 9, at(x, y, grown, i * 15, path(i % 2 == 0 ? "M110 0 L180 0" : "M110 0 L136 0")));
        }
        c.fill(Ink.CREAM, disc(x, y, 100 * grown)).line(Ink.NIGHT, 7, disc(x, y, 100 * grown));
        Shape tower = at(x, y, grown, 0, path("M-26 76 L26 76 L17 -34 L-17 -34 Z"));
        c.fill(Ink.CORAL, tower);
        c.within(Ink.CREAM, at(x, y, grown, 0, box(-30, 12, 60, 26)), tower);
        c.fill(Ink.NIGHT, at(x, y, grown, 0, box(-26, -42, 52, 10)))
                .fill(Ink.LAMP, at(x, y, grown, 0, box(-14, -66, 28, 24)));
        c.fill(Ink.NIGHT, at(x, y, grown, 0, path("M-20 -64 L0 -88 L20 -64 Z")));
    }

    private void compass(double across, double down) {
        double x = across * c.width();
        double y = down * c.height();
        c.fill(Ink.NIGHT, disc(x, y, 190 * grown))
                .line(Ink.CREAM, 6, disc(x, y, 176 * grown))
                .line(Ink.SHALLOW, 4, disc(x, y, 120 * grown));
        for (int i = 0; i < 72; i++) {
            c.line(Ink.CREAM, 4, at(x, y, grown, i * 5, path(i % 6 == 0 ? "M150 0 L174 0" : "M164 0 L174 0")));
        }
        for (int half : new int[] {45, 0}) {
            for (int i = 0; i < 4; i++) {
                double reach = half == 0 ? 1 : 0.66;
                c.fill(
                        half == 0 ? Ink.CREAM : Ink.SHALLOW,
                        at(x, y, grown * reach, 90 * i + half, path("M0 0 L0 -150 L-30 -30 Z")));
                c.fill(
                        half == 0 ? Ink.CORAL : Ink.SEA,
                        at(x, y, grown * reach, 90 * i + half, path("M0 0 L0 -150 L30 -30 Z")));
            }
        }
        c.fill(Ink.LAMP, disc(x, y, 15 * grown));
        c.fill(Ink.LAMP, at(x, y, grown, 0, path("M0 -226 L22 -182 L0 -194 L-22 -182 Z")));
    }

    private void whale(double across, double down) {
        double x = across * c.width();
        double y = down * c.height();
        c.fill(
                Ink.NIGHT,
                at(
                        x,
                        y,
                        grown,
                        0,
                        path(
                                "M-96 14 C-90 -40 -10 -56 50 -18 C72 -4 84 -14 84 -40 C70 -46 62 -56 62 -70 C82 -72 94 -64 100 -54 "
                                        + "C108 -66 122 -72 138 -68 C136 -54 126 -44 112 -40 C116 10 84 42 30 46 C-40 50 -92 46 -96 14 Z")));
        c.fill(Ink.CREAM, at(x, y, grown, 0, path("M-95 18 C-60 30 -20 30 10 44 C-50 50 -92 44 -95 18 Z")))
                .fill(Ink.CREAM, at(x, y, grown, 0, disc(-56, -2, 6)));
        c.line(
                Ink.CREAM,
                7,
                at(x, y, grown, 0, path("M-40 -52 C-40 -80 -60 -92 -76 -84 M-40 -52 C-40 -84 -20 -96 -4 -86")));
    }
}
