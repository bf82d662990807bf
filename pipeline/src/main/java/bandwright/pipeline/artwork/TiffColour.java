package bandwright.pipeline.artwork;

/** The kinds of colour of a TIFF that are printed (TIFF 6.0, PhotometricInterpretation), with their codes. */
public enum TiffColour {
    WHITE_IS_ZERO(0, 1),
    BLACK_IS_ZERO(1, 1),
    RGB(2, 3),
    PALETTE(3, 1),
    CMYK(5, 4),
    LUMA_CHROMA(6, 3);

    private final int code;
    private final int colours;

    TiffColour(int code, int colours) {
        this.code = code;
        this.colours = colours;
    }

    static TiffColour of(int code) throws RefusedPicture {
        for (TiffColour colour : values()) {
            if (colour.code == code) {
                return colour;
            }
        }
        throw new RefusedPicture(Flaw.RARE_TIFF);
    }

    /** Samples a pixel without alpha. */
    public int colours() {
        return colours;
    }

    boolean mayHave(int bits) {
        return switch (this) {
            case WHITE_IS_ZERO, BLACK_IS_ZERO -> Integer.bitCount(bits) == 1 && bits <= 16;
            case PALETTE -> Integer.bitCount(bits) == 1 && bits <= 8;
            case RGB, CMYK -> bits == 8 || bits == 16;
            case LUMA_CHROMA -> bits == 8;
        };
    }
}
