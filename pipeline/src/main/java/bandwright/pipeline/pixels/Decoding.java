package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.vector.VectorArtwork;
import bandwright.rules.words.Words;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;

/** The one door to a picture's samples: decodes what its file stores, all of it or every so-manieth pixel. */
final class Decoding {
    private Decoding() {}

    /**
     * Decodes a picture; its samples are as stored, not turned, in the colour space of its file.
     *
     * @param step every step-th pixel each way, the first one half a step from the corner
     */
    static BufferedImage stored(ArtworkFile artwork, int step) throws IOException {
        try {
            if (artwork.kind().isVector()) {
                return drawn(artwork, step);
            }
            if (artwork.kind() == ArtworkFile.Kind.PNG) {
                Optional<BufferedImage> sampled = SampledPng.find(artwork.path(), step);
                if (sampled.isPresent()) {
                    return sampled.get();
                }
            }
            return byReader(artwork, step);
        } catch (RuntimeException e) {
            // A stranger's bytes in a decoder: whatever it throws, the file is what can't be read.
            throw new IOException(Words.say("artwork.unreadable-late", artwork.name()), e);
        }
    }

    /** Vector artwork has no samples: it is drawn with as many pixels as are asked for. */
    private static BufferedImage drawn(ArtworkFile artwork, int step) throws IOException {
        try (VectorArtwork vector = VectorArtwork.open(artwork)) {
            return vector.pixels((artwork.pixelWidth() + step - 1) / step, (artwork.pixelHeight() + step - 1) / step);
        }
    }

    /** The numbers of a JPEG as they are stored, whatever they mean. */
    static Raster raster(ArtworkFile artwork, int step) throws IOException {
        try {
            return with(artwork, step, (reader, param) -> reader.readRaster(0, param));
        } catch (RuntimeException e) {
            throw new IOException(Words.say("artwork.unreadable-late", artwork.name()), e);
        }
    }

    /** Whether a JPEG's numbers can be had at all. */
    static boolean isUnpacked(ArtworkFile artwork, int step) {
        try {
            raster(artwork, step);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static BufferedImage byReader(ArtworkFile artwork, int step) throws IOException {
        return with(artwork, step, (reader, param) -> reader.read(0, param));
    }

    private interface Reading<T> {
        T of(ImageReader reader, ImageReadParam param) throws IOException;
    }

    private static <T> T with(ArtworkFile artwork, int step, Reading<T> reading) throws IOException {
        String format = artwork.kind().name().toLowerCase(Locale.ROOT);
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = new FileImageInputStream(artwork.path().toFile())) {
            reader.setInput(in, true, true);
            ImageReadParam param = reader.getDefaultReadParam();
            param.setSourceSubsampling(step, step, step / 2, step / 2);
            return reading.of(reader, param);
        } finally {
            reader.dispose();
        }
    }
}
