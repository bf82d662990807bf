package bandwright.pipeline.shop;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntBinaryOperator;
import javax.imageio.ImageIO;

/** A picture that a test paints pixel by pixel. */
public final class PaintedPng {
    private PaintedPng() {}

    /**
     * Paints it and writes it down.
     *
     * @param argb the pixel of a column and a row, counted from the upper left: 0xAARRGGBB
     */
    public static ArtworkFile of(Path folder, String name, int width, int height, IntBinaryOperator argb) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, argb.applyAsInt(x, y));
            }
        }
        try {
            Path file = folder.resolve(name);
            ImageIO.write(image, "png", file.toFile());
            return new ArtworkFile(
                    name, file, Files.size(file), ArtworkFile.Kind.PNG, width, height, Orientation.TOP_LEFT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
