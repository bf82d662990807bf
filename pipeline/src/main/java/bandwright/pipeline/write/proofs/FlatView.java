package bandwright.pipeline.write.proofs;

import bandwright.pipeline.write.thumb.FlatPicture;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Outline;
import bandwright.rules.units.Rgb;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/**
 * A coaster or a tile seen from above: its own outline cuts off what is printed past its edge.
 *
 * @param picture what is printed, as it looks on the base
 */
record FlatView(Blank blank, Form.Flat form, FlatPicture picture, Rgb base) {
    private static final Color EDGE = new Color(150, 150, 148);

    double width() {
        return form.width().mm();
    }

    double height() {
        return form.height().mm();
    }

    /** Draws it with its upper left corner there. */
    void draw(BufferedImage image, double left, double top, double perMm) {
        BufferedImage face = face(perMm);
        Graphics2D g = image.createGraphics();
        Smooth.on(g);
        Shape outline = outline(left, top, perMm);
        g.setPaint(new TexturePaint(face, new Rectangle2D.Double(left, top, face.getWidth(), face.getHeight())));
        g.fill(outline);
        g.setColor(EDGE);
        g.setStroke(new BasicStroke(1));
        g.draw(outline);
        g.dispose();
    }

    private Shape outline(double left, double top, double perMm) {
        double across = width() * perMm;
        double up = height() * perMm;
        return form.outline() == Outline.ROUND
                ? new Ellipse2D.Double(left, top, across, up)
                : new Rectangle2D.Double(left, top, across, up);
    }

    private BufferedImage face(double perMm) {
        int across = (int) Math.ceil(width() * perMm);
        int down = (int) Math.ceil(height() * perMm);
        BufferedImage face = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
        double side = blank.sideMargin().mm();
        double above = blank.topMargin().mm();
        double printedRight = width() - side;
        double printedBottom = height() - blank.bottomMargin().mm();
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                double u = (x + 0.5) / perMm;
                double v = (y + 0.5) / perMm;
                boolean isPrinted = u >= side && v >= above && u < printedRight && v < printedBottom;
                face.setRGB(
                        x,
                        y,
                        isPrinted
                                ? picture.at(u - side, v - above)
                                : (base.red() << 16) | (base.green() << 8) | base.blue());
            }
        }
        return face;
    }
}
