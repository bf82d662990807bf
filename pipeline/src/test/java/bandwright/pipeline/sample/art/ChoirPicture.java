package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.box;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.oval;
import static bandwright.pipeline.sample.art.Shapes.path;
import static bandwright.pipeline.sample.art.Shapes.soft;

import java.awt.Shape;

/** The keepers' choir, seven of them, at full voice. */
final class ChoirPicture {
    private static final int MOUTH = 0x6B2222;
    private static final int[] COATS = {Ink.SEA, Ink.CORAL, Ink.NIGHT, Ink.LAMP, Ink.SHALLOW, Ink.SEA, Ink.CORAL};
    private static final int[] TALL = {0, 64, -24, 40, -40, 74, 8};

    private ChoirPicture() {}

    static Canvas draw() {
        Canvas c = Canvas.on(Ink.CREAM, 2250, 1000, 1.05);
        c.dots(Ink.LAMP, 15, box(0, 250, 2250, 750), (x, y) -> (y - 250) / 1100);
        music(c);
        for (int i = 0; i < 7; i++) {
            singer(c, 161 + 321.4 * i, 470 + TALL[i], i);
        }
        return c;
    }

    private static void music(Canvas c) {
        for (int line = 0; line < 5; line++) {
            c.line(
                    Ink.SHALLOW,
                    5,
                    at(0, 62 + 34 * line, 1, 0, path("M0 50 C380 -50 760 130 1125 40 C1490 -50 1870 130 2250 50")));
        }
        int[][] notes = {{120, 170}, {400, 150}, {700, 230}, {1000, 170}, {1290, 150}, {1610, 160}, {1880, 230}};
        for (int i = 0; i < notes.length; i++) {
            note(c, notes[i][0], notes[i][1], i % 3 == 1);
        }
    }

    private static void note(Canvas c, double x, double y, boolean pair) {
        Shape head = at(0, 0, 1, -20, oval(0, 0, 27, 19));
        c.fill(Ink.NIGHT, at(x, y, 1, 0, head)).line(Ink.NIGHT, 9, at(x, y, 1, 0, path("M23 -6 L23 -100")));
        if (pair) {
            c.fill(Ink.NIGHT, at(x + 92, y - 12, 1, 0, head));
            c.line(Ink.NIGHT, 9, at(x, y, 1, 0, path("M115 -18 L115 -112")));
            c.fill(Ink.NIGHT, at(x, y, 1, 0, path("M18 -104 L120 -118 L120 -94 L18 -80 Z")));
            return;
        }
        c.fill(Ink.NIGHT, at(x, y, 1, 0, path("M19 -104 C30 -70 76 -66 58 -22 C60 -54 36 -58 24 -66 Z")));
    }

    private static void singer(Canvas c, double x, double y, int who) {
        int skin = Ink.SKIN[who];
        Shape coat = at(
                x,
                y,
                1,
                0,
                path("M-152 700 L-152 250 C-148 170 -90 138 -30 128 L30 128 C90 138 148 170 152 250 L152 700 Z"));
        c.fill(COATS[who], coat);
        int shade = COATS[who] == Ink.NIGHT ? Ink.SEA : Ink.NIGHT;
        c.dots(shade, 12, coat, (px, py) -> (px - x - 20) / 330 + (py - y - 330) / 900);
        c.fill(skin, soft(x - 36, y + 70, 72, 90, 26));
        c.fill(Ink.CREAM, at(x, y, 1, 0, path("M-88 134 C-60 108 60 108 88 134 C80 206 -80 206 -88 134 Z")));
        c.fill(skin, oval(x, y, 98, 114));
        face(c, x, y, who);
        hat(c, x, y, who % 2 == 0 ? Ink.LAMP : Ink.NIGHT);
        Shape left = at(x, y, 1, 0, path("M-92 264 L0 290 L0 424 L-92 398 Z"));
        Shape right = at(x, y, 1, 0, path("M92 264 L0 290 L0 424 L92 398 Z"));
        c.fill(0xFFFDF6, left).fill(Ink.CREAM, right).dots(Ink.SHALLOW, 9, right, (px, py) -> 0.3 - (px - x) / 300);
        c.fill(skin, disc(x - 96, y + 350, 29)).fill(skin, disc(x + 96, y + 350, 29));
    }

    private static void face(Canvas c, double x, double y, int who) {
        Shape left = oval(x - 60, y + 30, 26, 18);
        Shape right = oval(x + 60, y + 30, 26, 18);
        c.dots(Ink.CORAL, 8, left, (px, py) -> 0.5).dots(Ink.CORAL, 8, right, (px, py) -> 0.5);
        c.line(Ink.NIGHT, 9, at(x, y, 1, 0, path("M-58 -8 C-52 -28 -30 -28 -24 -8 M24 -8 C30 -28 52 -28 58 -8")));
        if (who % 3 == 1) {
            c.fill(
                    Ink.CREAM,
                    at(
                            x,
                            y,
                            1,
                            0,
                            path(
                                    "M-90 14 C-84 120 -50 176 0 180 C50 176 84 120 90 14 C70 40 40 34 0 34 C-40 34 -70 40 -90 14 Z")));
            c.line(Ink.SHALLOW, 5, at(x, y, 1, 0, path("M-74 110 C-60 160 -36 180 0 182 C36 180 60 160 74 110")));
        }
        double wide = 25 + who % 3 * 5;
        double high = 32 - who % 2 * 6;
        c.fill(MOUTH, oval(x, y + 66, wide, high))
                .within(0xE9837A, oval(x, y + 86, wide * 0.7, 14), oval(x, y + 66, wide, high));
    }

    private static void hat(Canvas c, double x, double y, int ink) {
        Shape crown = at(x, y, 1, 0, path("M-98 -42 C-100 -180 100 -180 98 -42 Z"));
        c.fill(ink, crown);
        c.dots(ink == Ink.NIGHT ? Ink.SEA : Ink.CORAL, 10, crown, (px, py) -> (px - x + 10) / 170);
        c.fill(ink == Ink.NIGHT ? Ink.CORAL : Ink.NIGHT, box(x - 97, y - 76, 194, 20));
        c.fill(ink, soft(x - 138, y - 60, 276, 34, 17));
    }
}
