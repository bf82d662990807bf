package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.path;

import java.awt.Shape;

/** Herring, all one way but one; the left end carries on at the right, so that it closes round a cup of any size. */
final class ShoalPicture {
    private static final double ROW = 128;

    private ShoalPicture() {}

    /** Of that many fish a row and that many rows; 260 units to a fish. */
    static Canvas draw(int across, int rows, double scale) {
        Canvas c = Canvas.on(Ink.SEA, across * 260, rows * ROW, scale);
        c.dots(Ink.NIGHT, 20, c.all(), (x, y) -> y / c.height() * 0.9);
        for (int row = 0; row <= rows; row++) {
            for (int i = -1; i <= across; i++) {
                boolean wayward = row == rows / 2 && i == across * 2 / 3;
                double x = 260 * i + (row % 2 == 0 ? 130 : 0) + 130;
                double y = ROW * row + 18 * Math.sin(Math.PI * 2 * (i + row * 0.4) / across);
                herring(c, x, y, wayward);
            }
        }
        return c;
    }

    private static void herring(Canvas c, double x, double y, boolean wayward) {
        double way = wayward ? -1 : 1;
        Shape body = path("M-112 0 C-70 -44 10 -46 70 -8 L116 -38 C108 -10 108 10 116 38 L70 8 C10 46 -70 40 -112 0 Z");
        Shape back =
                path("M-112 0 C-70 -44 10 -46 70 -8 L116 -38 C110 -16 108 -8 108 0 L66 -2 C10 -14 -60 -12 -112 0 Z");
        c.fill(wayward ? Ink.CORAL : Ink.CREAM, at(x, y, way, 0, body));
        c.fill(wayward ? Ink.LAMP : Ink.SHALLOW, at(x, y, way, 0, back));
        c.fill(
                wayward ? Ink.CORAL : Ink.SHALLOW,
                at(x, y, way, 0, path("M-14 -34 L22 -52 L30 -26 Z M-6 30 L22 46 L28 22 Z")));
        Shape belly = at(x, y, way, 0, path("M-60 -4 C-20 -12 30 -8 64 0 C20 30 -30 34 -60 22 Z"));
        c.dots(wayward ? Ink.LAMP : Ink.SHALLOW, 13, belly, (px, py) -> 0.45);
        c.line(wayward ? Ink.CREAM : Ink.SEA, 5, at(x, y, way, 0, path("M-66 -30 C-54 -12 -54 10 -64 26")));
        c.fill(Ink.NIGHT, at(x, y, way, 0, disc(-84, -7, 8))).fill(Ink.CREAM, at(x, y, way, 0, disc(-86, -9, 3)));
    }
}
