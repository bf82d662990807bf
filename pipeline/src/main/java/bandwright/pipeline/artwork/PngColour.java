package bandwright.pipeline.artwork;

/** The colour types of PNG (ISO/IEC 15948, 11.2.2) with the bit depths that each may have. */
public enum PngColour {
    GREY(0, 1, 1, 16),
    RGB(2, 3, 8, 16),
    PALETTE(3, 1, 1, 8),
    GREY_ALPHA(4, 2, 8, 16),
    RGB_ALPHA(6, 4, 8, 16);

    private final int code;
    private final int channels;
    private final int leastBits;
    private final int mostBits;

    PngColour(int code, int channels, int leastBits, int mostBits) {
        this.code = code;
        this.channels = channels;
        this.leastBits = leastBits;
        this.mostBits = mostBits;
    }

    /** The colour type with that code; a pair that PNG hasn't is a damaged header. */
    static PngColour of(int code, int bits) throws RefusedPicture {
        for (PngColour colour : values()) {
            if (colour.code == code && colour.mayHave(bits)) {
                return colour;
            }
        }
        throw new RefusedPicture(Flaw.DAMAGED);
    }

    private boolean mayHave(int bits) {
        return bits >= leastBits && bits <= mostBits && Integer.bitCount(bits) == 1;
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
