package bandwright.pipeline.artwork;

import java.util.List;

/** The colour types of PNG (ISO/IEC 15948, 11.2.2) with the bit depths that each may have. */
public enum PngColour {
    GREY(0, 1, List.of(1, 2, 4, 8, 16)),
    RGB(2, 3, List.of(8, 16)),
    PALETTE(3, 1, List.of(1, 2, 4, 8)),
    GREY_ALPHA(4, 2, List.of(8, 16)),
    RGB_ALPHA(6, 4, List.of(8, 16));

    private final int code;
    private final int channels;
    private final List<Integer> depths;

    PngColour(int code, int channels, List<Integer> depths) {
        this.code = code;
        this.channels = channels;
        this.depths = depths;
    }

    /** The colour type with that code; a pair that PNG hasn't is a damaged header. */
    static PngColour of(int code, int bits) throws RefusedPicture {
        for (PngColour colour : values()) {
            if (colour.code == code && colour.depths.contains(bits)) {
                return colour;
            }
        }
        throw new RefusedPicture(Flaw.DAMAGED);
    }

    /** Samples a pixel, alpha included. */
    public int channels() {
        return channels;
    }

    public boolean hasAlpha() {
        return this == GREY_ALPHA || this == RGB_ALPHA;
    }

    public boolean isGrey() {
        return this == GREY || this == GREY_ALPHA;
    }
}
