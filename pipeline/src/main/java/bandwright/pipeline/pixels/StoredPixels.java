package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferInt;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.IOException;
import java.util.Optional;

/**
 * A picture's stored pixels, unpacked: alpha, red, green and blue of 8 bits each, not multiplied, in the colour space of
 * the file. Grey stands in all three colours. Of a picture of four inks these are sRGB, as three channels can't hold
 * them: by its own profile, else by a common one for offset printing.
 */
public final class StoredPixels {
    /** Of a picture with more pixels every second, third ... is read, or a small computer's memory would not do. */
    private static final long MOST_PIXELS = 24_000_000;

    private final int width;
    private final int height;
    private final int step;
    private final boolean isGrey;
    private final boolean hasAlpha;
    private final PictureColour colour;
    private final int[] argb;

    private StoredPixels(
            int width, int height, int step, boolean isGrey, boolean hasAlpha, PictureColour colour, int[] argb) {
        this.width = width;
        this.height = height;
        this.step = step;
        this.isGrey = isGrey;
        this.hasAlpha = hasAlpha;
        this.colour = colour;
        this.argb = argb;
    }

    /**
     * Unpacks a file.
     *
     * @param step so many pixels each way become one, their mean
     */
    public static StoredPixels read(ArtworkFile artwork, int step) throws IOException {
        if (artwork.kind().isVector()) {
            return sampled(artwork, step); // drawn at that size, with smooth edges
        }
        int skip = skip(artwork, step);
        return sampled(artwork, skip).averaged(Math.max(1, step / skip));
    }

    /**
     * Unpacks a part of a file's pixels.
     *
     * @param step every step-th pixel each way is taken, the others are not
     */
    static StoredPixels sampled(ArtworkFile artwork, int step) throws IOException {
        PictureColour colour = PictureColours.of(artwork);
        Optional<Unpacked> unpacked = Unpacked.find(artwork, step);
        return unpacked.isPresent()
                ? of(unpacked.get(), step, colour)
                : unpacked(Decoding.stored(artwork, step), step, colour);
    }

    /** The same picture in sRGB, as an eye sees it. */
    public StoredPixels seen() {
        int[] seen = ToSrgb.of(colour).converted(argb);
        return new StoredPixels(width, height, step, false, hasAlpha, new PictureColour.Srgb(), seen);
    }

    private static StoredPixels of(Unpacked picture, int step, PictureColour said) {
        PictureColour colour = said instanceof PictureColour.Palette palette
                ? palette.base()
                : said.isOfInks() ? new PictureColour.Srgb() : said;
        boolean isGrey = picture.colours() == 1 && !(said instanceof PictureColour.Palette);
        return new StoredPixels(
                picture.width(),
                picture.height(),
                step,
                isGrey,
                picture.hasAlpha() || picture.transparent().isPresent(),
                colour,
                new UnpackedArgb(picture, said).argb());
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** How many stored pixels one of these stands for, each way. */
    public int step() {
        return step;
    }

    public boolean isGrey() {
        return isGrey;
    }

    public boolean hasAlpha() {
        return hasAlpha;
    }

    /** What the numbers mean; a palette has become its colours. */
    public PictureColour colour() {
        return colour;
    }

    /** All pixels, row by row: the array itself, which nobody changes. */
    int[] argb() {
        return argb;
    }

    /** The pixel of that number, row by row. */
    public int at(int number) {
        return argb[number];
    }

    private static int skip(ArtworkFile artwork, int step) {
        long pixels = (long) artwork.pixelWidth() * artwork.pixelHeight();
        int skip = 1;
        while (pixels / skip / skip > MOST_PIXELS && skip < step) {
            skip++;
        }
        return skip;
    }

    private static StoredPixels unpacked(BufferedImage image, int step, PictureColour said) {
        int width = image.getWidth();
        int height = image.getHeight();
        boolean isPalette = image.getColorModel() instanceof IndexColorModel;
        int bands = isPalette ? 3 : image.getRaster().getNumBands();
        PictureColour colour = said instanceof PictureColour.Palette palette ? palette.base() : said;
        return new StoredPixels(
                width, height, step, bands < 3, image.getColorModel().hasAlpha(), colour, argb(image, bands));
    }

    private static int[] argb(BufferedImage image, int bands) {
        int width = image.getWidth();
        boolean isPacked =
                image.getType() == BufferedImage.TYPE_INT_ARGB || image.getType() == BufferedImage.TYPE_INT_RGB;
        if (isPacked) {
            int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
            return image.getType() == BufferedImage.TYPE_INT_ARGB ? pixels : opaque(pixels);
        }
        int[] argb = new int[width * image.getHeight()];
        for (int y = 0; y < image.getHeight(); y++) {
            if (image.getColorModel() instanceof IndexColorModel) {
                image.getRGB(0, y, width, 1, argb, y * width, width);
            } else {
                row(image.getRaster(), y, bands, argb);
            }
        }
        return argb;
    }

    private static int[] opaque(int[] pixels) {
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] |= 0xFF000000;
        }
        return pixels;
    }

    private static void row(Raster raster, int y, int bands, int[] argb) {
        int width = raster.getWidth();
        int at = y * width;
        boolean isWide = raster.getTransferType() == DataBuffer.TYPE_USHORT;
        boolean isBytes = raster.getTransferType() == DataBuffer.TYPE_BYTE
                && raster.getSampleModel().getSampleSize(0) == 8;
        if (!isBytes) {
            int[] samples = raster.getPixels(0, y, width, 1, (int[]) null);
            int most = isWide ? 65_535 : (1 << raster.getSampleModel().getSampleSize(0)) - 1;
            byte[] bytes = new byte[samples.length];
            for (int i = 0; i < bytes.length; i++) {
                bytes[i] = (byte) ((samples[i] * 255L + most / 2) / most);
            }
            pack(bytes, bands, argb, at, width);
            return;
        }
        pack((byte[]) raster.getDataElements(0, y, width, 1, null), bands, argb, at, width);
    }

    private static void pack(byte[] samples, int bands, int[] argb, int at, int width) {
        boolean hasAlpha = bands == 2 || bands == 4;
        for (int x = 0, s = 0; x < width; x++, s += bands) {
            int first = samples[s] & 255;
            int second = bands < 3 ? first : samples[s + 1] & 255;
            int third = bands < 3 ? first : samples[s + 2] & 255;
            int alpha = hasAlpha ? samples[s + bands - 1] & 255 : 255;
            argb[at + x] = alpha << 24 | first << 16 | second << 8 | third;
        }
    }

    /** The mean of every so many pixels each way, colours weighed by how opaque they are. */
    private StoredPixels averaged(int by) {
        if (by == 1) {
            return this;
        }
        int across = (width + by - 1) / by;
        int down = (height + by - 1) / by;
        int[] means = new int[across * down];
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                means[y * across + x] = mean(x * by, y * by, by);
            }
        }
        return new StoredPixels(across, down, step * by, isGrey, hasAlpha, colour, means);
    }

    private int mean(int left, int top, int by) {
        long alpha = 0;
        long red = 0;
        long green = 0;
        long blue = 0;
        int right = Math.min(width, left + by);
        int bottom = Math.min(height, top + by);
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                int pixel = argb[y * width + x];
                int opacity = pixel >>> 24;
                alpha += opacity;
                red += (long) opacity * (pixel >> 16 & 255);
                green += (long) opacity * (pixel >> 8 & 255);
                blue += (long) opacity * (pixel & 255);
            }
        }
        if (alpha == 0) {
            return argb[top * width + left] & 0xFF_FFFF;
        }
        long count = (long) (right - left) * (bottom - top);
        return (int) ((alpha + count / 2) / count) << 24
                | (int) ((red + alpha / 2) / alpha) << 16
                | (int) ((green + alpha / 2) / alpha) << 8
                | (int) ((blue + alpha / 2) / alpha);
    }
}
