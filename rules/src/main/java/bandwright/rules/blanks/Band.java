package bandwright.rules.blanks;

import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The printable area of a blank on one heat source. The printed picture is {@link #printWidth} x {@link #printHeight}:
 * the band, its bleeds, and the overlap at the right end.
 *
 * @param around along the wall; on a cone the arc half-way up the band
 * @param up up the wall, along the slant of a cone
 * @param circumference round the wall half-way up the band; the width of a flat
 * @param overlap how far a full wrap repeats its beginning; zero where the band is no full wrap
 * @param limitedBy what shortened the band: max_band_height, max_band_width
 * @param pattern the flat pattern of a cone whose picture must be warped; empty where straight is true enough
 */
public record Band(
        Length around,
        Length up,
        Length circumference,
        Length overlap,
        Length bleedTop,
        Length bleedBottom,
        List<BandLimit> limitedBy,
        Optional<ConePattern> pattern) {
    public Band {
        limitedBy = List.copyOf(limitedBy);
    }

    /** The printed picture laid flat on a cone; empty where it is printed straight. */
    public Optional<Sector> sector() {
        return pattern.map(own -> Sector.of(this, own));
    }

    public Length printWidth() {
        return around.plus(overlap);
    }

    public Length printHeight() {
        return bleedTop.plus(up).plus(bleedBottom);
    }
}
