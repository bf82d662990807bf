package bandwright.pipeline.pixels;

import java.nio.ByteBuffer;

/** Makes pixels of 8 bits of unpacked samples: numbers of a palette become its colours, four inks become sRGB. */
final class UnpackedArgb {
    private static final int OPAQUE = 255;

    private final Unpacked picture;
    private final PictureColour colour;
    private final int[] argb;

    UnpackedArgb(Unpacked picture, PictureColour colour) {
        this.picture = picture;
        this.colour = colour;
        this.argb = new int[picture.width() * picture.height()];
    }

    int[] argb() {
        int[] row = picture.newRow();
        byte[] inks = new byte[colour.isOfInks() ? 4 * picture.width() : 0];
        FromInks fromInks = colour.isOfInks() ? FromInks.of(colour) : FromInks.plain();
        for (int y = 0; y < picture.height(); y++) {
            picture.row(y, row);
            int at = y * picture.width();
            if (colour instanceof PictureColour.Palette palette) {
                lookUp(row, palette.colours(), at);
            } else if (inks.length > 0) {
                mix(row, inks, fromInks, at);
            } else {
                pack(row, at);
            }
        }
        return argb;
    }

    private void lookUp(int[] row, ByteBuffer colours, int at) {
        for (int x = 0; x < picture.width(); x++) {
            int number = 3 * row[x];
            boolean isPainted =
                    picture.transparent().isEmpty() || picture.transparent().getAsInt() != row[x];
            argb[at + x] = (isPainted ? OPAQUE << 24 : 0)
                    | (colours.get(number) & 255) << 16
                    | (colours.get(number + 1) & 255) << 8
                    | (colours.get(number + 2) & 255);
        }
    }

    private void mix(int[] row, byte[] inks, FromInks fromInks, int at) {
        int samples = picture.samples();
        for (int x = 0; x < picture.width(); x++) {
            for (int c = 0; c < 4; c++) {
                inks[4 * x + c] = (byte) eight(row[x * samples + c]);
            }
        }
        byte[] seen = fromInks.converted(inks);
        for (int x = 0; x < picture.width(); x++) {
            int alpha = samples > 4 ? eight(row[x * samples + 4]) : OPAQUE;
            argb[at + x] =
                    alpha << 24 | (seen[3 * x] & 255) << 16 | (seen[3 * x + 1] & 255) << 8 | (seen[3 * x + 2] & 255);
        }
    }

    private void pack(int[] row, int at) {
        int samples = picture.samples();
        boolean isGrey = picture.colours() == 1;
        for (int x = 0, s = 0; x < picture.width(); x++, s += samples) {
            int first = eight(row[s]);
            int second = isGrey ? first : eight(row[s + 1]);
            int third = isGrey ? first : eight(row[s + 2]);
            int alpha = picture.hasAlpha() ? eight(row[s + samples - 1]) : OPAQUE;
            argb[at + x] = alpha << 24 | first << 16 | second << 8 | third;
        }
    }

    private int eight(int sample) {
        if (picture.bits() == 8) {
            return sample;
        }
        int most = (1 << picture.bits()) - 1;
        return (int) ((sample * 255L + most / 2) / most);
    }
}
