package bandwright.pipeline.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Of a thousand units, which are the type size. */
class StrokesTest {
    @ParameterizedTest
    @ValueSource(doubles = {30, 50, 80, 120})
    void barsAreAsThinAsTheyAre(double width) {
        Path2D bars = new Path2D.Double();
        for (int i = 0; i < 5; i++) {
            bars.append(new Rectangle2D.Double(i * 300, 0, width, 700), false);
        }
        assertThat(Strokes.thinnest(bars)).isCloseTo(width, within(8.0));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80})
    void roundStrokesAreAsThinAsTheyAre(int width) {
        Shape ring = new BasicStroke(width).createStrokedShape(new Ellipse2D.Double(0, 0, 600, 700));
        assertThat(Strokes.thinnest(ring)).isCloseTo(width, within(9.0));
    }

    @Test
    void theThinOnesCountNotTheThickOnes() {
        Path2D letter = new Path2D.Double();
        letter.append(new Rectangle2D.Double(0, 0, 130, 700), false);
        letter.append(new Rectangle2D.Double(300, 0, 130, 700), false);
        letter.append(new Rectangle2D.Double(500, 0, 30, 700), false);
        assertThat(Strokes.thinnest(letter)).isCloseTo(30, within(8.0));
    }

    @Test
    void aSerifHasFinerStrokesThanASansAndBoldThickerOnes() {
        TypeCase fonts = new TypeCase(List.of());
        double serif = Strokes.share(fonts.chain("serif", "x").get(0));
        double sans = Strokes.share(fonts.chain("sans", "x").get(0));
        double bold = Strokes.share(fonts.chain("sans-bold", "x").get(0));
        assertThat(serif).isLessThan(sans * 0.8);
        assertThat(sans).isLessThan(bold * 0.85);
        assertThat(sans).isBetween(0.05, 0.1);
    }
}
