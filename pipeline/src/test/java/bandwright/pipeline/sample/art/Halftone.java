package bandwright.pipeline.sample.art;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import java.util.function.ToDoubleBiFunction;

/**
 * Dots on a screen of 45 degrees, each so large that together they cover the share of the paper that a tone asks for.
 * Reckoned pixel by pixel, as filling tens of thousands of discs takes seconds.
 */
final class Halftone {
    private final int[] screen;
    private final Rectangle place;
    private final double scale;
    private final int rgb;

    /** For that part of the picture, in pixels; nothing is drawn outside the window. */
    Halftone(Rectangle place, double scale, int rgb) {
        this.place = place;
        this.scale = scale;
        this.rgb = rgb;
        screen = new int[place.width * place.height];
    }

    /** The dots where the shape is, its edge as soft as the pen's. */
    BufferedImage through(
            Shape shape, double pitch, ToDoubleBiFunction<Double, Double> tone, Consumer<Graphics2D> pen) {
        double step = pitch / 2;
        int firstRow = (int) Math.floor(place.getMinY() / scale / step) - 1;
        int firstColumn = (int) Math.floor(place.getMinX() / scale / step) - 1;
        for (int row = firstRow; row * step * scale < place.getMaxY() + pitch; row++) {
            // Every second place of a row, as on a board of draughts.
            for (int column = firstColumn + (firstColumn + row & 1);
                    column * step * scale < place.getMaxX() + pitch;
                    column += 2) {
                double share = Math.min(1, tone.applyAsDouble(column * step, row * step));
                // Two dots to a square of the pitch.
                double radius = pitch * Math.sqrt(Math.max(0, share) / (2 * Math.PI));
                if (radius > 0.5) {
                    dot(column * step * scale - place.x, row * step * scale - place.y, radius * scale);
                }
            }
        }
        return kept(window(shape, pen));
    }

    private void dot(double x, double y, double radius) {
        int right = (int) Math.min(place.width - 1, x + radius + 1);
        int below = (int) Math.min(place.height - 1, y + radius + 1);
        for (int py = (int) Math.max(0, y - radius - 1); py <= below; py++) {
            for (int px = (int) Math.max(0, x - radius - 1); px <= right; px++) {
                double inside = radius + 0.5 - distance(px + 0.5 - x, py + 0.5 - y);
                int alpha = (int) (255 * Math.max(0, Math.min(1, inside)));
                int at = py * place.width + px;
                screen[at] = Math.max(screen[at], alpha);
            }
        }
    }

    private static double distance(double across, double down) {
        return Math.sqrt(across * across + down * down);
    }

    private BufferedImage window(Shape shape, Consumer<Graphics2D> pen) {
        BufferedImage window = new BufferedImage(place.width, place.height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = window.createGraphics();
        pen.accept(graphics);
        graphics.translate(-place.x, -place.y);
        graphics.scale(scale, scale);
        graphics.setPaint(Color.BLACK);
        graphics.fill(shape);
        graphics.dispose();
        return window;
    }

    private BufferedImage kept(BufferedImage window) {
        int[] pixels = window.getRGB(0, 0, place.width, place.height, null, 0, place.width);
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = ((screen[i] * (pixels[i] >>> 24) / 255) << 24) | rgb;
        }
        window.setRGB(0, 0, place.width, place.height, pixels, 0, place.width);
        return window;
    }
}
