package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.Sight;
import bandwright.pipeline.pixels.StoredPixels;
import bandwright.pipeline.size.Layer;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;

/** The artwork of a page, unpacked once a file and averaged down to about the density of the drawing. */
final class Artworks {
    private final double density;
    private final Map<Path, Map<Integer, Optional<BufferedImage>>> unpacked = new TreeMap<>();

    Artworks(double density) {
        this.density = density;
    }

    /** Stored pixels, not turned; empty where this Java cannot unpack them. */
    Optional<BufferedImage> find(Layer.Picture picture) throws IOException {
        Path path = picture.artwork().path();
        int step = step(picture);
        Map<Integer, Optional<BufferedImage>> bySize = unpacked.computeIfAbsent(path, p -> new TreeMap<>());
        Optional<BufferedImage> known = bySize.get(step);
        if (known == null) {
            known = read(picture.artwork(), step);
            bySize.put(step, known);
        }
        return known;
    }

    private int step(Layer.Picture picture) {
        double across =
                picture.artwork().shownWidth() / (picture.place().width().mm() * density);
        double down =
                picture.artwork().shownHeight() / (picture.place().height().mm() * density);
        return (int) Math.max(1, Math.min(across, down));
    }

    private static Optional<BufferedImage> drawn(ArtworkFile artwork, int step) {
        try {
            Sight sight = Sight.read(artwork, step);
            BufferedImage image = new BufferedImage(sight.width(), sight.height(), BufferedImage.TYPE_INT_ARGB);
            image.getRaster().setDataElements(0, 0, sight.width(), sight.height(), sight.argb());
            return Optional.of(image);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<BufferedImage> read(ArtworkFile artwork, int step) throws IOException {
        return switch (artwork.kind()) {
            case PNG -> byJava(artwork.path()).map(image -> averaged(colours(image), step));
            case JPEG -> {
                Optional<BufferedImage> read = byJava(artwork.path());
                // Java's reader gives up at four inks, or takes them for three colours and their opacity.
                boolean isRead = read.filter(image -> image.getRaster().getNumBands() < 4)
                        .isPresent();
                yield isRead ? read.map(image -> averaged(colours(image), step)) : seen(artwork, step);
            }
            case TIFF, WEBP, GIF -> seen(artwork, step);
            case SVG, PDF -> drawn(artwork, step);
        };
    }

    /** The others' samples come through the same door as the sheet's own, but by another way into pixels. */
    private static Optional<BufferedImage> seen(ArtworkFile artwork, int step) throws IOException {
        StoredPixels seen = StoredPixels.read(artwork, step).seen();
        BufferedImage image = new BufferedImage(seen.width(), seen.height(), BufferedImage.TYPE_INT_ARGB);
        for (int i = 0; i < seen.width() * seen.height(); i++) {
            image.setRGB(i % seen.width(), i / seen.width(), seen.at(i));
        }
        return Optional.of(image);
    }

    private static Optional<BufferedImage> byJava(Path path) throws IOException {
        try {
            return Optional.ofNullable(ImageIO.read(path.toFile()));
        } catch (IIOException | RuntimeException e) {
            // Java's readers throw all sorts at pictures that they don't know; the PDF's own reader has passed them.
            return Optional.empty();
        }
    }

    /** Java takes grey values for linear light where files mean sRGB's curve, so they are copied by hand. */
    private static BufferedImage colours(BufferedImage image) {
        boolean grey = image.getColorModel().getColorSpace().getType() == ColorSpace.TYPE_GRAY;
        if (!grey) {
            return image;
        }
        Raster raster = image.getRaster();
        int depth = image.getSampleModel().getSampleSize(0);
        int most = (1 << depth) - 1;
        BufferedImage colours = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int value = raster.getSample(x, y, 0) * 255 / most;
                int alpha = raster.getNumBands() > 1 ? raster.getSample(x, y, 1) * 255 / most : 255;
                colours.setRGB(x, y, alpha << 24 | value << 16 | value << 8 | value);
            }
        }
        return colours;
    }

    /** The mean of every step x step pixels, their colours weighed by how opaque they are. */
    private static BufferedImage averaged(BufferedImage image, int step) {
        int width = Math.max(1, image.getWidth() / step);
        int height = Math.max(1, image.getHeight() / step);
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        int across = Math.min(image.getWidth(), width * step);
        int down = Math.min(step, image.getHeight());
        // Copied strip by strip: Java does that many times quicker than pixel by pixel from what the file had.
        BufferedImage strip = new BufferedImage(across, down, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = strip.createGraphics();
        g.setComposite(AlphaComposite.Src);
        int[] pixels = new int[across * down];
        for (int y = 0; y < height; y++) {
            g.drawImage(image, 0, -y * step, null);
            strip.getRaster().getDataElements(0, 0, across, down, pixels);
            for (int x = 0; x < width; x++) {
                small.setRGB(x, y, mean(pixels, across, x * step, Math.min(step, across), down));
            }
        }
        g.dispose();
        return small;
    }

    private static int mean(int[] pixels, int rowLength, int from, int across, int down) {
        long alpha = 0;
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                int pixel = pixels[y * rowLength + from + x];
                int opacity = pixel >>> 24;
                alpha += opacity;
                red += (long) opacity * (pixel >> 16 & 255);
                green += (long) opacity * (pixel >> 8 & 255);
                blue += (long) opacity * (pixel & 255);
            }
        }
        if (alpha == 0) {
            return 0;
        }
        return (int) (alpha / ((long) across * down)) << 24
                | (int) (red / alpha) << 16
                | (int) (green / alpha) << 8
                | (int) (blue / alpha);
    }
}
