package bandwright.rules.paper;

import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/**
 * The label flag on the right end of a cone's flipped, upright picture: it hangs at the middle of that end, square to it,
 * from the cut line outwards. Millimetres from the lower-left corner of the sector's box; directions are unit vectors.
 *
 * @param x the middle of the flag's inner side, on the cut line
 * @param y the middle of the flag's inner side, on the cut line
 * @param outX away from the picture
 * @param outY away from the picture
 * @param depth outwards, in millimetres
 * @param height along the end, in millimetres
 */
public record LeaningFlag(double x, double y, double outX, double outY, double depth, double height) {
    public static LeaningFlag of(Sector sector, FlagLaw law) {
        double sin = StrictMath.sin(sector.halfRadians());
        double cos = StrictMath.cos(sector.halfRadians());
        double up = sector.rimIsOuter() ? 1 : -1;
        double middle = (sector.inner().mm() + sector.outer().mm()) / 2;
        double outX = cos;
        double outY = -up * sin;
        return new LeaningFlag(
                sector.apexX() + middle * sin + law.border().mm() * outX,
                sector.apexY() + up * middle * cos + law.border().mm() * outY,
                outX,
                outY,
                law.depth().mm(),
                law.height().mm());
    }

    /** Up along the end of the picture: a quarter turn from outwards. */
    public double upX() {
        return -outY;
    }

    public double upY() {
        return outX;
    }

    /**
     * Whether it keeps the border from the picture's other end, which comes round near it on a wall that leans far: on a
     * saucer whose ends lie 8 degrees apart the flag would lie on the picture, its ink too.
     */
    static boolean hasRoom(Sector sector, FlagLaw law) {
        double opening = 2 * (Math.PI - sector.halfRadians());
        if (opening >= Math.PI) {
            return true;
        }
        double sin = StrictMath.sin(opening);
        double cos = StrictMath.cos(opening);
        double border = law.border().mm();
        // Along the end from the apex, and away from it: the corner of the flag that is nearest to the other end.
        double along = (sector.inner().mm() + sector.outer().mm() - law.height().mm()) / 2;
        double away = cos > 0 ? border + law.depth().mm() : border;
        return along * sin - away * cos >= border;
    }

    /** The upright box of the flag less an inset on all four sides. */
    Box bounds(Length inset) {
        double in = inset.mm();
        double half = Math.max(0, height / 2 - in);
        double near = Math.min(in, depth / 2);
        double far = Math.max(near, depth - in);
        double reachX = half * Math.abs(upX());
        double reachY = half * Math.abs(upY());
        double left = x + Math.min(near * outX, far * outX) - reachX;
        double right = x + Math.max(near * outX, far * outX) + reachX;
        double low = y + Math.min(near * outY, far * outY) - reachY;
        double top = y + Math.max(near * outY, far * outY) + reachY;
        return new Box(
                Length.mm(left),
                Length.mm(low),
                Length.mm(right).minus(Length.mm(left)),
                Length.mm(top).minus(Length.mm(low)));
    }
}
