package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.rules.units.Box;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;

/** A transfer drawn flat from its artwork files, upright, one unit a millimetre, y upwards. */
final class ExpectedTransfer {
    private ExpectedTransfer() {}

    /** Draws it and says whether all of it could be drawn: some pictures only a PDF reader can unpack. */
    static boolean draw(Graphics2D g, Transfer transfer, Artworks artworks) throws IOException {
        Shape all = g.getClip();
        AffineTransform upright = g.getTransform();
        g.clip(rectangle(transfer.flat()));
        boolean complete = true;
        for (Layer layer : transfer.layers()) {
            if (layer instanceof Layer.Fill fill) {
                g.setColor(new Color(
                        fill.colour().red(),
                        fill.colour().green(),
                        fill.colour().blue()));
                g.fill(rectangle(fill.box()));
            } else if (layer instanceof Layer.Picture picture) {
                Optional<BufferedImage> image = artworks.find(picture);
                image.ifPresent(pixels -> draw(g, picture, pixels));
                complete &= image.isPresent();
            } else if (layer instanceof Layer.Type type) {
                Shape outer = g.getClip();
                g.clip(rectangle(type.clip()));
                g.setColor(new Color(
                        type.colour().red(),
                        type.colour().green(),
                        type.colour().blue()));
                g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
                g.fill(type.outline().path());
                g.setClip(outer);
            }
        }
        g.setTransform(upright);
        g.setClip(all);
        return complete;
    }

    private static void draw(Graphics2D g, Layer.Picture picture, BufferedImage stored) {
        Shape outer = g.getClip();
        AffineTransform upright = g.getTransform();
        g.clip(rectangle(picture.clip()));
        Box place = picture.place();
        // Down from the upper left corner, as pixels are counted, over the size that is seen.
        g.translate(place.x().mm(), place.top().mm());
        Orientation orientation = picture.artwork().orientation();
        int across = orientation.swapsSides() ? stored.getHeight() : stored.getWidth();
        int down = orientation.swapsSides() ? stored.getWidth() : stored.getHeight();
        g.scale(place.width().mm() / across, -place.height().mm() / down);
        g.drawImage(stored, seen(orientation, across, down), null);
        g.setTransform(upright);
        g.setClip(outer);
    }

    /** Turned about the middle, then flipped, as TIFF 6.0 tells the eight ways in words. */
    private static AffineTransform seen(Orientation orientation, int across, int down) {
        AffineTransform seen = AffineTransform.getTranslateInstance(across / 2.0, down / 2.0);
        switch (orientation) {
            case TOP_LEFT -> {}
            case TOP_RIGHT -> seen.scale(-1, 1);
            case BOTTOM_RIGHT -> seen.quadrantRotate(2);
            case BOTTOM_LEFT -> seen.scale(1, -1);
            case LEFT_TOP -> {
                seen.quadrantRotate(1);
                seen.scale(1, -1);
            }
            case RIGHT_TOP -> seen.quadrantRotate(1);
            case RIGHT_BOTTOM -> {
                seen.quadrantRotate(3);
                seen.scale(1, -1);
            }
            case LEFT_BOTTOM -> seen.quadrantRotate(3);
        }
        boolean swaps = orientation.swapsSides();
        seen.translate(-(swaps ? down : across) / 2.0, -(swaps ? across : down) / 2.0);
        return seen;
    }

    private static Rectangle2D rectangle(Box box) {
        return new Rectangle2D.Double(
                box.x().mm(), box.y().mm(), box.width().mm(), box.height().mm());
    }
}
