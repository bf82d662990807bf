package bandwright.pipeline.write.thumb;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;

/**
 * A picture with about twice the pixels that a thumbnail needs, turned as a person sees it.
 *
 * @param pixels upright; sRGB with the colours multiplied by alpha
 */
record SmallPicture(BufferedImage pixels) {
    /** Pixels read for one that is wanted, each way; what is over is averaged. */
    private static final int SPARE = 2;

    /**
     * Reads it at about twice a size, in pixels as a person sees it; empty if it can't be decoded.
     */
    @SuppressWarnings("CatchingUnchecked") // a stranger's bytes in a decoder: whatever it says, it's a grey tile
    static Optional<SmallPicture> read(ArtworkFile artwork, double width, double height) {
        try {
            BufferedImage stored = sampled(artwork, step(artwork, width, height));
            return Optional.of(new SmallPicture(upright(premultiplied(stored), artwork.orientation())));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static BufferedImage sampled(ArtworkFile artwork, int step) throws IOException {
        if (artwork.kind() == ArtworkFile.Kind.PNG) {
            Optional<BufferedImage> sampled = SampledPng.find(artwork.path(), step);
            if (sampled.isPresent()) {
                return sampled.get();
            }
        }
        return sampledByJdk(artwork, step);
    }

    private static BufferedImage sampledByJdk(ArtworkFile artwork, int step) throws IOException {
        String format = artwork.kind().name().toLowerCase(Locale.ROOT);
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = new FileImageInputStream(artwork.path().toFile())) {
            reader.setInput(in, true, true);
            ImageReadParam param = reader.getDefaultReadParam();
            param.setSourceSubsampling(step, step, step / 2, step / 2);
            return reader.read(0, param);
        } finally {
            reader.dispose();
        }
    }

    private static int step(ArtworkFile artwork, double width, double height) {
        double across = artwork.shownWidth() / (SPARE * width);
        double up = artwork.shownHeight() / (SPARE * height);
        int most = Math.min(artwork.pixelWidth(), artwork.pixelHeight());
        return (int) Math.max(1, Math.min(most, Math.floor(Math.min(across, up))));
    }

    private static BufferedImage premultiplied(BufferedImage image) {
        BufferedImage out = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = out.createGraphics();
        graphics.drawImage(image, 0, 0, null);
        graphics.dispose();
        return out;
    }

    private static BufferedImage upright(BufferedImage stored, Orientation orientation) {
        if (orientation == Orientation.TOP_LEFT) {
            return stored;
        }
        boolean swaps = orientation.swapsSides();
        int width = swaps ? stored.getHeight() : stored.getWidth();
        int height = swaps ? stored.getWidth() : stored.getHeight();
        BufferedImage shown = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        AffineTransform toStored = inverse(orientation.toShown());
        Point2D.Double at = new Point2D.Double();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                // Middles of pixels in the unit square, y upwards.
                at.setLocation((x + 0.5) / width, 1 - (y + 0.5) / height);
                toStored.transform(at, at);
                int i = (int) (at.x * stored.getWidth());
                int j = (int) ((1 - at.y) * stored.getHeight());
                shown.getRaster().setDataElements(x, y, stored.getRaster().getDataElements(i, j, null));
            }
        }
        return shown;
    }

    private static AffineTransform inverse(AffineTransform transform) {
        try {
            return transform.createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException(e); // turns and flips can be undone
        }
    }
}
