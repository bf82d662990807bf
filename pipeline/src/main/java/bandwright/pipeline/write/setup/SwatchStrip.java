package bandwright.pipeline.write.setup;

import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.pdf.Bent;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.Optional;

/**
 * The picture of one try: a block of swatches, 64 x 50 mm, half-way up the band, as often along it as there is room, three
 * times at most, so that both ends show whether the heat reaches them. On a band of 210 x 90 mm three blocks stand 9 mm
 * apart; on a coaster there is one in the middle. A smaller band takes a smaller block.
 *
 * @param width along the band
 * @param copies how many blocks, spread evenly from end to end
 * @param scale of a block, 1 at most
 * @param sector how it lies on a cone; empty where straight is true enough
 */
record SwatchStrip(double width, int copies, double scale, Optional<Sector> sector) {
    /** [J] */
    static final int MOST_COPIES = 3;

    /** Smaller than that small type and fine lines show nothing. [J] */
    private static final double LEAST_SCALE = 0.5;

    private static final double LEAST_APART = 4;

    /** How far the swatches keep off the edge of a flat blank. [J] */
    private static final double INSET = 3;

    /** As many blocks as the band has room for; empty where not even a small one fits. */
    static Optional<SwatchStrip> of(Blank blank, Band band) {
        return blank.form() instanceof Form.Flat flat ? onFlat(flat, band) : round(band);
    }

    private static Optional<SwatchStrip> round(Band band) {
        double around = band.around().mm();
        double scale = scale(around, band.up().mm());
        if (scale < LEAST_SCALE) {
            return Optional.empty();
        }
        double block = Swatches.WIDTH * scale;
        int copies = (int) Math.min(MOST_COPIES, Math.floor((around + LEAST_APART) / (block + LEAST_APART)));
        double width = copies > 1 ? around : block;
        return Optional.of(new SwatchStrip(
                width, copies, scale, band.sector().map(own -> amid(own, width, Swatches.HEIGHT * scale))));
    }

    /** The middle of the band's own sector. */
    private static Sector amid(Sector own, double width, double height) {
        return new Sector(
                Length.mm(own.middle().mm() - height / 2),
                Length.mm(own.middle().mm() + height / 2),
                own.middle(),
                width / own.middle().mm() / 2,
                own.rimIsOuter());
    }

    /** Inside the blank's own edge, as the print may run past it. */
    private static Optional<SwatchStrip> onFlat(Form.Flat flat, Band band) {
        double wide = Math.min(flat.width().mm(), band.around().mm()) - 2 * INSET;
        double high = Math.min(flat.height().mm(), band.up().mm()) - 2 * INSET;
        boolean isRound = flat.outline() == bandwright.rules.blanks.Outline.ROUND;
        double scale = isRound
                ? Math.min(1, 1 / Math.hypot(Swatches.WIDTH / wide, Swatches.HEIGHT / high))
                : scale(wide, high);
        return wide <= 0 || high <= 0 || scale < LEAST_SCALE
                ? Optional.empty()
                : Optional.of(new SwatchStrip(Swatches.WIDTH * scale, 1, scale, Optional.empty()));
    }

    private static double scale(double wide, double high) {
        return Math.min(1, Math.min(wide / Swatches.WIDTH, high / Swatches.HEIGHT));
    }

    /** The same with one block only, for paper that doesn't take the whole length. */
    SwatchStrip single() {
        double block = Swatches.WIDTH * scale;
        return new SwatchStrip(block, 1, scale, sector.map(own -> amid(own, block, height())));
    }

    double height() {
        return Swatches.HEIGHT * scale;
    }

    /** The paper that it takes. */
    Box box() {
        return sector.map(Sector::box).orElse(Box.of(Length.mm(width), Length.mm(height())));
    }

    /** Where a block begins on the strip. */
    double left(int copy) {
        return copies == 1 ? 0 : copy * (width - Swatches.WIDTH * scale) / (copies - 1);
    }

    /** A shape of the flat strip as it lies on the paper. */
    Outline laid(Outline flat) {
        return sector.map(own -> Bent.outline(flat, own)).orElse(flat);
    }
}
