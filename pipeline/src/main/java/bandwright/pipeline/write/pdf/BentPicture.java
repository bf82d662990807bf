package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.StoredPixels;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Box;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Computes a bent picture: for each of its pixels the place in the flat band, by the sector's inverse, and the colour of
 * the artwork there. Its edges are not smoothed: whoever draws it cuts it along the true curve, so its pixels go on a
 * little beyond.
 */
final class BentPicture {
    /** Places are computed this many pixels apart, and straight between: on a cup that is off by 0.001 mm. */
    private static final int KNOT = 16;

    /** How many pixels go on beyond the edge. */
    private static final int BEYOND = 3;

    /** Up to so many pixels of the artwork a pixel it is taken as no finer. */
    private static final double NO_FINER = 1.15;

    private final Bending asked;
    private final StoredPixels source;
    private final Resampling resampling;
    private final AffineTransform flatToSource;
    private final boolean isFiner;
    private final double left;
    private final double top;
    private final double nearLeft;
    private final double nearRight;
    private final double nearBottom;
    private final double nearTop;
    private final int width;
    private double[] knots;
    private double[] knotsBelow;

    private BentPicture(Bending asked, StoredPixels source, double finer) {
        this.asked = asked;
        this.source = source;
        this.resampling = new Resampling(source);
        this.flatToSource = flatToSource(asked, source);
        this.isFiner = finer > NO_FINER;
        this.left = asked.box().x().mm();
        this.top = asked.box().top().mm();
        double beyond = BEYOND / asked.perMm();
        this.nearLeft = asked.shown().x().mm() - beyond;
        this.nearRight = asked.shown().right().mm() + beyond;
        this.nearBottom = asked.shown().y().mm() - beyond;
        this.nearTop = asked.shown().top().mm() + beyond;
        this.width = asked.width();
        this.knots = new double[4 * (width / KNOT + 2)];
        this.knotsBelow = new double[knots.length];
    }

    /** @param scratch a folder for what is packed */
    static PreparedPicture of(Bending asked, int number, Optional<PrinterProfile> printer, Path scratch)
            throws IOException {
        double finer = pixelsAPixel(asked);
        int step = (int) Math.max(1, Math.floor(finer));
        StoredPixels source = StoredPixels.read(asked.artwork(), step);
        return new BentPicture(asked, source, finer / source.step()).packed(number, printer, scratch);
    }

    /** How many of the artwork's pixels lie in one of the bent picture's, where they lie closest. */
    private static double pixelsAPixel(Bending asked) {
        ArtworkFile artwork = asked.artwork();
        Sector sector = asked.sector();
        double largest = Math.max(
                sector.radius(asked.shown().y().mm()),
                sector.radius(asked.shown().top().mm()));
        double across = artwork.shownWidth()
                / asked.place().width().mm()
                * sector.middle().mm()
                / largest;
        double up = artwork.shownHeight() / asked.place().height().mm();
        return Math.min(across, up) / asked.perMm();
    }

    private static AffineTransform flatToSource(Bending asked, StoredPixels source) {
        Box place = asked.place();
        AffineTransform to = AffineTransform.getTranslateInstance(0, source.height());
        to.scale(source.width(), -source.height());
        try {
            to.concatenate(asked.artwork().orientation().toShown().createInverse());
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException(e); // turns and flips can be undone
        }
        to.scale(1 / place.width().mm(), 1 / place.height().mm());
        to.translate(-place.x().mm(), -place.y().mm());
        return to;
    }

    private PreparedPicture packed(int number, Optional<PrinterProfile> printer, Path scratch) throws IOException {
        try (PixelRows rows = PixelRows.open(
                scratch.resolve("bent-" + number),
                width,
                source.isGrey(),
                source.hasAlpha(),
                source.colour(),
                printer)) {
            int[] row = new int[width];
            place(knots, 0);
            for (int j = 0; j < asked.height(); j++) {
                place(knotsBelow, j + 1);
                row(row);
                rows.write(row);
                double[] free = knots;
                knots = knotsBelow;
                knotsBelow = free;
            }
            return rows.finished(number, asked.height());
        }
    }

    /** For every knot of a row: its place in the artwork's pixels, then in the flat band. */
    private void place(double[] into, int j) {
        double y = top - (j + 0.5) / asked.perMm();
        double[] at = new double[2];
        for (int k = 0; 4 * k < into.length; k++) {
            double x = left + (k * KNOT + 0.5) / asked.perMm();
            at[0] = asked.sector().u(x, y);
            at[1] = asked.sector().v(x, y);
            into[4 * k + 2] = at[0];
            into[4 * k + 3] = at[1];
            flatToSource.transform(at, 0, at, 0, 1);
            into[4 * k] = at[0];
            into[4 * k + 1] = at[1];
        }
    }

    private void row(int[] row) {
        for (int i = 0; i < width; i++) {
            int k = i / KNOT * 4;
            double part = i % KNOT / (double) KNOT;
            double u = between(knots, k + 2, part);
            double v = between(knots, k + 3, part);
            row[i] = isNearShown(u, v) ? colour(k, part) : 0xFF_FFFF;
        }
    }

    private boolean isNearShown(double u, double v) {
        return u > nearLeft && u < nearRight && v > nearBottom && v < nearTop;
    }

    private int colour(int k, double part) {
        double x = between(knots, k, part);
        double y = between(knots, k + 1, part);
        if (!isFiner) {
            return resampling.sharp(x, y);
        }
        double dxi = (knots[k + 4] - knots[k]) / KNOT;
        double dyi = (knots[k + 5] - knots[k + 1]) / KNOT;
        return resampling.mean(x, y, dxi, dyi, knotsBelow[k] - knots[k], knotsBelow[k + 1] - knots[k + 1]);
    }

    private static double between(double[] knots, int at, double part) {
        return knots[at] + (knots[at + 4] - knots[at]) * part;
    }
}
