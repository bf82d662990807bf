package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.box;
import static bandwright.pipeline.sample.art.Shapes.cut;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.path;
import static bandwright.pipeline.sample.art.Shapes.soft;

import java.awt.Shape;
import java.awt.geom.Area;

/** Terns home over the tide race at dusk, the Quillmoor light to the left. */
final class TernPicture {
    private static final int DUSK = 0xF2A777;
    private static final int GLEAM = 0xFFE9B8;
    private static final int WING = 0xDDE6E2;
    private static final double HORIZON = 640;

    private TernPicture() {}

    static Canvas draw() {
        Canvas c = Canvas.on(DUSK, 2250, 1000, 1);
        sky(c);
        for (int row = 0; row < 5; row++) {
            int ink = row < 1 ? Ink.SHALLOW : row < 3 ? Ink.SEA : Ink.NIGHT;
            Sea.row(c, ink, Ink.CREAM, HORIZON + row * 82, 180 + 50 * row, 22 + 9 * row, row * 97);
            if (row == 0) {
                glitter(c);
                light(c, 400, 672);
            }
        }
        tern(c, 1050, 510, 1.42, -6);
        tern(c, 1860, 300, 0.78, -14);
        tern(c, 2080, 480, 0.5, 2);
        tern(c, 690, 330, 0.5, -14);
        return c;
    }

    private static void sky(Canvas c) {
        Shape sky = box(0, 0, 2250, HORIZON + 30);
        Area beam = new Area(path("M400 206 L0 40 L0 290 L400 224 Z"));
        beam.add(new Area(path("M400 206 L2250 -180 L2250 120 L400 224 Z")));
        c.fill(GLEAM, beam);
        c.dots(Ink.SEA, 13, cut(sky, beam), (x, y) -> 0.95 - y / 430);
        c.dots(Ink.SEA, 13, beam, (x, y) -> (0.95 - y / 430) * Math.min(0.85, Math.abs(x - 400) / 900));
        c.dots(Ink.CORAL, 13, box(0, 330, 2250, 340), (x, y) -> (y - 330) / 500);
        c.fill(Ink.LAMP, disc(1520, 560, 250)).fill(GLEAM, disc(1520, 560, 205));
        for (int i = 0; i < 4; i++) {
            c.fill(DUSK, soft(1180 + 90 * i, 470 + 44 * i, 420 - 30 * i, 7 + 3 * i, 6));
        }
        c.fill(Ink.SEA, path("M620 660 C760 610 900 612 1010 640 L1080 620 C1150 600 1210 640 1300 660 Z"));
    }

    private static void glitter(Canvas c) {
        for (int i = 0; i < 6; i++) {
            double half = 210 - 22 * i + 40 * (i % 2);
            c.fill(GLEAM, soft(1520 - half, HORIZON + 2 + 14 * i, 2 * half, 7, 4));
        }
    }

    private static void light(Canvas c, double x, double foot) {
        c.fill(
                Ink.NIGHT,
                path("M40 1000 C80 740 210 680 290 667 C380 642 470 650 540 667 C640 690 760 740 820 1000 Z"));
        c.fill(Ink.SEA, path("M330 672 C420 648 500 654 540 667 C660 700 640 760 480 780 C380 780 300 720 330 672 Z"));
        Shape tower = at(x, foot, 1, 0, path("M-66 0 L66 0 L42 -410 L-42 -410 Z"));
        c.fill(Ink.CREAM, tower);
        for (int band = 0; band < 3; band++) {
            c.within(Ink.CORAL, box(x - 80, foot - 92 - band * 136, 160, 66), tower);
        }
        c.dots(Ink.NIGHT, 9, at(x, foot, 1, 0, path("M14 0 L66 0 L42 -410 L14 -410 Z")), (px, py) -> (px - x) / 150);
        c.fill(Ink.NIGHT, soft(x - 70, foot - 428, 140, 22, 6)).fill(Ink.LAMP, box(x - 34, foot - 500, 68, 74));
        c.fill(Ink.CREAM, disc(x, foot - 464, 20));
        for (int bar = -34; bar <= 34; bar += 34) {
            c.fill(Ink.NIGHT, box(x + bar - 3, foot - 500, 6, 74));
        }
        c.fill(
                Ink.NIGHT,
                at(
                        x,
                        foot,
                        1,
                        0,
                        path(
                                "M-48 -498 C-44 -540 -14 -556 -5 -562 L-5 -596 L5 -596 L5 -562 C14 -556 44 -540 48 -498 Z")));
        c.fill(Ink.NIGHT, soft(x - 17, foot - 54, 34, 60, 15)).fill(Ink.NIGHT, soft(x - 10, foot - 210, 20, 34, 9));
    }

    private static void tern(Canvas c, double x, double y, double size, double turn) {
        Shape farWing = path(
                "M-44 -12 C-74 -60 -104 -104 -92 -154 C-84 -206 -36 -266 30 -316 C2 -244 -14 -184 -10 -134 C-4 -84 10 -44 26 -8 Z");
        Shape farTip =
                path("M-66 -230 C-42 -266 -8 -296 30 -316 C14 -280 2 -248 -4 -222 C-16 -236 -40 -246 -66 -230 Z");
        Shape body =
                path("M-118 6 C-108 -24 -70 -32 -40 -25 C10 -20 60 -8 100 2 C160 6 210 0 280 -22 C226 12 180 20 140 22 "
                        + "C180 34 210 42 258 48 C200 52 140 42 96 26 C60 34 10 36 -30 32 C-70 30 -104 24 -118 6 Z");
        Shape belly = path("M-112 12 C-60 16 40 20 96 26 C60 34 10 36 -30 32 C-70 30 -100 24 -112 12 Z");
        Shape wing = path(
                "M-56 -6 C-46 -66 -14 -134 44 -162 C116 -200 210 -226 326 -226 C236 -192 164 -148 118 -104 C84 -68 60 -28 52 10 C10 18 -40 14 -56 -6 Z");
        Shape tip =
                path("M152 -202 C208 -218 264 -227 326 -226 C270 -206 222 -182 182 -156 C186 -176 176 -194 152 -202 Z");
        c.fill(Ink.SHALLOW, at(x, y, size, turn, farWing)).fill(Ink.NIGHT, at(x, y, size, turn, farTip));
        c.fill(Ink.CREAM, at(x, y, size, turn, body)).fill(WING, at(x, y, size, turn, belly));
        c.fill(WING, at(x, y, size, turn, wing)).fill(Ink.NIGHT, at(x, y, size, turn, tip));
        c.line(
                Ink.CREAM,
                5 * size,
                at(x, y, size, turn, path("M-48 -10 C-38 -66 -8 -130 48 -157 C86 -176 120 -190 150 -199")));
        c.line(
                Ink.SHALLOW,
                3 * size,
                at(x, y, size, turn, path("M40 -20 C54 -60 84 -100 124 -128 M4 -20 C22 -70 56 -116 104 -146")));
        c.fill(Ink.NIGHT, at(x, y, size, turn, path("M-119 3 C-110 -25 -76 -33 -44 -26 C-58 -12 -88 -4 -119 3 Z")));
        c.fill(Ink.CORAL, at(x, y, size, turn, path("M-114 -2 L-176 18 L-112 13 Z")));
    }
}
