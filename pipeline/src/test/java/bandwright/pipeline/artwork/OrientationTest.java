package bandwright.pipeline.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrientationTest {
    /** Where TIFF 6.0, tag 274 says that the first row and the first column are seen. */
    @ParameterizedTest
    @CsvSource({
        "1, top, left", "2, top, right", "3, bottom, right", "4, bottom, left",
        "5, left, top", "6, right, top", "7, right, bottom", "8, left, bottom"
    })
    void theFirstRowAndColumnAreSeenWhereTheTagSays(int tag, String row, String column) {
        AffineTransform shown = Orientation.ofTag(tag).toShown();
        // The middle of the stored first row is the middle of the upper edge; of the first column, of the left edge.
        assertThat(edge(shown, 0.5, 1)).isEqualTo(row);
        assertThat(edge(shown, 0, 0.5)).isEqualTo(column);
    }

    private static String edge(AffineTransform shown, double x, double y) {
        Point2D at = shown.transform(new Point2D.Double(x, y), null);
        if (at.getX() == 0.5) {
            return at.getY() == 1 ? "top" : "bottom";
        }
        return at.getX() == 0 ? "left" : "right";
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "9, 1", "-3, 1", "6, 6"})
    void anUnknownTagIsUpright(int tag, int same) {
        assertThat(Orientation.ofTag(tag)).isEqualTo(Orientation.ofTag(same));
    }
}
