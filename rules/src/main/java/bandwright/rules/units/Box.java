package bandwright.rules.units;

/** An upright rectangle: its lower-left corner and its size. Sizes are never negative. */
public record Box(Length x, Length y, Length width, Length height) {
    public Box {
        if (width.isNegative() || height.isNegative()) {
            throw new IllegalArgumentException("a box of " + width + " x " + height);
        }
    }

    /** A box from the origin. */
    public static Box of(Length width, Length height) {
        return new Box(Length.ZERO, Length.ZERO, width, height);
    }

    public Length right() {
        return x.plus(width);
    }

    public Length top() {
        return y.plus(height);
    }

    public Box shifted(Length dx, Length dy) {
        return new Box(x.plus(dx), y.plus(dy), width, height);
    }

    /** This box with a border of that width added on all four sides. */
    public Box grown(Length border) {
        return new Box(x.minus(border), y.minus(border), width.plus(border.times(2)), height.plus(border.times(2)));
    }

    /** What the two have in common; without width or height where they do not meet. */
    public Box shared(Box other) {
        Length left = x.atLeast(other.x);
        Length low = y.atLeast(other.y);
        Length wide = right().atMost(other.right()).minus(left).atLeast(Length.ZERO);
        Length high = top().atMost(other.top()).minus(low).atLeast(Length.ZERO);
        return new Box(left, low, wide, high);
    }

    /** Whether the two share an area; touching edges do not. */
    public boolean overlaps(Box other) {
        return other.right().longerThan(x)
                && right().longerThan(other.x)
                && other.top().longerThan(y)
                && top().longerThan(other.y);
    }

    /** Whether the other lies in this box; edges may touch. */
    public boolean contains(Box other) {
        return x.compareTo(other.x) <= 0
                && y.compareTo(other.y) <= 0
                && right().compareTo(other.right()) >= 0
                && top().compareTo(other.top()) >= 0;
    }
}
