package bandwright.pipeline.sample.art;

import static bandwright.pipeline.sample.art.Shapes.at;
import static bandwright.pipeline.sample.art.Shapes.box;
import static bandwright.pipeline.sample.art.Shapes.disc;
import static bandwright.pipeline.sample.art.Shapes.oval;
import static bandwright.pipeline.sample.art.Shapes.path;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.Locale;

/** A week's tide table as a picture: from the full moon's spring tides to the half moon's neaps, heights in metres. */
final class TidesPicture {
    private static final double DAY = 2250 / 7.0;
    private static final double HOURS_BETWEEN_HIGHS = 12.42;
    private static final double MEAN = 3.1;
    private static final double FIRST_HIGH = 5;

    /** The tide that carries the boat. */
    private static final int BOAT = 7;

    private TidesPicture() {}

    static Canvas draw() {
        Canvas c = Canvas.on(Ink.CREAM, 2250, 1000, 1);
        for (int day = 0; day < 7; day++) {
            moon(c, DAY * (day + 0.5), 150, day / 6.0);
            if (day > 0) {
                double x = DAY * day;
                for (int dot = 0; dot < 44; dot++) {
                    c.fill(Ink.SHALLOW, disc(x, 64 + 18 * dot, 4));
                }
            }
        }
        water(c);
        boat(c);
        heights(c);
        days(c);
        return c;
    }

    private static double range(double hours) {
        return 1.75 + 0.85 * Math.cos(Math.PI * hours / 24 / 7);
    }

    private static double metres(double hours) {
        return MEAN + range(hours) * Math.cos(2 * Math.PI * (hours - FIRST_HIGH) / HOURS_BETWEEN_HIGHS);
    }

    private static double x(double hours) {
        return hours / 24 * DAY;
    }

    private static double y(double metres) {
        return 650 - (metres - MEAN) * 60;
    }

    private static Path2D curve(double lower) {
        Path2D path = new Path2D.Double();
        path.moveTo(-20, y(metres(-1)) + lower);
        for (double hours = -1; hours <= 170; hours += 0.25) {
            path.lineTo(x(hours), y(metres(hours)) + lower);
        }
        return path;
    }

    private static void water(Canvas c) {
        Path2D sea = curve(0);
        sea.lineTo(2300, 1000);
        sea.lineTo(-20, 1000);
        sea.closePath();
        c.fill(Ink.SEA, sea);
        c.dots(Ink.SHALLOW, 14, sea, (x, y) -> 0.75 - (y - 480) / 330);
        c.line(Ink.NIGHT, 14, curve(0)).line(Ink.CREAM, 6, curve(22));
    }

    private static void moon(Canvas c, double x, double y, double waned) {
        Shape disc = disc(x, y, 78);
        c.fill(Ink.NIGHT, disc).dots(Ink.SEA, 12, disc, (px, py) -> 0.35);
        Area lit = new Area(disc(x, y, 66));
        lit.subtract(new Area(box(x, y - 66, 66, 132)));
        lit.add(new Area(oval(x, y, 66 * Math.cos(Math.PI / 2 * waned), 66)));
        c.fill(Ink.LAMP, lit).dots(Ink.CORAL, 12, lit, (px, py) -> (px - x + 20) / 200);
        for (double[] sea : new double[][] {{-24, -18, 13}, {-36, 16, 9}, {-8, 30, 11}}) {
            c.within(Ink.CREAM, disc(x + sea[0], y + sea[1], sea[2]), lit);
        }
    }

    private static void heights(Canvas c) {
        for (int tide = 0; tide < 13; tide++) {
            double high = FIRST_HIGH + tide * HOURS_BETWEEN_HIGHS;
            if (tide != BOAT) {
                Numerals.draw(c, Ink.NIGHT, figure(metres(high)), x(high), y(metres(high)) - 48, 40, 0);
            }
        }
    }

    private static String figure(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres);
    }

    private static void days(Canvas c) {
        for (int day = 0; day < 7; day++) {
            double x = DAY * (day + 0.5);
            c.fill(Ink.CORAL, disc(x, 914, 58)).line(Ink.CREAM, 6, disc(x, 914, 47));
            Numerals.draw(c, Ink.CREAM, String.valueOf(day + 1), x, 914, 48, 0);
        }
    }

    private static void boat(Canvas c) {
        double hours = FIRST_HIGH + BOAT * HOURS_BETWEEN_HIGHS;
        double x = x(hours);
        double y = y(metres(hours)) - 12;
        c.fill(Ink.CORAL, at(x, y, 1, 5, path("M-4 -190 C40 -150 66 -90 70 -34 L-4 -34 Z")));
        c.fill(Ink.LAMP, at(x, y, 1, 5, path("M-14 -150 C-40 -110 -56 -70 -60 -34 L-14 -34 Z")));
        c.line(Ink.NIGHT, 8, at(x, y, 1, 5, path("M-9 -204 L-9 -10")));
        c.fill(Ink.NIGHT, at(x, y, 1, 5, path("M-92 -22 L96 -22 C84 16 60 30 40 32 L-50 32 C-72 24 -86 4 -92 -22 Z")));
        c.line(Ink.CREAM, 6, at(x, y, 1, 5, path("M-82 -8 L84 -8")));
    }
}
