package bandwright.rules.blanks;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The printed picture of a cone laid flat, upright as seen on the blank: an annular sector, symmetrical about its
 * vertical axis, in its bounding box. A cone mug of 88 mm at the rim and 62 mm at the foot whose band is 184.00 x 90.83
 * mm gets a sector whose box is 208.82 x 102.83 mm. In millimetres from the box's lower-left corner; u runs along the
 * picture from its left end, v up from its lower edge, so that u at {@link #middle} and every v are true lengths.
 *
 * <p>Radial-line development of a frustum: what lies at one height of the cone lies on one arc about the apex.
 *
 * @param inner the radius of the inner arc, bleed counted
 * @param outer the radius of the outer arc, bleed counted
 * @param middle the radius half-way up the band, where the width of the picture is measured
 * @param halfRadians half the angle between the two ends, overlap counted; at most pi
 * @param rimIsOuter whether the edge towards the rim is the outer arc
 */
public record Sector(Length inner, Length outer, Length middle, double halfRadians, boolean rimIsOuter) {
    public Sector {
        if (inner.isNegative() || !outer.longerThan(inner) || !(halfRadians > 0 && halfRadians <= Math.PI)) {
            throw new IllegalArgumentException("no sector: " + inner + " to " + outer + ", " + halfRadians);
        }
    }

    /** Whether bleeds end before the tip of the cone, and the picture with its overlap before it lies on itself. */
    static boolean isPossible(Band band, ConePattern pattern) {
        double whole = 2 * Math.PI * middle(pattern).mm();
        return inner(band, pattern).isPositive() && band.printWidth().mm() <= whole;
    }

    /** What is printed on a cone: its band with bleeds and overlap. */
    static Sector of(Band band, ConePattern pattern) {
        Length middle = middle(pattern);
        Length outer = pattern.rimIsOuter()
                ? pattern.rimRadius().plus(band.bleedTop())
                : pattern.footRadius().plus(band.bleedBottom());
        double half = band.printWidth().mm() / middle.mm() / 2;
        return new Sector(inner(band, pattern), outer, middle, half, pattern.rimIsOuter());
    }

    private static Length middle(ConePattern pattern) {
        return pattern.rimRadius().plus(pattern.footRadius()).half();
    }

    private static Length inner(Band band, ConePattern pattern) {
        return pattern.rimIsOuter()
                ? pattern.footRadius().minus(band.bleedBottom())
                : pattern.rimRadius().minus(band.bleedTop());
    }

    /** The bounding box, from the origin. */
    public Box box() {
        return Box.of(
                Length.mm(2 * outer.mm() * sin(Math.min(halfRadians, Math.PI / 2))), Length.mm(outer.mm() - lowest()));
    }

    /** Where the arcs have their centre, from the box's left side. */
    public double apexX() {
        return box().width().mm() / 2;
    }

    /** Where the arcs have their centre, from the box's lower side: below it, or above the box if the foot is wider. */
    public double apexY() {
        return rimIsOuter ? -lowest() : outer.mm();
    }

    /** The nearest that the shape comes to a line through the apex across its axis; negative beyond it. */
    private double lowest() {
        double lowestRadius = halfRadians <= Math.PI / 2 ? inner.mm() : outer.mm();
        return lowestRadius * cos(halfRadians);
    }

    /** The x of what lies at u, v of the picture. */
    public double x(double u, double v) {
        return apexX() + radius(v) * sin(angle(u));
    }

    /** The y of what lies at u, v of the picture. */
    public double y(double u, double v) {
        double along = radius(v) * cos(angle(u));
        return rimIsOuter ? apexY() + along : apexY() - along;
    }

    /** The inverse: how far along the picture the point x, y lies. */
    public double u(double x, double y) {
        double along = rimIsOuter ? y - apexY() : apexY() - y;
        return (StrictMath.atan2(x - apexX(), along) + halfRadians) * middle.mm();
    }

    /** The inverse: how far up the picture the point x, y lies. */
    public double v(double x, double y) {
        double radius = Math.hypot(x - apexX(), y - apexY());
        return rimIsOuter ? radius - inner.mm() : outer.mm() - radius;
    }

    /** How far from the apex the picture's v lies. */
    public double radius(double v) {
        return rimIsOuter ? inner.mm() + v : outer.mm() - v;
    }

    /** From the axis, to the right, of the picture's u. */
    public double angle(double u) {
        return u / middle.mm() - halfRadians;
    }

    /** In square millimetres: the angle times half the difference of the radii's squares. */
    public double area() {
        return halfRadians * (outer.mm() * outer.mm() - inner.mm() * inner.mm());
    }

    /** Upright boxes, side by side, that hold all of the sector and little else. */
    public List<Box> cover(int columns) {
        Box all = box();
        if (halfRadians > Math.PI / 2) {
            return List.of(all);
        }
        double half = all.width().mm() / 2;
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            double from = half * (2.0 * i / columns - 1);
            double to = half * (2.0 * (i + 1) / columns - 1);
            boxes.add(column(from, to, all));
        }
        return boxes;
    }

    /** The column between two distances from the axis, negative to its left. */
    private Box column(double from, double to, Box all) {
        double near = from <= 0 && to >= 0 ? 0 : Math.min(Math.abs(from), Math.abs(to));
        double far = Math.max(Math.abs(from), Math.abs(to));
        double innerCorner = inner.mm() * sin(halfRadians);
        double low = Math.min(lowAt(near), lowAt(far));
        if (near < innerCorner && innerCorner < far) {
            low = Math.min(low, lowAt(innerCorner));
        }
        double top = Math.sqrt(Math.max(0, outer.mm() * outer.mm() - near * near));
        double bottomY = rimIsOuter ? apexY() + low : apexY() - top;
        double topY = rimIsOuter ? apexY() + top : apexY() - low;
        Length x = Length.mm(half(all) + from);
        Length y = Length.mm(bottomY).atLeast(Length.ZERO);
        Length right = Length.mm(half(all) + to).atMost(all.width());
        return new Box(
                x, y, right.minus(x), Length.mm(topY).atMost(all.height()).minus(y));
    }

    private static double half(Box all) {
        return all.width().mm() / 2;
    }

    /** How far up its axis the sector begins at that distance from the axis: at the inner arc, beyond it at its end. */
    private double lowAt(double distance) {
        double sin = sin(halfRadians);
        if (distance <= inner.mm() * sin) {
            return Math.sqrt(inner.mm() * inner.mm() - distance * distance);
        }
        return distance * cos(halfRadians) / sin;
    }

    // Every computer has the same digits: a box of a sector decides how sheets are laid out.
    private static double sin(double radians) {
        return StrictMath.sin(radians);
    }

    private static double cos(double radians) {
        return StrictMath.cos(radians);
    }
}
