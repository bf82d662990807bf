package bandwright.pipeline.tile;

/** How far a flipped picture is turned counter-clockwise on the paper. */
public enum Rotation {
    R0(0),
    R90(90),
    R180(180),
    R270(270);

    private final int degrees;

    Rotation(int degrees) {
        this.degrees = degrees;
    }

    public int degrees() {
        return degrees;
    }

    /** Whether the picture's width lies up the page. */
    public boolean swapsSides() {
        return this == R90 || this == R270;
    }
}
