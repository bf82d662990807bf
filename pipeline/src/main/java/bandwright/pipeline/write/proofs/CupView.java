package bandwright.pipeline.write.proofs;

import bandwright.pipeline.write.thumb.FlatPicture;
import bandwright.rules.blanks.Body;
import bandwright.rules.units.Rgb;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Optional;

/**
 * A round blank seen from one side, a little from above, in parallel projection: what stands behind a millimetre of the
 * picture is looked up on the wall, so that pictures bend and narrow as they will, and no light or shade changes their
 * colours.
 *
 * @param picture what is printed, as it looks on the base
 * @param handle the colour of its handle; empty = it has none
 */
record CupView(Body body, FlatPicture picture, Rgb base, Optional<Rgb> handle, Rgb inside) {
    private static final double TILT = Math.toRadians(9);
    private static final double SIN = Math.sin(TILT);
    private static final double COS = Math.cos(TILT);
    private static final Color EDGE = new Color(150, 150, 148);

    /** Points that are looked up for one pixel, each way. */
    private static final int FINE = 2;

    /** Steps towards the height of a point; the third changes nothing that is seen. */
    private static final int STEPS = 5;

    private static final double HANDLE_REACH = 0.40;
    private static final double HANDLE_THICK = 0.11;

    /** The height of the view of a body in millimetres. */
    static double height(Body body) {
        return body.height() * Math.cos(TILT) + (body.rimRadius() + body.footRadius()) * Math.sin(TILT);
    }

    /** The width without a handle, in millimetres. */
    static double width(Body body) {
        return 2 * Math.max(body.rimRadius(), body.footRadius());
    }

    /**
     * Draws it.
     *
     * @param middle where its axis stands, in pixels
     * @param top where it begins
     */
    void draw(BufferedImage image, double middle, double top, double perMm, Body.From from) {
        Graphics2D g = image.createGraphics();
        Smooth.on(g);
        g.translate(middle, top + body.rimRadius() * Math.sin(TILT) * perMm);
        g.scale(perMm, perMm);
        if (from != Body.From.FRONT) {
            handle.ifPresent(colour -> handle(g, colour, from == Body.From.HANDLE_RIGHT ? 1 : -1, 1 / perMm));
        }
        wall(image, g.getTransform(), from, perMm);
        edges(g, 1 / perMm);
        g.dispose();
    }

    /** In millimetres from the middle of the rim, y downwards, as all that follows. */
    private void handle(Graphics2D g, Rgb colour, int side, double pixel) {
        double upper = body.height() * 0.80;
        double lower = body.height() * 0.22;
        double reach = HANDLE_REACH * width(body);
        Path2D bow = new Path2D.Double();
        double from = side * (body.radius(upper) - 1);
        double to = side * (body.radius(lower) - 1);
        bow.moveTo(from, down(upper));
        bow.curveTo(
                from + side * reach * 1.25,
                down(upper) - 2,
                to + side * reach * 1.25,
                down(lower) + 2,
                to,
                down(lower));
        float thick = (float) (HANDLE_THICK * width(body));
        g.setColor(EDGE);
        g.setStroke(new BasicStroke(thick + (float) (2 * pixel), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(bow);
        g.setColor(new Color(colour.red(), colour.green(), colour.blue()));
        g.setStroke(new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(bow);
    }

    private double down(double y) {
        return (body.height() - y) * Math.cos(TILT);
    }

    private void wall(BufferedImage image, AffineTransform toPixels, Body.From from, double perMm) {
        double half = width(body) / 2;
        int left = (int) Math.floor(toPixels.getTranslateX() - half * perMm);
        int right = (int) Math.ceil(toPixels.getTranslateX() + half * perMm);
        int first = (int) Math.floor(toPixels.getTranslateY() - body.rimRadius() * Math.sin(TILT) * perMm);
        int last = first + (int) Math.ceil(height(body) * perMm) + 1;
        for (int py = Math.max(0, first); py < Math.min(image.getHeight(), last); py++) {
            for (int px = Math.max(0, left); px < Math.min(image.getWidth(), right); px++) {
                image.setRGB(px, py, pixel(image.getRGB(px, py), px, py, toPixels, from, perMm));
            }
        }
    }

    private int pixel(int ground, int px, int py, AffineTransform toPixels, Body.From from, double perMm) {
        int red = 0;
        int green = 0;
        int blue = 0;
        for (int j = 0; j < FINE; j++) {
            for (int i = 0; i < FINE; i++) {
                double x = (px + (i + 0.5) / FINE - toPixels.getTranslateX()) / perMm;
                double y = (py + (j + 0.5) / FINE - toPixels.getTranslateY()) / perMm;
                int colour = seen(x, y, from, ground);
                red += colour >> 16 & 255;
                green += colour >> 8 & 255;
                blue += colour & 255;
            }
        }
        int half = FINE * FINE / 2;
        int points = FINE * FINE;
        return (((red + half) / points) << 16) | (((green + half) / points) << 8) | ((blue + half) / points);
    }

    /** What is seen at a point: the wall, else the inside of the rim, else the ground. */
    private int seen(double x, double down, Body.From from, int ground) {
        double y = body.height() - down / COS;
        double depth = 0;
        boolean isStraight = body.rimRadius() == body.footRadius();
        for (int i = 0; i < (isStraight ? 1 : STEPS); i++) {
            double radius = body.radius(Math.max(0, Math.min(body.height(), y)));
            depth = Math.sqrt(Math.max(0, radius * radius - x * x));
            y = body.height() - (down - depth * SIN) / COS;
        }
        boolean isWall = y >= 0 && y <= body.height() && Math.abs(x) <= body.radius(y);
        if (isWall) {
            return onWall(Math.atan2(x, depth), y, from);
        }
        double back = down / SIN;
        return x * x + back * back <= body.rimRadius() * body.rimRadius() ? value(inside) : ground;
    }

    private int onWall(double angle, double y, Body.From from) {
        double along = body.fromLeft(angle, from);
        double down = body.fromTop(y);
        return Double.isNaN(along) || Double.isNaN(down) ? value(base) : picture.at(along, down);
    }

    private static int value(Rgb colour) {
        return (colour.red() << 16) | (colour.green() << 8) | colour.blue();
    }

    private void edges(Graphics2D g, double pixel) {
        g.setColor(EDGE);
        g.setStroke(new BasicStroke((float) pixel));
        double rim = body.rimRadius();
        double foot = body.footRadius();
        double floor = down(0);
        g.draw(new Ellipse2D.Double(-rim, -rim * Math.sin(TILT), 2 * rim, 2 * rim * Math.sin(TILT)));
        g.draw(new Arc2D.Double(
                -foot, floor - foot * Math.sin(TILT), 2 * foot, 2 * foot * Math.sin(TILT), 180, 180, Arc2D.OPEN));
        g.draw(new Line2D.Double(-rim, 0, -foot, floor));
        g.draw(new Line2D.Double(rim, 0, foot, floor));
    }
}
