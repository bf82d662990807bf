package bandwright.rules.blanks;

import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of a blank can be printed on a heat source. 260 mm round, a handle of 30 mm, 10 mm of clearance on both of
 * its sides: 260 - 30 - 2 x 10 = 210 mm around. The formulas stand in docs/geometry.md.
 */
public final class BandLaw {
    /** Under this rise of its outer arc a cone's band is printed straight: less than a printer's own error. */
    private static final double STRAIGHT_ENOUGH_MM = 0.1;

    private BandLaw() {}

    /**
     * The band; empty where margins, handle or limits leave nothing to print on, or where a cone's bleed or overlap would
     * go on beyond its tip or over itself.
     */
    public static Optional<Band> of(Blank blank, HeatSource source) {
        Band band = bandOf(blank, source);
        boolean isEmpty = !band.around().isPositive()
                || !band.up().isPositive()
                || band.pattern()
                        .filter(pattern -> !Sector.isPossible(band, pattern))
                        .isPresent();
        return isEmpty ? Optional.empty() : Optional.of(band);
    }

    /** The diameters at the two edges of the band, the narrower first; empty for a flat blank. */
    public static Optional<Diameters> diameters(Blank blank, HeatSource source) {
        if (blank.form() instanceof Form.Cylinder cylinder) {
            Length diameter = cylinder.circumference().times(1 / Math.PI);
            return Optional.of(new Diameters(diameter, diameter));
        }
        if (blank.form() instanceof Form.Cone cone) {
            ConeWall wall = ConeWall.of(cone);
            double v1 = blank.topMargin().mm();
            double v2 = v1 + coneUp(blank, source, wall, new ArrayList<>()).mm();
            Length one = Length.mm(wall.diameter(v1));
            Length other = Length.mm(wall.diameter(v2));
            return Optional.of(new Diameters(one.atMost(other), one.atLeast(other)));
        }
        return Optional.empty();
    }

    /** The narrowest and the widest diameter of a band. */
    public record Diameters(Length narrowest, Length widest) {}

    /** How far the wall leans, in degrees a side; 0 for a cylinder and a flat. */
    public static double taperDegrees(Blank blank) {
        if (blank.form() instanceof Form.Cone cone) {
            double lean = (cone.rimDiameter().mm() - cone.footDiameter().mm()) / 2;
            return Math.toDegrees(Math.atan(Math.abs(lean) / cone.height().mm()));
        }
        return 0;
    }

    /** What is left unprinted at the handle: the handle and the clearance on both of its sides. */
    public static Length handleGap(Blank blank, HeatSource source) {
        return blank.hasHandle()
                ? blank.handleWidth().plus(source.handleClearance().times(2))
                : Length.ZERO;
    }

    private static Band bandOf(Blank blank, HeatSource source) {
        if (blank.form() instanceof Form.Cylinder cylinder) {
            return ofCylinder(blank, cylinder, source);
        }
        if (blank.form() instanceof Form.Cone cone) {
            return ofCone(blank, cone, source);
        }
        return ofFlat(blank, (Form.Flat) blank.form(), source);
    }

    private static Band ofCylinder(Blank blank, Form.Cylinder cylinder, HeatSource source) {
        List<BandLimit> limits = new ArrayList<>();
        Length up = shortened(
                BandLimit.Column.MAX_BAND_HEIGHT,
                cylinder.height().minus(blank.topMargin()).minus(blank.bottomMargin()),
                source.maxBandHeight(),
                limits);
        Length around = shortened(
                BandLimit.Column.MAX_BAND_WIDTH,
                cylinder.circumference().minus(handleGap(blank, source)),
                source.maxBandWidth(),
                limits);
        Length overlap = overlap(blank, limits);
        return band(blank, around, up, cylinder.circumference(), overlap, limits, Optional.empty());
    }

    private static Band ofFlat(Blank blank, Form.Flat flat, HeatSource source) {
        List<BandLimit> limits = new ArrayList<>();
        Length up = shortened(
                BandLimit.Column.MAX_BAND_HEIGHT,
                flat.height().minus(blank.topMargin()).minus(blank.bottomMargin()),
                source.maxBandHeight(),
                limits);
        Length around = shortened(
                BandLimit.Column.MAX_BAND_WIDTH,
                flat.width().minus(blank.sideMargin().times(2)),
                source.maxBandWidth(),
                limits);
        return band(blank, around, up, flat.width(), Length.ZERO, limits, Optional.empty());
    }

    private static Band ofCone(Blank blank, Form.Cone cone, HeatSource source) {
        ConeWall wall = ConeWall.of(cone);
        List<BandLimit> limits = new ArrayList<>();
        Length up = coneUp(blank, source, wall, limits);
        if (!up.isPositive()) {
            // Margins that pass each other may also pass the cone's apex, where no diameter is left to reckon with.
            return band(blank, Length.ZERO, up, Length.ZERO, Length.ZERO, limits, Optional.empty());
        }
        double v1 = blank.topMargin().mm();
        double v2 = v1 + up.mm();
        double middle = (v1 + v2) / 2;
        double circumference = Math.PI * wall.diameter(middle);
        // The gap is taken where the band is narrowest; elsewhere the same angle leaves more than it.
        double narrowest = Math.PI * Math.min(wall.diameter(v1), wall.diameter(v2));
        double gap = handleGap(blank, source).mm();
        double share = gap < narrowest ? 1 - gap / narrowest : 0;
        Length around = shortened(
                BandLimit.Column.MAX_BAND_WIDTH, Length.mm(circumference * share), source.maxBandWidth(), limits);
        double sweep = wall.sweepRadians() * around.mm() / circumference;
        double outer = Math.max(wall.patternRadius(v1), wall.patternRadius(v2));
        boolean isStraight = wall.isCylinder() || outer * (1 - Math.cos(sweep / 2)) < STRAIGHT_ENOUGH_MM;
        Optional<ConePattern> pattern = isStraight
                ? Optional.empty()
                : Optional.of(
                        new ConePattern(Length.mm(wall.patternRadius(v1)), Length.mm(wall.patternRadius(v2)), sweep));
        return band(blank, around, up, Length.mm(circumference), overlap(blank, limits), limits, pattern);
    }

    private static Length coneUp(Blank blank, HeatSource source, ConeWall wall, List<BandLimit> limits) {
        return shortened(
                BandLimit.Column.MAX_BAND_HEIGHT,
                Length.mm(wall.slant()).minus(blank.topMargin()).minus(blank.bottomMargin()),
                source.maxBandHeight(),
                limits);
    }

    private static Band band(
            Blank blank,
            Length around,
            Length up,
            Length circumference,
            Length overlap,
            List<BandLimit> limits,
            Optional<ConePattern> pattern) {
        return new Band(around, up, circumference, overlap, blank.bleedTop(), blank.bleedBottom(), limits, pattern);
    }

    /** A wrap that a press cuts short is no full wrap: its ends never meet, so nothing overlaps. */
    private static Length overlap(Blank blank, List<BandLimit> limits) {
        boolean isCut = limits.stream().anyMatch(limit -> limit.column() == BandLimit.Column.MAX_BAND_WIDTH);
        return blank.hasHandle() || isCut ? Length.ZERO : blank.wrapOverlap();
    }

    private static Length shortened(
            BandLimit.Column column, Length wanted, Optional<Length> most, List<BandLimit> limits) {
        if (most.isEmpty() || !wanted.longerThan(most.get())) {
            return wanted;
        }
        limits.add(new BandLimit(column, wanted, most.get()));
        return most.get();
    }
}
