package bandwright.pipeline.write.thumb;

import bandwright.rules.colour.Overprint;
import bandwright.rules.units.Rgb;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.util.Arrays;

/** White paper in small. What is drawn covers a pixel if it covers its middle; its colour is an average. */
final class Canvas {
    private final int width;
    private final int height;
    private final int[] rgb;
    private final BufferedImage image;

    Canvas(int width, int height) {
        this.width = width;
        this.height = height;
        this.image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        this.rgb = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        Arrays.fill(rgb, 0xFFFFFF);
    }

    /** What was drawn, a byte a channel: so the JDK's JPEG writer takes whole rows, and pixels one by one otherwise. */
    BufferedImage image() {
        BufferedImage bytes = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        byte[] channels = ((DataBufferByte) bytes.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < rgb.length; i++) {
            channels[3 * i] = (byte) rgb[i];
            channels[3 * i + 1] = (byte) (rgb[i] >> 8);
            channels[3 * i + 2] = (byte) (rgb[i] >> 16);
        }
        return bytes;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Turns what was drawn on white into what it will look like on a base. */
    void standOn(Rgb base) {
        if (!base.equals(Rgb.WHITE)) {
            Overprint seen = Overprint.on(base);
            for (int i = 0; i < rgb.length; i++) {
                rgb[i] = seen.of(rgb[i] | 0xFF000000) & 0xFFFFFF;
            }
        }
    }

    /** What was drawn, row by row: the array itself. */
    int[] rgb() {
        return rgb;
    }

    void fill(Rectangle2D box, Rgb colour) {
        int value = (colour.red() << 16) | (colour.green() << 8) | colour.blue();
        for (int y = first(box.getMinY(), height); y < first(box.getMaxY(), height); y++) {
            Arrays.fill(rgb, y * width + first(box.getMinX(), width), y * width + first(box.getMaxX(), width), value);
        }
    }

    /** Letters, with smooth edges. */
    void fill(Shape letters, Rgb colour, Rectangle2D clip) {
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.clip(clip);
        graphics.setColor(new Color(colour.red(), colour.green(), colour.blue()));
        graphics.fill(letters);
        graphics.dispose();
    }

    /** A picture that as a whole would lie at a place, as far as the clip shows it. */
    void draw(SmallPicture small, Rectangle2D place, Rectangle2D clip) {
        BufferedImage picture = small.pixels();
        int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        int left = first(clip.getMinX(), width);
        Range[] columns = ranges(
                left, first(clip.getMaxX(), width), new Steps(place.getMinX(), place.getWidth(), picture.getWidth()));
        Steps down = new Steps(place.getMinY(), place.getHeight(), picture.getHeight());
        for (int y = first(clip.getMinY(), height); y < first(clip.getMaxY(), height); y++) {
            Range rows = down.of(y);
            int at = y * width + left;
            for (Range column : columns) {
                rgb[at] = over(average(pixels, picture.getWidth(), column, rows), rgb[at]);
                at++;
            }
        }
    }

    private static Range[] ranges(int first, int beyond, Steps steps) {
        Range[] ranges = new Range[Math.max(0, beyond - first)];
        for (int i = 0; i < ranges.length; i++) {
            ranges[i] = steps.of(first + i);
        }
        return ranges;
    }

    /** The first pixel whose middle lies beyond an edge. */
    private static int first(double edge, int most) {
        return (int) Math.max(0, Math.min(most, Math.ceil(edge - 0.5)));
    }

    /** Which of a picture's pixels one pixel of the paper shows, along one side. */
    private record Steps(double from, double length, int pixels) {
        Range of(int pixel) {
            double start = (pixel - from) / length * pixels;
            double end = (pixel + 1 - from) / length * pixels;
            int first = (int) Math.max(0, Math.min(pixels - 1, Math.round(start)));
            int beyond = (int) Math.max(first + 1, Math.min(pixels, Math.round(end)));
            return new Range(first, beyond);
        }
    }

    private record Range(int first, int beyond) {
        int count() {
            return beyond - first;
        }
    }

    /** The mean of a block of pixels, each channel rounded to the nearest. */
    private static int average(int[] pixels, int rowLength, Range columns, Range rows) {
        long count = (long) columns.count() * rows.count();
        if (count == 1) {
            return pixels[rows.first() * rowLength + columns.first()];
        }
        long alpha = 0;
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int y = rows.first(); y < rows.beyond(); y++) {
            for (int x = columns.first(); x < columns.beyond(); x++) {
                int pixel = pixels[y * rowLength + x];
                alpha += pixel >>> 24;
                red += (pixel >> 16) & 255;
                green += (pixel >> 8) & 255;
                blue += pixel & 255;
            }
        }
        long half = count / 2;
        long mean = ((alpha + half) / count) << 24;
        mean |= ((red + half) / count) << 16;
        mean |= ((green + half) / count) << 8;
        mean |= (blue + half) / count;
        return (int) mean;
    }

    /** A colour multiplied by its alpha, over an opaque one. */
    private static int over(int colour, int under) {
        int rest = 255 - (colour >>> 24);
        if (rest == 0) {
            return colour & 0xFFFFFF;
        }
        int out = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int channel = ((colour >> shift) & 255) + (((under >> shift) & 255) * rest + 127) / 255;
            out |= Math.min(255, channel) << shift;
        }
        return out;
    }
}
