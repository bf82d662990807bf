package bandwright.pipeline.tile;

import bandwright.rules.units.Box;

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

    /** A part of an upright picture where it lies after the turn; the picture's corner stays at the origin. */
    public Box turned(Box part, Box picture) {
        return switch (this) {
            case R0 -> part;
            case R90 -> new Box(picture.height().minus(part.top()), part.x(), part.height(), part.width());
            case R180 ->
                new Box(
                        picture.width().minus(part.right()),
                        picture.height().minus(part.top()),
                        part.width(),
                        part.height());
            case R270 -> new Box(part.y(), picture.width().minus(part.right()), part.height(), part.width());
        };
    }
}
