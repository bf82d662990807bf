package bandwright.pipeline.artwork;

/** The fields of a TIFF that are read (TIFF 6.0; the profile's from ICC.1 Annex B.3). */
final class TiffTag {
    static final int WIDTH = 256;
    static final int HEIGHT = 257;
    static final int BITS = 258;
    static final int COMPRESSION = 259;
    static final int COLOUR = 262;
    static final int FILL_ORDER = 266;
    static final int STRIPS = 273;
    static final int ORIENTATION = 274;
    static final int SAMPLES = 277;
    static final int ROWS_A_STRIP = 278;
    static final int STRIP_BYTES = 279;
    static final int PLANES = 284;
    static final int FAX_3_OPTIONS = 292;
    static final int FAX_4_OPTIONS = 293;
    static final int PREDICTOR = 317;
    static final int PALETTE = 320;
    static final int TILE_WIDTH = 322;
    static final int TILE_HEIGHT = 323;
    static final int TILES = 324;
    static final int TILE_BYTES = 325;
    static final int INKS = 332;
    static final int EXTRA_SAMPLES = 338;
    static final int SAMPLE_FORMAT = 339;
    static final int CHROMA_COEFFICIENTS = 529;
    static final int CHROMA_SUBSAMPLING = 530;
    static final int CHROMA_PLACE = 531;
    static final int BLACK_WHITE = 532;
    static final int PROFILE = 34_675;

    private TiffTag() {}
}
