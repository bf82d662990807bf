package bandwright.rules.paper;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.blanks.Sector;
import bandwright.rules.sample.SampleShop;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeaningFlagTest {
    private static final FlagLaw LAW =
            FlagLaw.of(SampleShop.withFlag(Length.mm(2), Length.mm(4), Length.mm(14), Length.mm(30)));

    /** From a beaker to a saucer; the degrees are those between the two ends. */
    @ParameterizedTest
    @CsvSource({
        "60, 110, 250, true, true",
        "60, 110, 90, true, true",
        "60, 110, 90, false, true",
        "30, 70, 28, true, true",
        "30, 70, 24, true, false",
        "50, 110, 8, true, false",
        "50, 110, 8, false, false",
        "50, 110, 0, true, false"
    })
    void aFlagHangsOnlyWhereItLiesClearOfItsOwnPicture(
            double inner, double outer, double opening, boolean rimIsOuter, boolean hangs) {
        double half = Math.toRadians(180 - opening / 2);
        Sector sector =
                new Sector(Length.mm(inner), Length.mm(outer), Length.mm((inner + outer) / 2), half, rimIsOuter);
        assertThat(Footprint.bent(sector, LAW).flag().isPresent()).isEqualTo(hangs);
        assertThat(Footprint.bent(sector, LAW).ink().isPresent()).isEqualTo(hangs);
        assertThat(common(sector).isEmpty()).as("clear of the picture").isEqualTo(hangs);
    }

    /** What of its paper, less a hair, lies on the picture. */
    private static Area common(Sector sector) {
        LeaningFlag flag = LeaningFlag.of(sector, LAW);
        Area paper = new Area(new Rectangle2D.Double(0.01, -flag.height() / 2, flag.depth(), flag.height()));
        paper.transform(new AffineTransform(flag.outX(), flag.outY(), flag.upX(), flag.upY(), flag.x(), flag.y()));
        double width = 2 * sector.halfRadians() * sector.middle().mm();
        double height = sector.outer().minus(sector.inner()).mm();
        Path2D picture = new Path2D.Double();
        for (int i = 0; i <= 2000; i++) {
            double u = width * Math.min(i, 1000) / 1000 - width * Math.max(0, i - 1000) / 1000;
            double v = i <= 1000 ? 0 : height;
            if (i == 0) {
                picture.moveTo(sector.x(u, v), sector.y(u, v));
            } else {
                picture.lineTo(sector.x(u, v), sector.y(u, v));
            }
        }
        picture.closePath();
        paper.intersect(new Area(picture));
        return paper;
    }
}
