package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.cut;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.path;
import static bandwright.pipeline.sample.art.Shapes.soft;

import java.awt.Shape;

/** Storm lamps on a rope, on nothing: a coloured blank shows through between them; one more hangs in the night. */
final class StormLampPicture {
    private static final int TWINE = 0x9C7446;

    private StormLampPicture() {}

    /** Four of them, for a band. */
    static Canvas four() {
        Canvas c = Canvas.clear(2250, 1000, 1);
        int[] paint = {Ink.CORAL, Ink.SEA, Ink.NIGHT, Ink.LAMP};
        for (int i = 0; i < 4; i++) {
            glow(c, 281.25 + 562.5 * i, 590, 275);
        }
        rope(c, 2250, 4, "M0 8 C20 26 80 26 100 8");
        for (int i = 0; i < 4; i++) {
            lamp(c, 281.25 + 562.5 * i, 118, 1, paint[i]);
        }
        return c;
    }

    /** A big one, for a coaster. */
    static Canvas one() {
        Canvas c = Canvas.on(Ink.SEA, 1100, 1100, 1.2);
        glow(c, 550, 610, 540);
        rope(c, 1100, 1, "M0 8 C30 12 70 12 100 8");
        lamp(c, 550, 112, 1.12, Ink.CORAL);
        return c;
    }

    private static void glow(Canvas c, double x, double y, double reach) {
        Shape halo = disc(x, y, reach);
        c.dots(Ink.LAMP, 22, halo, (px, py) -> 0.75 - 0.75 * Math.hypot(px - x, py - y) / reach);
    }

    private static void rope(Canvas c, double width, int lamps, String hangs) {
        double step = width / lamps;
        for (int i = 0; i < lamps; i++) {
            Shape sag = at(i * step, 0, step / 100, 0, path(hangs));
            c.line(TWINE, 22, sag);
            c.line(0xD2AC74, 9, sag);
        }
        for (int i = 0; i <= lamps; i++) {
            c.fill(TWINE, disc(i * step, step * 0.08, 24)).fill(0xD2AC74, disc(i * step, step * 0.08, 13));
        }
    }

    private static void lamp(Canvas c, double x, double y, double size, int paint) {
        int dark = paint == Ink.NIGHT ? Ink.SEA : Ink.NIGHT;
        c.line(Ink.NIGHT, 13 * size, at(x, y, size, 0, path("M-134 250 C-130 60 -70 0 0 0 C70 0 130 60 134 250")));
        Shape globe = path("M-64 262 C-150 350 -150 560 -78 640 L78 640 C150 560 150 350 64 262 Z");
        c.fill(0xFFF6DC, at(x, y, size, 0, globe));
        c.dots(Ink.LAMP, 13, at(x, y, size, 0, globe), (px, py) -> 0.45 * Math.abs(px - x) / 130 / size);
        flame(c, x, y, size);
        c.line(0xFFFFFF, 11 * size, at(x, y, size, 0, path("M-88 400 C-104 460 -100 530 -84 570")));
        c.line(Ink.NIGHT, 7 * size, at(x, y, size, 0, path("M-140 396 L140 396 M-140 556 L140 556")));
        Shape cap = path("M-78 206 C-78 150 -52 122 -26 112 L-26 88 L26 88 L26 112 C52 122 78 150 78 206 Z");
        Shape base = path("M-96 636 L96 636 C130 690 186 706 186 806 L-186 806 C-186 706 -130 690 -96 636 Z");
        for (Shape part : new Shape[] {
            cap, base, soft(-162, 204, 324, 62, 24), soft(-158, 236, 30, 470, 14), soft(128, 236, 30, 470, 14)
        }) {
            Shape placed = at(x, y, size, 0, part);
            c.fill(paint, placed);
            c.dots(dark, 11, placed, (px, py) -> ((px - x) / size - 30) / 320);
        }
        c.fill(Ink.NIGHT, at(x, y, size, 0, soft(-192, 794, 384, 34, 14)));
        c.fill(Ink.CREAM, at(x, y, size, 0, soft(-132, 716, 26, 58, 12)));
        c.fill(Ink.CREAM, at(x, y, size, 0, disc(104, 748, 24))).fill(dark, at(x, y, size, 0, disc(104, 748, 11)));
    }

    private static void flame(Canvas c, double x, double y, double size) {
        Shape outer = at(
                x,
                y,
                size,
                0,
                path(
                        "M6 330 C20 400 76 440 70 520 C66 580 34 600 0 600 C-34 600 -66 580 -70 520 C-72 450 -16 410 6 330 Z"));
        Shape inner = at(
                x,
                y,
                size,
                0,
                path(
                        "M4 440 C10 480 38 500 36 545 C34 580 18 596 0 596 C-18 596 -34 580 -36 545 C-38 505 -6 485 4 440 Z"));
        c.fill(Ink.LAMP, cut(outer, inner)).fill(Ink.CORAL, inner);
    }
}
