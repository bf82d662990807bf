package bandwright.pipeline.write.index;

import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.tile.LaidSector;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.LeaningFlag;
import bandwright.rules.units.Box;
import java.awt.geom.Point2D;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Shows a cone's picture bent on a small sheet: the flat picture in upright slices, each turned about the apex. */
final class BentPictures {
    private static final int SLICES = 12;

    private BentPictures() {}

    /** The bent picture in its upright box, y downwards. */
    static void write(Html html, Transfer transfer, Sector sector, String href) {
        double width = transfer.width().mm();
        double height = transfer.height().mm();
        double boxHeight = sector.box().height().mm();
        double slice = width / SLICES;
        // As wide as on the larger arc: no white shows between two slices.
        double drawn = slice * sector.outer().mm() / sector.middle().mm();
        double top = sector.rimIsOuter()
                ? boxHeight - sector.apexY() - sector.outer().mm()
                : boxHeight - sector.apexY() + sector.inner().mm();
        for (int i = 0; i < SLICES; i++) {
            double degrees = Math.toDegrees(sector.angle((i + 0.5) * slice));
            String turn = "rotate(" + number(sector.rimIsOuter() ? degrees : -degrees) + " " + number(sector.apexX())
                    + " " + number(boxHeight - sector.apexY()) + ")";
            html.open("g", "transform", turn);
            html.open(
                    "svg",
                    "x",
                    number(sector.apexX() - drawn / 2),
                    "y",
                    number(top),
                    "width",
                    number(drawn),
                    "height",
                    number(height),
                    "viewBox",
                    number(i * slice) + " 0 " + number(slice) + " " + number(height),
                    "preserveAspectRatio",
                    "none");
            html.open("use", "href", href).close("use").close("svg").close("g");
        }
    }

    /** The paper of a flag that leans. */
    static void flag(Html html, Box paper, LaidSector laid, FlagLaw law) {
        LeaningFlag flag = LeaningFlag.of(laid.sector(), law);
        StringBuilder corners = new StringBuilder();
        double[][] ways = {{0, -0.5}, {1, -0.5}, {1, 0.5}, {0, 0.5}};
        for (double[] way : ways) {
            double out = way[0] * flag.depth();
            double up = way[1] * flag.height();
            Point2D corner = laid.toPaper()
                    .transform(
                            new Point2D.Double(
                                    flag.x() + out * flag.outX() + up * flag.upX(),
                                    flag.y() + out * flag.outY() + up * flag.upY()),
                            null);
            corners.append(number(corner.getX()))
                    .append(',')
                    .append(number(paper.height().mm() - corner.getY()))
                    .append(' ');
        }
        html.open("polygon", "points", corners.toString().strip()).close("polygon");
    }

    private static String number(double mm) {
        return BigDecimal.valueOf(mm).setScale(2, RoundingMode.HALF_UP).toString();
    }
}
