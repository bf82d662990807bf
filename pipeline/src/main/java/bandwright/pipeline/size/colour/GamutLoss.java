package bandwright.pipeline.size.colour;

import bandwright.pipeline.pixels.ThroughPrinter;
import bandwright.pipeline.size.colour.Palette.Tint;
import bandwright.rules.colour.ColourDifference;
import bandwright.rules.colour.Lab;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Rgb;
import java.util.List;
import java.util.OptionalDouble;

/** How much of a print has colours that a printer can't make, by its profile: a bright orange becomes a dull one. */
public final class GamutLoss {
    /** A difference that is plain to see (CIEDE2000). */
    private static final double PLAIN = 5;

    private GamutLoss() {}

    /** The share of what is inked, 0 to 1; empty if the profile doesn't say how its inks look. */
    public static OptionalDouble share(Print print, PrinterProfile printer) {
        List<Tint> tints = print.palette().inked();
        int[] wanted = tints.stream().mapToInt(tint -> packed(tint.colour())).toArray();
        double all = tints.stream().mapToDouble(Tint::mm2).sum();
        return ThroughPrinter.of(printer)
                .map(through -> OptionalDouble.of(all == 0 ? 0 : lost(tints, through.seen(wanted)) / all))
                .orElse(OptionalDouble.empty());
    }

    private static double lost(List<Tint> tints, int[] seen) {
        double lost = 0;
        for (int i = 0; i < seen.length; i++) {
            Rgb made = new Rgb(seen[i] >> 16 & 255, seen[i] >> 8 & 255, seen[i] & 255);
            boolean isPlain = ColourDifference.of(tints.get(i).onWhite(), Lab.of(made)) > PLAIN;
            lost += isPlain ? tints.get(i).mm2() : 0;
        }
        return lost;
    }

    private static int packed(Rgb colour) {
        return (0xFF << 24) | (colour.red() << 16) | (colour.green() << 8) | colour.blue();
    }
}
