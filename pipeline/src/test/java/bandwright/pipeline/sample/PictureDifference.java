package bandwright.pipeline.sample;

import java.awt.image.BufferedImage;

/** How unlike two pictures are: the mean difference of their channels, 0 to 255; different sizes differ wholly. */
final class PictureDifference {
    private PictureDifference() {}

    static double of(BufferedImage one, BufferedImage other) {
        if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
            return 255;
        }
        long sum = 0;
        int[] p = pixels(one);
        int[] q = pixels(other);
        for (int i = 0; i < p.length; i++) {
            for (int shift = 0; shift < 32; shift += 8) {
                sum += Math.abs((p[i] >> shift & 255) - (q[i] >> shift & 255));
            }
        }
        return sum / (4.0 * p.length);
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
