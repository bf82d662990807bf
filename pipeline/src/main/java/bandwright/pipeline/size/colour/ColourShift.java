package bandwright.pipeline.size.colour;

import bandwright.pipeline.size.colour.Palette.Tint;
import bandwright.rules.colour.ColourDifference;
import bandwright.rules.colour.Lab;
import bandwright.rules.colour.Overprint;
import bandwright.rules.units.Rgb;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How far the colours of a print are on a base from what they are on white: the mean CIEDE2000 over all that is inked. On
 * white it is 0.0; red, yellow and blue on a pale blue mug come to about 8.
 *
 * @param mean with one decimal
 * @param lost two clearly different colours that become nearly one; of several the two that differ most on white
 */
public record ColourShift(BigDecimal mean, Optional<Lost> lost) {
    /** On white, or of nothing inked. */
    public static final ColourShift NONE = new ColourShift(BigDecimal.valueOf(0, 1), Optional.empty());

    /** Two colours as printed on white. */
    public record Lost(Rgb one, Rgb other) {}

    public static ColourShift of(Print print, Rgb base) {
        Palette palette = print.palette();
        double area = palette.mm2() - palette.bareMm2();
        if (base.equals(Rgb.WHITE) || area <= 0) {
            return NONE;
        }
        Overprint onBase = Overprint.on(base);
        double sum = 0;
        for (Tint tint : palette.inked()) {
            Lab seen = onBase.lab(tint.colour());
            sum += tint.mm2() * ColourDifference.of(tint.onWhite(), seen);
        }
        BigDecimal mean = BigDecimal.valueOf(sum / area).setScale(1, RoundingMode.HALF_UP);
        return new ColourShift(mean, MainColours.of(palette).lost(onBase));
    }
}
