package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.box;
import static bandwright.pipeline.sample.art.Shapes.cut;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.oval;
import static bandwright.pipeline.sample.art.Shapes.path;
import static bandwright.pipeline.sample.art.Shapes.soft;

import java.awt.Shape;

/** The foghorn on its house, so loud that the gulls turn over. */
final class FoghornPicture {
    private static final double X = 640;
    private static final double Y = 420;

    private FoghornPicture() {}

    /** As wide as said and 1100 high; the horn keeps its size and more sea and sound come to its sides. */
    static Canvas draw(double width, double scale) {
        double left = (width - 1100) * 0.4;
        Canvas c = Canvas.on(Ink.LAMP, width, 1100, scale).from(left);
        for (int ring = (int) width / 130; ring >= 1; ring--) {
            int ink = ring % 2 == 0 ? Ink.LAMP : Ink.CREAM;
            c.fill(ink, disc(X, Y, 110 + 92 * ring));
            if (ring % 2 == 0) {
                double reach = 110 + 92 * ring;
                c.dots(Ink.CORAL, 14, disc(X, Y, reach), (x, y) -> 1 - (reach - Math.hypot(x - X, y - Y)) / 105);
            }
        }
        Sea.row(c.from(0), Ink.SEA, Ink.CREAM, 940, 260, 40, 30);
        house(c.from(left));
        horn(c);
        gull(c, 905, 170, 1, 158);
        gull(c, 985, 640, 0.8, -128);
        gull(c, 760, 850, 0.6, 60);
        for (double x = 1290; x < width - left; x += 330) {
            gull(c, x, 250 + x * 7 % 400, 0.9, x / 2);
            gull(c, 360 - x, 300 + x * 5 % 300, 0.7, x / 3);
        }
        Sea.row(c.from(0), Ink.NIGHT, Ink.CREAM, 1030, 320, 48, 190);
        return c;
    }

    private static void house(Canvas c) {
        c.fill(
                Ink.NIGHT,
                path("M-120 1100 C-110 1000 -90 930 -20 900 C120 850 420 850 520 900 C580 930 600 1000 620 1100 Z"));
        Shape wall = box(90, 690, 330, 210);
        c.fill(Ink.CREAM, wall).dots(Ink.SEA, 14, wall, (x, y) -> (x - 210) / 330);
        c.fill(Ink.CORAL, box(90, 850, 330, 56)).fill(Ink.NIGHT, soft(66, 666, 378, 36, 8));
        c.fill(Ink.NIGHT, path("M220 906 L220 780 C220 734 290 734 290 780 L290 906 Z"));
        c.fill(Ink.LAMP, disc(152, 774, 30)).line(Ink.NIGHT, 10, disc(152, 774, 30));
        c.fill(Ink.LAMP, disc(358, 774, 30)).line(Ink.NIGHT, 10, disc(358, 774, 30));
    }

    private static void horn(Canvas c) {
        Shape pipe = path(
                "M170 680 L170 590 C170 540 200 520 250 510 C380 480 450 420 500 250 L760 560 C600 560 480 590 330 620 L270 640 L270 680 Z");
        c.fill(Ink.CORAL, pipe).dots(Ink.NIGHT, 14, pipe, (x, y) -> ((x - 380) * -0.3 + (y - 470)) / 260);
        c.line(Ink.NIGHT, 13, path("M158 650 L282 650 M282 500 L318 626"));
        Shape rim = at(X, Y, 1, -40, oval(0, 0, 92, 232));
        Shape mouth = at(X, Y, 1, -40, oval(6, 0, 68, 196));
        c.fill(Ink.CREAM, rim)
                .fill(Ink.NIGHT, mouth)
                .dots(Ink.CORAL, 14, mouth, (x, y) -> (Math.hypot(x - X + 40, y - Y - 30) - 50) / 190);
        c.fill(Ink.NIGHT, cut(at(X, Y, 1, -40, oval(0, 0, 100, 240)), rim));
        c.fill(Ink.LAMP, at(X - 8, Y + 8, 1, -40, oval(0, 0, 20, 56)));
    }

    private static void gull(Canvas c, double x, double y, double size, double turn) {
        Shape wings = path(
                "M-130 -52 C-90 -60 -40 -40 0 -4 C40 -40 90 -60 130 -52 C100 -30 60 10 14 28 L-14 28 C-60 10 -100 -30 -130 -52 Z");
        c.fill(0xFFFDF6, at(x, y, size, turn, wings)).line(Ink.NIGHT, 7 * size, at(x, y, size, turn, wings));
        c.fill(0xFFFDF6, at(x, y, size, turn, oval(0, 16, 30, 52)))
                .line(Ink.NIGHT, 7 * size, at(x, y, size, turn, oval(0, 16, 30, 52)));
        c.fill(Ink.NIGHT, at(x, y, size, turn, path("M-11 -36 L11 -36 L0 -72 Z")));
        c.fill(Ink.NIGHT, at(x, y, size, turn, disc(-12, -14, 6)))
                .fill(Ink.NIGHT, at(x, y, size, turn, disc(12, -14, 6)));
    }
}
