package bandwright.pipeline.write.proofs;

import bandwright.pipeline.write.thumb.FlatPicture;
import bandwright.rules.blanks.Body;
import bandwright.rules.units.Rgb;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Optional;

/**
 * A round blank seen from one side, a little from above, in parallel projection: what stands behind a millimetre of the
 * picture is looked up on the wall, so that pictures bend and narrow as they will, and no light or shade changes their
 * colours.
 *
 * @param wall its own, from whichever side
 * @param picture what is printed, as it looks on the base
 * @param handle the colour of its handle; empty = it has none
 */
record CupView(Body body, CupWall wall, FlatPicture picture, Rgb base, Optional<Rgb> handle, Rgb inside) {
    private static final double SIN = Math.sin(CupWall.TILT);
    private static final double COS = Math.cos(CupWall.TILT);
    private static final Color EDGE = new Color(150, 150, 148);

    private static final double HANDLE_REACH = 0.40;
    private static final double HANDLE_THICK = 0.11;

    /**
     * Draws it.
     *
     * @param middle where its axis stands, in pixels
     * @param rim where the middle of its rim stands
     */
    void draw(BufferedImage image, int middle, double rim, double perMm, Body.From from) {
        Graphics2D g = image.createGraphics();
        Smooth.on(g);
        g.translate(middle, rim);
        g.scale(perMm, perMm);
        if (from != Body.From.FRONT) {
            handle.ifPresent(colour -> handle(g, colour, from == Body.From.HANDLE_RIGHT ? 1 : -1, 1 / perMm));
        }
        wall(image, middle, from);
        edges(g, 1 / perMm);
        g.dispose();
    }

    /** In millimetres from the middle of the rim, y downwards, as all that follows. */
    private void handle(Graphics2D g, Rgb colour, int side, double pixel) {
        double upper = body.height() * 0.80;
        double lower = body.height() * 0.22;
        double reach = HANDLE_REACH * CupWall.width(body);
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
        float thick = (float) (HANDLE_THICK * CupWall.width(body));
        g.setColor(EDGE);
        g.setStroke(new BasicStroke(thick + (float) (2 * pixel), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(bow);
        g.setColor(new Color(colour.red(), colour.green(), colour.blue()));
        g.setStroke(new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(bow);
    }

    private double down(double y) {
        return (body.height() - y) * COS;
    }

    private void wall(BufferedImage image, int middle, Body.From from) {
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int row = 0; row < wall.height(); row++) {
            for (int column = 0; column < wall.width(); column++) {
                int px = middle + wall.left() + column;
                int py = wall.first() + row;
                if (px >= 0 && px < image.getWidth() && py >= 0 && py < image.getHeight()) {
                    int at = py * image.getWidth() + px;
                    pixels[at] = pixel(pixels[at], column, row, from);
                }
            }
        }
    }

    private int pixel(int ground, int column, int row, Body.From from) {
        int red = 0;
        int green = 0;
        int blue = 0;
        for (int j = 0; j < CupWall.FINE; j++) {
            for (int i = 0; i < CupWall.FINE; i++) {
                int point = wall.number(CupWall.FINE * column + i, CupWall.FINE * row + j);
                int colour = seen(point, from, ground);
                red += colour >> 16 & 255;
                green += colour >> 8 & 255;
                blue += colour & 255;
            }
        }
        int half = CupWall.FINE * CupWall.FINE / 2;
        int points = CupWall.FINE * CupWall.FINE;
        return (((red + half) / points) << 16) | (((green + half) / points) << 8) | ((blue + half) / points);
    }

    /** What is seen at a point: the wall, else the inside of the rim, else the ground. */
    private int seen(int point, Body.From from, int ground) {
        if (!wall.isWall(point)) {
            return wall.isInside(point) ? value(inside) : ground;
        }
        double along = body.fromLeft(wall.angle(point), from);
        double down = wall.fromTop(point);
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
        g.draw(new Ellipse2D.Double(-rim, -rim * SIN, 2 * rim, 2 * rim * SIN));
        g.draw(new Arc2D.Double(-foot, floor - foot * SIN, 2 * foot, 2 * foot * SIN, 180, 180, Arc2D.OPEN));
        g.draw(new Line2D.Double(-rim, 0, -foot, floor));
        g.draw(new Line2D.Double(rim, 0, foot, floor));
    }
}
