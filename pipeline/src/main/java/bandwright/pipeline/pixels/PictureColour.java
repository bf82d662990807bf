package bandwright.pipeline.pixels;

import java.nio.ByteBuffer;
import java.util.List;

/** What the numbers of a picture mean as colour: the colour spaces of ISO 32000-1, 8.6, that pictures need. */
public sealed interface PictureColour {
    /** Red, green and blue of IEC 61966-2-1. */
    record Srgb() implements PictureColour {}

    /** The device's own grey. */
    record Grey() implements PictureColour {}

    /** A printer's own inks: red, green and blue, or cyan, magenta, yellow and black. */
    record Device(int components) implements PictureColour {}

    /** Four inks of no particular press. */
    record Cmyk() implements PictureColour {}

    /** By a profile that the picture brings. */
    record Profiled(ByteBuffer profile, int components) implements PictureColour {}

    /** Red, green and blue with their own primaries: columns of the matrix to XYZ, one after the other. */
    record CalibratedRgb(double gamma, List<Double> white, List<Double> matrix) implements PictureColour {
        public CalibratedRgb {
            white = List.copyOf(white);
            matrix = List.copyOf(matrix);
        }
    }

    record CalibratedGrey(double gamma, List<Double> white) implements PictureColour {
        public CalibratedGrey {
            white = List.copyOf(white);
        }
    }

    /** Numbers of a palette's colours, three bytes each. */
    record Palette(PictureColour base, ByteBuffer colours) implements PictureColour {}

    /** Whether its numbers are of four inks, by whatever profile. */
    default boolean isOfInks() {
        return this instanceof Cmyk || (this instanceof Profiled own && own.components() == 4);
    }
}
