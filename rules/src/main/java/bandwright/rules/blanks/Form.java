package bandwright.rules.blanks;

import bandwright.rules.units.Length;

/** The body of a blank as somebody with a tape measures it: outside measures of the coated wall. */
public sealed interface Form {
    /** A straight wall. */
    record Cylinder(Length circumference, Length height) implements Form {}

    /** A wall that leans: measured round the rim, across the foot and upright. Either end may be the wider. */
    record Cone(Length rimCircumference, Length footDiameter, Length height) implements Form {
        public Length rimDiameter() {
            return rimCircumference.times(1 / Math.PI);
        }
    }

    /** A coaster, a tile: no wall at all. */
    record Flat(Length width, Length height, Outline outline) implements Form {}

    default boolean isFlat() {
        return this instanceof Flat;
    }
}
