package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.units.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The flat pattern of a frustum against examples that others have published; one unit of theirs is a millimetre here. */
class ConeWallTest {
    @ParameterizedTest
    @CsvSource({
        // d large, d small, height, outer radius, inner radius, sector degrees, tolerance of the source's rounding
        // ceemrr.com, Geometry 2, "The Net of a Frustum": r 7.12, R 11.39, 126.4 degrees
        "8, 5, 4, 11.39, 7.12, 126.4, 0.05",
        // postitonmybrain.blogspot.com, Oct 2012: R 15.81, r 9.49; the angle is computed
        "10, 6, 6, 15.81, 9.49, 113.842, 0.005",
        // mathcentral.uregina.ca, QQ.09.11: slant 26.4, R 33, missing wedge 142 degrees; its inner radius 6.75 is an
        // error, R less the slant is 6.60
        "40, 8, 21, 33.0, 6.60, 218, 0.2",
        // mathcentral.uregina.ca, QQ.02.06: inner arc 911 mm; radii and angle computed
        "550, 290, 250, 596.073, 314.293, 166.087, 0.001",
        // Longfield, Sheet Metal Drafting, 1921, p. 128: slant is the hypotenuse of 1.5 and 3; computed from that
        "6, 3, 3, 6.7082, 3.3541, 160.997, 0.0005",
        // A tumbler that tapers a little; computed
        "75.5, 72.5, 205, 5159.3048, 4954.2993, 2.6341, 0.0005",
    })
    void radiiAndAngleAreThoseOfTheRadialLineDevelopment(
            double large, double small, double height, double outer, double inner, double degrees, double tolerance) {
        ConeWall wall = wall(large, small, height);
        assertThat(wall.patternRadius(0)).isCloseTo(outer, within(tolerance));
        assertThat(wall.patternRadius(wall.slant())).isCloseTo(inner, within(tolerance));
        assertThat(Math.toDegrees(wall.sweepRadians())).isCloseTo(degrees, within(tolerance));
    }

    @ParameterizedTest
    @CsvSource({
        // perplexus.info, pid 1466: lateral areas of r1, r2, h = 2, 1, 3 and 6, 5, 7 and 10, 7, 3
        "4, 2, 3, 29.80377",
        "12, 10, 7, 244.3586",
        "20, 14, 3, 226.587",
        // Longfield, 1921: pi (r1 + r2) slant; computed
        "6, 3, 3, 47.4175",
    })
    void thePatternHasTheAreaOfTheWall(double large, double small, double height, double area) {
        ConeWall wall = wall(large, small, height);
        double outer = wall.patternRadius(0);
        double inner = wall.patternRadius(wall.slant());
        assertThat(wall.sweepRadians() / 2 * (outer * outer - inner * inner)).isCloseTo(area, within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({"8, 5, 4", "62, 88, 101", "550, 290, 250", "75.5, 72.5, 205"})
    void everyArcIsAsLongAsTheCircleItComesFrom(double rim, double foot, double height) {
        ConeWall wall = wall(rim, foot, height);
        for (int i = 0; i <= 10; i++) {
            double v = wall.slant() * i / 10;
            assertThat(wall.patternRadius(v) * wall.sweepRadians())
                    .isCloseTo(Math.PI * wall.diameter(v), within(1e-9 * rim + 1e-9));
        }
    }

    private static ConeWall wall(double rim, double foot, double height) {
        return ConeWall.of(new Form.Cone(Length.mm(Math.PI * rim), Length.mm(foot), Length.mm(height)));
    }
}
