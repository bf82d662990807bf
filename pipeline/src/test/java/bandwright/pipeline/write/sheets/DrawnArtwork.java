package bandwright.pipeline.write.sheets;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;

/** Pictures that the tests draw themselves: none is like its own mirror image. */
public final class DrawnArtwork {
    private DrawnArtwork() {}

    /** A lighthouse on the left, a sun high on the right and terns between, in colours of the seed. */
    public static BufferedImage lighthouse(int width, int height, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Color sky = Color.getHSBColor((float) random.nextDouble(), 0.45f, 0.95f);
        g.setPaint(new GradientPaint(0, 0, sky, 0, height, sky.darker()));
        g.fillRect(0, 0, width, height);
        g.setColor(Color.getHSBColor((float) random.nextDouble(), 0.7f, 0.5f));
        g.fillRect(0, height * 7 / 10, width, height);
        g.setColor(new Color(250, 240, 220));
        g.fillRect(width / 8, height / 5, width / 10, height * 6 / 10);
        g.setColor(new Color(190, 40, 40));
        g.fillRect(width / 8, height * 2 / 5, width / 10, height / 8);
        g.fillRect(width / 8 + width / 40, height / 10, width / 20, height / 10);
        g.setColor(new Color(250, 200, 60));
        g.fillOval(width * 4 / 5, height / 10, height / 4, height / 4);
        g.setColor(Color.DARK_GRAY);
        g.setStroke(new BasicStroke(Math.max(2f, height / 60f)));
        for (int i = 0; i < 6; i++) {
            double x = width * (0.3 + 0.5 * random.nextDouble());
            double y = height * (0.1 + 0.4 * random.nextDouble());
            double wing = height / 14.0;
            Path2D bird = new Path2D.Double();
            bird.moveTo(x - wing, y);
            bird.quadTo(x - wing / 2, y - wing, x, y);
            bird.quadTo(x + wing / 2, y - wing, x + wing, y);
            g.draw(bird);
        }
        g.dispose();
        return image;
    }

    /** 20 x 10 patches of colours of the seed: read at the patches' centres, every place tells itself from the others. */
    public static BufferedImage patches(int width, int height, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        for (int i = 0; i < 20; i++) {
            for (int j = 0; j < 10; j++) {
                g.setColor(new Color(random.nextInt(0x1000000)));
                g.fillRect(i * width / 20, j * height / 10, width / 20, height / 10);
            }
        }
        g.dispose();
        return image;
    }

    public static ArtworkFile png(Path folder, String name, BufferedImage image) {
        return write(folder, name, image, "png", Orientation.TOP_LEFT);
    }

    public static ArtworkFile jpeg(Path folder, String name, BufferedImage image) {
        return write(folder, name, image, "jpeg", Orientation.TOP_LEFT);
    }

    /** Stored as it is, and to be turned as the orientation says. */
    public static ArtworkFile write(
            Path folder, String name, BufferedImage image, String format, Orientation orientation) {
        Path path = folder.resolve(name);
        try {
            if (!ImageIO.write(image, format, path.toFile())) {
                throw new IllegalStateException("no writer for " + format);
            }
            ArtworkFile.Kind kind = ArtworkFile.Kind.valueOf(format.toUpperCase(Locale.ROOT));
            return new ArtworkFile(
                    name, path, Files.size(path), kind, image.getWidth(), image.getHeight(), orientation);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
