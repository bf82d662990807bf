package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.blob;
import static bandwright.pipeline.sample.art.Shapes.box;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.oval;
import static bandwright.pipeline.sample.art.Shapes.path;

import java.awt.Shape;

/** The old keeper with his pipe, the lamp behind his head. */
final class KeeperPicture {
    private static final int SKIN = 0xE5B08A;

    private KeeperPicture() {}

    /** As wide as said and 1100 high; the keeper stays in the middle and the rays reach farther. */
    static Canvas draw(double width, double scale) {
        Canvas c = Canvas.on(Ink.SEA, width, 1100, scale).from((width - 1100) / 2);
        rays(c);
        Shape lamp = disc(550, 500, 440);
        c.fill(Ink.CORAL, lamp).dots(Ink.LAMP, 17, lamp, (x, y) -> 1.05 - Math.hypot(x - 550, y - 500) / 500);
        coat(c);
        head(c);
        beard(c);
        southwester(c);
        pipe(c);
        return c;
    }

    private static void rays(Canvas c) {
        for (int i = 0; i < 16; i++) {
            Shape ray = at(550, 500, 1, i * 22.5, path("M0 0 L1600 -157 L1600 157 Z"));
            c.fill(Ink.SHALLOW, ray);
            c.dots(Ink.SEA, 15, ray, (x, y) -> (Math.hypot(x - 550, y - 500) - 380) / 620);
        }
    }

    private static void coat(Canvas c) {
        Shape coat = path("M60 1110 C80 930 200 850 380 810 L720 810 C900 850 1020 930 1040 1110 Z");
        c.fill(Ink.NIGHT, coat).dots(Ink.SEA, 15, coat, (x, y) -> (x - 560) / 640);
        c.fill(
                Ink.CREAM,
                path("M390 830 C380 760 420 740 550 740 C680 740 720 760 710 830 C660 900 440 900 390 830 Z"));
        for (int side = -1; side <= 1; side += 2) {
            for (int row = 0; row < 2; row++) {
                c.fill(Ink.LAMP, disc(550 + side * 150, 990 + row * 90, 24))
                        .fill(Ink.NIGHT, disc(550 + side * 150, 990 + row * 90, 8));
            }
        }
    }

    private static void head(Canvas c) {
        Shape face = path("M366 420 C366 300 734 300 734 420 L726 620 C700 760 400 760 374 620 Z");
        c.fill(SKIN, oval(360, 520, 44, 66)).fill(SKIN, oval(740, 520, 44, 66));
        c.fill(SKIN, face).dots(Ink.CORAL, 13, face, (x, y) -> (x - 600) / 260);
        for (int side = -1; side <= 1; side += 2) {
            Shape cheek = oval(550 + side * 112, 574, 58, 42);
            c.dots(Ink.CORAL, 13, cheek, (x, y) -> 0.55);
            c.fill(Ink.NIGHT, oval(550 + side * 84, 492, 17, 21)).fill(Ink.CREAM, disc(550 + side * 84 + 6, 484, 6));
            c.line(Ink.CREAM, 26, at(550, 430, side, 0, path("M40 16 C64 -8 104 -10 136 14")));
            c.line(Ink.CORAL, 6, at(550, 500, side, 0, path("M128 -10 L152 -22 M132 6 L158 6 M128 20 L150 32")));
        }
    }

    private static void beard(Canvas c) {
        Shape beard = path(
                "M358 560 C350 640 330 720 350 800 C380 900 470 985 550 1010 C630 985 720 900 750 800 C770 720 750 640 742 560 "
                        + "C720 620 690 640 640 640 L460 640 C410 640 380 620 358 560 Z");
        c.fill(Ink.CREAM, beard).dots(Ink.SHALLOW, 13, beard, (x, y) -> (x - 590) / 330 + (y - 850) / 500);
        for (int side = -1; side <= 1; side += 2) {
            c.line(
                    Ink.SHALLOW,
                    7,
                    at(
                            550,
                            0,
                            side,
                            0,
                            path(
                                    "M24 790 C34 860 26 920 6 975 M84 760 C110 830 96 890 66 930 M144 720 C170 770 166 830 134 872")));
        }
        c.fill(0x6B2222, oval(550, 676, 54, 22));
        for (int side = -1; side <= 1; side += 2) {
            c.fill(0xFFFDF6, at(550, 620, side, 0, path("M0 -18 C60 -26 150 -4 188 66 C130 60 60 68 0 34 Z")));
        }
        Shape nose = path("M522 470 C516 530 484 560 486 590 C490 630 610 630 614 590 C616 560 584 530 578 470 Z");
        c.fill(0xDB9A76, nose).dots(Ink.CORAL, 12, nose, (x, y) -> (y - 500) / 160);
    }

    private static void southwester(Canvas c) {
        Shape crown = path("M352 400 C340 240 420 140 550 136 C680 140 760 240 748 400 Z");
        c.fill(Ink.LAMP, crown).dots(Ink.NIGHT, 14, crown, (x, y) -> (x - 590) / 480);
        c.line(
                Ink.NIGHT,
                7,
                path(
                        "M550 140 C530 220 530 300 540 370 M470 160 C430 230 416 310 420 380 M632 160 C670 230 686 310 680 380"));
        Shape brim = path(
                "M250 470 C300 380 400 346 550 346 C700 346 800 380 850 470 C760 420 660 404 550 404 C440 404 340 420 250 470 Z");
        c.fill(Ink.LAMP, brim).dots(Ink.NIGHT, 14, brim, (x, y) -> (x - 620) / 420);
        c.line(Ink.NIGHT, 8, path("M352 390 C420 350 680 350 748 390"));
        c.fill(Ink.LAMP, box(540, 120, 20, 26));
    }

    private static void pipe(Canvas c) {
        c.line(Ink.NIGHT, 20, path("M590 682 C660 690 690 720 742 726"));
        c.fill(Ink.NIGHT, path("M724 660 L806 660 L800 736 C796 766 736 766 730 736 Z"))
                .fill(Ink.CORAL, oval(765, 660, 41, 14));
        Shape[] puffs = {
            blob(790, 590, 34, 28, 0.06, 3), blob(838, 500, 50, 40, 0.06, 5), blob(916, 390, 74, 58, 0.06, 8)
        };
        for (Shape puff : puffs) {
            c.fill(Ink.CREAM, puff)
                    .dots(
                            Ink.SHALLOW,
                            13,
                            puff,
                            (x, y) -> (y - puff.getBounds().getMinY())
                                            / puff.getBounds().getHeight()
                                            * 0.7
                                    - 0.1);
        }
    }
}
