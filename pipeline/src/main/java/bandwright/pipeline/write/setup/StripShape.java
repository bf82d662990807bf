package bandwright.pipeline.write.setup;

import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.pdf.Bent;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Sector;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.Optional;

/**
 * A fit strip laid flat: the band, and on both sides of it the white that reaches up to the handle. 257.61 mm round, a
 * handle of 22 and a band of 210.21 mm leave 12.7 mm on each side, so the strip is 235.61 mm long and its ends must touch
 * the handle. In millimetres: u along the band from its left end, negative in the left white, v up from its foot edge.
 *
 * @param reach from each end of the band to the handle; where a cone's band is narrowest it is the clearance
 */
record StripShape(Band band, double reach, Optional<Sector> sector) {
    /** Less than that is no white to be seen. [J] */
    private static final double LEAST_REACH = 0.1;

    static StripShape of(Blank blank, HeatSource source, Band band) {
        double reach = reach(blank, source, band);
        Optional<Sector> sector = band.sector()
                .map(own -> new Sector(
                        own.inner(),
                        own.outer(),
                        own.middle(),
                        Math.min(
                                Math.PI,
                                own.halfRadians() + reach / own.middle().mm()),
                        own.rimIsOuter()));
        return new StripShape(band, reach, sector);
    }

    /** What the band leaves of the wall, less the handle, halved; taken where the band is narrowest, as the gap is. */
    private static double reach(Blank blank, HeatSource source, Band band) {
        if (blank.form().isFlat()) {
            return 0;
        }
        double middle = band.circumference().mm();
        double narrowest = BandLaw.diameters(blank, source)
                .map(found -> Math.PI * found.narrowest().mm())
                .orElse(middle);
        double gap = narrowest * (1 - band.around().mm() / middle);
        double handle = blank.hasHandle() ? blank.handleWidth().mm() : 0;
        double reach = (gap - handle) / 2 * middle / narrowest;
        return reach < LEAST_REACH ? 0 : reach;
    }

    boolean hasWhite() {
        return reach > 0;
    }

    double width() {
        return band.printWidth().mm();
    }

    double height() {
        return band.printHeight().mm();
    }

    /** The paper that it takes. */
    Box box() {
        return sector.map(Sector::box).orElse(Box.of(Length.mm(width() + 2 * reach), band.printHeight()));
    }

    double x(double u, double v) {
        return sector.map(own -> own.x(u + reach, v)).orElse(u + reach);
    }

    double y(double u, double v) {
        return sector.map(own -> own.y(u + reach, v)).orElse(v);
    }

    /** How much u a millimetre is at that height: on a cone the scale of an edge has to be true at that edge. */
    double alongAt(double v) {
        return sector.map(own -> own.middle().mm() / own.radius(v)).orElse(1.0);
    }

    /** A box in u and v as it lies on the paper. */
    Outline box(double u, double v, double width, double height) {
        Box flat = new Box(Length.mm(u + reach), Length.mm(v), Length.mm(width), Length.mm(height));
        return sector.map(own -> Bent.outline(flat, own)).orElseGet(() -> Outline.of(flat));
    }
}
