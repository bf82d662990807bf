package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.box;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.oval;
import static bandwright.pipeline.sample.art.Shapes.path;
import static bandwright.pipeline.sample.art.Shapes.soft;

import java.awt.Shape;

/** The rowing club's six-oared gig before the evening sun; long, so that low cups take it too. */
final class RowingPicture {
    private static final int HEADS = 6;

    private RowingPicture() {}

    static Canvas draw(double scale) {
        Canvas c = Canvas.on(Ink.CREAM, 2600, 1000, scale);
        sky(c);
        c.fill(Ink.SEA, box(0, 640, 2600, 360));
        c.dots(Ink.SHALLOW, 14, box(0, 640, 2600, 190), (x, y) -> 0.7 - (y - 640) / 230);
        for (int i = 0; i < 7; i++) {
            double half = 400 - 45 * i;
            c.fill(Ink.CORAL, soft(1300 - half, 652 + 44 * i, 2 * half, 13 - i, 6));
        }
        for (int i = 0; i < HEADS; i++) {
            rower(c, 640 + 235 * i, 600, i);
        }
        cox(c, 2080, 585);
        hull(c);
        for (int i = 0; i < HEADS; i++) {
            oar(c, 640 + 235 * i, 600);
        }
        Sea.row(c, Ink.NIGHT, Ink.SHALLOW, 948, 260, 34, 120);
        return c;
    }

    private static void sky(Canvas c) {
        Shape sun = disc(1300, 560, 440);
        c.fill(Ink.LAMP, sun).dots(Ink.CORAL, 15, sun, (x, y) -> (y - 150) / 560);
        for (int i = 0; i < 5; i++) {
            c.fill(Ink.CREAM, box(800, 270 + 74 * i, 1000, 8 + 3 * i));
        }
        c.fill(Ink.HAZE, path("M0 650 L0 560 C80 520 150 500 230 540 C330 500 420 560 520 600 L640 650 Z"));
        c.fill(
                Ink.SHALLOW,
                path("M2000 650 C2080 600 2160 560 2240 575 C2300 520 2400 480 2480 520 L2600 500 L2600 650 Z"));
        c.fill(Ink.CORAL, path("M196 560 L244 560 L236 420 L204 420 Z"))
                .fill(Ink.CREAM, path("M199 510 L241 510 L239 470 L201 470 Z"));
        c.fill(Ink.NIGHT, soft(196, 412, 48, 11, 3))
                .fill(Ink.LAMP, box(209, 384, 22, 28))
                .fill(Ink.NIGHT, path("M202 386 L220 356 L238 386 Z"));
        for (double[] gull :
                new double[][] {{420, 210, 1.3}, {590, 140, 0.9}, {300, 120, 0.7}, {2060, 210, 1.1}, {2230, 300, 0.8}
                }) {
            c.line(
                    Ink.NIGHT,
                    9 * gull[2],
                    at(gull[0], gull[1], gull[2], 0, path("M-60 -16 C-40 -34 -14 -28 0 0 C14 -28 40 -34 60 -16")));
        }
    }

    private static void hull(Canvas c) {
        Shape hull = path(
                "M250 560 C300 640 360 720 470 742 L2130 742 C2230 730 2290 660 2330 560 C2240 610 2160 622 2060 628 L520 628 C420 622 330 604 250 560 Z");
        c.fill(Ink.NIGHT, hull);
        c.dots(Ink.SEA, 13, hull, (x, y) -> 0.75 - (y - 600) / 170);
        c.line(Ink.CREAM, 13, path("M262 572 C340 616 430 636 530 642 L2050 642 C2160 636 2240 622 2320 576"));
        c.line(Ink.LAMP, 9, path("M318 664 C370 690 430 700 500 702 L2110 702 C2180 698 2230 684 2276 654"));
    }

    private static void rower(Canvas c, double x, double y, int who) {
        Shape torso = at(
                x,
                y,
                1,
                0,
                path("M-46 60 C-70 -10 -110 -80 -108 -140 C-106 -176 -60 -190 -26 -172 C10 -150 34 -60 46 60 Z"));
        c.fill(Ink.CORAL, torso);
        for (int hoop = 0; hoop < 4; hoop++) {
            c.within(Ink.CREAM, at(x - 40, y - 112 + 54 * hoop, 1, -14, box(-120, -13, 260, 27)), torso);
        }
        c.dots(Ink.NIGHT, 10, torso, (px, py) -> (px - x + 30) / 260);
        c.line(Ink.SKIN[who], 40, at(x, y, 1, 0, path("M-70 -200 L-66 -172")));
        c.fill(Ink.SKIN[who], at(x - 76, y - 226, 1, -10, oval(0, 0, 46, 54)));
        c.fill(Ink.SKIN[who], disc(x - 30, y - 222, 11));
        c.fill(
                who % 2 == 0 ? Ink.NIGHT : Ink.CORAL,
                at(x - 76, y - 226, 1, -10, path("M-50 -8 C-54 -76 50 -78 48 -14 Z")));
        c.fill(Ink.LAMP, at(x - 76, y - 226, 1, -10, soft(-52, -20, 104, 16, 8)));
        c.line(Ink.NIGHT, 6, at(x, y, 1, 0, path("M-50 -224 L-42 -226")));
        c.line(Ink.NIGHT, 46, at(x, y, 1, 0, path("M-60 -132 C-44 -76 -24 -60 0 -68")));
        c.line(Ink.CORAL, 38, at(x, y, 1, 0, path("M-62 -136 C-44 -76 -24 -60 0 -68")));
        c.line(Ink.SKIN[who], 28, at(x, y, 1, 0, path("M4 -70 C30 -84 50 -92 78 -96")));
    }

    private static void oar(Canvas c, double x, double y) {
        c.line(Ink.NIGHT, 17, at(x, y, 1, 0, path("M92 -106 L-130 190")));
        c.line(Ink.LAMP, 11, at(x, y, 1, 0, path("M92 -106 L-130 190")));
        c.fill(
                Ink.CORAL,
                at(
                        x - 124,
                        y + 182,
                        1,
                        35,
                        path("M-12 -30 L12 -30 C26 20 30 80 24 112 L-24 112 C-30 80 -26 20 -12 -30 Z")));
        c.fill(Ink.CREAM, at(x - 124, y + 182, 1, 35, box(-25, 52, 50, 18)));
        c.line(Ink.CREAM, 8, at(x - 184, y + 282, 1, 0, path("M-70 8 C-40 26 40 26 84 4 M-40 34 C-10 44 30 44 56 30")));
    }

    private static void cox(Canvas c, double x, double y) {
        Shape coat = at(x, y, 1, 0, path("M-70 70 C-74 -20 -60 -120 -20 -132 C40 -140 76 -60 84 70 Z"));
        c.fill(Ink.LAMP, coat).dots(Ink.CORAL, 11, coat, (px, py) -> (px - x + 20) / 170);
        c.fill(Ink.SKIN[2], at(x - 10, y - 184, 1, 0, oval(0, 0, 46, 54))).fill(Ink.SKIN[2], disc(x - 56, y - 180, 11));
        c.fill(
                Ink.LAMP,
                at(x - 10, y - 184, 1, 6, path("M-50 -8 C-56 -84 50 -86 48 -14 C70 -4 82 14 88 34 L30 4 L-70 -2 Z")));
        c.line(Ink.NIGHT, 6, at(x, y, 1, 0, path("M-40 -186 L-32 -186")));
        c.line(Ink.LAMP, 36, at(x, y, 1, 0, path("M6 -90 C-10 -60 -40 -70 -74 -112")));
        c.fill(Ink.CORAL, at(x, y, 1, 0, path("M-62 -168 L-62 -144 L-150 -116 L-150 -196 Z")))
                .fill(Ink.NIGHT, oval(x - 150, y - 156, 12, 40));
        c.line(Ink.NIGHT, 10, path("M2296 600 L2330 330"))
                .fill(
                        Ink.CORAL,
                        path(
                                "M2330 330 C2380 310 2410 350 2470 336 L2440 376 L2478 410 C2410 420 2380 384 2322 400 Z"));
    }
}
