package bandwright.pipeline.sample;

import static bandwright.pipeline.sample.Canvas.at;
import static bandwright.pipeline.sample.Canvas.box;
import static bandwright.pipeline.sample.Canvas.curve;
import static bandwright.pipeline.sample.Canvas.disc;
import static bandwright.pipeline.sample.Canvas.open;
import static bandwright.pipeline.sample.Canvas.outline;
import static bandwright.pipeline.sample.Canvas.oval;
import static bandwright.pipeline.sample.Canvas.soft;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;

/**
 * Draws the pictures of the Quillmoor Lighthouse Trust's gift shop. A unit is a tenth of a millimetre on a mug, so a
 * picture of 2300 x 1000 units at scale 1 has 254 pixels an inch there.
 */
final class Artist {
    private static final int NIGHT = 0x14284B;
    private static final int SEA = 0x1F5C73;
    private static final int FOAM = 0xE9F1EC;
    private static final int LAMP = 0xF3B33D;
    private static final int CORAL = 0xD9573F;
    private static final int SAND = 0xF5E8CF;
    private static final int ROCK = 0x2B3340;

    private Artist() {}

    /** Terns over the bay at dusk, the lighthouse to the left. */
    static Canvas tern() {
        Canvas c = new Canvas(2300, 1000, 1.15, false);
        c.shade(new Color(0x173A63), new Color(0xF6C58B), box(0, 0, 2300, 640));
        for (int ring = 6; ring >= 1; ring--) {
            c.fill(new Color(255, 226, 160, 26), disc(1560, 560, 80 + 55 * ring));
        }
        c.fill(0xFFE3A6, disc(1560, 560, 120));
        c.fill(new Color(255, 240, 205, 150), outline(470, 300, 2300, 40, 2300, 330));
        c.fill(
                new Color(0xE39B77),
                curve(
                        0, 640, 300, 560, 620, 600, 900, 585, 1300, 560, 1900, 640, 2300, 575, 2300, 700, 2300, 760,
                        2300, 800, 1500, 800, 700, 800, 0, 800));
        int[] sea = {0x4F8FA0, 0x357A8E, SEA, 0x18485F, NIGHT};
        for (int row = 0; row < sea.length; row++) {
            c.fill(sea[row], waves(620 + row * 80, 150 + 26 * row, 16 + 5 * row, row * 71));
            c.line(FOAM, 3 + row, crest(620 + row * 80, 150 + 26 * row, 16 + 5 * row, row * 71));
        }
        c.fill(
                ROCK,
                curve(
                        120, 1000, 170, 820, 230, 740, 330, 700, 420, 650, 560, 665, 640, 740, 730, 800, 800, 900, 830,
                        1000));
        c.fill(0x3D4757, curve(300, 1000, 330, 850, 420, 740, 480, 690, 560, 720, 650, 830, 690, 1000));
        lighthouse(c, 450, 690);
        flock(c);
        return c;
    }

    private static void lighthouse(Canvas c, double x, double foot) {
        Path2D tower = outline(x - 58, foot, x + 58, foot, x + 38, foot - 360, x - 38, foot - 360);
        c.fill(FOAM, tower);
        for (int band = 0; band < 3; band++) {
            Area stripe = new Area(box(x - 80, foot - 85 - band * 125, 160, 58));
            stripe.intersect(new Area(tower));
            c.fill(CORAL, stripe);
        }
        c.fill(NIGHT, soft(x - 62, foot - 378, 124, 20, 6));
        c.fill(LAMP, soft(x - 30, foot - 440, 60, 64, 4));
        c.fill(0xFFF3CF, disc(x + 2, foot - 408, 17));
        for (int bar = -30; bar <= 30; bar += 20) {
            c.line(NIGHT, 4, open(x + bar, foot - 440, x + bar, foot - 378));
        }
        c.fill(
                NIGHT,
                curve(
                        x - 42,
                        foot - 438,
                        x - 36,
                        foot - 480,
                        x - 10,
                        foot - 492,
                        x,
                        foot - 500,
                        x + 10,
                        foot - 492,
                        x + 36,
                        foot - 480,
                        x + 42,
                        foot - 438));
        c.line(NIGHT, 5, open(x, foot - 500, x, foot - 530));
        c.fill(NIGHT, soft(x - 16, foot - 52, 32, 52, 14));
        c.fill(NIGHT, soft(x - 9, foot - 190, 18, 30, 8));
    }

    private static void flock(Canvas c) {
        double[][] birds = {
            {1010, 390, 1.45, -8},
            {1370, 250, 1.05, -16},
            {1790, 340, 1.2, 6},
            {2080, 190, 0.75, -10},
            {770, 200, 0.7, -4}
        };
        for (double[] bird : birds) {
            bird(c, bird[0], bird[1], bird[2], bird[3]);
        }
    }

    private static void bird(Canvas c, double x, double y, double size, double turn) {
        Shape farWing = curve(-8, -6, -40, -70, -20, -130, 60, -175, 30, -110, 34, -50, 30, -4);
        Shape body = curve(
                -92, 4, -50, -26, 20, -24, 60, 4, 100, 22, 150, 16, 196, 0, 150, 26, 168, 34, 200, 44, 130, 46, 40, 52,
                -20, 34, -60, 28, -84, 18, -92, 4);
        Shape nearWing = curve(-24, 8, -30, -60, 20, -130, 150, -190, 100, -120, 92, -50, 44, 16);
        Shape cap = curve(-92, 4, -84, -20, -56, -26, -34, -16, -50, -6, -72, 2, -92, 4);
        Shape bill = outline(-90, 0, -140, 18, -88, 14);
        c.fill(0xC9D6DB, at(farWing, x, y, size, turn));
        c.fill(0xFDFDFB, at(body, x, y, size, turn));
        c.fill(0xE3EBEC, at(nearWing, x, y, size, turn));
        c.line(0x8FA5AE, 3 * size, at(open(10, -40, 60, -110, 150, -190), x, y, size, turn));
        c.fill(0x1B2430, at(cap, x, y, size, turn));
        c.fill(CORAL, at(bill, x, y, size, turn));
    }

    private static Path2D waves(double y, double length, double height, double shift) {
        Path2D path = crest(y, length, height, shift);
        path.lineTo(2500, 1100);
        path.lineTo(-400, 1100);
        path.closePath();
        return path;
    }

    private static Path2D crest(double y, double length, double height, double shift) {
        Path2D path = new Path2D.Double();
        path.moveTo(-400 + shift % length, y);
        for (double x = -400 + shift % length; x < 2500; x += length) {
            path.curveTo(
                    x + length * 0.3, y - height, x + length * 0.6, y - height, x + length * 0.72, y - height * 0.1);
            path.quadTo(x + length * 0.85, y + height * 0.5, x + length, y);
        }
        return path;
    }

    /** Four storm lamps on a rope, on nothing: the blank's own colour stands behind them. */
    static Canvas stormLamp() {
        Canvas c = new Canvas(2300, 1000, 1, true);
        c.line(
                0x8A6A43,
                16,
                curve(
                        0, 60, 200, 150, 380, 150, 575, 70, 770, 150, 950, 150, 1150, 70, 1350, 150, 1530, 150, 1725,
                        70, 1920, 150, 2100, 150, 2300, 60));
        c.line(
                0xC19A66,
                6,
                curve(
                        0, 58, 200, 148, 380, 148, 575, 68, 770, 148, 950, 148, 1150, 68, 1350, 148, 1530, 148, 1725,
                        68, 1920, 148, 2100, 148, 2300, 58));
        int[] paint = {CORAL, SEA, NIGHT, 0x6E8B3D};
        for (int i = 0; i < 4; i++) {
            lamp(c, 287.5 + 575 * i, 52, paint[i]);
        }
        return c;
    }

    private static void lamp(Canvas c, double x, double y, int paint) {
        for (int ring = 5; ring >= 1; ring--) {
            c.fill(new Color(243, 179, 61, 30), disc(x, y + 430, 90 + 38 * ring));
        }
        c.line(ROCK, 12, curve(x - 120, y + 230, x - 110, y + 40, x + 110, y + 40, x + 120, y + 230));
        c.fill(paint, soft(x - 150, y + 235, 26, 420, 12)).fill(paint, soft(x + 124, y + 235, 26, 420, 12));
        c.fill(paint, curve(x - 70, y + 200, x - 60, y + 120, x + 60, y + 120, x + 70, y + 200));
        c.fill(paint, soft(x - 150, y + 200, 300, 56, 22));
        c.fill(
                new Color(0xFFF6DC),
                curve(
                        x - 70, y + 262, x - 150, y + 400, x - 130, y + 560, x - 76, y + 610, x - 40, y + 616, x + 40,
                        y + 616, x + 76, y + 610, x + 130, y + 560, x + 150, y + 400, x + 70, y + 262));
        c.fill(
                LAMP,
                curve(
                        x, y + 330, x + 70, y + 440, x + 64, y + 540, x, y + 560, x - 64, y + 540, x - 70, y + 440, x,
                        y + 330));
        c.fill(
                CORAL,
                curve(
                        x, y + 430, x + 34, y + 490, x + 30, y + 540, x, y + 548, x - 30, y + 540, x - 34, y + 490, x,
                        y + 430));
        c.line(0xFFFFFF, 10, curve(x - 92, y + 420, x - 104, y + 470, x - 98, y + 520, x - 82, y + 560));
        c.line(ROCK, 7, open(x - 128, y + 400, x + 128, y + 400))
                .line(ROCK, 7, open(x - 112, y + 560, x + 112, y + 560));
        c.fill(paint, soft(x - 100, y + 606, 200, 44, 14));
        c.fill(
                paint,
                curve(
                        x - 100, y + 640, x - 170, y + 690, x - 178, y + 740, x - 176, y + 790, x - 60, y + 800, x + 60,
                        y + 800, x + 176, y + 790, x + 178, y + 740, x + 170, y + 690, x + 100, y + 640));
        c.fill(ROCK, soft(x - 182, y + 782, 364, 30, 12));
        c.fill(new Color(255, 255, 255, 70), soft(x - 130, y + 706, 90, 18, 9));
        c.fill(LAMP, disc(x + 110, y + 735, 18));
    }

    /** The keepers' choir, seven of them, in flat colours. */
    static Canvas choir() {
        Canvas c = new Canvas(2300, 1000, 1.1, false);
        c.fill(SAND, box(0, 0, 2300, 1000));
        for (int line = 0; line < 5; line++) {
            double y = 90 + 34 * line;
            c.line(
                    0xD8C6A3,
                    5,
                    curve(
                            0, y + 60, 400, y - 40, 800, y + 130, 1200, y + 40, 1600, y - 50, 2000, y + 110, 2300,
                            y + 30));
        }
        double[][] notes = {
            {130, 190}, {410, 150}, {720, 220}, {1030, 160}, {1310, 180}, {1640, 130}, {1900, 200}, {2130, 150}
        };
        for (int i = 0; i < notes.length; i++) {
            note(c, notes[i][0], notes[i][1], i % 3 == 1);
        }
        int[] coats = {SEA, CORAL, NIGHT, LAMP, 0x6E8B3D, SEA, CORAL};
        int[] skins = {0xF1C9A5, 0x8D5A3A, 0xE5B08A, 0xC98F63, 0xF3D3B5, 0x6F4630, 0xDDA67D};
        int[] height = {0, 60, -20, 30, -40, 70, 10};
        for (int i = 0; i < 7; i++) {
            singer(c, 175 + 325 * i, 480 + height[i], coats[i], skins[i], i);
        }
        return c;
    }

    private static void note(Canvas c, double x, double y, boolean pair) {
        c.fill(NIGHT, at(oval(0, 0, 26, 18), x, y, 1, -20));
        c.line(NIGHT, 8, open(x + 23, y - 6, x + 23, y - 100));
        if (pair) {
            c.fill(NIGHT, at(oval(0, 0, 26, 18), x + 90, y - 12, 1, -20));
            c.line(NIGHT, 8, open(x + 113, y - 18, x + 113, y - 112))
                    .line(NIGHT, 16, open(x + 23, y - 98, x + 113, y - 110));
            return;
        }
        c.line(NIGHT, 9, curve(x + 23, y - 98, x + 40, y - 70, x + 66, y - 66, x + 56, y - 34));
    }

    private static void singer(Canvas c, double x, double y, int coat, int skin, int who) {
        c.fill(
                coat,
                curve(
                        x - 150, 1010, x - 150, y + 230, x - 110, y + 150, x - 40, y + 132, x - 10, y + 128, x + 10,
                        y + 128, x + 40, y + 132, x + 110, y + 150, x + 150, y + 230, x + 150, 1010));
        c.fill(skin, soft(x - 34, y + 80, 68, 80, 26));
        c.fill(
                FOAM,
                curve(
                        x - 80, y + 140, x - 40, y + 190, x + 40, y + 190, x + 80, y + 140, x + 60, y + 120, x - 60,
                        y + 120, x - 80, y + 140));
        c.fill(skin, oval(x, y, 96, 112));
        c.fill(new Color(217, 87, 63, 90), oval(x - 58, y + 30, 22, 15))
                .fill(new Color(217, 87, 63, 90), oval(x + 58, y + 30, 22, 15));
        c.line(ROCK, 8, curve(x - 58, y - 8, x - 50, y - 24, x - 32, y - 24, x - 24, y - 8))
                .line(ROCK, 8, curve(x + 24, y - 8, x + 32, y - 24, x + 50, y - 24, x + 58, y - 8));
        c.fill(0x6B2222, oval(x, y + 52, 24 + who % 3 * 5, 30 - who % 2 * 6));
        c.fill(0xE9837A, oval(x, y + 64, 14, 10));
        if (who % 3 == 1) {
            c.fill(
                    FOAM,
                    curve(
                            x - 70, y + 34, x - 60, y + 120, x - 30, y + 150, x, y + 152, x + 30, y + 150, x + 60,
                            y + 120, x + 70, y + 34, x + 50, y + 86, x - 50, y + 86, x - 70, y + 34));
            c.fill(0x6B2222, oval(x, y + 56, 22, 22));
        }
        hat(c, x, y, who % 2 == 0 ? LAMP : NIGHT);
        Shape sheet =
                outline(x - 88, y + 268, x, y + 292, x + 88, y + 268, x + 88, y + 400, x, y + 424, x - 88, y + 400);
        c.fill(0xFFFDF6, sheet).line(0xD8C6A3, 4, open(x, y + 292, x, y + 424));
        c.fill(skin, disc(x - 92, y + 350, 28)).fill(skin, disc(x + 92, y + 350, 28));
    }

    private static void hat(Canvas c, double x, double y, int colour) {
        c.fill(colour, curve(x - 98, y - 40, x - 96, y - 170, x + 96, y - 170, x + 98, y - 40));
        c.fill(colour, soft(x - 138, y - 62, 276, 34, 17));
        c.fill(new Color(0, 0, 0, 40), soft(x - 104, y - 72, 208, 14, 7));
    }
}
