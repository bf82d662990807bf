package bandwright.pipeline.sample.art;

/** The printer's shelf that every picture of the gift shop is mixed from: six inks, and the faces of the people. */
final class Ink {
    static final int NIGHT = 0x14284B;
    static final int SEA = 0x1F5C73;
    static final int SHALLOW = 0x7FB3AE;
    static final int CREAM = 0xF7EEDB;
    static final int LAMP = 0xF3B33D;
    static final int CORAL = 0xD9573F;

    /** Cream under a little sea, for what stands far off. */
    static final int HAZE = 0xC4D6CC;

    static final int[] SKIN = {0xF1C9A5, 0x8D5A3A, 0xE5B08A, 0xC98F63, 0xF3D3B5, 0x6F4630, 0xDDA67D};

    private Ink() {}
}
