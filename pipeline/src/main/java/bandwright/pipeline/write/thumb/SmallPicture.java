package bandwright.pipeline.write.thumb;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.Sight;
import bandwright.pipeline.pixels.Sights;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;

/**
 * A picture with about twice the pixels that a thumbnail needs, turned as a person sees it.
 *
 * @param pixels upright; sRGB with the colours multiplied by alpha
 */
record SmallPicture(BufferedImage pixels) {
    /** Pixels read for one that is wanted, each way; what is over is averaged. */
    private static final int SPARE = 2;

    /** Reads it at about twice a size, in pixels as a person sees it; empty if it can't be decoded. */
    static Optional<SmallPicture> read(Sights sights, ArtworkFile artwork, double width, double height) {
        return readAs(sights, artwork, SPARE * width, SPARE * height);
    }

    /** Reads it with no more pixels than are asked for, as far as every so-manieth one allows. */
    static Optional<SmallPicture> readAs(Sights sights, ArtworkFile artwork, double width, double height) {
        return sights.of(artwork, width, height).map(SmallPicture::of);
    }

    private static SmallPicture of(Sight sight) {
        BufferedImage plain = new BufferedImage(sight.width(), sight.height(), BufferedImage.TYPE_INT_ARGB);
        plain.getRaster().setDataElements(0, 0, sight.width(), sight.height(), sight.argb());
        if (sight.isOpaque()) {
            return new SmallPicture(plain); // multiplied by one
        }
        BufferedImage multiplied = new BufferedImage(sight.width(), sight.height(), BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = multiplied.createGraphics();
        graphics.drawImage(plain, 0, 0, null);
        graphics.dispose();
        return new SmallPicture(multiplied);
    }
}
