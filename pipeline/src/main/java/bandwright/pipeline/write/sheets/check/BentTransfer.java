package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.size.Transfer;
import bandwright.rules.blanks.Sector;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.IOException;

/**
 * A cone's transfer drawn from its artwork files: flat first, then every pixel looked up by its distance and direction
 * from the apex, which lies the outer radius below the box's upper side if the rim is the outer arc, else as far above its
 * lower side.
 */
final class BentTransfer {
    private BentTransfer() {}

    /** Draws it upright, one unit a millimetre, y upwards, and says whether all of it could be drawn. */
    static boolean draw(Graphics2D g, Transfer transfer, Sector sector, Artworks artworks, double density)
            throws IOException {
        double width = transfer.width().mm();
        double height = transfer.height().mm();
        BufferedImage flat = new BufferedImage(
                (int) Math.ceil(width * density), (int) Math.ceil(height * density), BufferedImage.TYPE_INT_RGB);
        Graphics2D onFlat = flat.createGraphics();
        onFlat.setColor(Color.WHITE);
        onFlat.fillRect(0, 0, flat.getWidth(), flat.getHeight());
        onFlat.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        onFlat.setTransform(new AffineTransform(density, 0, 0, -density, 0, height * density));
        boolean complete = ExpectedTransfer.draw(onFlat, transfer, artworks);
        onFlat.dispose();
        BufferedImage bent = bent(flat, transfer, sector, density);
        double boxHeight = transfer.box().height().mm();
        g.drawImage(bent, new AffineTransform(1 / density, 0, 0, -1 / density, 0, boxHeight), null);
        return complete;
    }

    /** What is printed, in the upright box, in millimetres, y upwards: a pie about the apex less a smaller one. */
    static Shape shape(Transfer transfer, Sector sector) {
        double outer = sector.outer().mm();
        double inner = sector.inner().mm();
        double x = transfer.box().width().mm() / 2;
        double y = sector.rimIsOuter() ? transfer.box().height().mm() - outer : outer;
        double degrees = Math.toDegrees(transfer.width().mm() / sector.middle().mm());
        // Java's angles turn clockwise where y grows upwards: -90 is up, 90 is down.
        double middle = sector.rimIsOuter() ? -90 : 90;
        Area shape = new Area(
                new Arc2D.Double(x - outer, y - outer, 2 * outer, 2 * outer, middle - degrees / 2, degrees, Arc2D.PIE));
        shape.subtract(new Area(new Ellipse2D.Double(x - inner, y - inner, 2 * inner, 2 * inner)));
        return shape;
    }

    private static BufferedImage bent(BufferedImage flat, Transfer transfer, Sector sector, double density) {
        double boxWidth = transfer.box().width().mm();
        double boxHeight = transfer.box().height().mm();
        double outer = sector.outer().mm();
        double inner = sector.inner().mm();
        BufferedImage bent = new BufferedImage(
                (int) Math.ceil(boxWidth * density), (int) Math.ceil(boxHeight * density), BufferedImage.TYPE_INT_ARGB);
        for (int j = 0; j < bent.getHeight(); j++) {
            // Down from the upper side, as pixels are counted.
            double y = (j + 0.5) / density;
            double fromApex = sector.rimIsOuter() ? outer - y : outer - (boxHeight - y);
            for (int i = 0; i < bent.getWidth(); i++) {
                double x = (i + 0.5) / density - boxWidth / 2;
                double radius = Math.sqrt(x * x + fromApex * fromApex);
                double along = transfer.width().mm() / 2
                        + Math.atan2(x, fromApex) * sector.middle().mm();
                double down = sector.rimIsOuter() ? outer - radius : radius - inner;
                int u = (int) Math.floor(along * density);
                int v = (int) Math.floor(down * density);
                if (u >= 0 && v >= 0 && u < flat.getWidth() && v < flat.getHeight()) {
                    bent.setRGB(i, j, 0xFF << 24 | flat.getRGB(u, v));
                }
            }
        }
        return bent;
    }
}
