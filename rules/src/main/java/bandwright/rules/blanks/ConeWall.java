package bandwright.rules.blanks;

/**
 * The wall of a cone laid flat: standard radial-line development of a frustum. Lengths in mm; v runs down the wall from
 * the rim, 0 to {@link #slant}.
 *
 * @param rimDiameter at v = 0
 * @param footDiameter at v = slant
 * @param slant sqrt(height^2 + ((rim - foot) / 2)^2)
 */
record ConeWall(double rimDiameter, double footDiameter, double slant) {
    static ConeWall of(Form.Cone cone) {
        double rim = cone.rimDiameter().mm();
        double foot = cone.footDiameter().mm();
        return new ConeWall(rim, foot, Math.hypot(cone.height().mm(), (rim - foot) / 2));
    }

    boolean isCylinder() {
        return rimDiameter == footDiameter;
    }

    double diameter(double v) {
        return rimDiameter - (rimDiameter - footDiameter) * v / slant;
    }

    /** The radius of the arc that the circle at v becomes in the pattern: by similar triangles, diameter x slant / difference. */
    double patternRadius(double v) {
        return diameter(v) * slant / Math.abs(rimDiameter - footDiameter);
    }

    /** The angle of the whole wall in the pattern: 2 pi x rim radius / its pattern radius. */
    double sweepRadians() {
        return Math.PI * Math.abs(rimDiameter - footDiameter) / slant;
    }
}
