package bandwright.pipeline.write.pdf;

import bandwright.pipeline.pixels.PictureColour;
import bandwright.pipeline.pixels.PngFilter;
import bandwright.pipeline.pixels.ToPrinter;
import bandwright.pipeline.write.pdf.PreparedPicture.Packing;
import bandwright.pipeline.write.pdf.PreparedPicture.Plane;
import bandwright.rules.paper.PrinterProfile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Computed pixels on their way into a document: rows of 8-bit colours, and of alpha where there is any. */
final class PixelRows implements AutoCloseable {
    private final int width;
    private final int channels;
    private final PictureColour colour;
    private final Optional<ToPrinter> printer;
    private final Plain colours;
    private final Optional<Plain> alphas;

    private PixelRows(
            int width,
            int channels,
            PictureColour colour,
            Optional<ToPrinter> printer,
            Plain colours,
            Optional<Plain> alphas) {
        this.width = width;
        this.channels = channels;
        this.colour = colour;
        this.printer = printer;
        this.colours = colours;
        this.alphas = alphas;
    }

    /**
     * Begins two files.
     *
     * @param stem how their names begin
     * @param colour what the pixels' numbers mean
     * @param profile of the printer whose inks they become; empty = they stay as they are
     */
    static PixelRows open(
            Path stem,
            int width,
            boolean isGrey,
            boolean hasAlpha,
            PictureColour colour,
            Optional<PrinterProfile> profile)
            throws IOException {
        Optional<ToPrinter> printer = profile.map(own -> ToPrinter.of(colour, own));
        int channels = printer.map(ToPrinter::components).orElse(isGrey ? 1 : 3);
        Plain colours =
                new Plain(Repacked.ofColour(stem.resolveSibling(stem.getFileName() + ".colour")), width, channels);
        Optional<Plain> alphas = hasAlpha
                ? Optional.of(new Plain(Repacked.ofAlpha(stem.resolveSibling(stem.getFileName() + ".alpha")), width, 1))
                : Optional.empty();
        PictureColour written = printer.<PictureColour>map(own -> new PictureColour.Device(own.components()))
                .orElse(colour);
        return new PixelRows(width, channels, written, printer, colours, alphas);
    }

    /** The next row: alpha, red, green and blue of each pixel; grey stands in all three. */
    void write(int[] row) throws IOException {
        if (printer.isPresent()) {
            colours.write(printer.get().inks(row));
        } else {
            colours.write(row, 16);
        }
        if (alphas.isPresent()) {
            alphas.get().write(row, 24);
        }
    }

    PreparedPicture finished(int number, int height) throws IOException {
        Optional<Plane> mask = alphas.isPresent()
                ? Optional.of(new Plane(alphas.get().out.finished(), 8, new Packing.PngRows(1)))
                : Optional.empty();
        Plane plane = new Plane(colours.out.finished(), 8, new Packing.PngRows(channels));
        return new PreparedPicture(number, width, height, colour, plane, List.of(), mask);
    }

    @Override
    public void close() throws IOException {
        colours.out.close();
        if (alphas.isPresent()) {
            alphas.get().out.close();
        }
    }

    /** Rows of bytes, filtered as PNG has it. */
    private static final class Plain {
        private final Repacked out;
        private final int channels;
        private byte[] plain;
        private byte[] above;
        private final byte[] filtered;

        Plain(Repacked out, int width, int channels) {
            this.out = out;
            this.channels = channels;
            this.plain = new byte[1 + width * channels];
            this.above = new byte[plain.length];
            this.filtered = new byte[plain.length];
        }

        /** @param shift where the first channel stands in a pixel; the others follow below */
        void write(int[] row, int shift) throws IOException {
            int at = 1;
            for (int pixel : row) {
                for (int c = 0; c < channels; c++) {
                    plain[at++] = (byte) (pixel >> (shift - 8 * c));
                }
            }
            pack();
        }

        void write(byte[] samples) throws IOException {
            System.arraycopy(samples, 0, plain, 1, plain.length - 1);
            pack();
        }

        private void pack() throws IOException {
            PngFilter.apply(plain, above, channels, filtered);
            out.write(filtered);
            byte[] free = above;
            above = plain;
            plain = free;
        }
    }
}
