package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.GifHeader;
import bandwright.pipeline.artwork.GifPixels;
import bandwright.pipeline.artwork.OtherReaders;
import bandwright.pipeline.artwork.PictureBytes;
import bandwright.pipeline.artwork.TiffColour;
import bandwright.pipeline.artwork.TiffHeader;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The samples of a picture of a kind that no document takes as it is, held whole: a TIFF's, a WebP's, a GIF's; and every
 * so-manieth of a JPEG of four inks, for looking at. They are the file's own: of whatever depth, numbers of a palette's
 * colours, inks as ink (most is most ink); only alpha is never multiplied in, and black is zero.
 */
public final class Unpacked {
    private final Raster raster;
    private final int step;
    private final int colours;
    private final int bits;
    private final boolean hasAlpha;
    private final boolean isMultiplied;
    private final boolean isInverted;
    private final OptionalInt transparent;

    private Unpacked(
            Raster raster,
            int step,
            int colours,
            int bits,
            TiffHeader.Alpha alpha,
            boolean isInverted,
            OptionalInt transparent) {
        this.raster = raster;
        this.step = step;
        this.colours = colours;
        this.bits = bits;
        this.hasAlpha = alpha != TiffHeader.Alpha.NONE;
        this.isMultiplied = alpha == TiffHeader.Alpha.MULTIPLIED;
        this.isInverted = isInverted;
        this.transparent = transparent;
    }

    /** All samples of a TIFF, WebP or GIF. */
    public static Unpacked read(ArtworkFile artwork) throws IOException {
        return find(artwork, 1).orElseThrow();
    }

    /** Empty for the kinds that {@link Decoding} has other doors to. */
    static Optional<Unpacked> find(ArtworkFile artwork, int step) throws IOException {
        return switch (artwork.kind()) {
            case TIFF -> Optional.of(tiff(artwork, step));
            case WEBP -> Optional.of(webp(artwork, step));
            case GIF -> Optional.of(gif(artwork, step));
            case JPEG ->
                InkedJpeg.find(artwork, step)
                        .map(raster ->
                                new Unpacked(raster, 1, 4, 8, TiffHeader.Alpha.NONE, false, OptionalInt.empty()));
            case PNG, SVG, PDF -> Optional.empty();
        };
    }

    private static Unpacked tiff(ArtworkFile artwork, int step) throws IOException {
        try (PictureBytes bytes = PictureBytes.open(artwork.path())) {
            TiffHeader header = TiffHeader.read(bytes);
            // The reader leaves pictures of one bit as they are, and turns all others so that black is zero.
            boolean isInverted = header.colour() == TiffColour.WHITE_IS_ZERO && header.bits() == 1;
            return new Unpacked(
                    OtherReaders.tiff(header, artwork.path()).getRaster(),
                    step,
                    header.colour().colours(),
                    header.bits(),
                    header.alpha(),
                    isInverted,
                    OptionalInt.empty());
        }
    }

    private static Unpacked webp(ArtworkFile artwork, int step) throws IOException {
        BufferedImage image = OtherReaders.webp(artwork.path());
        TiffHeader.Alpha alpha = image.getColorModel().hasAlpha() ? TiffHeader.Alpha.PLAIN : TiffHeader.Alpha.NONE;
        return new Unpacked(image.getRaster(), step, 3, 8, alpha, false, OptionalInt.empty());
    }

    private static Unpacked gif(ArtworkFile artwork, int step) throws IOException {
        try (PictureBytes bytes = PictureBytes.open(artwork.path())) {
            GifHeader header = GifHeader.read(bytes);
            GifPixels pixels = new GifPixels(bytes, header);
            WritableRaster raster =
                    Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, header.width(), header.height(), 1, null);
            byte[] row = new byte[header.width()];
            for (int i = 0; i < header.height(); i++) {
                pixels.next(row);
                raster.setDataElements(0, header.row(i), header.width(), 1, row);
            }
            return new Unpacked(raster, step, 1, 8, TiffHeader.Alpha.NONE, false, header.transparent());
        }
    }

    public int width() {
        return side(raster.getWidth());
    }

    public int height() {
        return side(raster.getHeight());
    }

    private int side(int all) {
        return (all - step / 2 + step - 1) / step;
    }

    /** Samples a pixel without alpha. */
    public int colours() {
        return colours;
    }

    /** Of a sample. */
    public int bits() {
        return bits;
    }

    public boolean hasAlpha() {
        return hasAlpha;
    }

    /** The number of the colour of a palette that isn't painted. */
    public OptionalInt transparent() {
        return transparent;
    }

    /** Samples of a pixel as rows have them: its colours, then its alpha if it has one. */
    public int samples() {
        return colours + (hasAlpha ? 1 : 0);
    }

    /** A row for {@link #row}. */
    public int[] newRow() {
        return new int[raster.getWidth() * raster.getNumBands()];
    }

    /** The samples of a row, pixel by pixel from the front of the array. */
    public void row(int y, int[] into) {
        raster.getPixels(0, y * step + step / 2, raster.getWidth(), 1, into);
        int bands = raster.getNumBands();
        int most = (1 << bits) - 1;
        int out = 0;
        for (int x = step / 2; x < raster.getWidth(); x += step) {
            int alpha = hasAlpha ? into[x * bands + colours] : most;
            for (int c = 0; c < colours; c++) {
                int sample = into[x * bands + c];
                into[out++] = isMultiplied ? divided(sample, alpha, most) : isInverted ? most - sample : sample;
            }
            if (hasAlpha) {
                into[out++] = alpha;
            }
        }
    }

    private static int divided(int sample, int alpha, int most) {
        return alpha == 0 ? 0 : (int) Math.min(most, ((long) sample * most + alpha / 2) / alpha);
    }
}
